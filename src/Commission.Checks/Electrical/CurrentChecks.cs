using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Compressor current against the rated load current, and above it against the maximum continuous current.</summary>
internal sealed class CompressorCurrentCheck : ICheck
{
    public string Id => "compressor.current";

    public string Phase => Phases.Compressor;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var currents = context.Get<ElectricalReadings>().Compressor;
        if (currents.IsEmpty)
            yield break;
        var plate = context.Job.Equipment.Nameplate;
        var kind = context.Job.Equipment.Compressor?.Kind;
        foreach (var current in currents)
        {
            var finding = context.Finding(this, currents.Length == 1 ? null : current.Name).Use(current).Use(CommonMessages.AsWritten(new("RLA")), plate?.CompressorRLA).Use(CommonMessages.AsWritten(new("MCC")), plate?.CompressorMCC).Use(ReadingsMessages.Compressor, kind);
            if (kind?.Value is CompressorKind.VariableSpeed or CompressorKind.Digital)
            {
                yield return finding.Measure(current.Value, DisplayKind.Current).Information(
                    CompressorMessages.CurrentWas(new TextValue(current.Uses[0].Text)), CompressorMessages.CurrentVariableSpeed);
                continue;
            }

            if (context.Limits.Find(LimitIds.ElectricalCompressorCurrent) is { } makers)
            {
                finding.Judge(current.Value, DisplayKind.Current, context.State(makers));
                yield return finding.Conclude(
                    CompressorMessages.CurrentMakerWithin(new TextValue(current.Uses[0].Text)),
                    CompressorMessages.CurrentMakerOutside(new TextValue(current.Uses[0].Text)),
                    CompressorMessages.CurrentNext);
                continue;
            }

            if (plate?.CompressorRLA is not { } rla)
            {
                yield return finding.NotEvaluated(CompressorMessages.CurrentNoPlate, CompressorMessages.CurrentNoPlateNext, "equipment: {nameplate: {compressor RLA: 16.7 A}}");
                continue;
            }

            yield return Judge(context, finding, current.Value, rla.Value.Si, plate.CompressorMCC?.Value.Si);
        }
    }

    private static Finding Judge(CheckContext context, FindingBuilder finding, Measurement.Uncertainty.Uncertain current, double rla, double? mcc)
    {
        var continuous = context.Limits.Find(LimitIds.ElectricalCompressorCurrentContinuous);
        var rated = context.Limits.Require(LimitIds.ElectricalCompressorCurrentRated);
        var factor = rated.Most;
        var most = mcc ?? (continuous?.Upper?.Si * rla) ?? (factor.Si * rla);
        var present = context.Present;
        var was = present.InMessage(current.Value, DisplayKind.Current);
        if (current.Value <= factor.Si * rla)
        {
            finding.Judge(current, DisplayKind.Current, context.State(rated) with { Kind = LimitKind.AtMost, Text = present.Text(ElectricalMessages.LimitAtMostBy(present.InMessage(factor.Si * rla, DisplayKind.Current), new NameValue("RLA"))), LowerSi = null, UpperSi = factor.Si * rla });
            return LikelyCurrent.Of(context) is { } likely && (current.Value + current.Expanded) / rla < likely.Least
                ? finding.Use(likely.Outdoor).Remark(CompressorMessages.CurrentLowRemark).Information(CompressorMessages.CurrentLow(was, Share(current.Value / rla), Share(likely.Share)), CompressorMessages.CurrentLowWhy)
                : finding.Say(CompressorMessages.CurrentRated(was)).Build();
        }

        finding.Step("I_max", ElectricalMessages.ContinuousCurrent, mcc is null ? ElectricalMessages.FactorTimes(new NameValue("RLA")) : ElectricalMessages.OnTheNameplate, mcc is null ? string.Create(CultureInfo.InvariantCulture, $"{most / rla:0.##} × {present.Text(rla, DisplayKind.Current)}") : present.Text(most, DisplayKind.Current), present.Text(most, DisplayKind.Current), continuous?.Source ?? "");
        finding.Judge(current, DisplayKind.Current, context.State(continuous ?? rated) with { Kind = LimitKind.AtMost, Text = present.Text(ElectricalMessages.LimitAtMostBy(present.InMessage(most, DisplayKind.Current), new NameValue("MCC"))), LowerSi = null, UpperSi = most });
        return finding.Passes
            ? finding.Say(CompressorMessages.CurrentAboveRated(was)).Remark(CompressorMessages.CurrentAboveRatedRemark).Build()
            : finding.Say(CompressorMessages.CurrentAboveContinuous(was)).Next(CompressorMessages.CurrentNext).Build();

        Messages.QuantityValue Share(double share) => present.Value(share, DisplayKind.Percentage, 0);
    }
}

