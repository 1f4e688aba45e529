using System.Globalization;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Whether the supply lies in the range the nameplate allows.</summary>
internal sealed class SupplyVoltageCheck : ICheck
{
    public string Id => "electrical.supply-voltage";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { LineToLine.IsEmpty: false })
            yield break;
        var readings = context.Get<ElectricalReadings>().LineToLine;
        var plate = context.Job.Equipment.Nameplate?.Voltage;
        foreach (var reading in readings)
        {
            var finding = context.Finding(this, readings.Length == 1 ? null : reading.Name).Use(reading).Use(ElectricalMessages.ReadingPlateVoltage, plate);
            if (context.Limits.Find(LimitIds.ElectricalVoltage) is { } makers)
            {
                yield return Said(finding.Judge(reading.Value, DisplayKind.Voltage, context.State(makers)), context, reading.Value.Value);
                continue;
            }

            if (plate is null || context.Limits.Find(LimitIds.ElectricalVoltageUtilisation) is not { Upper: { } share } limit)
            {
                yield return finding.NotEvaluated(ElectricalMessages.PlateNoVoltage, ElectricalMessages.PlateNoVoltageNext, "equipment: {nameplate: {voltage: 208 to 230 V}}");
                continue;
            }

            var low = plate.Value.Low.Si * (1 - share.Si);
            var high = plate.Value.High.Si * (1 + share.Si);
            var text = context.Present.Text(ElectricalMessages.LimitFromTo(context.Present.InMessage(low, DisplayKind.Voltage), context.Present.InMessage(high, DisplayKind.Voltage)));
            finding.Step("V", ElectricalMessages.VoltageRange, ElectricalMessages.VoltageRangeFormula, string.Create(CultureInfo.InvariantCulture, $"{plate.Text}, {100 * share.Si:0} %"), text, limit.Source);
            yield return Said(finding.Judge(reading.Value, DisplayKind.Voltage, context.State(limit) with { Kind = LimitKind.Within, Text = text, LowerSi = low, UpperSi = high }), context, reading.Value.Value);
        }
    }

    private Finding Said(FindingBuilder finding, CheckContext context, double volts) => finding.Conclude(
        ElectricalMessages.VoltageInside(context.Present.InMessage(volts, DisplayKind.Voltage)),
        ElectricalMessages.VoltageOutside(context.Present.InMessage(volts, DisplayKind.Voltage)),
        this.WhenItFails());
}

/// <summary>Unbalance of three voltages, by the largest deviation from their mean.</summary>
internal sealed class VoltageUnbalanceCheck : ICheck
{
    public string Id => "electrical.voltage-unbalance";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var voltages = context.Get<ElectricalReadings>().LineToLine;
        if (voltages.Length == 3)
            yield return Unbalance.Judge(context, this, voltages, LimitIds.ElectricalVoltageUnbalanceLimit, ElectricalMessages.Voltages, ElectricalMessages.VoltageUnbalanceNext, (finding, unbalance) => Explain(context, finding, unbalance));
    }

    private static void Explain(CheckContext context, FindingBuilder finding, double unbalance)
    {
        if (context.Limits.Find(LimitIds.ElectricalVoltageUnbalanceStop) is { Upper: { } stop } limit && unbalance > stop.Si)
        {
            finding.Show(context.State(limit)).Fail(ElectricalMessages.VoltageUnbalanceStop(new TextValue(stop.Text))).Next(ElectricalMessages.VoltageUnbalanceStopNext);
            return;
        }

        if (context.Limits.Find(LimitIds.ElectricalVoltageUnbalanceGood) is { Upper: { } good } && unbalance > good.Si && PhaseUnbalance.Derating(unbalance) is { } factor)
            finding.Remark(ElectricalMessages.VoltageUnbalanceDerated(new TextValue(good.Text), context.Present.Value(factor, DisplayKind.Percentage, 0)));
    }
}

