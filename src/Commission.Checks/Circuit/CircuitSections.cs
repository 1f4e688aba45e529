using System.Collections.Immutable;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
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
    private SectionVolume(Uncertain? value, Message? whyNot, Message? words, ImmutableArray<ReadingUse> uses, ImmutableArray<TraceStep> steps, bool estimated)
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
    public Message? WhyNot { get; }

    /// <summary>Where it comes from, as it stands in a sentence; null when it is not known.</summary>
    public Message? Words { get; }

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
            return Unknown(CircuitMessages.SectionVolumeUnknown);
        return equipment.Piping.IsEmpty ? Unknown(CircuitMessages.VolumeNotWritten) : FromLines(context, section);
    }

    private static SectionVolume Unknown(Message why) => new(null, why, null, [], [], false);

    private static SectionVolume Stated(CheckContext context, Given<Volume> volume, Given<CircuitSection>? section)
    {
        var half = volume.Stated is { } u ? u.HalfWidthSi / u.CoverageFactor * Math.Sqrt(3) : context.Assume(LimitIds.AssumptionVolumeLines) * volume.Value.Si;
        var cause = context.Causes.Enter(RootCause.FromHalfWidth(CircuitMessages.CircuitVolume, volume.Stated is null ? CircuitMessages.AsWrittenCommon : CircuitMessages.AsWritten, half), DisplayKind.Volume);
        return new SectionVolume(
            context.Scope.Reading(volume.Value.Si, 1.0 * cause), null, CircuitMessages.AsWritten, [volume.Use(context.Present.Text(CircuitMessages.CircuitVolume)), .. SectionUse(context, section)],
            [new TraceStep("V", context.Present.Text(CircuitMessages.VolumeOfCircuit), context.Present.Text(CircuitMessages.AsWritten), volume.Text, context.Present.Text(volume.Value.Si, DisplayKind.Volume), "")], false);
    }

    private static SectionVolume FromLines(CheckContext context, Given<CircuitSection>? section)
    {
        var uses = ImmutableArray.CreateBuilder<ReadingUse>();
        var sizes = new List<ReadingUse>();
        uses.AddRange(SectionUse(context, section));
        var lines = 0.0;
        var walls = new SortedDictionary<string, MessageValue>(StringComparer.Ordinal);
        foreach (var (name, tube) in context.Job.Equipment.Piping.SelectMany(Tubes))
        {
            var standard = tube.Wall is null ? AcrTube.Find(tube.Od.Value) : null;
            if ((tube.Wall is { } wall ? tube.Od.Value.Si - (2 * wall.Value.Si) : standard?.Bore) is not { } bore || bore <= 0)
                return Unknown(CircuitMessages.NoTubeSize(name, new(tube.Od.Text)));
            var wallSource = standard?.Source ?? CircuitMessages.WallAsWritten;
            walls[context.Present.Text(wallSource)] = wallSource;
            lines += Math.PI / 4 * bore * bore * tube.Length.Value.Si;
            sizes.Add(tube.Od.Use(context.Present.Text(CircuitMessages.DiameterOf(new(context.Present.Text(name))))));
            sizes.Add(tube.Length.Use(context.Present.Text(CircuitMessages.LengthOf(new(context.Present.Text(name))))));
        }

        uses.AddRange(sizes);
        if (!(lines > 0))
            return Unknown(CircuitMessages.NoLines);
        var steps = ImmutableArray.CreateBuilder<TraceStep>();
        var share = context.Assume(LimitIds.AssumptionVolumeLines);
        var cause = context.Causes.Enter(RootCause.FromHalfWidth(CircuitMessages.VolumeOfLines, CircuitMessages.VolumeOfLinesSource, share * lines), DisplayKind.Volume);
        var volume = context.Scope.Reading(lines, 1.0 * cause);
        steps.Add(new TraceStep("V_l", context.Present.Text(CircuitMessages.VolumeOfLines), "Σ π/4 · d² · l", string.Join("; ", sizes.Select(u => u.Text)), context.Present.Text(lines, DisplayKind.Volume), context.Present.Text(CommonMessages.Several(new([.. walls.Values], ListJoin.Semicolons)))));
        if (section?.Value == CircuitSection.LineSet)
            return new SectionVolume(volume, null, CircuitMessages.FromLineSet, uses.ToImmutable(), steps.ToImmutable(), true);

        var indoorOnly = section?.Value == CircuitSection.LineSetAndIndoor;
        var coils = context.Assume(indoorOnly ? LimitIds.AssumptionVolumeIndoorShare : LimitIds.AssumptionVolumeWholeShare);
        var rest = context.Causes.Enter(RootCause.FromHalfWidth(CircuitMessages.VolumeOfCoils, CircuitMessages.VolumeOfCoilsSource, coils * lines), DisplayKind.Volume);
        volume += context.Scope.Reading(coils * lines, 1.0 * rest);
        steps.Add(new TraceStep(
            "V", context.Present.Text(CircuitMessages.VolumeOfSection), context.Present.Text(CircuitMessages.VolumeOfSectionFormula), context.Present.Text(CircuitMessages.CoilsAndVessels(context.Present.Value(coils, DisplayKind.Percentage, 0))),
            context.Present.Text(volume, DisplayKind.Volume), context.Present.Text(CircuitMessages.CommonPractice)));
        return new SectionVolume(volume, null, CircuitMessages.EstimatedFromLines, uses.ToImmutable(), steps.ToImmutable(), true);
    }

    private static IEnumerable<(Message Name, Tube Tube)> Tubes(PipingRun run)
    {
        Message Named(Message line) => run.To is { } place ? CircuitMessages.LineTo(line, new(place.Value)) : line;
        if (run.Liquid is { } liquid)
            yield return (Named(ReadingsMessages.LiquidLine), liquid);
        if (run.Vapor is { } vapor)
            yield return (Named(ReadingsMessages.VaporLine), vapor);
    }

    private static IEnumerable<ReadingUse> SectionUse(CheckContext context, Given<CircuitSection>? section) => section is null ? [] : [section.Use(context.Present.Text(CircuitMessages.Section))];
}

