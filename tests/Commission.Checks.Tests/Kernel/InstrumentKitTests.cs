using Commission.Checks.Kernel;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Xunit;

namespace Commission.Checks.Tests.Kernel;

/// <summary>Which instrument read what, and how far it may be off.</summary>
public sealed class InstrumentKitTests
{
    private const string Kit = """
        instruments:
          - {id: low, kind: pressure gauge, accuracy: 0.5 % of full scale, full scale: 500 psig, resolution: 0.1 psi, reads: [vapor pressure]}
          - {id: high, kind: pressure gauge, accuracy: 1 psi, reads: [liquid pressure, pressure test]}
          - {id: meter, kind: clamp meter, accuracy: 1.5 % of reading, resolution: 0.1 A, reads: [electrical]}
          - {id: second, kind: clamp meter, accuracy: 3 % of reading, reads: [electrical, voltage]}
          - {id: spare, kind: pressure gauge, accuracy: 2 psi}
        """;

    [Theory]
    [InlineData(ReadingName.VaporPressure, "low")]
    [InlineData(ReadingName.TrueSuctionPressure, "low")]
    [InlineData(ReadingName.LiquidPressure, "high")]
    [InlineData(ReadingName.DischargePressure, "high")]
    [InlineData(ReadingName.PressureTest, "high")]
    [InlineData(ReadingName.Current, "meter")]
    [InlineData(ReadingName.Capacitance, "meter")]
    [InlineData(ReadingName.Voltage, "second")]
    [InlineData(ReadingName.Evacuation, null)]
    [InlineData(ReadingName.Recovery, null)]
    public void The_instrument_that_reads_it_else_the_one_that_reads_its_kind(ReadingName reading, string? id) => Assert.Equal(id, Of(Kit).For(reading, [])?.Id);

    [Fact]
    public void What_a_phase_names_comes_first_where_it_can_read_it_at_all()
    {
        var context = JobText.Context(JobLines.Of(Kit + "\ncharging: {unit arrived: charged, with: [meter, spare], added: 1 lb}"));
        var kit = context.Get<InstrumentKit>();
        Assert.Equal("spare", kit.For(ReadingName.VaporPressure, context.Job.Charging!.With)!.Id);
        Assert.Equal("meter", kit.For(ReadingName.Current, context.Job.Charging.With)!.Id);
        Assert.Null(kit.For(ReadingName.Evacuation, context.Job.Charging.With));
    }

    [Fact]
    public void Instruments_stand_in_the_order_of_the_job() => Assert.Equal(["low", "high", "meter", "second", "spare"], Of(Kit).All.Select(i => i.Id));

    // 0.5 % of 500 psi at every reading; 1.5 % of the reading; a share of the reading holds for volts as well, an amount does not.
    [Theory]
    [InlineData("low", 100 * 6894.757293168, Dimension.PressureDifference, 2.5 * 6894.757293168)]
    [InlineData("low", 400 * 6894.757293168, Dimension.Pressure, 2.5 * 6894.757293168)]
    [InlineData("low", 300.0, Dimension.Temperature, null)]
    [InlineData("meter", 24.0, Dimension.ElectricCurrent, 0.36)]
    [InlineData("meter", 230.0, Dimension.Voltage, 3.45)]
    public void Half_the_width_of_its_bound(string id, double si, Dimension dimension, double? half)
    {
        var found = Of(Kit).All.Single(i => i.Id == id).HalfWidth(si, dimension);
        Assert.Equal(half is null, found is null);
        Assert.Equal(half ?? 0, found ?? 0, 1e-6 * (half ?? 1));
    }

