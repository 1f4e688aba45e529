using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Messages;
using Commission.Source;
using Xunit;

namespace Commission.Jobs.Tests;

public sealed class BindingTests
{
    private const string Head = "commission: 1\njob: {id: T, work: opened circuit, date: 2026-06-18, site: {elevation: 100 m}}\n";

    [Theory]
    [InlineData("units: us\n", "118.9 psig", 118.9 * 6894.757293168361)]
    [InlineData("units: si\n", "118.9 bar(g)", 118.9e5)]
    [InlineData("units: {preset: si, pressure: kPag}\n", "118.9 kPag", 118.9e3)]
    [InlineData("units: {preset: us, vacuum: Pa}\n", "118.9 psig", 118.9 * 6894.757293168361)]
    public void A_bare_pressure_is_what_units_says(string units, string canonical, double pascals)
    {
        var value = Job(units + "equipment: {system: split, refrigerant: R-410A}\ncharging: {readings: [{at: \"11:00\", vapor pressure: 118.9}]}\n").Charging!.Readings[0].VaporPressure!;
        Assert.Equal(canonical, value.Text);
        Assert.Equal(pascals, value.Value.Pascals, 6);
        Assert.Equal(PressureReference.Gauge, value.Value.Reference);
    }

    [Fact]
    public void An_exception_to_the_preset_holds_for_its_own_kind_only()
    {
        var job = Job("units: {preset: us, vacuum: Pa}\nequipment: {system: split, refrigerant: R-410A}\nevacuation: {started: \"09:00\", target: 66, coldest part: 66}\n");
        Assert.Equal("66 Pa", job.Evacuation!.Target!.Text);
        Assert.Equal("66 °F", job.Evacuation.ColdestPart!.Text);
    }

    [Fact]
    public void Each_field_has_its_own_unit_not_each_kind_of_quantity()
    {
        var job = Job("units: us\nequipment: {system: split, refrigerant: R-410A, piping: {liquid: {od: 0.375, length: 42}}, nameplate: {max static: 0.5}}\n");
        Assert.Equal(("0.375 in", "42 ft"), (job.Equipment.Piping[0].Liquid!.Od.Text, job.Equipment.Piping[0].Liquid!.Length.Text));
        Assert.Equal("0.5 inwc", job.Equipment.Nameplate!.MaxStatic!.Text);
    }

    [Theory]
    [InlineData("R-454B")]
    [InlineData("R454B")]
    [InlineData("r454b")]
    [InlineData("R 454B")]
    [InlineData("454B")]
    [InlineData("\"454b\"")]
    public void A_refrigerant_may_be_spelt_as_people_do(string text) =>
        Assert.Equal("R-454B", Job($"equipment: {{system: split, refrigerant: {text}}}\n").Equipment.Refrigerant.Value);

    [Theory]
    [InlineData("metering: TXV")]
    [InlineData("metering: {kind: TXV}")]
    public void A_part_may_be_written_as_its_one_value(string metering) =>
        Assert.Equal(MeteringKind.TXV, Job($"equipment: {{system: split, refrigerant: R-32, {metering}}}\n").Equipment.Metering!.Kind.Value);

    [Theory]
    [InlineData("indoor: {model: A}", 1)]
    [InlineData("indoor: [{id: I1}, {id: I2}]", 2)]
    public void One_or_a_list(string indoor, int count) =>
        Assert.Equal(count, Job($"equipment: {{system: multi-split, refrigerant: R-32, {indoor}}}\n").Equipment.Indoor.Length);

