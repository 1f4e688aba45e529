using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Jobs.Model;
using Commission.Measurement.Uncertainty;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>
/// Every number with an uncertainty of every example, computed a second way: the same checks run again and again with drawn errors
/// (JCGM 101) must give the estimate and the standard uncertainty of the law of propagation (JCGM 100) to two digits, as far as the
/// number of trials can tell. Coverage intervals may differ for good reasons (JCGM 101, 9.2.4): they are written out, not judged.
/// </summary>
public sealed class MonteCarloTests
{
    private const int Trials = 300;
    private const int Streams = 2;

    // Four standard deviations of what so many trials scatter: of the mean u/√n, of the standard deviation u/√(2n) for a normal distribution.
    private const double Scatter = 4;

    // A trial may leave the conditions of a method, such as vapor that is drawn as wet; most have to stay inside.
    private const double LeastShareOfTrials = 0.9;

    // Where the computation has kinks inside the doubt of its readings, the law of propagation is no more than an approximation (GUM 5.1.2, note).
    // There the two agree within a share of u, and why is said.
    private static readonly Dictionary<string, (double ShareOfU, string Because)> Kinked = new(StringComparer.Ordinal)
    {
        ["instrument.zero-pressure"] = (1, "the size of an error: drawn values fold over at zero"),
        ["instrument.known-pressure"] = (1, "the size of an error: drawn values fold over at zero"),
        ["instrument.boiling-point"] = (1, "the size of an error: drawn values fold over at zero"),
        ["instrument.cylinder"] = (1, "the size of an error: drawn values fold over at zero"),
        ["air.temperature-split"] = (0.5, "the table of target splits is printed to 0.1 °F: its slopes jump from cell to cell"),
        ["charge.prerequisites"] = (0.5, "the same table"),
        ["electrical.current-unbalance"] = (0.5, "the largest of three deviations that are alike"),
        ["electrical.voltage-unbalance"] = (0.5, "the largest of three deviations that are alike"),
    };

    public static TheoryData<string> Examples => ExamplesLibrary.Names;

    [Theory]
    [MemberData(nameof(Examples))]
    public void Drawn_errors_give_the_estimate_and_the_uncertainty_of_the_linear_result(string example)
    {
        var linear = Numbers(Keyed(ExamplesLibrary.Findings(example))).Where(n => n.Result.U > 0).ToDictionary(n => n.Key, n => n, StringComparer.Ordinal);
        var drawn = Draw(example, [.. linear.Keys]);
        var faults = new List<string>();
        foreach (var (key, (_, check, expected)) in linear)
        {
            var result = MonteCarloResult.Of(drawn[key]);
            var u = expected.U;
            var digit = 0.5 * Math.Pow(10, Math.Floor(Math.Log10(u)) - 1);
            // A t of ν degrees of freedom scatters more than its scale, by √(ν/(ν − 2)); below three it has no standard deviation.
            var widest = u * (expected.Freedom is not { } nu || double.IsInfinity(nu) ? 1 : nu > 2 ? Math.Sqrt(nu / (nu - 2)) : double.PositiveInfinity);
            var bend = Kinked.TryGetValue(check, out var kink) ? kink.ShareOfU * u : 0;
            var ofMean = bend + digit + (Scatter * result.StandardUncertainty / Math.Sqrt(drawn[key].Count));
            var ofSpread = bend + digit + (Scatter * u / Math.Sqrt(2.0 * drawn[key].Count));
            if (drawn[key].Count < LeastShareOfTrials * Trials)
                faults.Add(Line($"{key}: {drawn[key].Count} of {Trials} trials gave a number"));
            if (Math.Abs(result.Mean - expected.Y) > ofMean)
                faults.Add(Line($"{key}: y {expected.Y:G6} linear, {result.Mean:G6} drawn; u {u:G3}"));
            if (result.StandardUncertainty < u - ofSpread || result.StandardUncertainty > widest + ofSpread)
                faults.Add(Line($"{key}: u {u:G4} linear, {result.StandardUncertainty:G4} drawn"));
            var covered = drawn[key].Count(y => Math.Abs(y - expected.Y) <= expected.Expanded) / (double)drawn[key].Count;
            TestContext.Current.TestOutputHelper?.WriteLine(Line($"{key}: {covered:0.0 %} of the trials within U; 95.45 % is meant"));
        }

        Assert.True(faults.Count == 0, $"{example}, {linear.Count} numbers:\n{string.Join('\n', faults)}");
    }

    // The number of a finding, and where a target moves with readings of its own, the distance to it.
    private static IEnumerable<(string Key, string Check, (double Y, double U, double Expanded, double? Freedom) Result)> Numbers(IEnumerable<(string Key, Finding Finding)> findings)
    {
        foreach (var (key, finding) in findings)
        {
            if (finding.Measured is { } m)
                yield return (key, finding.Check, (m.Value.Si, m.StandardUncertaintySi ?? 0, m.ExpandedSi ?? 0, m.DegreesOfFreedom));
            if (finding.Distance is { } d)
                yield return ($"{key}, distance to the target", finding.Check, (d.Value, d.StandardUncertainty, d.Expanded, d.DegreesOfFreedom));
        }
    }

    private static Dictionary<string, List<double>> Draw(string example, string[] keys)
    {
        var job = ExamplesLibrary.Read(example).Job!;
        var drawn = keys.ToDictionary(k => k, _ => new List<double>(Trials), StringComparer.Ordinal);

        // Each stream has its own seed and its own findings, so that the result does not depend on which runs first.
        foreach (var stream in Enumerable.Range(1, Streams).AsParallel().AsOrdered().Select(seed => Stream(job, 20260600 + seed, keys)).ToList())
        {
            foreach (var (key, value) in stream)
                drawn[key].Add(value);
        }

        return drawn;
    }

    private static List<(string Key, double Value)> Stream(Job job, int seed, string[] keys)
    {
        var scope = new SamplingScope(new Random(seed));
        var wanted = keys.ToHashSet(StringComparer.Ordinal);
        var checks = CheckCatalogue.All.Where(c => keys.Any(k => k == c.Id || k.StartsWith(c.Id + " ", StringComparison.Ordinal) || k.StartsWith(c.Id + ",", StringComparison.Ordinal))).ToList();
        var values = new List<(string Key, double Value)>();
        for (var trial = 0; trial < Trials / Streams; trial++)
        {
            scope.NextTrial();
            var context = new CheckContext(job, new CheckSettings(job.Identity.Date.Value) { Scope = scope });
            foreach (var (key, _, result) in Numbers(Keyed(checks.SelectMany(c => c.Evaluate(context)))))
            {
                if (wanted.Contains(key))
                    values.Add((key, result.Y));
            }
        }

        return values;
    }

    private static IEnumerable<(string Key, Finding Finding)> Keyed(IEnumerable<Finding> findings) => ExamplesLibrary.Keyed(findings);

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
