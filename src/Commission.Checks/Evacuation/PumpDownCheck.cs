using System.Globalization;
using Commission.Checks.EvacuationAnalysis;
using Commission.Checks.Findings;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>The last pull against what pump, hoses and volume lead to: whether hose, core, pump, water or a gas load set its pace.</summary>
internal sealed class PumpDownCheck : ICheck
{
    public string Id => "evacuation.pump-down";

    public string Phase => Phases.Evacuation;

    public string Title => "Pace of the pull";

    public CheckHelp Help { get; } = new(
        "Was the pull as fast as pump, hoses and volume allow, and what held it up: the hose, a valve core left in, the pump, water that boils, or gas that keeps coming? Asked only where hoses are written.",
        "dp/dt = −S_eff(p)·(p − p_ult)/V, integrated; the same flow passes pump, hoses and cores; conductance of a hose at the mean of the pressures at its ends (Knudsen), of short openings by Clausing",
        "Vacuum handbooks: Knudsen, Ann. Phys. 28 (1909) 75; Clausing (from memory). A pull counts as slow from 2.5 times the expected time (common practice, no source).",
        "Take the valve cores out with a core tool; use one short hose of 3/8 in or more on each port; change the pump oil; look for water and for closed valves.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { Hoses.IsEmpty: false } evacuation)
            yield break;
        var run = context.Get<EvacuationRun>();
        var pump = context.Get<PumpDown>();
        var finding = run.Name(context.Finding(this)).Use("pump displacement", evacuation.Pump?.Displacement).Use("pump alone", evacuation.RigCheck?.PumpAlone)
            .Use("valve cores", evacuation.ValveCores).Use("where the gauge sat", evacuation.Gauge).Use("target", evacuation.Target).Use("ambient", evacuation.Ambient).Use("coldest part", evacuation.ColdestPart);
        foreach (var hose in evacuation.Hoses)
            finding.Use("hose: bore", hose.Bore).Use("hose: length", hose.Length).Use("hoses alike", hose.Count);
        foreach (var use in pump.Volume?.Uses ?? [])
            finding.Use(use);
        yield return pump.Result is { } result && pump.Pull is { } pull
            ? Told(context, run, pump, run.Name(finding, pull.From, pull.To), result)
            : finding.NotEvaluated(pump.WhyNot!, "Write the pump's displacement, the hoses with bore and length, the line set, and log the pull from its start.");
    }

    private static Finding Told(CheckContext context, EvacuationRun run, PumpDown pump, FindingBuilder finding, PullDownResult result)
    {
        var present = context.Present;
        foreach (var step in pump.Volume!.Steps)
            finding.Step(step);
        foreach (var band in result.Bands)
        {
            finding.Step(
                "t", $"{VacuumText.Level(present, band.From)} to {VacuumText.Level(present, band.To)}", "∫ V·dp/(S_eff·p)",
                $"expected {EvacuationClock.Span(band.ExpectedTime)}", $"{EvacuationClock.Span(band.MeasuredTime)}", "conductance of hoses by Knudsen, of openings by Clausing (from memory)");
        }

        var way = result.AtEnd is { PumpSpeed: > 0 } end
            ? string.Create(CultureInfo.InvariantCulture, $" At {VacuumText.Level(present, end.SystemPressure)} {100 * end.Speed / end.PumpSpeed:0} % of the pump's speed was left at the system; {(end.Limiting.Kind is null ? "the pump itself" : end.Limiting.Name)} took the largest part.")
            : "";
        if (Next(result.Limit) is { } next)
            finding.Next(next);
        if (pump.Volume.IsEstimated)
            finding.Remark("The volume is estimated from the line set.");
        return finding.Information(
            $"The pull from {run.Clock.Moment(pump.Pull!.From)} took {EvacuationClock.Span(result.MeasuredTime)}, {EvacuationClock.Span(result.ExpectedTime)} expected without any gas load: {Words(result)}.{way}",
            "compares the pull with pump and hoses; sets no limit");
    }

    private static string Words(PullDownResult result) => result.Limit switch
    {
        PullDownLimit.Pump => "the pump set the pace",
        PullDownLimit.Hose => "the hose set the pace",
        PullDownLimit.Core => "the valve core left in place set the pace",
        PullDownLimit.Fitting => "a fitting set the pace",
        PullDownLimit.BoilingWater => "the pressure lingered where water boils",
        PullDownLimit.GasLoad => "it was held up at low pressure, by gas that kept coming or by the pump's own lowest pressure",
        PullDownLimit.SlowThroughout => "slow at all pressures",
        _ => "too little of it was logged to say",
    };

    private static string? Next(PullDownLimit limit) => limit switch
    {
        PullDownLimit.Hose => "A wider and shorter hose would help more than a larger pump.",
        PullDownLimit.Core => "Take the valve cores out with a core tool.",
        PullDownLimit.BoilingWater => "Warm the circuit, break with dry nitrogen and pull again: water is leaving.",
        PullDownLimit.GasLoad => "Blank off the rig and see how low it goes; change the pump oil; then look for water and leaks.",
        PullDownLimit.SlowThroughout => "Look for a closed valve, a blocked core, a worn pump, or a circuit larger than written.",
        _ => null,
    };
}