    [Fact]
    public void Other_names_for_keys_and_words_become_the_canonical_ones()
    {
        var (reading, problems) = Reading.Of(Head + """
            equipment: {system: split, refrigerant: R-410A, piping: {liquid: {od: 3/8 in, length: 5 m}, suction: {od: 3/4 in, length: 5 m}}}
            instruments: [{id: a, kind: pressure gauge, reads: suction pressure}]
            pressure test: {gas: nitrogen, section: line set and indoor coil}
            evacuation: {started: "09:00", gauge: "at the system, beyond the isolation valve"}
            charging: {readings: [{at: "11:00", suction pressure: 118 psig, gas line: 50 °F}]}

            """);
        Assert.Empty(problems);
        var job = reading.Job!;
        Assert.NotNull(job.Equipment.Piping[0].Vapor);
        Assert.Equal(ReadingName.VaporPressure, job.Instruments[0].Reads[0].Value);
        Assert.Equal((TestGas.DryNitrogen, "dry nitrogen"), (job.PressureTest!.Gas.Value, job.PressureTest.Gas.Text));
        Assert.Equal(CircuitSection.LineSetAndIndoor, job.PressureTest.Section!.Value);
        Assert.Equal("at the system", job.Evacuation!.Gauge!.Text);
        Assert.NotNull(job.Charging!.Readings[0].VaporPressure);
        Assert.NotNull(job.Charging.Readings[0].VaporLine);
        Assert.Equal("dry nitrogen", reading.Input!.Children.Single(c => c.Key == "pressure test").Children[0].Text);
    }

    [Theory]
    [InlineData("yes", true)]
    [InlineData("no", false)]
    [InlineData("true", true)]
    [InlineData("false", false)]
    public void Yes_and_no_in_either_dialect(string text, bool expected) =>
        Assert.Equal(expected, Job($"equipment: {{system: split, refrigerant: R-32, receiver: {text}}}\n").Equipment.Receiver!.Value);

    [Fact]
    public void A_number_may_stand_where_text_is_meant() =>
        Assert.Equal("0036", Job("equipment: {system: split, refrigerant: R-32, outdoor: {model: 0036}}\n").Equipment.Outdoor!.Model!.Value);

    [Fact]
    public void What_an_instrument_shows_is_of_the_kind_it_measures()
    {
        var job = Job("""
            equipment: {system: split, refrigerant: R-410A}
            instruments:
              - {id: g, kind: pressure gauge, full scale: 35 bar(g), resolution: 0.01 bar, checks: {zero: -0.02 bar(g)}}
              - {id: c, kind: pipe clamp, resolution: 0.1 °C, checks: {ice point: {read: 0.4 °C}}}
              - {id: v, kind: vacuum gauge, full scale: 20000 micron, resolution: 1 micron}
              - {id: s, kind: scale, resolution: 5 g, checks: {zero: {read: 0 g}, check weight: {applied: 5 kg, read: 5.01 kg}}}
              - {id: p, kind: psychrometer, accuracy: 0.5 K, humidity accuracy: 2 %}

            """);
        Assert.Equal((35e5, PressureReference.Gauge), (job.Instruments[0].FullScale!.Value.Si, job.Instruments[0].FullScale!.Value.Reference));
        Assert.Equal(Dimension.Temperature, job.Instruments[1].Checks!.IcePoint!.Read.Value.Dimension);
        Assert.Equal(273.55, job.Instruments[1].Checks!.IcePoint!.Read.Value.Si, 9);
        Assert.Equal(Dimension.TemperatureDifference, job.Instruments[1].Resolution[0].Step.Value.Dimension);
        Assert.Equal(20 * 133.322387415, job.Instruments[2].FullScale!.Value.Si, 6);
        Assert.Equal(0, job.Instruments[3].Checks!.Zero!.Read.Value.Si);
        Assert.Equal("2 %", job.Instruments[4].HumidityAccuracy!.Text);
    }

    [Fact]
    public void A_chart_of_the_maker_keeps_its_dashes()
    {
        var chart = Job("""
            units: us
            equipment: {system: split, refrigerant: R-410A}
            limits:
              charts:
                - for: superheat
                  across: {reading: return wet bulb, at: [60, 62, 64]}
                  down: {reading: outdoor dry bulb, at: [80, 90]}
                  values: [[8.7, 12.0, 15.0], [none, none, 8.8]]
                  tolerance: 5 °F
                  from: manual p. 21

            """).Limits!.Charts[0];
        Assert.Equal(8.7 / 1.8, chart.Values[0][0]!.Value, 9);
        Assert.Null(chart.Values[1][0]);
        Assert.Equal((60 + 459.67) / 1.8, chart.Across.At[0].Value.Si, 9);
        Assert.Equal(5 / 1.8, chart.Tolerance!.Value.Si, 9);
    }

