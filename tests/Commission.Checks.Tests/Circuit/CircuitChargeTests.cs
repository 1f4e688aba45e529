using System.Globalization;
using Commission.Checks.Circuit;
using Xunit;

namespace Commission.Checks.Tests.Circuit;

/// <summary>What went in, what came out and what the circuit holds: sums by hand.</summary>
public sealed class CircuitChargeTests
{
    private const double Pound = 0.45359237;
    private const string Plate = ", nameplate: {factory charge: 6 lb}";

    // By weight first, then by the label, then, where nothing was opened, by the plate.
    [Theory]
    [InlineData("new installation", "charging: {unit arrived: charged, added: 1 lb, left in hoses: 0 lb}", Plate, 7.0, true, 7.0)]
    [InlineData("new installation", "charging: {unit arrived: recovered and evacuated, added: 5 lb, left in hoses: 0 lb}", Plate, 5.0, true, 5.0)]
    [InlineData("new installation", "charging: {unit arrived: nitrogen holding charge, added: 5 lb, left in hoses: 0 lb}", Plate, 5.0, true, 5.0)]
    [InlineData("new installation", "charging: {unit arrived: charged, added: 1 lb, left in hoses: 0.5 lb}", Plate, 6.5, true, 6.5)]
    [InlineData("new installation", "charging: {unit arrived: charged, removed: 1 lb, left in hoses: 0 lb}", Plate, 5.0, true, 5.0)]
    [InlineData("new installation", "charging: {unit arrived: charged}", Plate, 6.0, true, 6.0)]
    [InlineData("new installation", "charging: {unit arrived: charged}\nlabel: {total: 8 lb}", Plate, 6.0, true, 8.0)]
    [InlineData("new installation", "charging: {unit arrived: unknown}", Plate, null, false, 6.0)]
    [InlineData("new installation", "charging: {unit arrived: unknown}\nlabel: {total: 8 lb}", Plate, 8.0, false, 8.0)]
    [InlineData("new installation", "charging: {unit arrived: recovered and evacuated}", Plate, null, false, 6.0)]
    [InlineData("new installation", "charging: {unit arrived: charged, added: 1 lb}", "", null, false, null)]
    [InlineData("new installation", "", Plate, null, false, 6.0)]
    [InlineData("new installation", "", "", null, false, null)]
    [InlineData("seasonal check", "", Plate, 6.0, false, 6.0)]
    [InlineData("seasonal check", "", "", null, false, null)]
    [InlineData("seasonal check", "charging: {added: 1 lb}", Plate, null, false, 6.0)]
    [InlineData("seasonal check", "label: {total: 8 lb}", Plate, 8.0, false, 8.0)]
    [InlineData("charge adjustment", "", Plate, null, false, 6.0)]
    [InlineData("decommissioning", "recovery: {to: 0 psig, mass: 4 lb}", "", null, false, 4.0)]
    [InlineData("decommissioning", "as found: {charge recovered: 3 lb}", "", null, false, 3.0)]
    [InlineData("decommissioning", "recovery: {to: 0 psig, mass: 4 lb}\nas found: {charge recovered: 3 lb}", "", null, false, 4.0)]
    [InlineData("decommissioning", "recovery: {to: 0 psig, mass: 4 lb}", Plate, null, false, 6.0)]
    public void What_the_circuit_holds(string work, string lines, string equipment, double? total, bool isWeighed, double? full)
    {
        var charge = JobText.Context(JobLines.Of(lines, work, equipment: equipment)).Get<CircuitCharge>();
        Assert.Equal((total ?? -1) * Pound, charge.Total?.Value.Value ?? -Pound, 1e-9);
        Assert.Equal((full ?? -1) * Pound, charge.Full?.Value.Value ?? -Pound, 1e-9);
        Assert.Equal(isWeighed, charge.IsWeighed);
        Assert.Equal(total is null, charge.WhyNot is not null);
    }

