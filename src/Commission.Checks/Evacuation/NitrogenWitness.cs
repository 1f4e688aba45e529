using Commission.Checks.EvacuationAnalysis;
using Commission.Checks.Findings;
using Commission.Checks.PressureTest;
using Commission.Checks.Readings;
using Commission.Measurement.Units;

namespace Commission.Checks.Evacuation;

/// <summary>
/// What the nitrogen hold says of a steady rise: a hole to the outside that lets air into the vacuum would have let nitrogen out. As a
/// share of the charge the volume drops out; a hole that chokes passes in proportion to the pressure, a fine one with its square.
/// </summary>
internal sealed class NitrogenWitness
{
    private const double AirOverNitrogen = 18.2 / 17.6;

    private readonly CheckContext context;
    private readonly NitrogenRun nitrogen;
    private readonly double least;
    private readonly double most;

    private NitrogenWitness(CheckContext context, NitrogenRun nitrogen, double least, double most)
    {
        this.context = context;
        this.nitrogen = nitrogen;
        this.least = least;
        this.most = most;
    }

    /// <summary>The witness of a steady rise; null when there is no steady rise, no nitrogen hold of the same section, or nothing to be seen in it.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="run">The evacuation.</param>
    /// <param name="hold">Its hold.</param>
    public static NitrogenWitness? Of(CheckContext context, EvacuationRun run, HoldResult hold)
    {
        if (hold.Conclusion is not (HoldConclusion.SteadyRise or HoldConclusion.SteadyRiseAndSource) || hold.Slope is not { Value: > 0 } slope || context.Job.PressureTest is not { } test
            || test.Section?.Value != run.Evacuation.Section?.Value || context.Get<NitrogenRun>() is not { Loss: { } loss, Rows: { } rows } nitrogen)
            return null;
        var air = context.Get<SiteAtmosphere>().Value.Value;
        var pressed = loss.Start.Absolute;
        var share = slope.Value * rows.Length / air;
        var choked = 1 - Math.Exp(-share);
        var viscous = 1 - Math.Exp(-share * AirOverNitrogen * ((pressed * pressed) - (air * air)) / (air * pressed));
        return new NitrogenWitness(context, nitrogen, choked, viscous);
    }

    /// <summary>Names the nitrogen hold and gives the sentence.</summary>
    /// <param name="finding">The finding.</param>
    public string Use(FindingBuilder finding)
    {
        var loss = nitrogen.Loss!;
        foreach (var reading in nitrogen.Rows!.Corrected)
        {
            foreach (var use in reading.Uses)
                finding.Use(use);
        }

        foreach (var use in nitrogen.Rows.Uses)
            finding.Use(use);
        foreach (var at in nitrogen.Rows.At)
            finding.Use("time of a nitrogen reading", at);
        var present = context.Present;
        var band = $"{present.Text(least, DisplayKind.Percentage)} to {present.Text(most, DisplayKind.Percentage, 0)}";
        finding.Step(
            "L_w", "nitrogen that a hole to the outside letting in this much air would have lost in its hold", "1 − e^(−a·t/p_atm) for a hole that chokes; with (p² − p_atm²)/(p·p_atm) for a fine one",
            $"{EvacuationClock.Span(nitrogen.Rows.Length)} at {present.Text(loss.Start.Absolute, DisplayKind.AbsolutePressure)}", band, "choked and viscous flow, EN 1779 (from memory)");
        var seen = present.Text(loss.Loss, DisplayKind.Percentage);
        return (loss.Loss.Value + loss.Loss.Expanded) < least
            ? $"A hole to the outside would have lost {band} of the nitrogen in its hold, and {seen} were seen: that speaks for the rig, or for refrigerant passing a valve or leaving the oil."
            : $"A hole to the outside would have lost {band} of the nitrogen in its hold, and {seen} were seen.";
    }
}