    // IEC 60584-1: class 1 type K the larger of 1.5 K and 0.4 %, class 2 of 2.5 K and 0.75 %, type T 0.5 K and 1 K; ASTM E230 special 1.1 K and 0.4 %,
    // standard 2.2 K and 0.75 %; IEC 60751: A 0.15 K + 0.2 %, B 0.3 K + 0.5 %; t in °C (from memory).
    [Theory]
    [InlineData("thermocouple K class 1", 50, 1.5)]
    [InlineData("thermocouple K class 1", 400, 1.6)]
    [InlineData("thermocouple K class 2", 50, 2.5)]
    [InlineData("thermocouple K class 2", 400, 3.0)]
    [InlineData("thermocouple K special", 50, 1.1)]
    [InlineData("thermocouple K special", 300, 1.2)]
    [InlineData("thermocouple K standard", 50, 2.2)]
    [InlineData("thermocouple K standard", 400, 3.0)]
    [InlineData("thermocouple T class 1", 50, 0.5)]
    [InlineData("thermocouple T class 1", 200, 0.8)]
    [InlineData("thermocouple T class 2", 50, 1.0)]
    [InlineData("thermocouple T class 2", -50, 1.0)]
    [InlineData("thermocouple T class 2", 200, 1.5)]
    [InlineData("RTD class A", 50, 0.25)]
    [InlineData("RTD class B", 50, 0.55)]
    [InlineData("RTD class B", -40, 0.5)]
    public void A_sensor_without_a_statement_has_the_tolerance_of_its_class(string sensor, double celsius, double kelvin)
    {
        var probe = Assert.Single(Of($"instruments:\n  - {{id: probe, kind: thermometer, sensor: {sensor}, reads: [vapor line]}}").All);
        Assert.True(probe.AccuracyKnown);
        Assert.Equal(kelvin, probe.HalfWidth(celsius + 273.15)!.Value, 1e-9);
    }

    [Fact]
    public void A_step_of_amperes_is_none_of_volts()
    {
        var meter = Of(Kit).All.Single(i => i.Id == "meter");
        Assert.Equal(0.1, meter.ResolutionFor(Dimension.ElectricCurrent, 20)!.Value, 1e-12);
        Assert.Null(meter.ResolutionFor(Dimension.Voltage, 230));
        Assert.False(Of("instruments:\n  - {id: probe, kind: thermometer, reads: [vapor line]}").All[0].AccuracyKnown);
    }

    // Digital gauges commonly show tenths up to 100 psig and whole psi above (common practice, no source).
    [Theory]
    [InlineData("[{up to: 100 psig, step: 0.1 psi}, {above: 100 psig, step: 1 psi}]", 99.9, 0.1)]
    [InlineData("[{up to: 100 psig, step: 0.1 psi}, {above: 100 psig, step: 1 psi}]", 100, 0.1)]
    [InlineData("[{up to: 100 psig, step: 0.1 psi}, {above: 100 psig, step: 1 psi}]", 100.1, 1)]
    [InlineData("[{step: 0.1 psi}, {above: 100 psig, step: 1 psi}]", 50, 0.1)]
    [InlineData("[{step: 0.1 psi}, {above: 100 psig, step: 1 psi}]", 150, 1)]
    [InlineData("[{up to: 50 psig, step: 0.01 psi}, {up to: 100 psig, step: 0.1 psi}, {up to: 500 psig, step: 1 psi}]", 75, 0.1)]
    [InlineData("[{up to: 50 psig, step: 0.01 psi}, {up to: 100 psig, step: 0.1 psi}, {up to: 500 psig, step: 1 psi}]", 600, 1)]
    [InlineData("0.5 psi", 600, 0.5)]
    public void The_step_is_that_of_the_range_a_reading_lies_in(string steps, double psi, double step)
    {
        const double Psi = 6894.757293168;
        var gauge = Of($"instruments:\n  - {{id: low, kind: pressure gauge, resolution: {steps}, reads: [vapor pressure]}}").All[0];
        Assert.Equal(step, gauge.ResolutionFor(Dimension.Pressure, psi * Psi)!.Value / Psi, 1e-9);
        Assert.Equal(step, gauge.ResolutionAt(psi * Psi)!.Value / Psi, 1e-9);
    }

