using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Whether the breaker or fuse is no larger than the nameplate allows.</summary>
internal sealed class OvercurrentCheck : ICheck
{
    public string Id => "electrical.overcurrent";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical?.Supply is not { } supply || (supply.Breaker ?? supply.Fuse) is not { } device)
            yield break;
        var plate = context.Job.Equipment.Nameplate?.MOP;
        var which = supply.Breaker is null ? ElectricalMessages.DeviceFuse : ElectricalMessages.DeviceBreaker;
        var finding = context.Finding(this).Use(which, device).Use(CommonMessages.AsWritten(new("MOP")), plate);
        if (plate is null)
        {
            yield return finding.NotEvaluated(ElectricalMessages.PlateNoProtection, ElectricalMessages.PlateNoProtectionNext, "equipment: {nameplate: {MOP: 35 A}}");
            yield break;
        }

        var limit = context.Limits.Require(LimitIds.ElectricalOvercurrentFactor);
        PlateRating.Judge(context, finding, device, plate, new PlateRating(LimitKind.AtMost, "MOP", "I_max", ElectricalMessages.OvercurrentLargest, limit, limit.Most.Si));
        yield return finding.Conclude(
            ElectricalMessages.OvercurrentWithin(new(device.Text), which, new(plate.Text)),
            ElectricalMessages.OvercurrentBeyond(new(device.Text), which, new(plate.Text)),
            this.WhenItFails());
    }
}

/// <summary>Whether the conductor carries at least the minimum circuit ampacity.</summary>
internal sealed class ConductorCheck : ICheck
{
    public string Id => "electrical.conductor";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical?.Supply is not { } supply || (supply.Ampacity is null && supply.Wire is null))
            yield break;
        var plate = context.Job.Equipment.Nameplate?.MCA;
        var finding = context.Finding(this).Use(ElectricalMessages.ReadingWire, supply.Wire).Use(ElectricalMessages.ReadingAmpacity, supply.Ampacity).Use(CommonMessages.AsWritten(new("MCA")), plate);
        if (supply.Ampacity is not { } ampacity)
        {
            yield return finding.NotEvaluated(ElectricalMessages.AmpacityNotWritten, ElectricalMessages.AmpacityNotWrittenNext, "electrical: {supply: {ampacity: 30 A}}");
            yield break;
        }

        if (plate is null)
        {
            yield return finding.NotEvaluated(ElectricalMessages.PlateNoAmpacity, ElectricalMessages.PlateNoAmpacityNext, "equipment: {nameplate: {MCA: 22.0 A}}");
            yield break;
        }

        var limit = context.Limits.Require(LimitIds.ElectricalConductorFactor);
        PlateRating.Judge(context, finding, ampacity, plate, new PlateRating(LimitKind.AtLeast, "MCA", "I_min", ElectricalMessages.ConductorLeast, limit, limit.Least.Si));
        yield return finding.Conclude(
            ElectricalMessages.ConductorWithin(new(ampacity.Text), new(plate.Text)),
            ElectricalMessages.ConductorBelow(new(ampacity.Text), new(plate.Text)),
            this.WhenItFails());
    }
}

/// <summary>What the supply has to be rated for by a figure of the nameplate.</summary>
/// <param name="Kind">On which side of the plate's figure the rating has to lie.</param>
/// <param name="Plate">The plate's figure, as the trade abbreviates it.</param>
/// <param name="Symbol">Symbol of the bound.</param>
/// <param name="Name">What the bound is.</param>
/// <param name="Limit">The limit that gives the factor.</param>
/// <param name="Factor">By which the plate's figure is multiplied.</param>
internal sealed record PlateRating(LimitKind Kind, string Plate, string Symbol, Message Name, Limit Limit, double Factor)
{
    /// <summary>Judges a rating. What is printed on a device and on a plate is not a measurement: it has no uncertainty.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="finding">The finding.</param>
    /// <param name="rating">The rating of what is installed.</param>
    /// <param name="plate">The figure on the nameplate.</param>
    /// <param name="by">What is asked.</param>
    public static void Judge(CheckContext context, FindingBuilder finding, Given<ElectricCurrent> rating, Given<ElectricCurrent> plate, PlateRating by)
    {
        var bound = by.Factor * plate.Value.Si;
        var text = context.Present.Text(bound, DisplayKind.Current);
        var isMost = by.Kind == LimitKind.AtMost;
        finding.Step(by.Symbol, by.Name, ElectricalMessages.FactorTimes(new NameValue(by.Plate)), string.Create(CultureInfo.InvariantCulture, $"{by.Factor:0.##} × {plate.Text}"), text, by.Limit.Source)
            .Judge(Uncertain.Exact(rating.Value.Si), DisplayKind.Current, context.State(by.Limit) with
            {
                Kind = by.Kind,
                Text = context.Present.Text(isMost ? CommonMessages.LimitAtMost(new(text)) : CommonMessages.LimitAtLeast(context.Present.InMessage(bound, DisplayKind.Current))),
                LowerSi = isMost ? null : bound,
                UpperSi = isMost ? bound : null,
            });
    }
}

