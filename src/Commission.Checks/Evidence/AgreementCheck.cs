using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Evidence;

/// <summary>Whether two independent ways to the same number agree within their doubts.</summary>
internal sealed class AgreementCheck : ICheck
{
    public string Id => "evidence.agreement";

    public string Phase => Phases.Evidence;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var job = context.Job;
        if (job.Charging is { Scale.IsEmpty: false } charging && charging.Events.Any(e => e.Added is not null))
            yield return Charged(context, charging);
        if (job.Recovery is { Mass: { } mass, Scale: { } scale } recovery)
            yield return Compare(context, "mass recovered", "mass written", [(1, Mass(context, "mass recovered", mass, recovery.With))], "scale", Difference(context, scale, recovery.With));
        if (job is { Recovery: { Mass: { } recovered } again, AsFound.ChargeRecovered: { } found })
            yield return Compare(context, "charge recovered", "recovery", [(1, Mass(context, "mass recovered", recovered, again.With))], "as found", [(1, Mass(context, "charge recovered", found, []))]);

        // The errors of instruments stay from row to row: the last row says what all of them would.
        if (job.Charging?.Readings.LastOrDefault(r => r is { ReturnDryBulb: not null, ReturnWetBulb: not null, ReturnHumidity: not null }) is { ReturnDryBulb: { } dry, ReturnWetBulb: { } wet, ReturnHumidity: { } humidity } row
            && WetBulb(context, row, dry, wet, humidity) is { } finding)
        {
            yield return finding;
        }
    }

    // Some crews write what left the cylinder, some what reached the circuit: what stayed in the hoses lies between the two.
    private Finding Charged(CheckContext context, Charging charging)
    {
        var (scale, events) = (ByScale(context, charging), ByEvents(context, charging));
        if (charging.LeftInHoses is not { } left)
            return Compare(context, "charge added", "scale", scale, "amounts written", events);
        var hoses = Mass(context, "left in hoses", left, charging.With);
        var over = scale.Sum(p => p.Sign * p.Reading.Value.Value) - events.Sum(p => p.Sign * p.Reading.Value.Value);
        return Math.Abs(over - hoses.Value.Value) < Math.Abs(over)
            ? Compare(context, "charge added", "scale less what is left in hoses", [.. scale, (-1, hoses)], "amounts written", events)
            : Compare(context, "charge added", "scale", scale, "amounts written", events, hoses);
    }

    private Finding Compare(CheckContext context, string subject, string first, IReadOnlyList<(int Sign, CorrectedReading Reading)> one, string second, IReadOnlyList<(int Sign, CorrectedReading Reading)> other, params CorrectedReading[] besides)
    {
        static Uncertain Sum(IReadOnlyList<(int Sign, CorrectedReading Reading)> parts) => parts.Select(p => p.Sign * p.Reading.Value).Aggregate((a, b) => a + b);
        var (a, b) = (Sum(one), Sum(other));
        return Judge(context, subject, DisplayKind.Mass, new(first, a), new(second, b), (a - b).Expanded, [.. one.Concat(other).Select(p => p.Reading), .. besides]);
    }

    // One of two ways to the same number.
    private readonly record struct Way(string Words, Uncertain Value);

    private Finding Judge(CheckContext context, string subject, DisplayKind kind, Way first, Way second, double expanded, IReadOnlyList<CorrectedReading> readings)
    {
        var (one, other) = (first.Value, second.Value);
        var present = context.Present;
        var finding = context.Finding(this, subject);
        foreach (var reading in readings)
            finding.Use(reading);
        if (readings.Where(r => !r.AccuracyKnown).Select(r => r.Name).ToList() is { Count: > 0 } unknown)
            return finding.NotEvaluated($"the accuracy of {string.Join(" and ", unknown)} is not written", "Name the instrument and its accuracy.");
        var limit = context.Limits.Require(LimitIds.EvidenceAgreement);
        var difference = Math.Abs(one.Value - other.Value);
        var error = difference == 0 ? 0 : difference / expanded;
        finding.Step(
            "E_n", "normalised difference", "|a − b| / U(a − b)",
            $"|{present.Text(one.Value, kind)} − {present.Text(other.Value, kind)}| / {present.Text(expanded, kind == DisplayKind.Temperature ? DisplayKind.TemperatureDifference : kind)}",
            error.ToString("0.00", CultureInfo.InvariantCulture), limit.Source);
        // Two exact numbers that differ have no ratio that could be judged.
        if (double.IsFinite(error))
            finding.Judge(Uncertain.Exact(error), DisplayKind.Number, State(context, limit));
        else
            finding.Decide(false, State(context, limit));
        var said = $"{Capital(subject)}: {present.Text(one.Value, kind)} by {first.Words}, {present.Text(other.Value, kind)} by {second.Words}";
        return finding.Conclude($"{said}; they agree.", $"{said}; they differ by more than their doubts explain.", this.WhenItFails());
    }

    private Finding? WetBulb(CheckContext context, Reading row, Given<Temperature> dry, Given<Temperature> wet, Given<Ratio> humidity)
    {
        var air = context.Readings.Temperature($"return dry bulb, {row.At.Text}", ReadingName.ReturnAir, dry);
        var read = context.Readings.Temperature($"return wet bulb, {row.At.Text}", new SensorPlace(ReadingName.ReturnAir, IsWet: true), wet);
        if (WetBulbReading.Of(context, $"return wet bulb, {row.At.Text}", ReadingName.ReturnAir, null, humidity, air) is not { } made)
            return null;

        // The two bulbs of one psychrometer do not share their errors, although one statement covers both.
        var expanded = Math.Sqrt((read.Value.Expanded * read.Value.Expanded) + (made.Value.Expanded * made.Value.Expanded));
        return Judge(context, $"return wet bulb, {row.At.Text}", DisplayKind.Temperature, new("wick", read.Value), new("humidity", made.Value), expanded, [read, made]);
    }

    private static List<(int Sign, CorrectedReading Reading)> ByScale(CheckContext context, Charging charging) =>
        [.. charging.Scale.SelectMany((w, i) => Difference(context, w, charging.With, charging.Scale.Length == 1 ? "" : w.Cylinder?.Value ?? string.Create(CultureInfo.InvariantCulture, $"cylinder {i + 1}")).Select(p => (-p.Sign, p.Reading)))];

    private static List<(int Sign, CorrectedReading Reading)> ByEvents(CheckContext context, Charging charging) =>
        [.. charging.Events.Where(e => e.Added is not null).Select(e => (1, Mass(context, $"refrigerant added at {e.At.Text}", e.Added!, charging.With)))];

    // What a cylinder gained: after less before.
    private static List<(int Sign, CorrectedReading Reading)> Difference(CheckContext context, ScaleReading scale, System.Collections.Immutable.ImmutableArray<Given<string>> with, string cylinder = "") =>
    [
        (1, Mass(context, cylinder.Length == 0 ? "scale after" : $"scale after, {cylinder}", scale.After, with)),
        (-1, Mass(context, cylinder.Length == 0 ? "scale before" : $"scale before, {cylinder}", scale.Before, with)),
    ];

    private static CorrectedReading Mass(CheckContext context, string name, Given<Mass> given, System.Collections.Immutable.ImmutableArray<Given<string>> with) =>
        context.Readings.Plain(name, ReadingName.Charge, given, DisplayKind.Mass, with);

    private static LimitStatement State(CheckContext context, Limit limit)
    {
        var state = context.State(limit);
        return state with { Text = $"E_n {state.Text}" };
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
