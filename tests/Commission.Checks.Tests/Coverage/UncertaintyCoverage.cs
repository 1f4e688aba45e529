using System.Globalization;
using System.Text;
using Xunit;

namespace Commission.Checks.Tests.Coverage;

/// <summary>
/// Does U hold the truth as often as it says, is it no wider than it must be, and is a printed probability one? Jobs are drawn with a true state and
/// true errors of their instruments, written as a crew would, and read by the program like any other.
/// </summary>
public sealed class UncertaintyCoverage(ITestOutputHelper output)
{
    private const int Seed = 20261130;
    private const int Long = 2700;
    private const int Short = 400;
    private const int MostMisses = 5;

    private static readonly Dictionary<ErrorModel, Lazy<CoverageStudy>> Small =
        Enum.GetValues<ErrorModel>().ToDictionary(m => m, m => new Lazy<CoverageStudy>(() => CoverageStudy.Run(Seed + 100, m, Short)));

    public static TheoryData<string, string> All()
    {
        var rows = new TheoryData<string, string>();
        foreach (var model in Enum.GetValues<ErrorModel>())
        {
            foreach (var quantity in CoverageStudy.Quantities)
                rows.Add(model.ToString(), quantity);
        }

        return rows;
    }

    public static TheoryData<string, string> Judged()
    {
        var rows = new TheoryData<string, string>();
        foreach (var model in Enum.GetValues<ErrorModel>())
        {
            foreach (var quantity in CoverageStudy.Judged)
                rows.Add(model.ToString(), quantity);
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(All))]
    public void U_holds_the_truth_and_is_no_wider_than_it_must_be(string model, string quantity)
    {
        var study = Small[Enum.Parse<ErrorModel>(model)].Value;
        var figures = CoverageFigures.Of([.. study.Outcomes[quantity]]);
        output.WriteLine(Row(study.Model, quantity, figures, null));
        Assert.True(figures.Count >= Short * 0.8, $"{figures.Count} outcomes");
        Assert.True(!figures.IsMissed, $"{100 * figures.Coverage:0.0} % of {figures.Count}");

        // The rms of n errors is known to a relative 1/√(2n).
        if (study.Model == ErrorModel.TwoProbes)
            Assert.InRange(figures.Width, 0, CoverageFigures.Widest * (1 + 3 / Math.Sqrt(2.0 * figures.Count)));
    }

    [Theory]
    [MemberData(nameof(Judged))]
    public void A_printed_probability_is_the_share_that_conforms(string model, string quantity)
    {
        var forecasts = Small[Enum.Parse<ErrorModel>(model)].Value.Forecasts[quantity].ToArray();
        var bins = CalibrationBin.Of(forecasts, least: 40).ToArray();
        Assert.True(forecasts.Length >= 100, $"{forecasts.Length} probabilities");
        Assert.All(bins, b => Assert.InRange(Math.Abs(b.Difference), 0, CalibrationBin.Allowed + b.ThreeErrors));
    }

    /// <summary>The tables that <c>tests/run-long coverage</c> commits.</summary>
    [Fact(Explicit = true)]
    public void Table()
    {
        var studies = Enum.GetValues<ErrorModel>().Select(m => CoverageStudy.Run(Seed, m, Long)).ToArray();
        var text = new StringBuilder();
        Line(text, $"Seed {Seed}. Targets: coverage ≥ 93 % in every model; bins of ≥ {CoverageFigures.Bin} jobs ≥ 93 % less three standard errors; mean U ≤ {CoverageFigures.Widest} · 2 rms with two probes; printed probability within ± {CalibrationBin.Allowed} of the truth. Bold: missed.");
        Line(text, $"Models: Offset = one offset for an instrument; OneProbe = offset, gain and bow, half common and half per place; TwoProbes = the same, return and supply read with two probes.");
        Line(text, $"");
        Line(text, $"| quantity | model | n | coverage | mean U / 2 rms | mean error / rms | worst bin |");
        Line(text, $"|---|---|---|---|---|---|---|");
        foreach (var quantity in CoverageStudy.Quantities.Concat(CoverageStudy.Readings))
        {
            foreach (var study in studies)
                Line(text, $"{Row(study.Model, quantity, CoverageFigures.Of([.. study.Outcomes[quantity]]), CoverageFigures.Bins([.. study.Outcomes[quantity]]).MinBy(b => b.Figures.Coverage))}");
        }

        Bins(text, studies);
        Calibration(text, studies);
        output.WriteLine(text.ToString());
        if (Environment.GetEnvironmentVariable("COMMISSION_TABLE") is { Length: > 0 } path)
            File.WriteAllText(path, text.ToString());
    }

