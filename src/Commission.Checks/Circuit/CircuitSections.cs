using System.Collections.Immutable;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Circuit;

/// <summary>Internal volume of what was under vacuum or under test: as the job states it, or estimated from the line set, and then said so.</summary>
internal sealed class SectionVolume
{
    private SectionVolume(Uncertain? value, string? whyNot, string words, ImmutableArray<ReadingUse> uses, ImmutableArray<TraceStep> steps, bool estimated)
    {
        Value = value;
        WhyNot = whyNot;
        Words = words;
        Uses = uses;
        Steps = steps;
        IsEstimated = estimated;
    }

    /// <summary>The volume, m³; null when it is not known.</summary>
    public Uncertain? Value { get; }

    /// <summary>Why it is not known; null when it is.</summary>
    public string? WhyNot { get; }

    /// <summary>Where it comes from, as it stands in a sentence.</summary>
    public string Words { get; }

    /// <summary>What of the job it rests on.</summary>
    public ImmutableArray<ReadingUse> Uses { get; }

    /// <summary>How it was found.</summary>
    public ImmutableArray<TraceStep> Steps { get; }

    /// <summary>Whether it is estimated.</summary>
    public bool IsEstimated { get; }

    /// <summary>The volume of a section.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="section">The section; null when the job does not say, and then the whole system is meant.</param>
    public static SectionVolume Of(CheckContext context, Given<CircuitSection>? section)
    {
        var equipment = context.Job.Equipment;
        var whole = section is null || section.Value == CircuitSection.WholeSystem;
        if (whole && equipment.CircuitVolume is { } stated)
            return Stated(context, stated, section);
        if (section?.Value is CircuitSection.Indoor or CircuitSection.Outdoor or CircuitSection.Other)
            return Unknown("the volume of this section is not known");
        return equipment.Piping.IsEmpty ? Unknown("neither the circuit's volume nor the line set is written") : FromLines(context, section);
    }

    private static SectionVolume Unknown(string why) => new(null, why, "", [], [], false);

    private static SectionVolume Stated(CheckContext context, Given<Volume> volume, Given<CircuitSection>? section)
    {
        var half = volume.Stated is { } u ? u.HalfWidthSi / u.CoverageFactor * Math.Sqrt(3) : context.Assume(LimitIds.AssumptionVolumeLines) * volume.Value.Si;
        var cause = context.Causes.Enter(RootCause.FromHalfWidth("circuit volume", volume.Stated is null ? "as written; its uncertainty is common practice, no source" : "as written", half), DisplayKind.Volume);
        return new SectionVolume(
            context.Scope.Reading(volume.Value.Si, 1.0 * cause), null, "as written", [volume.Use("circuit volume"), .. SectionUse(section)],
            [new TraceStep("V", "volume of the circuit", "as written", volume.Text, context.Present.Text(volume.Value.Si, DisplayKind.Volume), "")], false);
    }

    private static SectionVolume FromLines(CheckContext context, Given<CircuitSection>? section)
    {
        var uses = ImmutableArray.CreateBuilder<ReadingUse>();
        var sizes = new List<ReadingUse>();
        uses.AddRange(SectionUse(section));
        var lines = 0.0;
        var walls = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var (name, tube) in context.Job.Equipment.Piping.SelectMany(Tubes))
        {
            var standard = tube.Wall is null ? AcrTube.Find(tube.Od.Value) : null;
            if ((tube.Wall is { } wall ? tube.Od.Value.Si - (2 * wall.Value.Si) : standard?.Bore) is not { } bore || bore <= 0)
                return Unknown($"the wall of the {name}, {tube.Od.Text}, is not written and this is no size of refrigeration tube");
            walls.Add(standard?.Source ?? "wall as written");
            lines += Math.PI / 4 * bore * bore * tube.Length.Value.Si;
            sizes.Add(tube.Od.Use($"{name}: diameter"));
            sizes.Add(tube.Length.Use($"{name}: length"));
        }

        uses.AddRange(sizes);
        if (!(lines > 0))
            return Unknown("the line set has no lines");
        var steps = ImmutableArray.CreateBuilder<TraceStep>();
        var share = context.Assume(LimitIds.AssumptionVolumeLines);
        var cause = context.Causes.Enter(RootCause.FromHalfWidth("volume of the lines", "bore and length as nominal, common practice, no source", share * lines), DisplayKind.Volume);
        var volume = context.Scope.Reading(lines, 1.0 * cause);
        steps.Add(new TraceStep("V_l", "volume of the lines", "Σ π/4 · d² · l", string.Join("; ", sizes.Select(u => u.Text)), context.Present.Text(lines, DisplayKind.Volume), string.Join("; ", walls)));
        if (section?.Value == CircuitSection.LineSet)
            return new SectionVolume(volume, null, "from the line set", uses.ToImmutable(), steps.ToImmutable(), true);