/// <summary>How far the voltage drops while the compressor starts.</summary>
internal sealed class StartVoltageDropCheck : ICheck
{
    public string Id => "electrical.voltage-drop-at-start";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { VoltageDropAtStart: { } start } electrical)
            yield break;
        var before = context.Readings.Plain(context.Present.Text(ReadingsMessages.VoltageBeforeStart), ReadingName.Voltage, start.Before, DisplayKind.Voltage, electrical.With);
        var lowest = context.Readings.Plain(context.Present.Text(ReadingsMessages.LowestVoltageAtStart), ReadingName.Voltage, start.Lowest, DisplayKind.Voltage, electrical.With);
        var finding = context.Finding(this).Use(before).Use(lowest);
        if (!(before.Value.Value > 0))
        {
            yield return finding.NotEvaluated(ElectricalMessages.DropNoVoltage, ElectricalMessages.DropNoVoltageNext);
            yield break;
        }

        var drop = Uncertain.Apply((b, l) => (b - l) / b, before.Value, lowest.Value);
        finding.Step("d", ElectricalMessages.DropName, "(V₀ − V_min)/V₀", $"({start.Before.Text} − {start.Lowest.Text})/{start.Before.Text}", context.Present.Text(drop, DisplayKind.Percentage));
        var limit = context.Limits.Require(LimitIds.ElectricalVoltageDropAtStartLimit);
        var state = context.State(limit);
        finding.Judge(drop.On(state), DisplayKind.Percentage, state);
        var by = context.Present.InMessage(drop.Value, DisplayKind.Percentage);
        if (finding.Passes && context.Limits.Find(LimitIds.ElectricalVoltageDropAtStartGood) is { Upper: { } good } && drop.Value > good.Si)
            finding.Remark(ElectricalMessages.DropMoreThanGood(new(good.Text)));
        yield return finding.Conclude(ElectricalMessages.DropWithin(by), ElectricalMessages.DropBeyond(by), this.WhenItFails());
    }
}

/// <summary>Control voltage.</summary>
internal sealed class ControlVoltageCheck : ICheck
{
    public string Id => "electrical.control-voltage";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { ControlVoltage: { } voltage } electrical)
            yield break;
        var reading = context.Readings.Plain(context.Present.Text(ReadingsMessages.ControlVoltage), ReadingName.Voltage, voltage, DisplayKind.Voltage, electrical.With);
        var finding = context.Finding(this).Use(reading);
        var limit = context.Limits.Require(LimitIds.ElectricalControlVoltageRange);
        finding.Judge(reading.Value, DisplayKind.Voltage, context.State(limit));
        yield return finding.Conclude(ElectricalMessages.ControlWithin(new(voltage.Text)), ElectricalMessages.ControlOutside(new(voltage.Text)), this.WhenItFails());
    }
}

/// <summary>Whether a three-phase compressor turns the right way.</summary>
internal sealed class PhaseRotationCheck : ICheck
{
    public string Id => "electrical.phase-rotation";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { } electrical)
            yield break;
        var phases = context.Job.Equipment.Nameplate?.Phases;
        if (phases?.Value != 3)
            yield break;
        var finding = context.Finding(this).Use(ElectricalMessages.ReadingPhases, phases).Use(ElectricalMessages.ReadingRotation, electrical.PhaseRotation);
        if (electrical.PhaseRotation is not { } rotation)
        {
            yield return finding.NotEvaluated(ElectricalMessages.RotationNotRead, ElectricalMessages.RotationNotReadNext, "electrical: {phase rotation: correct}");
            yield break;
        }

        if (rotation.Value == PhaseRotation.SinglePhase)
        {
            yield return finding.NotEvaluated(ElectricalMessages.RotationContradicts, ElectricalMessages.RotationContradictsNext);
            yield break;
        }

        finding.Decide(rotation.Value == PhaseRotation.Correct);
        yield return finding.Conclude(ElectricalMessages.RotationCorrect, ElectricalMessages.RotationIs(new(rotation.Text)), this.WhenItFails());
    }
}