    [Theory]
    [InlineData("values: [[1, 2], [3]]", "Row 2 of the chart has 1 value. 2 are expected, one for each value of across. Complete it; a dash of the maker's chart is written none.")]
    [InlineData("values: [[1, 2]]", "The chart has 1 row of values. 2 rows are expected, one for each value of down. Complete it, or delete what is too much.")]
    public void A_chart_must_be_complete(string values, string expected)
    {
        var (_, problems) = Reading.Of("units: us\n" + Head + "equipment: {system: split, refrigerant: R-410A}\nlimits: {charts: [{for: superheat, across: {reading: return wet bulb, at: [60, 62]}, down: {reading: outdoor dry bulb, at: [80, 90]}, " + values + ", from: p}]}\n");
        Assert.Equal(["job.yaml:5:19: " + expected], problems);
    }

    [Fact]
    public void Anchors_may_spare_typing()
    {
        var job = Job("equipment: {system: multi-split, refrigerant: R-32, piping: [{to: I1, liquid: &small {od: 1/4 in, length: 12 m}}, {to: I2, liquid: *small}], indoor: [{id: I1}, {id: I2}]}\n");
        Assert.Equal(job.Equipment.Piping[0].Liquid, job.Equipment.Piping[1].Liquid);
    }

    [Fact]
    public void A_problem_is_shown_with_its_line_and_a_caret()
    {
        var folder = new MemoryFolder().With("job.yaml", Head + "equipment: {system: split, refrigerant: R-454D}\n");
        var problems = new ProblemList();
        var reading = JobReader.Read(new JobSource("today/job.yaml", "job.yaml", folder, null), Reading.Refrigerants, problems);
        Assert.Equal(
            """
            today/job.yaml:3:41: "R-454D" is not a refrigerant this program knows. Did you mean R-454A, R-454B or R-454C?
                equipment: {system: split, refrigerant: R-454D}
                                                        ^~~~~~
            1 problem.

            """.ReplaceLineEndings("\n"), ProblemRenderer.Render(problems, reading.TextOf, Language.English));
    }

    [Fact]
    public void A_limit_pack_beside_the_job_is_read_and_a_named_one_is_left_to_the_checks()
    {
        var yaml = Head + "equipment: {system: split, refrigerant: R-32}\nlimits: {packs: [common practice, shop.yaml]}\n";
        var (reading, problems) = Reading.Of(yaml, new MemoryFolder(), new MemoryFolder().With("shop.yaml", "pack: x\n"));
        Assert.Empty(problems);
        Assert.Equal([JobFileRole.Job, JobFileRole.Pack], reading.Files.Select(f => f.Role));
        Assert.Equal(["job.yaml:4:35: There is no file \"shop.yaml\" in the job's folder. Check the name, or name the shop folder with --shop."], Reading.Of(yaml).Problems);
    }

    // A capacity is stamped as a mass of water or as litres; a litre of water is a kilogram to three digits.
    [Theory]
    [InlineData("units: us\n", "47.7", "47.7 lb", 47.7 * 0.45359237)]
    [InlineData("units: si\n", "21.6", "21.6 kg", 21.6)]
    [InlineData("units: us\n", "21.6 L", "21.6 L", 21.6)]
    [InlineData("units: si\n", "26.2 lb", "26.2 lb", 26.2 * 0.45359237)]
    public void A_water_capacity_is_a_mass_of_water_or_litres(string units, string written, string text, double kilograms)
    {
        var capacity = Job(units + $"equipment: {{system: split, refrigerant: R-410A}}\ncylinders: [{{id: C1, refrigerant: R-410A, water capacity: {written}}}]\n").Cylinders[0].WaterCapacity!;
        Assert.Equal(text, capacity.Text);
        Assert.Equal(kilograms, capacity.Value.Si, 9);
    }

