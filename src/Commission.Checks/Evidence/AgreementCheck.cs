using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
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
            yield return Compare(context, ReadingsMessages.MassRecovered, EvidenceMessages.WayWritten, [(1, Mass(context, ReadingsMessages.MassRecovered, mass, recovery.With))], ReadingsMessages.Scale, Difference(context, scale, recovery.With));
        if (job is { Recovery: { Mass: { } recovered } again, AsFound.ChargeRecovered: { } found })
            yield return Compare(context, ReadingsMessages.ChargeRecovered, EvidenceMessages.WayRecovery, [(1, Mass(context, ReadingsMessages.MassRecovered, recovered, again.With))], EvidenceMessages.WayAsFound, [(1, Mass(context, ReadingsMessages.ChargeRecovered, found, []))]);

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
            return Compare(context, EvidenceMessages.SubjectChargeAdded, ReadingsMessages.Scale, scale, EvidenceMessages.WayAmounts, events);
        var hoses = Mass(context, EvidenceMessages.LeftInHoses, left, charging.With);
        var over = scale.Sum(p => p.Sign * p.Reading.Value.Value) - events.Sum(p => p.Sign * p.Reading.Value.Value);
        return Math.Abs(over - hoses.Value.Value) < Math.Abs(over)
            ? Compare(context, EvidenceMessages.SubjectChargeAdded, EvidenceMessages.WayScaleLessHoses, [.. scale, (-1, hoses)], EvidenceMessages.WayAmounts, events)
            : Compare(context, EvidenceMessages.SubjectChargeAdded, ReadingsMessages.Scale, scale, EvidenceMessages.WayAmounts, events, hoses);
    }

    private Finding Compare(CheckContext context, Message subject, Message first, IReadOnlyList<(int Sign, CorrectedReading Reading)> one, Message second, IReadOnlyList<(int Sign, CorrectedReading Reading)> other, params CorrectedReading[] besides)
    {
        static Uncertain Sum(IReadOnlyList<(int Sign, CorrectedReading Reading)> parts) => parts.Select(p => p.Sign * p.Reading.Value).Aggregate((a, b) => a + b);
        var (a, b) = (Sum(one), Sum(other));
        return Judge(context, subject, DisplayKind.Mass, new(first, a), new(second, b), (a - b).Expanded, [.. one.Concat(other).Select(p => p.Reading), .. besides]);
    }

    // One of two ways to the same number.
    private readonly record struct Way(Message Words, Uncertain Value);

    private Finding Judge(CheckContext context, Message subject, DisplayKind kind, Way first, Way second, double expanded, IReadOnlyList<CorrectedReading> readings)
    {
        var (one, other) = (first.Value, second.Value);
        var present = context.Present;
        var finding = context.Finding(this, subject);
        foreach (var reading in readings)
            finding.Use(reading);
        if (readings.Where(r => !r.AccuracyKnown).Select(r => r.Name).ToList() is { Count: > 0 } unknown)
            return finding.NotEvaluated(EvidenceMessages.AccuracyNotRecorded(new ListValue([.. unknown.Select(n => new TextValue(n))])), EvidenceMessages.AccuracyNotRecordedNext);
        var limit = context.Limits.Require(LimitIds.EvidenceAgreement);
        var difference = Math.Abs(one.Value - other.Value);
        var error = difference == 0 ? 0 : difference / expanded;
        finding.Step(
            "E_n", EvidenceMessages.NormalisedDifference, "|a − b| / U(a − b)",
            $"|{present.Text(one.Value, kind)} − {present.Text(other.Value, kind)}| / {present.Text(expanded, kind == DisplayKind.Temperature ? DisplayKind.TemperatureDifference : kind)}",
            error.ToString("0.00", CultureInfo.InvariantCulture), limit.Source);
        // Two exact numbers that differ have no ratio that could be judged.
        if (double.IsFinite(error))
            finding.Judge(Uncertain.Exact(error), DisplayKind.Number, State(context, limit));
        else
            finding.Decide(false, State(context, limit));
        TextValue a = new(present.Text(one.Value, kind)), b = new(present.Text(other.Value, kind));
        return finding.Conclude(EvidenceMessages.WaysAgree(a, first.Words, b, second.Words), EvidenceMessages.WaysDiffer(a, first.Words, b, second.Words), this.WhenItFails());
    }

    private Finding? WetBulb(CheckContext context, Reading row, Given<Temperature> dry, Given<Temperature> wet, Given<Ratio> humidity)
    {
        var present = context.Present;
        var name = present.Text(EvidenceMessages.SubjectWetBulb(new(row.At.Text)));
        var air = context.Readings.Temperature(present.Text(ReadingsMessages.AtTime(ReadingsMessages.ReturnDryBulb, new(row.At.Text))), ReadingName.ReturnAir, dry);
        var read = context.Readings.Temperature(name, new SensorPlace(ReadingName.ReturnAir, IsWet: true), wet);
        if (WetBulbReading.Of(context, name, ReadingName.ReturnAir, null, humidity, air) is not { } made)
            return null;

        // The two bulbs of one psychrometer do not share their errors, although one statement covers both.
        var expanded = Math.Sqrt((read.Value.Expanded * read.Value.Expanded) + (made.Value.Expanded * made.Value.Expanded));
        return Judge(context, EvidenceMessages.SubjectWetBulb(new(row.At.Text)), DisplayKind.Temperature, new(EvidenceMessages.WayWick, read.Value), new(EvidenceMessages.WayHumidity, made.Value), expanded, [read, made]);
    }

    private static List<(int Sign, CorrectedReading Reading)> ByScale(CheckContext context, Charging charging) =>
        [.. charging.Scale.SelectMany((w, i) => Difference(context, w, charging.With, charging.Scale.Length == 1 ? "" : w.Cylinder?.Value ?? context.Present.Text(EvidenceMessages.CylinderNumber(i + 1))).Select(p => (-p.Sign, p.Reading)))];

    private static List<(int Sign, CorrectedReading Reading)> ByEvents(CheckContext context, Charging charging) =>
        [.. charging.Events.Where(e => e.Added is not null).Select(e => (1, Mass(context, EvidenceMessages.AddedAt(new(e.At.Text)), e.Added!, charging.With)))];

    // What a cylinder gained: after less before.
    private static List<(int Sign, CorrectedReading Reading)> Difference(CheckContext context, ScaleReading scale, System.Collections.Immutable.ImmutableArray<Given<string>> with, string cylinder = "") =>
    [
        (1, Mass(context, cylinder.Length == 0 ? EvidenceMessages.ScaleAfter : EvidenceMessages.ScaleAfterOf(new(cylinder)), scale.After, with)),
        (-1, Mass(context, cylinder.Length == 0 ? ReadingsMessages.ScaleBefore : EvidenceMessages.ScaleBeforeOf(new(cylinder)), scale.Before, with)),
    ];

    private static CorrectedReading Mass(CheckContext context, Message name, Given<Mass> given, System.Collections.Immutable.ImmutableArray<Given<string>> with) =>
        context.Readings.Plain(context.Present.Text(name), ReadingName.Charge, given, DisplayKind.Mass, with);

    private static LimitStatement State(CheckContext context, Limit limit)
    {
        var state = context.State(limit);
        return state with { Text = $"E_n {state.Text}" };
    }
}