/// <summary>Equipment ground and disconnect.</summary>
internal sealed class GroundCheck : ICheck
{
    public string Id => "electrical.ground";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { Supply: { } supply } electrical)
            yield break;
        if (supply.EquipmentGround is { } ground)
        {
            var finding = context.Finding(this, context.Present.Text(ElectricalMessages.ReadingGround)).Use(ElectricalMessages.ReadingGround, ground);
            yield return ground.Value == ContinuityResult.NotChecked
                ? finding.NotEvaluated(ElectricalMessages.GroundNotChecked, ElectricalMessages.GroundNotCheckedNext, "electrical: {supply: {equipment ground: continuous}}")
                : finding.Decide(ground.Value == ContinuityResult.Continuous).Passes
                ? finding.Say(ElectricalMessages.GroundContinuous).Build()
                : finding.Say(ElectricalMessages.GroundIs(new(ground.Text))).Next(this.WhenItFails()).Build();
        }

        if (supply.ProtectiveEarth is { } earth && context.Limits.Find(LimitIds.ElectricalProtectiveEarth) is { } limit)
        {
            var name = context.Present.Text(ElectricalMessages.ReadingEarth);
            var reading = context.Readings.Plain(name, ReadingName.Electrical, earth, DisplayKind.Resistance, electrical.With);
            var finding = context.Finding(this, name).Use(reading).Judge(reading.Value, DisplayKind.Resistance, context.State(limit));
            yield return finding.Conclude(ElectricalMessages.EarthWithin(new(earth.Text)), ElectricalMessages.EarthBeyond(new(earth.Text)), this.WhenItFails());
        }

        if (supply.DisconnectWithinSight is { } sight)
        {
            var finding = context.Finding(this, context.Present.Text(ElectricalMessages.DisconnectSubject)).Use(ElectricalMessages.ReadingDisconnect, sight).Decide(sight.Value);
            yield return finding.Conclude(ElectricalMessages.DisconnectInSight, ElectricalMessages.DisconnectNotInSight, this.WhenItFails());
        }
    }
}

/// <summary>Whether the unit was proved dead and locked out before covers were opened.</summary>
internal sealed class ProvedDeadCheck : ICheck
{
    public string Id => "electrical.proved-dead";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical?.ProvedDead is not { } dead)
            yield break;
        var finding = context.Finding(this).Use(ElectricalMessages.ReadingProved, dead.LiveDeadLive).Use(ElectricalMessages.ReadingLockedOut, dead.LockedOut);
        if (dead.LiveDeadLive is null && dead.LockedOut is null)
        {
            yield return finding.NotEvaluated(ElectricalMessages.DeadNotTold, ElectricalMessages.DeadNotToldNext, "electrical: {proved dead: {live-dead-live: yes, locked out: yes}}");
            yield break;
        }

        finding.Decide(dead.LiveDeadLive?.Value != false && dead.LockedOut?.Value != false);
        if (dead.LiveDeadLive is null)
            finding.Reserve(ElectricalMessages.DeadMeterNotProved).Next(ElectricalMessages.DeadNotToldNext, "electrical: {proved dead: {live-dead-live: yes, locked out: yes}}");
        if (dead.LockedOut is null)
            finding.Reserve(ElectricalMessages.DeadNotLockedOut).Next(ElectricalMessages.DeadNotToldNext, "electrical: {proved dead: {live-dead-live: yes, locked out: yes}}");
        yield return finding.Conclude(ElectricalMessages.DeadProved, ElectricalMessages.DeadNotProved, this.WhenItFails());
    }
}