/// <summary>What was done to a section.</summary>
internal enum SectionWork
{
    /// <summary>It stood under test pressure.</summary>
    Tested,

    /// <summary>It stood under vacuum.</summary>
    Evacuated,
}

/// <summary>What was inside a test or a vacuum, judged from the section and the valves that this kind of system has.</summary>
internal static class SectionStatement
{
    public static Finding Make(CheckContext context, FindingBuilder finding, Given<CircuitSection>? section, Given<string>? name, Valves? valves, SectionWork work)
    {
        finding.Use(CircuitMessages.Section, section).Use(CircuitMessages.SectionName, name)
            .Use(CircuitMessages.ServiceValves, valves?.ServiceValves).Use(CircuitMessages.ExpansionValve, valves?.EEV).Use(CircuitMessages.Solenoids, valves?.Solenoids)
            .Use(CircuitMessages.ReversingValve, valves?.ReversingValve).Use(CircuitMessages.ValvesCheck, valves?.CheckValves).Use(CircuitMessages.IsolationValves, valves?.IsolationValves);
        if (section is null)
            return finding.NotEvaluated(CommonMessages.SectionNotWritten, CommonMessages.SectionNotWrittenNext, work == SectionWork.Tested ? "pressure test: {section: line set and indoor}" : "evacuation: {section: line set and indoor}");
        var shut = Shut(valves).ToList();
        if (section.Value == CircuitSection.WholeSystem && shut.Count > 0)
        {
            return finding.Decide(false).Say(CircuitMessages.ValvesShut(work == SectionWork.Tested ? CircuitMessages.ValvesShutWork.Tested : CircuitMessages.ValvesShutWork.Evacuated, new([.. shut])))
                .Next(CircuitMessages.ValvesShutNext).Build();
        }

        var unknown = Unknown(context.Job.Equipment, section.Value, valves).ToList();
        finding.Decide(true);
        if (unknown.Count > 0)
            finding.Reserve(CircuitMessages.ValvesUnknown(new([.. unknown]))).Next(CircuitMessages.ValvesUnknownNext);
        var words = SchemaWords.Of(section.Value);
        return finding.Say(CircuitMessages.SectionDone(work == SectionWork.Tested ? CircuitMessages.SectionDoneWork.Tested : CircuitMessages.SectionDoneWork.Evacuated, name is null ? words : CircuitMessages.SectionNamed(words, new(name.Value)))).Build();
    }

    private static IEnumerable<Message> Shut(Valves? valves)
    {
        if (valves?.EEV?.Value == ValveState.Closed)
            yield return CircuitMessages.ExpansionValve;
        if (valves?.Solenoids?.Value is ValveState.Closed or ValveState.NotEnergised)
            yield return CircuitMessages.Solenoids;
        if (valves?.ServiceValves?.Value == ValveState.Closed)
            yield return CircuitMessages.ServiceValves;
        if (valves?.IsolationValves?.Value == ValveState.Closed)
            yield return CircuitMessages.IsolationValves;
    }

    private static IEnumerable<Message> Unknown(Equipment equipment, CircuitSection section, Valves? valves)
    {
        // A thermostatic valve stands open without pressure, a capillary always; the valves of ductless and multi-split systems sit outdoors or stand open as delivered.
        if (equipment.Metering?.Kind.Value == MeteringKind.EEV && equipment.System.Value is SystemKind.VRF or SystemKind.Refrigeration && valves?.EEV is null && section == CircuitSection.WholeSystem)
            yield return CircuitMessages.ExpansionValve;
    }
}