    // With its zero a gauge may be trusted a quarter beyond the known pressure, not below zero; without one within a fifth of the known pressure; and only where
    // the reference states its uncertainty.
    [Theory]
    [InlineData("zero: 0 psig, ", "200 psig +/- 0.4", 250, true)]
    [InlineData("zero: 0 psig, ", "200 psig +/- 0.4", 250.1, false)]
    [InlineData("zero: 0 psig, ", "200 psig +/- 0.4", 0, true)]
    [InlineData("zero: 0 psig, ", "200 psig +/- 0.4", -0.1, false)]
    [InlineData("", "200 psig +/- 0.4", 160.1, true)]
    [InlineData("", "200 psig +/- 0.4", 159.9, false)]
    [InlineData("", "200 psig +/- 0.4", 240.1, false)]
    [InlineData("zero: 0 psig, ", "200 psig", 150, false)]
    public void A_known_pressure_ties_down_as_far_as_it_reaches(string zero, string applied, double psi, bool tied) =>
        Assert.Equal(tied, Of($"instruments:\n  - {{id: low, kind: pressure gauge, resolution: 0.1 psi, reads: [vapor pressure], checks: {{{zero}known pressure: {{applied: {applied}, read: 201 psig}}}}}}").All[0].IsTiedDownAt(psi * 6894.757293168));

    // What a phase names in "with" counts only for what that kind of instrument can read; what is of no kind in particular, everything can.
    [Theory]
    [InlineData("pressure gauge", "VaporPressure LiquidPressure TrueSuctionPressure DischargePressure PressureTest Recovery")]
    [InlineData("vacuum gauge", "Evacuation")]
    [InlineData("scale", "Charge")]
    [InlineData("barometer", "StationPressure")]
    [InlineData("leak detector", "LeakSearch")]
    [InlineData("torque wrench", "Torque")]
    [InlineData("pipe clamp", "VaporLine LiquidLine DischargeLine CompressorSuctionLine LiquidAfterDrier EvaporatorOutlet IndoorCoilOutlet Sump PressureTestTemperature")]
    [InlineData("thermometer", "VaporLine LiquidLine DischargeLine CompressorSuctionLine LiquidAfterDrier EvaporatorOutlet IndoorCoilOutlet Sump PressureTestTemperature OutdoorAir ReturnAir SupplyAir BoxTemperature")]
    [InlineData("psychrometer", "OutdoorAir ReturnAir SupplyAir BoxTemperature")]
    [InlineData("hygrometer", "OutdoorAir ReturnAir SupplyAir BoxTemperature")]
    public void Each_kind_reads_what_it_is_made_for(string kind, string readings)
    {
        var one = Of($"instruments:\n  - {{id: i, kind: {kind}}}").All[0];
        ReadingName[] special =
        [
            ReadingName.VaporPressure, ReadingName.LiquidPressure, ReadingName.TrueSuctionPressure, ReadingName.DischargePressure, ReadingName.PressureTest, ReadingName.Recovery,
            ReadingName.Evacuation, ReadingName.Charge, ReadingName.StationPressure, ReadingName.LeakSearch, ReadingName.Torque, ReadingName.VaporLine, ReadingName.LiquidLine,
            ReadingName.DischargeLine, ReadingName.CompressorSuctionLine, ReadingName.LiquidAfterDrier, ReadingName.EvaporatorOutlet, ReadingName.IndoorCoilOutlet, ReadingName.Sump,
            ReadingName.PressureTestTemperature, ReadingName.OutdoorAir, ReadingName.ReturnAir, ReadingName.SupplyAir, ReadingName.BoxTemperature,
        ];
        Assert.Equal(readings.Split(' ').Order(StringComparer.Ordinal), special.Where(one.CanRead).Select(r => r.ToString()).Order(StringComparer.Ordinal));
        Assert.True(one.CanRead(ReadingName.Current));
    }