/// <summary>Torque on the terminals of the supply.</summary>
internal sealed class TerminalTorqueCheck : ICheck
{
    public string Id => "electrical.terminal-torque";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { Supply.TerminalTorque: { } torque } electrical)
            yield break;
        var reading = context.Readings.Plain(context.Present.Text(ElectricalMessages.ReadingTorque), ReadingName.Torque, torque, DisplayKind.Torque, electrical.With);
        var finding = context.Finding(this).Use(reading);
        if (context.Limits.Find(LimitIds.ElectricalTerminalTorque) is not { } limit || (limit.Lower is null && limit.Upper is null))
        {
            yield return finding.Measure(reading.Value, DisplayKind.Torque).Information(ElectricalMessages.TorqueWas(new(torque.Text)), CommonMessages.FigureNotWritten);
            yield break;
        }

        finding.Judge(reading.Value, DisplayKind.Torque, context.State(limit));
        yield return finding.Conclude(
            ElectricalMessages.TorqueRight(new(torque.Text)),
            ElectricalMessages.TorqueWrong(new(torque.Text)),
            this.WhenItFails());
    }
}

/// <summary>Insulation resistance of the compressor, and that it was never tested under vacuum.</summary>
internal sealed class InsulationCheck : ICheck
{
    public string Id => "electrical.insulation";

    public string Phase => Phases.Electrical;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { Insulation: { } test } electrical)
            yield break;
        var reading = context.Readings.Plain(context.Present.Text(ReadingsMessages.InsulationResistance), ReadingName.Insulation, test.Read, DisplayKind.Resistance, electrical.With);
        var finding = context.Finding(this).Use(reading).Use(ElectricalMessages.ReadingTestVoltage, test.TestVoltage).Use(ElectricalMessages.ReadingLeadsOff, test.LeadsOff).Use(ElectricalMessages.ReadingTestTime, test.At);
        var underVacuum = UnderVacuum(context, test, finding);
        if (underVacuum == true)
        {
            yield return finding.Fail(ElectricalMessages.InsulationVacuumWhy).Danger(ElectricalMessages.InsulationVacuum, ElectricalMessages.InsulationVacuumNext);
            yield break;
        }

        var limit = context.Limits.Require(LimitIds.ElectricalInsulationMinimum);
        finding.Judge(reading.Value, DisplayKind.Resistance, context.State(limit));
        if (test.LeadsOff?.Value == false)
            finding.Reserve(ElectricalMessages.InsulationLeadsOn).Next(ElectricalMessages.InsulationLeadsOnNext);
        if (underVacuum is null)
            finding.Reserve(ElectricalMessages.InsulationVacuumEnd).Next(ElectricalMessages.InsulationVacuumEndNext, "evacuation: {events: [{at: …, what: end}]}");
        if (finding.Passes && context.Limits.Find(LimitIds.ElectricalInsulationGood) is { Lower: { } good } && reading.Value.Value < good.Si)
            finding.Remark(ElectricalMessages.InsulationBelowGood(new(good.Text)));
        yield return finding.Conclude(ElectricalMessages.InsulationWithin(new(test.Read.Text)), ElectricalMessages.InsulationBelow(new(test.Read.Text)), this.WhenItFails());
    }

    // Null: the test came after the pump was started, and nothing says when the vacuum ended.
    private static bool? UnderVacuum(CheckContext context, Jobs.Model.InsulationTest test, FindingBuilder finding)
    {
        if (context.Job.Evacuation is not { Started: { } started } evacuation || test.At?.Value.Clock is not { } at || started.Value.Clock is not { } from)
            return false;
        var end = evacuation.Events.LastOrDefault(e => e.What.Value == EvacuationEventKind.End)?.At;
        var running = context.Job.Charging?.CompressorStarted;
        finding.Use(ElectricalMessages.ReadingEvacuationStarted, started).Use(ElectricalMessages.ReadingEvacuationEnd, end).Use(ReadingsMessages.CompressorStarted, running);
        if (at < from)
            return false;
        return (end?.Value.Clock ?? running?.Value.Clock) is { } until ? at <= until : null;
    }
}