    private static void Bins(StringBuilder text, CoverageStudy[] studies)
    {
        Line(text, $"");
        Line(text, $"## Bins that miss, the {MostMisses} worst of each");
        Line(text, $"");
        Line(text, $"| quantity | model | bin | n | coverage | mean U / 2 rms |");
        Line(text, $"|---|---|---|---|---|---|");
        foreach (var quantity in CoverageStudy.Quantities.Concat(CoverageStudy.Readings))
        {
            foreach (var study in studies)
            {
                foreach (var (where, bin) in CoverageFigures.Bins([.. study.Outcomes[quantity]]).Where(b => b.Figures.IsMissed).OrderBy(b => b.Figures.Coverage).Take(MostMisses))
                    Line(text, $"| {quantity} | {study.Model} | {where} | {bin.Count} | {100 * bin.Coverage:0.0} % | {bin.Width:0.00} |");
            }
        }

        Line(text, $"");
        Line(text, $"## Where U is too wide, with two probes");
        Line(text, $"");
        Line(text, $"| quantity | bin | n | coverage | mean U / 2 rms |");
        Line(text, $"|---|---|---|---|---|");
        foreach (var quantity in CoverageStudy.Quantities.Concat(CoverageStudy.Readings))
        {
            foreach (var (where, bin) in CoverageFigures.Bins([.. studies[^1].Outcomes[quantity]]).Where(b => b.Figures.Width > CoverageFigures.Widest && b.Where.Contains(": ", StringComparison.Ordinal)))
                Line(text, $"| {quantity} | {where} | {bin.Count} | {100 * bin.Coverage:0.0} % | {bin.Width:0.00} |");
        }
    }

    private static void Calibration(StringBuilder text, CoverageStudy[] studies)
    {
        Line(text, $"");
        Line(text, $"## Printed probability of conformity");
        Line(text, $"");
        Line(text, $"| judged | model | n | printed | true | difference |");
        Line(text, $"|---|---|---|---|---|---|");
        foreach (var quantity in CoverageStudy.Judged)
        {
            foreach (var study in studies)
            {
                foreach (var bin in CalibrationBin.Of([.. study.Forecasts[quantity]]))
                    Line(text, $"| {quantity} | {study.Model} | {bin.Count} | {bin.Printed:0.000} | {bin.True:0.000} | {Bold(Math.Abs(bin.Difference) > CalibrationBin.Allowed, $"{Signed(bin.Difference, 3)}")} |");
            }
        }
    }

    private static string Row(ErrorModel model, string quantity, CoverageFigures figures, (string Where, CoverageFigures Figures)? worst)
    {
        var coverage = Bold(figures.Coverage < CoverageFigures.Target, $"{100 * figures.Coverage:0.0} %");
        var width = Bold(model == ErrorModel.TwoProbes && figures.Width > CoverageFigures.Widest, $"{figures.Width:0.00}");
        var bin = worst is { } w ? $" {Bold(w.Figures.IsMissed, $"{100 * w.Figures.Coverage:0.0} %")}, {w.Where} (n = {w.Figures.Count}) |" : "";
        return string.Create(CultureInfo.InvariantCulture, $"| {quantity} | {model} | {figures.Count} | {coverage} | {width} | {Signed(figures.Bias, 2)} |{bin}");
    }

    private static string Signed(double value, int decimals)
    {
        var rounded = Math.Round(value, decimals);
        return (rounded < 0 ? "−" : rounded > 0 ? "+" : "") + Math.Abs(rounded).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    private static string Bold(bool isMissed, FormattableString text) => isMissed ? $"**{text.ToString(CultureInfo.InvariantCulture)}**" : text.ToString(CultureInfo.InvariantCulture);

    private static void Line(StringBuilder text, FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
