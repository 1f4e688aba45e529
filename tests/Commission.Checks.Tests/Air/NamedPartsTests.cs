using System.Globalization;
using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Air;

/// <summary>What a finding of the air side rests on has its place in it, and what it is held against is shown.</summary>
public sealed class NamedPartsTests
{
    private const string Flow = "airflow: {method: unit display, value: 1000 cfm}";
    private const string Static = "static: {return: -0.21 inwc, supply: 0.19 inwc, return tap: after filter, supply tap: after coil}";

    [Theory]
    [InlineData("air.airflow", "maker's figure", "method, value")]
    [InlineData("air.airflow", "design", "design airflow, method, value")]
    [InlineData("air.airflow", "for its capacity", "capacity, method, value")]
    [InlineData("air.static", null, "max static, return, supply")]
    [InlineData("air.coil-drop", null, "coil, coil drop, wet coil")]
    [InlineData("air.filter-drop", null, "filter, filter drop")]
    [InlineData("air.fan-power", null, "blower power, value")]
    public void What_it_rests_on_is_named(string check, string? subject, string keys)
    {
        var yaml = AirJobs.Yaml($"{{{Static}, {Flow}, design airflow: 1000 cfm, filter: clean, filter drop: 0.11 inwc, coil: clean, coil drop: 0.24 inwc, wet coil: yes, blower power: 400 W}}", equipment: "capacity: 3 ton, nameplate: {max static: 0.50 inwc}",
            limits: "{airflow: {minimum: 900 cfm, maximum: 1300 cfm, from: p. 8}, coil drop: {maximum: 0.30 inwc, from: table}, filter drop: {maximum: 0.15 inwc, from: label}, packs: [resnet-310]}");
        var finding = JobLines.Finding(yaml, check, subject);
        Assert.Empty(keys.Split(", ").Except(JobLines.Keys(yaml, finding)));
        Assert.Equal((Verdict.Pass, true), (finding.Verdict, finding.NextStep is null));
    }

    [Theory]
    [InlineData("air.airflow", "design", "δ")]
    [InlineData("air.airflow", "for its capacity", "q_V/Q")]
    [InlineData("air.static", "total", "TSP")]
    [InlineData("air.fan-power", null, "P/q_V")]
    public void How_the_number_came_about_is_shown(string check, string? subject, string symbol)
    {
        var yaml = AirJobs.Yaml($"{{{Static}, {Flow}, design airflow: 1000 cfm, coil drop: 0.24 inwc, blower power: 400 W}}");
        var finding = JobLines.Finding(yaml, check, subject);
        Assert.Contains(finding.Trace, s => s.Symbol == symbol);
        Assert.NotNull(finding.Measured);
    }

    // Without a figure of anybody the number is told: 1000 cfm, 1000/1200 − 1 = −16.7 %, 400 W / 1000 cfm.
    [Fact]
    public void Without_a_limit_the_number_is_told()
    {
        Assert.Equal(-1.0 / 6, JobLines.Finding(AirJobs.Yaml($"{{{Flow}, design airflow: 1200 cfm}}"), "air.airflow", "design").Measured!.Value.Si, 1e-9);
        var power = AirJobs.One("air.fan-power", $"{{{Flow}, blower power: 400 W}}");
        Assert.Equal(Verdict.Information, power.Verdict);
        Assert.Equal(400 / (1000 * 0.028316846592 / 60), power.Measured!.Value.Si, 1e-6);
        var flow = AirJobs.One("air.airflow", $"{{{Flow}}}", equipment: "receiver: no");
        Assert.Equal((Verdict.Information, null), (flow.Verdict, flow.Subject));
        Assert.Equal(1000 * 0.028316846592 / 60, flow.Measured!.Value.Si, 1e-9);
    }

    // A bare target of the maker is a design value; one with bounds is his limit.
    [Fact]
    public void A_bare_target_of_the_maker_is_a_design()
    {
        var subjects = AirJobs.All("air.airflow", $"{{{Flow}}}", limits: "{airflow: {target: 1100 cfm, from: p. 8}}").Select(f => f.Subject).ToList();
        Assert.Contains("design", subjects);
        Assert.DoesNotContain("maker's figure", subjects);
        var bounded = AirJobs.All("air.airflow", $"{{{Flow}}}", limits: "{airflow: {target: 1100 cfm, tolerance: 50 cfm, from: p. 8}}").Select(f => f.Subject).ToList();
        Assert.Contains("maker's figure", bounded);
        Assert.DoesNotContain("design", bounded);
        // What the job itself names as its design comes before the maker's target: 1000/1000.
        Assert.Equal(0, AirJobs.All("air.airflow", $"{{{Flow}, design airflow: 1000 cfm}}", limits: "{airflow: {target: 1100 cfm, from: p. 8}}").Single(f => f.Subject == "design").Measured!.Value.Si, 1e-9);
    }

