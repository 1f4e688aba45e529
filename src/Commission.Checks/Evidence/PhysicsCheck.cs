using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.VacuumAnalysis;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Evidence;

/// <summary>
/// Readings that cannot all be right together: heat that runs uphill, gas that is colder than it can be, a vacuum that deepens by itself or is deeper than any
/// field pump makes it. What is contradicted is impeached: no verdict rests on it.
/// </summary>
internal sealed class PhysicsCheck : ICheck
{
    public string Id => "evidence.physics";

    public string Phase => Phases.Evidence;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (Running(context) is { } running)
            yield return running;
        if (context.Job.Evacuation is not null && Vacuum(context) is { } vacuum)
            yield return vacuum;
        foreach (var implausible in new ImplausibleReadings(context, this).Findings())
            yield return implausible;
    }

    private Finding? Running(CheckContext context)
    {
        var finding = context.Finding(this);
        var wrong = new List<MessageValue>();
        var count = 0;
        foreach (var row in context.Get<ChargeAnalysis>().Rows.Where(r => r.Mode == OperatingMode.Cooling))
        {
            void Warmer(Message sentence, CorrectedReading? first, SaturationTemperature? at, CorrectedReading? pressure, int sign)
            {
                if (first is null || pressure is null || at?.Value is not { } saturation)
                    return;
                Hold(sentence, sign * (first.Value - saturation), first, pressure);
            }

            void Hold(Message sentence, Uncertain margin, params CorrectedReading[] readings)
            {
                count++;
                foreach (var reading in readings)
                {
                    foreach (var use in reading.Uses)
                        finding.Use(use);
                }

                if (margin.Value >= -margin.Expanded)
                    return;
                // The reading itself: what else it rests on, the elevation say, is not in doubt.
                foreach (var reading in readings)
                    finding.Impeach(reading.Uses[0]);
                var by = context.Present.InMessage(-margin, DisplayKind.TemperatureDifference);
                finding.Step(
                    "ΔT", EvidenceMessages.ImpossibleAt(sentence, new(row.Time)), EvidenceMessages.DifferenceWrongWay, string.Join(", ", readings.Select(r => $"{r.Name} {r.Uses[0].Text}")),
                    context.Present.Text(by), EvidenceMessages.HeatFlows);
                wrong.Add(EvidenceMessages.ImpossibleBy(new(row.Time), sentence, by));
            }

            Warmer(EvidenceMessages.VaporLineTooCold, row.VaporLine, row.VaporBubble, row.VaporPressure, 1);
            Warmer(EvidenceMessages.LiquidLineTooHot, row.LiquidLine, row.LiquidDew, row.LiquidPressure, -1);
            Warmer(EvidenceMessages.DischargeLineTooCold, row.DischargeLine, row.LiquidDew, row.LiquidPressure, 1);
            Warmer(EvidenceMessages.OutdoorAirTooHot, row.OutdoorDryBulb, row.LiquidDew, row.LiquidPressure, -1);
            Warmer(EvidenceMessages.SupplyAirTooCold, row.SupplyDryBulb, row.VaporBubble, row.VaporPressure, 1);
            // Behind a heat exchanger or in a plant room the liquid of a refrigeration circuit may honestly be colder.
            if (row is { LiquidLine: { } liquid, OutdoorDryBulb: { } outdoor } && context.Job.Equipment.System.Value != SystemKind.Refrigeration)
                Hold(EvidenceMessages.LiquidLineBelowAir, liquid.Value - outdoor.Value, liquid, outdoor);
            if (row is { SupplyDryBulb: { } supply, ReturnDryBulb: { } entering } && !context.Get<ChargeAnalysis>().DriesAir)
                Hold(EvidenceMessages.SupplyAirTooWarm, entering.Value - supply.Value, supply, entering);
        }

        if (count == 0)
            return null;
        return wrong.Count == 0
            ? finding.Decide(true).Say(EvidenceMessages.ReadingsAgree(count)).Build()
            : finding.Decide(false).Next(this.WhenItFails()).Say(EvidenceMessages.ReadingsDisagree(new ListValue([.. wrong], ListJoin.Semicolons))).Build();
    }

    private Finding? Vacuum(CheckContext context)
    {
        var run = context.Get<EvacuationRun>();
        if (run is not { Obstacle: null or { IsFall: true }, Parts: { Isolation: { } isolation, HoldEnd: { } end } })
            return null;
        var start = Math.Min(isolation + context.Assume(LimitIds.AssumptionHoldEqualisation), end);
        if (end <= start || run.Rows.At(start) is not { } begun || run.Rows.At(end) is not { } last || context.Limits.Find(LimitIds.EvidenceVacuumFall) is not { Upper: { } share } limit)
            return null;
        var present = context.Present;
        var fall = begun - last;
        var finding = run.Name(run.Name(run.Name(context.Finding(this, EvidenceMessages.SubjectVacuumHold)), start, start), end, end)
            .Step("Δp", EvidenceMessages.VacuumFall, EvidenceMessages.VacuumFallFormula, $"{present.Text(begun.Value, DisplayKind.Vacuum)} − {present.Text(last.Value, DisplayKind.Vacuum)}", present.Text(fall, DisplayKind.Vacuum), limit.Source)
            .Show(context.State(limit));
        var levels = EvidenceMessages.VacuumLevels(VacuumText.Value(present, begun.Value), VacuumText.Value(present, last.Value));
        var next = EvidenceMessages.VacuumFellNext;
        if (run.Hold?.Fall is { } sudden)
        {
            run.Name(run.Name(finding, sudden.From, sudden.From), sudden.To, sudden.To);
            levels = EvidenceMessages.VacuumLevelsAt(VacuumText.Value(present, sudden.High), run.Clock.Time(sudden.From), VacuumText.Value(present, sudden.Low), run.Clock.Time(sudden.To));
            next = HoldObstacle.FellNext(run);
            (begun, fall) = (Uncertain.Exact(sudden.High), Uncertain.Exact(sudden.Size));
        }
        else if (fall.Value <= fall.Expanded || fall.Value <= share.Si * begun.Value)
        {
            return finding.Decide(true).Say(EvidenceMessages.VacuumStood(levels)).Build();
        }

        if (run.WhyItMayFall(finding) is { } why)
            return finding.Decide(true).Say(EvidenceMessages.VacuumFellExplained(levels, why)).Build();
        // The level at isolation stands; what came after the valve was closed does not.
        for (var i = run.Rows.Series.IndexAtOrAfter(start); i < run.Rows.Series.Count && run.Rows.Series.Times[i] <= end; i++)
        {
            if (run.Rows.Series.Times[i] > isolation)
                finding.Impeach(run.Rows.Use(i));
        }

        return finding.Decide(false).Measure(fall / begun, DisplayKind.Percentage).Next(next).Say(EvidenceMessages.VacuumFell(levels)).Build();
    }
}