/// <summary>Fan currents against full load current.</summary>
internal sealed class FanCurrentCheck : ICheck
{
    public string Id => "electrical.fan-current";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var plate = context.Job.Equipment.Nameplate;
        var electrical = context.Job.Electrical;
        if (Judge(context, ElectricalMessages.FanOutdoor, electrical?.OutdoorFan, plate?.FanFLA) is { } outdoor)
            yield return outdoor;
        if (Judge(context, ElectricalMessages.FanIndoor, electrical?.IndoorFan, plate?.IndoorFanFLA) is { } indoor)
            yield return indoor;
    }

    private Finding? Judge(CheckContext context, Message which, Given<ElectricCurrent>? current, Given<ElectricCurrent>? fla)
    {
        if (current is null)
            return null;
        var reading = context.Readings.Plain(context.Present.Text(ElectricalMessages.ReadingCurrentOf(which)), ReadingName.Current, current, DisplayKind.Current, context.Job.Electrical!.With);
        var finding = context.Finding(this, context.Present.Text(which)).Use(reading).Use(ElectricalMessages.ReadingFullLoad(which), fla);
        if (fla is null)
            return finding.NotEvaluated(ElectricalMessages.FanNoPlate, ElectricalMessages.FanNoPlateNext, "equipment: {nameplate: {fan FLA: 0.6 A}}");
        var limit = context.Limits.Require(LimitIds.ElectricalFanCurrentFactor);
        var factor = limit.Most;
        var most = factor.Si * fla.Value.Si;
        finding.Step("I_max", ElectricalMessages.FanLargest, ElectricalMessages.FactorTimes(new NameValue("FLA")), string.Create(CultureInfo.InvariantCulture, $"{factor.Si:0.##} × {fla.Text}"), context.Present.Text(most, DisplayKind.Current), limit.Source);
        finding.Judge(reading.Value, DisplayKind.Current, context.State(limit) with { Kind = LimitKind.AtMost, Text = context.Present.Text(CommonMessages.LimitAtMost(new(context.Present.Text(most, DisplayKind.Current)))), LowerSi = null, UpperSi = most });
        return finding.Conclude(
            ElectricalMessages.FanWithin(which, new(current.Text), new(fla.Text)),
            ElectricalMessages.FanBeyond(which, new(current.Text), new(fla.Text)),
            this.WhenItFails());
    }
}

/// <summary>Current of the whole unit against the minimum circuit ampacity, the measure for a variable-speed unit.</summary>
internal sealed class UnitCurrentCheck : ICheck
{
    public string Id => "electrical.unit-current";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { Total: { } total } electrical)
            yield break;
        var plate = context.Job.Equipment.Nameplate;
        var reading = context.Readings.Plain(context.Present.Text(ElectricalMessages.ReadingUnitCurrent), ReadingName.Current, total, DisplayKind.Current, electrical.With);
        var finding = context.Finding(this).Use(reading).Use(CommonMessages.AsWritten(new("MCA")), plate?.MCA).Use(ReadingsMessages.RatedCurrent, plate?.RatedCurrent);
        var above = plate?.RatedCurrent is { } rated && total.Value.Si > rated.Value.Si ? ElectricalMessages.UnitAboveRated(new(rated.Text)) : null;
        if (plate?.MCA is not { } ampacity)
        {
            yield return plate?.RatedCurrent is { } only
                ? finding.Measure(reading.Value, DisplayKind.Current).Remark(above).Information(ElectricalMessages.UnitDraws(new(total.Text), new(only.Text)), ElectricalMessages.UnitNoMaximum)
                : finding.NotEvaluated(ElectricalMessages.PlateNoAmpacity, ElectricalMessages.PlateNoAmpacityNext, "equipment: {nameplate: {MCA: 22.0 A}}");
            yield break;
        }

        var limit = context.Limits.Require(LimitIds.ElectricalUnitCurrentFactor);
        var factor = limit.Most;
        var most = factor.Si * ampacity.Value.Si;
        finding.Step("I_max", ElectricalMessages.UnitLargest, ElectricalMessages.FactorTimes(new NameValue("MCA")), string.Create(CultureInfo.InvariantCulture, $"{factor.Si:0.##} × {ampacity.Text}"), context.Present.Text(most, DisplayKind.Current), limit.Source);
        finding.Judge(reading.Value, DisplayKind.Current, context.State(limit) with { Kind = LimitKind.AtMost, Text = context.Present.Text(ElectricalMessages.LimitAtMostBy(context.Present.InMessage(most, DisplayKind.Current), new NameValue("MCA"))), LowerSi = null, UpperSi = most });
        yield return finding.Passes
            ? finding.Remark(above).Say(ElectricalMessages.UnitWithin(new(total.Text), new(ampacity.Text))).Build()
            : finding.Say(ElectricalMessages.UnitBeyond(new(total.Text), new(ampacity.Text))).Next(this.WhenItFails()).Build();
    }
}