    // A unit in one housing comes with its charge: new, or looked at once a year, nobody opened it.
    [Theory]
    [InlineData("new installation", "packaged", 6.0)]
    [InlineData("new installation", "split", null)]
    [InlineData("seasonal check", "split", 6.0)]
    [InlineData("opened circuit", "packaged", null)]
    public void An_untouched_unit_holds_its_factory_charge(string work, string system, double? total) =>
        Assert.Equal((total ?? -1) * Pound, JobText.Context(JobLines.Of("", work, system, equipment: Plate)).Get<CircuitCharge>().Total?.Value.Value ?? -Pound, 1e-9);

    [Theory]
    [InlineData("charging: {unit arrived: charged, added: 1 lb}", "", "factory charge is not written")]
    [InlineData("charging: {unit arrived: unknown}", Plate, "nobody knows")]
    [InlineData("charging: {unit arrived: recovered and evacuated}", Plate, "no scale reading")]
    [InlineData("", Plate, "nothing about the charging")]
    public void Why_the_total_cannot_be_known_is_told(string lines, string equipment, string why) =>
        Assert.Contains(why, JobText.Context(JobLines.Of(lines, equipment: equipment)).Get<WeighedCharge>().WhyNoTotal.Said(), StringComparison.Ordinal);

    [Theory]
    [InlineData("charged", false, true)]
    [InlineData("nitrogen holding charge", true, false)]
    [InlineData("recovered and evacuated", true, false)]
    [InlineData("unknown", false, false)]
    public void How_the_unit_arrived(string arrived, bool whole, bool charged)
    {
        var weighed = JobText.Context(JobLines.Of($"charging: {{unit arrived: {arrived}}}")).Get<WeighedCharge>();
        Assert.Equal((whole, charged), (weighed.SawWholeCharge, weighed.CameCharged));
    }

    // Where nothing was moved nothing stayed in a hose; who writes what stayed there had a hose.
    [Fact]
    public void Nothing_moved_is_nothing_exactly()
    {
        var nothing = JobText.Context(JobLines.Of("charging: {unit arrived: charged, added: 0 lb}", equipment: Plate)).Get<WeighedCharge>().Put!;
        Assert.Equal((0, 0.0), (nothing.Value.Budget.Count, nothing.Value.Value));
        Assert.Equal(["0 lb"], nothing.Uses.Select(u => u.Text));
        Assert.NotEmpty(JobText.Context(JobLines.Of("charging: {unit arrived: charged, added: 0 lb, left in hoses: 0.1 lb}", equipment: Plate)).Get<WeighedCharge>().Put!.Value.Budget);
        Assert.NotEmpty(JobText.Context(JobLines.Of("charging: {unit arrived: charged, scale: {before: 10 lb, after: 10 lb}}", equipment: Plate)).Get<WeighedCharge>().Put!.Value.Budget);
        Assert.Null(JobText.Context(JobLines.Of("charging: {unit arrived: charged}", equipment: Plate)).Get<WeighedCharge>().Put);
        Assert.Null(JobText.Context(JobLines.Of()).Get<WeighedCharge>().Put);
    }

    [Fact]
    public void The_total_names_plate_arrival_and_scale()
    {
        var yaml = JobLines.Of("charging: {unit arrived: charged, scale: {before: 10 lb, after: 9 lb}, left in hoses: 0.1 lb}", equipment: Plate);
        var total = JobText.Context(yaml).Get<WeighedCharge>().Total!;
        Assert.Equal(["factory charge", "left in hoses", "unit arrived"], total.Uses.Select(u => u.Name).Order());
        Assert.Equal(["10 lb", "9 lb"], total.Readings.SelectMany(r => r.Uses).Select(u => u.Text));
        Assert.Equal(["m", "m_put", "m_total"], total.Steps.Select(s => s.Symbol));
        Assert.Equal(6.9 * Pound, total.Value.Value, 1e-9);
        var whole = JobText.Context(JobLines.Of("charging: {unit arrived: recovered and evacuated, added: 5 lb, left in hoses: 0 lb}")).Get<WeighedCharge>().Total!;
        Assert.Contains(whole.Uses, u => u.Name == "unit arrived");
        var labelled = JobText.Context(JobLines.Of("label: {total: 8 lb}", "seasonal check")).Get<CircuitCharge>().Total!;
        Assert.Equal(["8 lb"], labelled.Uses.Select(u => u.Text));
        Assert.Equal("8 lb", Assert.Single(labelled.Steps).Result);
    }