    // 15 % below and above 1200 cfm: 1020 and 1380 cfm; the second grade reaches 25 % below, 900 cfm (Standard 310, from memory).
    [Theory]
    [InlineData("1019 cfm", Verdict.Fail, true)]
    [InlineData("1021 cfm", Verdict.Pass, false)]
    [InlineData("1379 cfm", Verdict.Pass, false)]
    [InlineData("1381 cfm", Verdict.Fail, false)]
    [InlineData("901 cfm", Verdict.Fail, true)]
    [InlineData("899 cfm", Verdict.Fail, false)]
    public void The_design_has_two_sides_and_a_second_grade_below(string flow, Verdict verdict, bool second)
    {
        var finding = AirJobs.All("air.airflow", $"{{design airflow: 1200 cfm, airflow: {{method: unit display, value: {flow} +/- 0.1}}}}", limits: "{packs: [resnet-310]}").Single(f => f.Subject == "design");
        Assert.Equal((verdict, second, verdict == Verdict.Fail), (finding.Verdict, finding.Statement.Contains("second grade", StringComparison.Ordinal), finding.NextStep is not null));
        Assert.Equal(second ? 2 : 1, finding.Limits.Length);
    }

    [Theory]
    [InlineData("{airflow: {minimum: 1200 cfm, from: manual p. 8}}", "too little")]
    [InlineData("{airflow: {maximum: 900 cfm, from: manual p. 8}}", "too much")]
    public void Too_little_and_too_much_are_told_apart(string limits, string told)
    {
        var finding = AirJobs.All("air.airflow", $"{{{Static}, blower power: 300 W, {Flow}}}", limits: limits).Single(f => f.Subject == "maker's figure");
        Assert.Contains(told, finding.Statement, StringComparison.Ordinal);
        Assert.NotNull(finding.NextStep);
        // More speed is worked out where air is wanting: 1200/1000, squared and cubed 0.40 · 1.44 inwc and 300 · 1.728 W.
        Assert.Equal(told == "too little", finding.Trace.Any(s => s.Symbol == "n"));
        if (told == "too little")
            Assert.Contains("1.20 times the speed would bring it there, at static pressure 0.576 inwc and blower power 518 W", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_pressure_or_power_more_speed_has_no_price() =>
        Assert.DoesNotContain("fan laws", AirJobs.All("air.airflow", $"{{{Flow}}}", limits: "{airflow: {minimum: 1200 cfm, from: manual p. 8}}").Single(f => f.Subject == "maker's figure").Statement, StringComparison.Ordinal);

    // A route that is only half shown reserves a pass and leaves a failure.
    [Theory]
    [InlineData("640 fpm", Verdict.Conditional)]
    [InlineData("340 fpm", Verdict.Fail)]
    public void A_route_half_shown_reserves_a_pass(string velocity, Verdict verdict)
    {
        var finding = AirJobs.One("air.airflow", $"{{airflow: {{method: traverse, traverse: {{area: 1.8 ft2, velocities: [{velocity}]}}}}}}");
        Assert.Equal((verdict, verdict == Verdict.Conditional, true), (finding.Verdict, finding.Reservation is not null, finding.NextStep is not null));
    }

    // A cold room's air is not counted by its capacity.
    [Fact]
    public void Three_hundred_a_ton_is_for_comfort() => Assert.DoesNotContain(
        JobText.Evaluate(AirJobs.Yaml($"{{{Flow}}}").Replace("system: split", "system: refrigeration, application: medium temperature", StringComparison.Ordinal), "air.airflow"), f => f.Subject == "for its capacity");

    // ANSI/RESNET/ACCA/ICC 310 (from memory): 0.45 W/cfm, second grade 0.58.
    [Theory]
    [InlineData("449 W", Verdict.Pass, false)]
    [InlineData("460 W", Verdict.Fail, true)]
    [InlineData("579 W", Verdict.Fail, true)]
    [InlineData("581 W", Verdict.Fail, false)]
    public void Blower_power_has_a_second_grade(string power, Verdict verdict, bool second)
    {
        var finding = AirJobs.One("air.fan-power", $"{{airflow: {{method: unit display, value: 1000 cfm +/- 0.1}}, blower power: {power} +/- 0.1}}", limits: "{packs: [resnet-310]}");
        Assert.Equal((verdict, second), (finding.Verdict, finding.Statement.Contains("second grade", StringComparison.Ordinal)));
        Assert.Equal(second ? 2 : 1, finding.Limits.Length);
    }

    [Fact]
    public void Without_an_airflow_the_blower_is_not_judged()
    {
        var none = AirJobs.One("air.fan-power", "{blower power: 400 W}");
        Assert.Equal((Verdict.NotEvaluated, true), (none.Verdict, none.NextStep is not null));
        Assert.Single(none.Readings);
        Assert.Empty(AirJobs.All("air.fan-power", $"{{{Flow}}}"));
        Assert.Equal(Verdict.NotEvaluated, AirJobs.One("air.fan-power", "{blower power: 400 W, airflow: {method: unit display, value: 0 cfm}}").Verdict);
    }

    // The maker's range in heating, read in a row or in the test of its own.
    [Theory]
    [InlineData("24.0", Verdict.Fail)]
    [InlineData("26.0", Verdict.Pass)]
    [InlineData("44.0", Verdict.Pass)]
    [InlineData("46.0", Verdict.Fail)]
    public void The_rise_in_heating_stays_in_its_range(string rise, Verdict verdict)
    {
        var supply = (70 + double.Parse(rise, CultureInfo.InvariantCulture)).ToString("0.0", CultureInfo.InvariantCulture);
        const string Limits = "{heat rise: {minimum: 25 °F, maximum: 45 °F, from: rating plate}}";
        var row = AirJobs.One("air.heat-rise", readings: [$"mode: heating, return dry bulb: 70.0, supply dry bulb: {supply}"], limits: Limits);
        var test = AirJobs.One("air.heat-rise", $"{{airflow: {{method: heat rise, heat rise: {{volts: 240 V, amps: 40 A, return: 70.0 °F, supply: {supply} °F}}}}}}", limits: Limits);
        Assert.Equal((verdict, verdict), (row.Verdict, test.Verdict));
        Assert.Equal(("10:30", "heat-rise test"), (row.Subject, test.Subject));
        Assert.Equal(verdict == Verdict.Pass, row.NextStep is null);
        Assert.Contains(row.Trace, s => s.Symbol == "ΔT");
    }

    [Fact]
    public void A_rise_without_a_range_is_told_and_one_too_early_is_not_judged()
    {
        const string Reading = "mode: heating, return dry bulb: 70.0, supply dry bulb: 100.0";
        Assert.Equal(Verdict.Information, AirJobs.One("air.heat-rise", readings: [Reading]).Verdict);
        var early = Assert.Single(JobText.Evaluate(AirJobs.Yaml(readings: [Reading], limits: "{heat rise: {minimum: 25 °F, maximum: 45 °F, from: rating plate}}").Replace("started: \"10:00\"", "started: \"10:28\"", StringComparison.Ordinal), "air.heat-rise"));
        Assert.Equal((Verdict.NotEvaluated, true, true), (early.Verdict, early.Measured is not null, early.NextStep is not null));
        Assert.Empty(AirJobs.All("air.heat-rise", readings: ["mode: heating, return dry bulb: 70.0"]));
        Assert.Empty(AirJobs.All("air.heat-rise", readings: ["mode: cooling, return dry bulb: 70.0, supply dry bulb: 52.0"]));
    }

    [Theory]
    [InlineData("yes", "wet")]
    [InlineData("no", "dry")]
    public void Whether_the_coil_was_wet_is_told(string wet, string told)
    {
        Assert.Contains($"The coil was {told}", AirJobs.One("air.coil-drop", $"{{coil drop: 0.24 inwc, wet coil: {wet}}}").Statement, StringComparison.Ordinal);
        Assert.Null(AirJobs.One("air.coil-drop", "{coil drop: 0.24 inwc}").Reservation);
        Assert.Null(AirJobs.One("air.coil-drop", "{coil drop: 0.34 inwc}", limits: "{coil drop: {maximum: 0.30 inwc, from: table}}").Reservation);
        Assert.NotNull(AirJobs.One("air.coil-drop", "{coil drop: 0.24 inwc}", limits: "{coil drop: {maximum: 0.30 inwc, from: table}}").NextStep);
    }

    // 25 % of the design, and never less than 0.10 inwc (ACCA 5, from memory): 0.50 ± 0.125 inwc, 0.30 ± 0.10 inwc.
    [Theory]
    [InlineData("0.50 inwc", "0.18 inwc", Verdict.Pass)]
    [InlineData("0.50 inwc", "0.16 inwc", Verdict.Fail)]
    [InlineData("0.50 inwc", "0.40 inwc", Verdict.Pass)]
    [InlineData("0.50 inwc", "0.42 inwc", Verdict.Fail)]
    [InlineData("0.30 inwc", "0.19 inwc", Verdict.PassWithinUncertainty)]
    [InlineData("0.30 inwc", "0.20 inwc", Verdict.Fail)]
    public void The_design_of_the_ducts_has_two_sides(string design, string supply, Verdict verdict)
    {
        var yaml = AirJobs.Yaml($"{{static: {{return: -0.21 inwc, supply: {supply}}}}}", limits: $"{{packs: [acca-quality-installation], external static: {{target: {design}, from: design}}}}");
        var finding = JobLines.Finding(yaml, "air.static", "design");
        Assert.Equal((verdict, verdict == Verdict.Fail), (finding.Verdict, finding.NextStep is not null));
        Assert.Contains(finding.Trace, s => s.Symbol == "Δ");
        Assert.Contains("target", JobLines.Keys(yaml, finding));
    }

    [Fact]
    public void A_drop_that_is_missing_leaves_plate_and_design_open()
    {
        const string Limits = "{packs: [acca-quality-installation], external static: {target: 0.40 inwc, from: design}}";
        const string Plate = "capacity: 3 ton, nameplate: {max static: 0.50 inwc}";
        foreach (var (air, plate) in new[]
        {
            ("{static: {return: -0.20 inwc, supply: 0.15 inwc, return tap: before filter, includes filter: yes}}", Verdict.Conditional),
            ("{static: {return: -0.21 inwc, supply: 0.15 inwc, supply tap: before coil, includes coil: no}}", Verdict.Pass),
        })
        {
            var all = AirJobs.All("air.static", air, equipment: Plate, limits: Limits);
            Assert.Equal(plate, all[0].Verdict);
            Assert.Equal(plate == Verdict.Conditional, all[0].NextStep is not null);
            Assert.Equal(Verdict.Conditional, all.Single(f => f.Subject == "design").Verdict);
        }

        var tooHigh = AirJobs.One("air.static", "{static: {return: -0.21 inwc, supply: 0.45 inwc, supply tap: before coil, includes coil: no}}", equipment: Plate);
        Assert.Equal((Verdict.NotEvaluated, true, 1, true), (tooHigh.Verdict, tooHigh.Measured is not null, tooHigh.Limits.Length, tooHigh.NextStep is not null));
        Assert.Equal([Verdict.NotEvaluated, Verdict.NotEvaluated], AirJobs.All("air.static", "{static: {supply: 0.19 inwc}}", limits: Limits).Select(f => f.Verdict));
    }

    [Theory]
    [InlineData("static: {return: -0.21 inwc, supply: 0.19 inwc}", true)]
    [InlineData(Static, false)]
    public void Taps_that_nobody_wrote_are_remarked_on(string air, bool remarked) =>
        Assert.Equal(remarked, AirJobs.All("air.static", $"{{{air}}}")[0].Statement.Contains("taps are not written", StringComparison.Ordinal));

    // Table RA3.2-3 at 75 °F and 63 °F: 18.6 °F (from memory). Two rows below it, the airflow is not what is wrong; one is read again.
    [Fact]
    public void The_split_names_target_and_the_other_rows()
    {
        const string Warm = "return dry bulb: 75.0, return wet bulb: 63.0, supply dry bulb: 60.5";
        const string Enough = "return dry bulb: 75.0, return wet bulb: 63.0, supply dry bulb: 56.4";
        var yaml = AirJobs.Yaml(readings: [Warm, Warm]);
        var twice = JobLines.Finding(yaml, "air.temperature-split");
        Assert.Equal(Verdict.Information, twice.Verdict);
        Assert.Equal(2, twice.Readings.Count(r => r.Name.StartsWith("return wet bulb", StringComparison.Ordinal)));
        Assert.Equal(2, twice.Readings.Count(r => r.Name.StartsWith("supply dry bulb", StringComparison.Ordinal)));
        Assert.Contains("compressor started", JobLines.Keys(yaml, twice));
        Assert.Equal(Verdict.Conditional, AirJobs.One("air.temperature-split", readings: [Enough, Warm]).Verdict);
        Assert.Equal(Verdict.Pass, AirJobs.One("air.temperature-split", readings: [Warm, Enough]).Verdict);
        Assert.Equal(Verdict.Conditional, AirJobs.One("air.temperature-split", readings: ["mode: heating, " + Warm, Warm]).Verdict);
        Assert.Equal(Verdict.Conditional, AirJobs.One("air.temperature-split", readings: ["return dry bulb: 75.0, return wet bulb: 63.0", Warm]).Verdict);
        var once = AirJobs.One("air.temperature-split", readings: [Warm]);
        Assert.Null(once.Limits[0].LowerSi);
        Assert.Equal(21.6, once.Limits[0].UpperSi!.Value * 1.8, 1e-6);
        Assert.Contains(once.Trace, s => s.Symbol == "ΔT");
    }

    [Theory]
    [InlineData("{temperature split: {minimum: 20 °F, from: manual p. 9}}", "56.4", Verdict.Fail)]
    [InlineData("{temperature split: {minimum: 17 °F, from: manual p. 9}}", "56.4", Verdict.Pass)]
    [InlineData("{temperature split: {maximum: 18 °F, from: manual p. 9}}", "56.4", Verdict.Fail)]
    [InlineData("{temperature split: {maximum: 20 °F, from: manual p. 9}}", "56.4", Verdict.Pass)]
    public void A_figure_of_the_maker_with_one_side_judges_it(string limits, string supply, Verdict verdict)
    {
        // 75.0 − 56.4 = 18.6 °F.
        var finding = AirJobs.One("air.temperature-split", readings: [$"return dry bulb: 75.0, supply dry bulb: {supply}"], limits: limits);
        Assert.Equal((verdict, verdict == Verdict.Fail), (finding.Verdict, finding.NextStep is not null));
        // A cold room's air is judged where its maker says how.
        var cold = AirJobs.Yaml(readings: [$"return dry bulb: 75.0, supply dry bulb: {supply}"], limits: limits).Replace("system: split", "system: refrigeration, application: medium temperature", StringComparison.Ordinal);
        Assert.Equal(verdict, JobLines.Finding(cold, "air.temperature-split").Verdict);
    }

    // A route half shown reserves a pass of the design too: one velocity of 640 fpm in 1.8 ft² are 1152 cfm, 4 % short of 1200.
    [Fact]
    public void A_route_half_shown_reserves_the_design()
    {
        var finding = AirJobs.All("air.airflow", "{design airflow: 1200 cfm, airflow: {method: traverse, traverse: {area: 1.80 ft2, velocities: [640 fpm]}}}", limits: "{packs: [acca-quality-installation]}").Single(f => f.Subject == "design");
        Assert.Equal((Verdict.Conditional, true), (finding.Verdict, finding.Reservation is not null));
    }

    [Fact]
    public void The_nominal_airflow_is_told_beside_the_least() =>
        Assert.Contains("400 cfm/ton", AirJobs.One("air.airflow", $"{{{Flow}}}").Statement, StringComparison.Ordinal);

    // Hood 1000 ± 35 cfm (3 % rectangular), heat rise 1011 and 674 cfm (240 V · 40 A · 3.412 over 1.08 · 30 and · 45 °F).
    [Theory]
    [InlineData("100.0 °F", true)]
    [InlineData("115.0 °F", false)]
    public void Two_routes_agree_or_do_not(string supply, bool agree)
    {
        var yaml = AirJobs.Yaml($"{{static: {{return: -0.21 inwc, supply: 0.19 inwc}}, fan table: {{from: p. 8, points: [{{static: 0.2 inwc, airflow: 1300 cfm}}, {{static: 0.4 inwc, airflow: {(agree ? 1000 : 1500)} cfm}}, {{static: 0.6 inwc, airflow: 900 cfm}}]}}, airflow: {{method: heat rise, heat rise: {{volts: 240 V, amps: 40 A, return: 70.0 °F, supply: {supply}}}}}}}");
        var compared = JobText.Evaluate(yaml, "air.airflow").Single(f => f.Trace.Any(s => s.Symbol == "E_n"));
        Assert.Equal(agree, double.Parse(compared.Trace.Single(s => s.Symbol == "E_n").Result, CultureInfo.InvariantCulture) <= 1);
        Assert.Equal(!agree, compared.Statement.Contains("do not agree", StringComparison.Ordinal));
    }

    // What more speed would cost comes out of pressure and power: both are named where air is wanting.
    [Fact]
    public void The_price_of_more_speed_names_its_readings()
    {
        var yaml = AirJobs.Yaml($"{{{Static}, blower power: 300 W, {Flow}}}", limits: "{airflow: {minimum: 1200 cfm, from: manual p. 8}}");
        var keys = JobLines.Keys(yaml, JobLines.Finding(yaml, "air.airflow", "maker's figure")).ToList();
        foreach (var key in new[] { "return", "supply", "return tap", "supply tap", "blower power" })
            Assert.Contains(key, keys);
        var plate = JobLines.Keys(yaml, JobText.Evaluate(yaml, "air.static")[0]).ToList();
        Assert.Contains("return tap", plate);
        Assert.Contains("supply tap", plate);
    }

    // A range with one end only judges at that end: a rise of 30 °F.
    [Theory]
    [InlineData("minimum: 25 °F", Verdict.Pass)]
    [InlineData("minimum: 35 °F", Verdict.Fail)]
    [InlineData("maximum: 45 °F", Verdict.Pass)]
    [InlineData("maximum: 25 °F", Verdict.Fail)]
    public void A_rise_is_judged_at_one_end(string limit, Verdict verdict)
    {
        var yaml = AirJobs.Yaml(readings: ["mode: heating, return dry bulb: 70.0, supply dry bulb: 100.0"], limits: $"{{heat rise: {{{limit}, from: rating plate}}}}");
        Assert.Equal(verdict, JobLines.Finding(yaml, "air.heat-rise").Verdict);
        Assert.Contains("compressor started", JobLines.Keys(yaml, JobLines.Finding(yaml, "air.heat-rise")));
    }

    [Fact]
    public void A_drop_of_nothing_is_a_drop() => Assert.Equal(Verdict.Pass, AirJobs.One("air.filter-drop", "{filter drop: 0 inwc}", limits: "{filter drop: {maximum: 0.15 inwc, from: label}}").Verdict);

    // The table is for full load; the maker's figure is for what he says.
    [Fact]
    public void At_part_load_the_makers_split_judges()
    {
        const string Reading = "return dry bulb: 75.0, return wet bulb: 63.0, supply dry bulb: 56.4";
        Assert.Equal(Verdict.Pass, AirJobs.One("air.temperature-split", readings: [Reading], limits: "{temperature split: {minimum: 16 °F, maximum: 22 °F, from: manual p. 9}}", charging: "running: part").Verdict);
        var table = AirJobs.One("air.temperature-split", readings: [Reading], charging: "running: part");
        Assert.Equal(Verdict.NotEvaluated, table.Verdict);
        Assert.Contains(table.Readings, r => r.Name.StartsWith("return wet bulb", StringComparison.Ordinal));
    }

    [Fact]
    public void A_maker_who_allows_more_than_the_table_is_remarked_on() => Assert.Contains(
        "asks less than",
        AirJobs.One("air.temperature-split", readings: ["return dry bulb: 75.0, return wet bulb: 63.0, supply dry bulb: 56.4"], limits: "{temperature split: {target: 18 °F, tolerance: 9 °F, from: manual p. 9}}").Statement,
        StringComparison.Ordinal);

    [Theory]
    [InlineData("53.0", "split-high")]
    [InlineData("56.4", "split-asked")]
    [InlineData("60.5", "split-low-once")]
    public void What_the_split_means_is_told(string supply, string message)
    {
        var finding = AirJobs.One("air.temperature-split", readings: [$"return dry bulb: 75.0, return wet bulb: 63.0, supply dry bulb: {supply}"]);
        Assert.Equal(message, finding.Messages!.Statement[0].Name);
        if (supply == "60.5")
            Assert.Contains("18.6", finding.Reservation, StringComparison.Ordinal);
    }

    // What was not shown is reserved below the target as it is on it.
    [Fact]
    public void A_low_split_keeps_its_other_reservations()
    {
        static string Of(string yaml) => Assert.Single(JobText.Evaluate(yaml, "air.temperature-split")).Reservation!;
        var plain = AirJobs.Yaml(readings: ["return dry bulb: 75.0, return wet bulb: 63.0, supply dry bulb: 60.5"]);
        Assert.Contains("accuracy", Of(plain.Replace("accuracy: 0.5 °F, resolution: 0.1 °F", "resolution: 0.1 °F", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("full load", Of(plain.Replace("compressor: fixed", "compressor: two-stage", StringComparison.Ordinal).Replace("running: full", "running: unknown", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.DoesNotContain("full load", Of(plain), StringComparison.Ordinal);
    }
}
