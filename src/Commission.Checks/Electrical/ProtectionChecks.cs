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
        var word = supply.Breaker is null ? "fuse" : "breaker";
        var finding = context.Finding(this).Use(word, device).Use("MOP", plate);
        if (plate is null)
        {
            yield return finding.NotEvaluated("the nameplate's MOP is not written", "Read the maximum overcurrent protection on the plate.", "equipment: {nameplate: {MOP: 35 A}}");
            yield break;
        }

        var limit = context.Limits.Require(LimitIds.ElectricalOvercurrentFactor);
        PlateRating.Judge(context, finding, device, plate, new PlateRating(LimitKind.AtMost, "MOP", "I_max", "largest overcurrent device", limit, limit.Most.Si));
        yield return finding.Conclude(
            $"{device.Text} {word}, at most {plate.Text} allowed.",
            $"{device.Text} {word}, larger than the {plate.Text} on the nameplate.",
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
        var finding = context.Finding(this).Use("wire", supply.Wire).Use("ampacity", supply.Ampacity).Use("MCA", plate);
        if (supply.Ampacity is not { } ampacity)
        {
            yield return finding.NotEvaluated(ElectricalMessages.AmpacityNotWritten, ElectricalMessages.AmpacityNotWrittenNext, "electrical: {supply: {ampacity: 30 A}}");
            yield break;
        }

        if (plate is null)
        {
            yield return finding.NotEvaluated("the nameplate's MCA is not written", "Read the minimum circuit ampacity on the plate.", "equipment: {nameplate: {MCA: 22.0 A}}");
            yield break;
        }

        var limit = context.Limits.Require(LimitIds.ElectricalConductorFactor);
        PlateRating.Judge(context, finding, ampacity, plate, new PlateRating(LimitKind.AtLeast, "MCA", "I_min", "least ampacity", limit, limit.Least.Si));
        yield return finding.Conclude(
            $"Conductor good for {ampacity.Text}, at least {plate.Text} needed.",
            $"Conductor good for {ampacity.Text} only; the nameplate asks for {plate.Text}.",
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
internal sealed record PlateRating(LimitKind Kind, string Plate, string Symbol, string Name, Limit Limit, double Factor)
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
        finding.Step(by.Symbol, by.Name, $"factor × {by.Plate}", string.Create(CultureInfo.InvariantCulture, $"{by.Factor:0.##} × {plate.Text}"), text, by.Limit.Source)
            .Judge(Uncertain.Exact(rating.Value.Si), DisplayKind.Current, context.State(by.Limit) with
            {
                Kind = by.Kind,
                Text = $"{(isMost ? "at most" : "at least")} {text}",
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
            var finding = context.Finding(this, "equipment ground").Use("equipment ground", ground);
            yield return ground.Value == ContinuityResult.NotChecked
                ? finding.NotEvaluated(ElectricalMessages.GroundNotChecked, ElectricalMessages.GroundNotCheckedNext, "electrical: {supply: {equipment ground: continuous}}")
                : finding.Decide(ground.Value == ContinuityResult.Continuous).Passes
                ? finding.Say("The equipment ground is continuous.").Build()
                : finding.Say($"The equipment ground is {ground.Text}.").Next(this.WhenItFails()).Build();
        }

        if (supply.ProtectiveEarth is { } earth && context.Limits.Find(LimitIds.ElectricalProtectiveEarth) is { } limit)
        {
            var reading = context.Readings.Plain("protective earth", ReadingName.Electrical, earth, DisplayKind.Resistance, electrical.With);
            var finding = context.Finding(this, "protective earth").Use(reading).Judge(reading.Value, DisplayKind.Resistance, context.State(limit));
            yield return finding.Conclude($"Protective earth {earth.Text}.", $"Protective earth {earth.Text}: too much.", this.WhenItFails());
        }

        if (supply.DisconnectWithinSight is { } sight)
        {
            var finding = context.Finding(this, "disconnect").Use("disconnect within sight", sight).Decide(sight.Value);
            yield return finding.Conclude("A disconnect is within sight of the unit.", "No disconnect is within sight of the unit.", this.WhenItFails());
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
        var finding = context.Finding(this).Use("meter proved live, dead, live", dead.LiveDeadLive).Use("locked out", dead.LockedOut);
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
        yield return finding.Conclude("The unit was proved dead before covers were opened.", "The unit was not proved dead and locked out.", this.WhenItFails());
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
        var reading = context.Readings.Plain("terminal torque", ReadingName.Torque, torque, DisplayKind.Torque, electrical.With);
        var finding = context.Finding(this).Use(reading);
        if (context.Limits.Find(LimitIds.ElectricalTerminalTorque) is not { } limit || (limit.Lower is null && limit.Upper is null))
        {
            yield return finding.Measure(reading.Value, DisplayKind.Torque).Information($"The terminals were tightened to {torque.Text}.", "the maker's figure is not written");
            yield break;
        }

        finding.Judge(reading.Value, DisplayKind.Torque, context.State(limit));
        yield return finding.Conclude(
            $"The terminals were tightened to {torque.Text}, as the maker asks.",
            $"The terminals were tightened to {torque.Text}, outside the maker's figure.",
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
        var reading = context.Readings.Plain("insulation resistance", ReadingName.Insulation, test.Read, DisplayKind.Resistance, electrical.With);
        var finding = context.Finding(this).Use(reading).Use("test voltage", test.TestVoltage).Use("leads off", test.LeadsOff).Use("time of the test", test.At);
        var underVacuum = UnderVacuum(context, test, finding);
        if (underVacuum == true)
        {
            yield return finding.Fail("the circuit was under vacuum").Danger("insulation was tested while the circuit was under vacuum.", "Never do this: terminals arc in a vacuum. Have the compressor's terminals inspected, then test with the circuit charged.");
            yield break;
        }

        var limit = context.Limits.Require(LimitIds.ElectricalInsulationMinimum);
        finding.Judge(reading.Value, DisplayKind.Resistance, context.State(limit));
        if (test.LeadsOff?.Value == false)
            finding.Reserve("board or inverter leads were on, which may have been tested, or damaged, with the motor").Next("Test with the board's leads off.");
        if (underVacuum is null)
            finding.Reserve(ElectricalMessages.InsulationVacuumEnd).Next(ElectricalMessages.InsulationVacuumEndNext, "evacuation: {events: [{at: …, what: end}]}");
        if (finding.Passes && context.Limits.Find(LimitIds.ElectricalInsulationGood) is { Lower: { } good } && reading.Value.Value < good.Si)
            finding.Remark($"Below the {good.Text} of dry, clean insulation: warm the oil and test again.");
        yield return finding.Conclude($"Insulation resistance {test.Read.Text}.", $"Insulation resistance {test.Read.Text}: too low.", this.WhenItFails());
    }

    // Null: the test came after the pump was started, and nothing says when the vacuum ended.
    private static bool? UnderVacuum(CheckContext context, Jobs.Model.InsulationTest test, FindingBuilder finding)
    {
        if (context.Job.Evacuation is not { Started: { } started } evacuation || test.At?.Value.Clock is not { } at || started.Value.Clock is not { } from)
            return false;
        var end = evacuation.Events.LastOrDefault(e => e.What.Value == EvacuationEventKind.End)?.At;
        var running = context.Job.Charging?.CompressorStarted;
        finding.Use("evacuation: started", started).Use("evacuation: end", end).Use("compressor started", running);
        if (at < from)
            return false;
        return (end?.Value.Clock ?? running?.Value.Clock) is { } until ? at <= until : null;
    }
}