    [Fact]
    public void Two_that_read_the_same_and_differ_are_rivals_unless_one_is_named()
    {
        var context = JobText.Context(JobLines.Of(Kit + "\ncharging: {unit arrived: charged, with: second, added: 1 lb}"));
        var kit = context.Get<InstrumentKit>();
        Assert.Equal(["meter", "second"], kit.Rivals(ReadingName.Electrical, []).Select(i => i.Id));
        Assert.Empty(kit.Rivals(ReadingName.Electrical, context.Job.Charging!.With));
        Assert.Equal(["meter", "second"], kit.Rivals(ReadingName.Electrical, default).Select(i => i.Id));
        Assert.Empty(kit.Rivals(ReadingName.VaporPressure, []));
        var either = JobText.Context(JobLines.Of(Kit + "\ncharging: {unit arrived: charged, with: [spare, second], added: 1 lb}"));
        Assert.Empty(either.Get<InstrumentKit>().Rivals(ReadingName.Electrical, either.Job.Charging!.With.Remove(either.Job.Charging.With[0])));
        Assert.Empty(either.Get<InstrumentKit>().Rivals(ReadingName.VaporPressure, either.Job.Charging.With));
        Assert.Empty(kit.Rivals(ReadingName.Torque, []));
        Assert.Empty(Of(Kit.Replace("3 % of reading", "1.5 % of reading", StringComparison.Ordinal)).Rivals(ReadingName.Electrical, []));

        // A meter named for a phase cannot read its pressures, so it decides nothing between two gauges.
        var gauges = JobText.Context(JobLines.Of(Kit.Replace("accuracy: 2 psi", "accuracy: 2 psi, reads: [vapor pressure]", StringComparison.Ordinal) + "\ncharging: {unit arrived: charged, with: second, added: 1 lb}"));
        Assert.Equal(["low", "spare"], gauges.Get<InstrumentKit>().Rivals(ReadingName.VaporPressure, gauges.Job.Charging!.With).Select(i => i.Id));
    }

    [Fact]
    public void An_instrument_is_found_by_its_name()
    {
        Assert.Equal("meter", Of(Kit).Find("meter")!.Id);
        Assert.Null(Of(Kit).Find("metre"));
    }

    // IEC 60584-1 and ASTM E230 name classes of thermocouples; a resistance thermometer has none of them.
    [Theory]
    [InlineData("thermocouple K class 1", "Iec1")]
    [InlineData("thermocouple T class 1", "Iec1")]
    [InlineData("thermocouple K class 2", "Iec2")]
    [InlineData("thermocouple T class 2", "Iec2")]
    [InlineData("thermocouple K special", "AstmSpecial")]
    [InlineData("thermocouple K standard", "AstmStandard")]
    [InlineData("RTD class A", null)]
    public void A_thermocouple_has_a_class(string sensor, string? of) =>
        Assert.Equal(of, Of($"instruments:\n  - {{id: probe, kind: thermometer, sensor: {sensor}, reads: [vapor line]}}").All[0].ThermocoupleClass?.ToString());

    // ± (1 % + 2 digits) of amperes: the digits are in the statement, and no step comes on top of them.
    [Fact]
    public void A_statement_that_counts_digits_holds_the_step()
    {
        var meter = Of("instruments:\n  - {id: m, kind: clamp meter, accuracy: 1 % of reading + 2 digits, resolution: 0.1 A, reads: [electrical]}").All[0];
        Assert.True(meter.DigitsIncluded);
        Assert.Equal(0.24 + 0.2, meter.HalfWidth(24)!.Value, 1e-9);
        Assert.False(Of(Kit).All[0].DigitsIncluded);
    }

    // 1 % of 100 psi is 1 psi; 2 % of 10 Ω are 0.2 Ω although the meter is made for capacitors.
    [Fact]
    public void A_share_of_the_reading_is_a_share_of_the_number_shown()
    {
        const double Psi = 6894.757293168;
        Assert.Equal(Psi, Of("instruments:\n  - {id: g, kind: pressure gauge, accuracy: 1 % of reading}").All[0].HalfWidth(100 * Psi)!.Value, 1e-6);
        Assert.Equal(0.2, Of("instruments:\n  - {id: c, kind: capacitance meter, accuracy: 2 % of reading}").All[0].HalfWidth(10, Dimension.Resistance)!.Value, 1e-9);
    }

    private static InstrumentKit Of(string lines) => JobText.Context(JobLines.Of(lines)).Get<InstrumentKit>();
}