        var indoorOnly = section?.Value == CircuitSection.LineSetAndIndoor;
        var coils = context.Assume(indoorOnly ? LimitIds.AssumptionVolumeIndoorShare : LimitIds.AssumptionVolumeWholeShare);
        var rest = context.Causes.Enter(RootCause.FromHalfWidth("volume of the coils", "from nothing to twice the estimate, common practice, no source", coils * lines), DisplayKind.Volume);
        volume += context.Scope.Reading(coils * lines, 1.0 * rest);
        steps.Add(new TraceStep(
            "V", "volume of the section, estimated", "V_l · (1 + coils)", $"coils and vessels {context.Present.Text(coils, DisplayKind.Percentage, 0)} of the lines, from nothing to twice that",
            context.Present.Text(volume, DisplayKind.Volume), "common practice, no source"));
        return new SectionVolume(volume, null, "estimated from the line set", uses.ToImmutable(), steps.ToImmutable(), true);
    }

    private static IEnumerable<(string Name, Tube Tube)> Tubes(PipingRun run)
    {
        var to = run.To is { } place ? $" to {place.Value}" : "";
        if (run.Liquid is { } liquid)
            yield return ($"liquid line{to}", liquid);
        if (run.Vapor is { } vapor)
            yield return ($"vapor line{to}", vapor);
    }

    private static IEnumerable<ReadingUse> SectionUse(Given<CircuitSection>? section) => section is null ? [] : [section.Use("section")];
}

/// <summary>What was inside a test or a vacuum, judged from the section and the valves that this kind of system has.</summary>
internal static class SectionStatement
{
    public static Finding Make(CheckContext context, FindingBuilder finding, Given<CircuitSection>? section, Given<string>? name, Valves? valves, (string Done, string Part) what)
    {
        finding.Use("section", section).Use("section's name", name)
            .Use("service valves", valves?.ServiceValves).Use("expansion valve", valves?.EEV).Use("solenoids", valves?.Solenoids)
            .Use("reversing valve", valves?.ReversingValve).Use("check valves", valves?.CheckValves).Use("isolation valves", valves?.IsolationValves);
        if (section is null)
            return finding.NotEvaluated(CommonMessages.SectionNotWritten, CommonMessages.SectionNotWrittenNext, $"{what.Part}: {{section: line set and indoor}}");
        var shut = Shut(valves).ToList();
        if (section.Value == CircuitSection.WholeSystem && shut.Count > 0)
        {
            return finding.Decide(false).Say($"The whole system is said to be {what.Done}, but {string.Join(" and ", shut)} stood closed.")
                .Next("Open them, or name the section that was really inside and do the rest as its own section.").Build();
        }

        var unknown = Unknown(context.Job.Equipment, section.Value, valves).ToList();
        finding.Decide(true);
        if (unknown.Count > 0)
            finding.Reserve($"the position of {string.Join(" and ", unknown)} is not written").Next("Write how the valves stood.");
        return finding.Say($"{Capital(what.Done)}: {section.Text}{(name is null ? "" : $", {name.Value}")}.").Build();
    }

    private static IEnumerable<string> Shut(Valves? valves)
    {
        if (valves?.EEV?.Value == ValveState.Closed)
            yield return "the expansion valve";
        if (valves?.Solenoids?.Value is ValveState.Closed or ValveState.NotEnergised)
            yield return "the solenoid valves";
        if (valves?.ServiceValves?.Value == ValveState.Closed)
            yield return "the service valves";
        if (valves?.IsolationValves?.Value == ValveState.Closed)
            yield return "isolation valves";
    }

    private static IEnumerable<string> Unknown(Equipment equipment, CircuitSection section, Valves? valves)
    {
        // A thermostatic valve stands open without pressure, a capillary always; the valves of ductless and multi-split systems sit outdoors or stand open as delivered.
        if (equipment.Metering?.Kind.Value == MeteringKind.EEV && equipment.System.Value is SystemKind.VRF or SystemKind.Refrigeration && valves?.EEV is null && section == CircuitSection.WholeSystem)
            yield return "the expansion valve";
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