    // The scale speaks before a mass that was written, a mass for the whole before the masses of single events.
    [Theory]
    [InlineData("scale: {before: 10 lb, after: 8 lb}, events: [{at: \"10:00\", added: 5 lb}]", "2")]
    [InlineData("scale: {before: 10 lb, after: 8 lb}, removed: 1 lb", "2, -1")]
    [InlineData("added: 5 lb, events: [{at: \"10:00\", added: 4 lb}]", "5")]
    [InlineData("added: 5 lb, events: [{at: \"10:00\", removed: 1 lb}]", "5, -1")]
    [InlineData("removed: 2 lb, events: [{at: \"10:00\", added: 4 lb}, {at: \"10:10\", removed: 1 lb}]", "-2, 4")]
    [InlineData("events: [{at: \"10:00\", added: 4 lb}, {at: \"10:10\", removed: 1 lb}]", "4, -1")]
    [InlineData("scale: [{cylinder: A, before: 10 lb, after: 8 lb}, {before: 7 lb, after: 6 lb}]", "2, 1")]
    [InlineData("running: full", "")]
    public void Which_masses_of_the_charging_count(string charging, string pounds)
    {
        var ledger = JobText.Context(JobLines.Of($"charging: {{{charging}}}", "charge adjustment")).Get<RefrigerantLedger>();
        Assert.Equal(pounds, string.Join(", ", ledger.Charging.Select(m => FormattableString.Invariant($"{m.Sign * m.Part.Value.Value / Pound:0.###}"))));
        Assert.Equal(ledger.Charging.Select(m => m.Sign), ledger.Movements.Select(m => m.Sign));
        Assert.Equal(ledger.Charging.Select(m => m.Weighing is not null ? "charged" : m.Sign > 0 ? "charged" : "taken off"), ledger.Movements.Select(m => m.Name.Said()));
        Assert.Equal(ledger.Charging.Select(m => m.Time), ledger.Movements.Select(m => m.Time));
        if (pounds.Length > 0)
            Assert.Equal(pounds.Split(", ").Sum(p => double.Parse(p, CultureInfo.InvariantCulture)) * Pound, ledger.Net!.Value, 1e-9);
        else
            Assert.Null(ledger.Net);
    }

    [Theory]
    [InlineData("recovery: {to: 0 psig, mass: 4 lb, cylinder: R1, at: \"09:00\"}", 4.0, "R1", "09:00")]
    [InlineData("recovery: {to: 0 psig, scale: {cylinder: R2, before: 20 lb, after: 25 lb}, mass: 4 lb}", 5.0, "R2", "")]
    [InlineData("recovery: {to: 0 psig, cylinder: R1, scale: {cylinder: R2, before: 20 lb, after: 25 lb}}", 5.0, "R1", "")]
    [InlineData("recovery: {to: 0 psig}\nas found: {charge recovered: 3 lb}", 3.0, null, "")]
    [InlineData("as found: {charge recovered: 3 lb}", 3.0, null, "")]
    [InlineData("recovery: {to: 0 psig}", null, null, "")]
    public void What_was_recovered(string lines, double? pounds, string? cylinder, string time)
    {
        var ledger = JobText.Context(JobLines.Of(lines, "opened circuit")).Get<RefrigerantLedger>();
        var movement = Assert.Single(ledger.Movements);
        Assert.Equal((MovementKind.Recovered, -1, cylinder, time), (movement.Kind, movement.Sign, movement.Cylinder, movement.Time));
        Assert.Equal((pounds ?? -1) * Pound, movement.Mass?.Value.Value ?? -Pound, 1e-9);
        Assert.Equal(pounds is null, ledger.Net is null);
        Assert.Equal(lines.Contains("scale", StringComparison.Ordinal), movement.Mass?.Steps.Any(s => s.Symbol == "m_rec") == true);
    }

