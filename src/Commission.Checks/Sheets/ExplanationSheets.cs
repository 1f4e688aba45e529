using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Recording;
using Commission.Jobs.Model;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Sheets;

/// <summary>The page of one check: what it asks and whose limits it uses; with a job, its numbers step by step and the uncertainty budget.</summary>
public static class ExplanationSheets
{
    /// <summary>The page without a job.</summary>
    /// <param name="check">The check.</param>
    /// <param name="units">Units of the limits.</param>
    public static Sheet Of(ICheck check, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(units);
        return new Sheet(
            $"{check.Id}: {Text(check.Title())}",
            [
                SheetPart.Lines("What it asks", Text(check.HelpWhat())),
                SheetPart.Lines("Formula", Text(check.HelpFormula())),
                SheetPart.Lines("Source", Text(check.HelpSource())),
                SheetPart.Lines("When it fails", Text(check.WhenItFails())),
                Packs(check, units),
            ]);
    }

    private static string Text(Message message) => RecordWords.Text(message, Language.English);

    /// <summary>The page with a job: every finding of the check.</summary>
    /// <param name="check">The check.</param>
    /// <param name="job">The job.</param>
    /// <param name="settings">What the evaluation needs beyond the job.</param>
    /// <param name="trials">Monte Carlo trials beside the linear result; 0 for none.</param>
    public static Sheet With(ICheck check, Job job, CheckSettings settings, int trials)
    {
        ArgumentNullException.ThrowIfNull(check);
        var context = new CheckContext(job, settings);
        var findings = RecordBuilder.Evaluate(context).Where(f => f.Check == check.Id).ToList();
        var page = Of(check, context.Present.Units);
        var parts = page.Parts.ToBuilder();
        if (findings.Count == 0)
            parts.Add(SheetPart.Lines("In this job", "The job holds nothing for this check."));
        var simulated = trials > 0 ? Simulate(check, job, settings, trials) : [];
        foreach (var finding in findings)
            Add(parts, finding, simulated);
        return page with { Parts = parts.ToImmutable() };
    }

    private static SheetPart Packs(ICheck check, UnitSystem units)
    {
        // Limits are named after the check they serve, or after a part of it: charge.superheat, charge.superheat.tolerance.
        var prefix = check.Id.Replace("instrument.", "instruments.", StringComparison.Ordinal);
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        foreach (var name in LimitLibrary.EmbeddedNames)
        {
            foreach (var row in LimitSheets.Rows(LimitLibrary.Embedded.Find(name)!, units).Where(r => r[0] == prefix || r[0].StartsWith(prefix + ".", StringComparison.Ordinal)))
                rows.Add([name, row[0], row[1], row[2], row[4]]);
        }

        return rows.Count == 0
            ? SheetPart.Lines("Limits by pack", "Limits of this check are listed by commission limits, under the ids its findings name.")
            : new SheetPart("Limits by pack", ["pack", "limit", "figure", "when", "source"], rows.ToImmutable());
    }

    private static void Add(ImmutableArray<SheetPart>.Builder parts, Finding finding, Dictionary<string, Trials> simulated)
    {
        var key = finding.Subject ?? "";
        parts.Add(SheetPart.Lines(
            $"In this job{(finding.Subject is null ? "" : $": {finding.Subject}")}",
            [finding.Statement,
            finding.Measured is { } m ? $"measured {m.Text}{(m.CoverageText is { } c ? $" ({c})" : "")}" : null,
            finding.Limits.IsEmpty ? null : string.Join("; ", finding.Limits.Select(l => $"limit {l.Text}: {l.Basis}, {l.Source} ({l.Mark}), {l.Rule.ToString().ToLowerInvariant()}")),
            $"verdict: {RecordWords.Text(RecordWords.Of(finding.Verdict), Language.English)}{(finding.ConformityText is { } p ? $", {p} of being within the figure" : "")}{(finding.AdequacyText is { } a ? $", tolerance over U {a}" : "")}",
            finding.Reservation is { } r ? "reservation: " + r : null,
            finding.Reason is { } why ? "reason: " + why : null,
            .. finding.NextStep is { } next ? StepLines.Of("next", next) : []]));
        if (!finding.Trace.IsEmpty)
            parts.Add(new SheetPart("Steps", ["", "", "with values", "result", "source"], [.. finding.Trace.Select(s => ImmutableArray.Create($"{s.Symbol}  {s.Name}", s.Formula, s.Substitution, s.Result, s.Source))]));
        if (!finding.Budget.IsEmpty)
            parts.Add(new SheetPart("Uncertainty budget", ["cause", "u", "distribution", "sensitivity", "share", "source"], [.. finding.Budget.Select(b => ImmutableArray.Create(b.Cause, b.StandardUncertainty, b.Distribution, b.Sensitivity, b.ShareText, b.Source))]));
        if (simulated.TryGetValue(key, out var trials))
            parts.AddRange(MonteCarlo(finding, trials));
        if (!finding.Readings.IsEmpty)
            parts.Add(new SheetPart("Readings", ["reading", "as written", "where", "instrument"], [.. finding.Readings.Select(x => ImmutableArray.Create(x.Name, x.Text, x.At.ToString(), x.Instrument ?? ""))]));
    }