    [Theory]
    [InlineData("0.04 L")]
    [InlineData("2001 L")]
    [InlineData("4 psi")]
    [InlineData("-12 L")]
    [InlineData("12 L 3 L")]
    [InlineData("١٢ L")]
    public void A_water_capacity_that_no_cylinder_has_is_refused_at_its_place(string written)
    {
        var (_, problems) = Reading.Of(Head + $"equipment: {{system: split, refrigerant: R-410A}}\ncylinders: [{{id: C1, refrigerant: R-410A, water capacity: {written}}}]\n");
        Assert.StartsWith("job.yaml:4:", Assert.Single(problems), StringComparison.Ordinal);
    }

    [Fact]
    public void The_plate_has_a_refrigerant_and_a_safety_class_of_its_own()
    {
        var equipment = Job("equipment: {system: split, refrigerant: R-410A, nameplate: {refrigerant: r22, safety class: A2L}}\n").Equipment;
        Assert.Equal(("R-410A", "R-22"), (equipment.Refrigerant.Value, equipment.Nameplate!.Refrigerant!.Value));
        Assert.Equal(SafetyClass.A2L, equipment.Nameplate.SafetyClass!.Value);
    }

    [Fact]
    public void A_change_of_refrigerant_says_from_and_to()
    {
        var change = Job("equipment: {system: split, refrigerant: R-438A}\nrefrigerant change: {from: r-22, to: 438A}\n").RefrigerantChange!;
        Assert.Equal(("R-22", "R-438A"), (change.From.Value, change.To.Value));
    }

    [Fact]
    public void Shorter_lines_are_deducted_where_the_maker_says_so()
    {
        var line = Job("equipment: {system: split, refrigerant: R-410A}\ncharging: {line adjustment: {figure: 0.6 oz/ft, length: 10 ft, from: manual, deduct for shorter lines: manual p. 13}}\n").Charging!.LineAdjustment!;
        Assert.Equal("manual p. 13", line.DeductForShorterLines!.Value);
        Assert.Null(Job("equipment: {system: split, refrigerant: R-410A}\ncharging: {line adjustment: {figure: 0.6 oz/ft, length: 10 ft, from: manual}}\n").Charging!.LineAdjustment!.DeductForShorterLines);
    }

    [Fact]
    public void Frost_and_the_reversing_valve_stand_in_a_reading()
    {
        var row = Job("units: us\nequipment: {system: heat pump, refrigerant: R-410A}\ncharging: {readings: [{at: \"11:00\", frost: suction line, reversing valve: {suction in: 52.3, suction out: 11.5 °C}}]}\n").Charging!.Readings[0];
        Assert.Equal(FrostPlace.SuctionLine, row.Frost!.Value);
        Assert.Equal("52.3 °F", row.ReversingValve!.SuctionIn.Text);
        Assert.Equal(11.5 + 273.15, row.ReversingValve.SuctionOut.Value.Si, 9);
    }

    [Theory]
    [InlineData("refrigerant change: {from: R-22}", "to")]
    [InlineData("charging: {readings: [{at: \"11:00\", reversing valve: {suction in: 52 °F}}]}", "suction out")]
    public void A_half_is_not_enough(string part, string missing)
    {
        var (_, problems) = Reading.Of(Head + $"equipment: {{system: heat pump, refrigerant: R-410A}}\n{part}\n");
        Assert.Contains($"\"{missing}\"", Assert.Single(problems), StringComparison.Ordinal);
    }

    private static Job Job(string yaml)
    {
        var (reading, problems) = Reading.Of(Head + yaml);
        Assert.Equal("", string.Join('\n', problems));
        return reading.Job!;
    }
}