    // What was recovered before a change is another refrigerant and no part of what is in the circuit now.
    [Fact]
    public void Only_the_refrigerant_in_the_circuit_counts_for_its_net()
    {
        const string Change = "refrigerant change: {from: R-22, to: R-438A}\nrecovery: {to: 0 psig, mass: 5 lb}\ncharging: {unit arrived: recovered and evacuated, added: 7 lb}";
        var ledger = JobText.Context(JobLines.Of(Change, "refrigerant change", refrigerant: "R-438A")).Get<RefrigerantLedger>();
        Assert.Equal(["R-438A", "R-22"], ledger.Movements.Select(m => m.Refrigerant));
        Assert.Equal(7 * Pound, ledger.Net!.Value, 1e-9);
        Assert.Null(JobText.Context(JobLines.Of(Change.Replace(", mass: 5 lb", "", StringComparison.Ordinal), "refrigerant change", refrigerant: "R-438A")).Get<RefrigerantLedger>().Net);
    }

    [Theory]
    [InlineData("cylinders: [{id: R1, tare: 10 lb}]\nrecovery: {to: 0 psig, mass: 5 lb, cylinder: R1}", "R1")]
    [InlineData("cylinders: [{id: R1, tare: 10 lb}]\nrecovery: {to: 0 psig, mass: 5 lb}", "R1")]
    [InlineData("cylinders: [{id: R1, tare: 10 lb}, {id: R2, tare: 10 lb}]\nrecovery: {to: 0 psig, mass: 5 lb, cylinder: R2}", "R2")]
    [InlineData("cylinders: [{id: R1, tare: 10 lb}, {id: R2, tare: 10 lb}]\nrecovery: {to: 0 psig, mass: 5 lb}", null)]
    [InlineData("cylinders: [{id: R1, tare: 10 lb}]\nrecovery: {to: 0 psig, mass: 5 lb}\ncharging: {added: 2 lb}", null)]
    [InlineData("recovery: {to: 0 psig, mass: 5 lb}", null)]
    public void Which_cylinder_it_went_into(string lines, string? cylinder)
    {
        var ledger = JobText.Context(JobLines.Of(lines, "charge adjustment")).Get<RefrigerantLedger>();
        Assert.Equal(cylinder, ledger.CylinderOf(ledger.Movements.Single(m => m.Kind == MovementKind.Recovered))?.Id.Value);
    }

    // Filled by 5 lb to 30 and charged from down to 28: the gross masses tell which of both they stand for.
    [Theory]
    [InlineData("before: 25 lb, after: 28 lb", "recovered, charged")]
    [InlineData("before: 25 lb, after: 30 lb", "recovered")]
    [InlineData("before: 30 lb, after: 28 lb", "charged")]
    [InlineData("before: 26 lb, after: 28 lb", "recovered, charged")]
    [InlineData("before: 25 lb, after: 27 lb", "recovered, charged")]
    [InlineData("after: 28 lb", "recovered, charged")]
    public void What_a_cylinder_was_weighed_for(string masses, string movements)
    {
        var context = JobText.Context(JobLines.Of($"cylinders: [{{id: R1, {masses}}}]\nrecovery: {{to: 0 psig, cylinder: R1, scale: {{before: 25 lb, after: 30 lb}}}}\ncharging: {{unit arrived: recovered and evacuated, scale: {{cylinder: R1, before: 30 lb, after: 28 lb}}}}", "opened circuit"));
        var ledger = context.Get<RefrigerantLedger>();
        Assert.Equal(movements, string.Join(", ", ledger.WeighedBy(context.Job.Cylinders[0]).Select(m => m.Name.Said())));
        var left = ledger.LeftBy(context.Job.Cylinders[0]);
        if (!masses.StartsWith("before", StringComparison.Ordinal))
        {
            Assert.Null(left);
            return;
        }

        var numbers = masses.Split(", ").Select(m => double.Parse(m.Split(' ')[1], CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal((numbers[0] - numbers[1]) * Pound, left!.Value.Value, 1e-9);
        Assert.Equal(2, left.Readings.Length);
        Assert.Equal("Δm", Assert.Single(left.Steps).Symbol);
    }
}