    // The number, and where a target moves with readings of its own, the distance to it: that is what the verdict rests on.
    private static IEnumerable<SheetPart> MonteCarlo(Finding finding, Trials trials)
    {
        if (finding.Measured is { StandardUncertaintySi: { } u } measured && trials.Measured.Count > 1)
            yield return Compared("Monte Carlo beside the linear result", (measured.Value.Si, u, measured.ExpandedSi!.Value), Spread(measured.DegreesOfFreedom), trials.Measured);
        if (finding.Distance is { } distance && trials.Distances.Count > 1)
            yield return Compared("Monte Carlo beside the linear result, distance to the target", (distance.Value, distance.StandardUncertainty, distance.Expanded), Spread(distance.DegreesOfFreedom), trials.Distances);

        static double Spread(double? freedom) => freedom is { } nu and > 2 && double.IsFinite(nu) ? Math.Sqrt(nu / (nu - 2)) : 1;
    }

    private static SheetPart Compared(string title, (double Value, double U, double Expanded) linear, double spread, List<double> values)
    {
        var result = MonteCarloResult.Of(values);
        var compared = MonteCarloComparison.Of(linear, spread, result, digits: 1);
        string G(double x) => x.ToString("G6", CultureInfo.InvariantCulture);
        return new SheetPart(
            string.Create(CultureInfo.InvariantCulture, $"{title}, {values.Count} trials, in SI units"),
            ["", "estimate", "u", "95.45 % from", "to"],
            [
                ["linear", G(linear.Value), G(linear.U), G(compared.LinearInterval.Low), G(compared.LinearInterval.High)],
                ["Monte Carlo", G(result.Mean), G(result.StandardUncertainty), G(compared.SampledInterval.Low), G(compared.SampledInterval.High)],
                ["difference", G(compared.EstimateDifference), G(result.StandardUncertainty - linear.U), G(compared.SampledInterval.Low - compared.LinearInterval.Low), G(compared.SampledInterval.High - compared.LinearInterval.High)],
                [compared.AgreesAfter(values.Count) ? "they agree" : "they disagree", $"estimate and u within {G(compared.Tolerance)}, one digit of u (JCGM 101, 8);", "", "ends are shown, not judged:", "bounds make them shorter"],
            ]);
    }

    private static Dictionary<string, Trials> Simulate(ICheck check, Job job, CheckSettings settings, int trials)
    {
        // A fixed seed: the same job gives the same page.
        var scope = new SamplingScope(new Random(20260101));
        var values = new Dictionary<string, Trials>(StringComparer.Ordinal);
        for (var i = 0; i < trials; i++)
        {
            scope.NextTrial();
            var context = new CheckContext(job, settings with { Scope = scope });
            foreach (var finding in check.Evaluate(context).Where(f => f.Measured is not null))
            {
                if (!values.TryGetValue(finding.Subject ?? "", out var drawn))
                    values.Add(finding.Subject ?? "", drawn = new Trials(new(trials), new(trials)));
                drawn.Measured.Add(finding.Measured!.Value.Si);
                if (finding.Distance is { } distance)
                    drawn.Distances.Add(distance.Value);
            }
        }

        return values;
    }

    private sealed record Trials(List<double> Measured, List<double> Distances);
}