/// <summary>Unbalance of three compressor currents.</summary>
internal sealed class CurrentUnbalanceCheck : ICheck
{
    public string Id => "electrical.current-unbalance";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var currents = context.Get<ElectricalReadings>().Compressor;
        if (currents.Length == 3)
            yield return Unbalance.Judge(context, this, currents, LimitIds.ElectricalCurrentUnbalance, ElectricalMessages.Currents, ElectricalMessages.CurrentUnbalanceNext);
    }
}

/// <summary>Heaters of a cold room against their plate: one that is dead lets the coil or the door ice up.</summary>
internal sealed class HeaterCurrentCheck : ICheck
{
    public string Id => "electrical.heater";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { } electrical)
            yield break;
        var plate = context.Job.Equipment.Nameplate;
        if (Judge(context, ElectricalMessages.HeaterDefrost, electrical.DefrostHeater, plate?.DefrostHeater) is { } defrost)
            yield return defrost;
        if (Judge(context, ElectricalMessages.HeaterDoor, electrical.DoorHeater, plate?.DoorHeater) is { } door)
            yield return door;
    }

    private Finding? Judge(CheckContext context, Message which, Given<ElectricCurrent>? current, Given<ElectricCurrent>? rated)
    {
        if (current is null)
            return null;
        var reading = context.Readings.Plain(context.Present.Text(ElectricalMessages.ReadingCurrentOf(which)), ReadingName.Current, current, DisplayKind.Current, context.Job.Electrical!.With);
        var finding = context.Finding(this, context.Present.Text(which)).Use(reading).Use(ElectricalMessages.ReadingRatedOf(which), rated);
        if (current.Value.Si == 0)
            return finding.Measure(reading.Value, DisplayKind.Current).Decide(false).Say(ElectricalMessages.HeaterDead(which)).Next(this.WhenItFails()).Build();
        if (rated is null)
            return finding.Measure(reading.Value, DisplayKind.Current).Information(ElectricalMessages.HeaterDraws(which, new(current.Text)), ElectricalMessages.HeaterNotRated);
        var limit = context.Limits.Require(LimitIds.ElectricalHeaterShare);
        var (least, most) = (limit.Least.Si * rated.Value.Si, limit.Most.Si * rated.Value.Si);
        var text = context.Present.Text(ElectricalMessages.LimitFromTo(context.Present.InMessage(least, DisplayKind.Current), context.Present.InMessage(most, DisplayKind.Current)));
        return finding.Step("I", ElectricalMessages.HeaterMayDraw, ElectricalMessages.HeaterFormula, ElectricalMessages.HeaterNumbers(new(limit.Lower!.Text), new(limit.Upper!.Text), new(rated.Text)), text, limit.Source)
            .Judge(reading.Value, DisplayKind.Current, context.State(limit) with { Kind = LimitKind.Within, Text = text, LowerSi = least, UpperSi = most })
            .Conclude(ElectricalMessages.HeaterRight(which, new(current.Text), new(rated.Text)), ElectricalMessages.HeaterWrong(which, new(current.Text), new(rated.Text)), this.WhenItFails());
    }
}
