using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Safety;

/// <summary>
/// IEC/UL 60335-2-40 annex GG and ASHRAE 15.2, from memory; LFL of R-454B 0.297, R-32 0.307, R-290 0.038 kg/m³. Expected areas and
/// masses were worked out by hand from the printed formulas, not by this program.
/// </summary>
public sealed class FlammableChargeCheckTests
{
    private const string Check = "safety.flammable-charge";

    // Factory charge 2.95 kg and 0.38 kg weighed in make 3.33 kg; the doubt of the scale is written with it so that the room decides.
    private const string Charged = ", nameplate: {factory charge: 2.95 kg}";
    private const string Weighed = "charging: {unit arrived: charged, added: 0.38 kg +/- 0.001, left in hoses: 0 kg +/- 0.001}";

    [Theory]
    [InlineData("floor", "102 m2", "103 m2", "0.6 m")] // (3.33 / (2.5 · 0.297^1.25 · 0.6))² = 102.5 m²
    [InlineData("wall", "11.3 m2", "11.5 m2", "1.8 m")] // 11.4 m²
    [InlineData("ceiling", "7.5 m2", "7.7 m2", "2.2 m")] // 7.6 m²
    public void The_smallest_room_for_3_33_kg_of_R_454B_depends_on_the_release_height(string mounting, string below, string above, string height)
    {
        var fails = Judge($"{{area: {below} +/- 0.01, mounting: {mounting}}}");
        Assert.Equal(Verdict.Fail, fails.Verdict);
        Assert.StartsWith("DANGER", fails.Statement, StringComparison.Ordinal);
        Assert.Contains(height, fails.Statement, StringComparison.Ordinal);
        Assert.Equal(Verdict.Pass, Judge($"{{area: {above} +/- 0.01, mounting: {mounting}}}").Verdict);
    }

    [Theory]
    [InlineData("floor", "102.5 m²")]
    [InlineData("wall", "11.4 m²")]
    [InlineData("ceiling", "7.6 m²")]
    public void A_min_is_printed_as_practice_has_it(string mounting, string printed) =>
        Assert.Equal(printed, Judge($"{{area: 40 m2, mounting: {mounting}}}").Trace.Single(s => s.Symbol == "A_min").Result);

    [Fact]
    public void A_doubt_that_spans_the_limit_is_a_conditional_verdict()
    {
        // A_min 11.39 m²: a room of 11.5 ± 0.5 m² may be too small, one of 11.3 ± 0.5 m² may do.
        Assert.Equal(Verdict.Conditional, Judge("{area: 11.5 m2 +/- 0.5, mounting: wall}").Verdict);
        Assert.Equal(Verdict.Fail, Judge("{area: 11.3 m2 +/- 0.5, mounting: wall}").Verdict);
        Assert.Contains(Judge("{area: 11.5 m2 +/- 0.5, mounting: wall}").Distance!.Budget, b => b.Cause.ToString().Contains("area", StringComparison.Ordinal));
    }

    [Fact]
    public void A_release_height_counts_and_never_less_than_0_6_m()
    {
        Assert.Equal(Verdict.Pass, Judge("{area: 11.5 m2 +/- 0.001, release height: 1.8 m +/- 0.001}").Verdict);
        var low = Judge("{area: 11.5 m2 +/- 0.001, release height: 0.2 m}");
        Assert.Equal(Verdict.Fail, low.Verdict);
        Assert.Contains("0.6 m", low.Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mitigation: leak sensor with fan, leak sensor: {fitted: yes, connected: yes, test run: yes, fan on: yes, compressor off: yes}", Verdict.Pass)]
    [InlineData("mitigation: leak sensor with fan", Verdict.Conditional)] // nothing says that there is a sensor
    [InlineData("mitigation: continuous fan, leak sensor: {fitted: yes}", Verdict.Pass)]
    [InlineData("mitigation: leak sensor with fan, leak sensor: {fitted: yes, connected: no}", Verdict.Fail)]
    [InlineData("mitigation: leak sensor with fan, leak sensor: {fitted: yes, fan on: no}", Verdict.Fail)]
    [InlineData("mitigation: leak sensor with fan, leak sensor: {fitted: no}", Verdict.Fail)]
    [InlineData("mitigation: none", Verdict.Fail)]
    [InlineData("", Verdict.Fail)]
    public void Ducts_count_the_rooms_they_serve_together_where_a_leak_starts_the_fan(string measures, Verdict verdict)
    {
        // 8 and 11 m² under the ceiling hold 3.33 kg, 5 m² do not.
        var served = Judge("{area: 8.0 m2, mounting: ceiling, ducted areas: [5.0 m2, 6.0 m2]}", measures);
        Assert.Equal(verdict, served.Verdict);
        Assert.Contains(verdict == Verdict.Fail ? "do not count together" : "11.0 m²", served.Statement, StringComparison.Ordinal);
        Assert.Contains(served.Readings, r => r.Text == "6.0 m²");
    }

    [Fact]
    public void Above_the_lower_flammability_limit_of_all_the_air_nothing_helps()
    {
        // 5 m² · 2.2 m · 0.297 kg/m³ = 3.267 kg, below the 3.33 kg; up to a ceiling of 2.1 m 5.2 m² make 3.243 kg. A maker's smallest room changes nothing.
        foreach (var room in new[] { "{area: 5.0 m2, mounting: ceiling, ceiling height: 3 m}", "{area: 5.0 m2, mounting: ceiling}", "{area: 5.2 m2, mounting: ceiling, ceiling height: 2.1 m}", "{area: 6 m2, volume: 11 m3, mounting: ceiling}" })
        {
            var finding = Judge(room, "mitigation: continuous fan");
            Assert.Equal(Verdict.Fail, finding.Verdict);
            Assert.Contains("all the air", finding.Statement, StringComparison.Ordinal);
            Assert.Contains("all the air", JobLines.Finding(Job($"limits: {{room area: {{minimum: 4 m2, from: manual}}}}\n{Weighed}\nsafety: {{room: {room}}}", Charged), Check).Statement, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("all the air", Judge("{area: 5.2 m2, mounting: ceiling, ceiling height: 3 m}").Statement, StringComparison.Ordinal);
        Assert.Equal(Verdict.Pass, Judge("{area: 5.0 m2, mounting: ceiling}", "mitigation: shut-off valves, releasable charge: 1.0 kg").Verdict);
    }

    [Fact]
    public void No_opening_lies_above_the_ceiling()
    {
        var finding = Judge("{area: 40 m2, release height: 3.0 m, ceiling height: 2.4 m}");
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains("3.0 m", finding.Statement, StringComparison.Ordinal);
        Assert.Equal(Verdict.Pass, Judge("{area: 40 m2, release height: 2.4 m, ceiling height: 2.4 m}").Verdict);
        // A unit at a ceiling of 2.0 m lets refrigerant out at 2.0 m: 2.5 · 0.297^1.25 · 2.0 · √8.4 = 3.18 kg, with 2.2 m it would be 3.49 kg.
        Assert.Equal(Verdict.Fail, Judge("{area: 8.4 m2, mounting: ceiling, ceiling height: 2.0 m}").Verdict);
        Assert.Equal(Verdict.Pass, Judge("{area: 8.4 m2, mounting: ceiling, ceiling height: 2.4 m}").Verdict);
    }

    [Fact]
    public void Of_several_rooms_the_worst_decides()
    {
        var finding = Judge("[{name: hall, area: 30 m2, mounting: wall}, {name: store, area: 6 m2, mounting: wall}]");
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains("store has 6.0 m²", finding.Statement, StringComparison.Ordinal);
        Assert.Equal(2, finding.Trace.Count(s => s.Symbol == "m_max"));
    }

    [Fact]
    public void Up_to_m1_no_room_is_asked_for()
    {
        // m1 = 6 m³ · 0.297 kg/m³ = 1.782 kg.
        var small = JobLines.Finding(Job("charging: {unit arrived: charged, added: 0 kg +/- 0.001, left in hoses: 0 kg +/- 0.001}", ", nameplate: {factory charge: 1.77 kg}"), Check);
        Assert.Equal(Verdict.Pass, small.Verdict);
        Assert.Contains("1.782 kg", small.Statement, StringComparison.Ordinal);
        var above = JobLines.Finding(Job(Weighed, Charged), Check);
        Assert.Equal(Verdict.NotEvaluated, above.Verdict);
        Assert.Contains("no room is written", above.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Above_m3_no_room_is_large_enough()
    {
        // m3 = 260 m³ · 0.297 kg/m³ = 77.22 kg.
        var finding = JobLines.Finding(Job("charging: {unit arrived: recovered and evacuated, added: 78 kg +/- 0.1, left in hoses: 0 kg +/- 0.001}\nsafety: {room: {area: 5000 m2, mounting: ceiling}}"), Check);
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains("any occupied room", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Above_m2_a_large_room_is_not_enough_without_measures()
    {
        // m2 = 52 m³ · 0.297 kg/m³ = 15.444 kg; 16 kg in 2000 m² would pass the room's formula.
        const string Parts = "charging: {unit arrived: recovered and evacuated, added: 16 kg +/- 0.01, left in hoses: 0 kg +/- 0.001}\n";
        Assert.Equal(Verdict.Fail, JobLines.Finding(Job(Parts + "safety: {room: {area: 2000 m2, mounting: ceiling}}"), Check).Verdict);
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job(Parts + "safety: {mitigation: continuous fan, room: {area: 2000 m2, mounting: ceiling, ceiling height: 3 m}}"), Check).Verdict);
    }

    [Theory]
    [InlineData("11.5 m2 +/- 0.01", "2.0 m +/- 0.001", Verdict.Pass)] // 11.5 · 2.0 · 0.297 · 0.5 = 3.416 kg
    [InlineData("10.5 m2 +/- 0.01", "2.4 m +/- 0.001", Verdict.Pass)] // up to 2.2 m: 3.430 kg
    [InlineData("10 m2 +/- 0.01", "2.4 m +/- 0.001", Verdict.Fail)] // up to 2.2 m: 3.267 kg
    [InlineData("9 m2 +/- 0.01", "4 m +/- 0.001", Verdict.Fail)] // up to 2.2 m: 2.940 kg
    public void With_a_fan_the_air_of_the_room_counts(string area, string ceiling, Verdict verdict)
    {
        var room = $"{{area: {area}, mounting: floor, ceiling height: {ceiling}}}";
        Assert.Equal(Verdict.Fail, Judge(room).Verdict);
        Assert.Equal(verdict, Judge(room, "mitigation: leak sensor with fan, leak sensor: {fitted: yes, connected: yes, test run: yes, fan on: yes, compressor off: yes}").Verdict);
        Assert.Equal(Verdict.NotEvaluated, Judge("{area: 10 m2, mounting: floor}", "mitigation: continuous fan").Verdict);
    }

    [Fact]
    public void Shut_off_valves_count_what_they_let_out()
    {
        Assert.Equal(Verdict.NotEvaluated, Judge("{area: 8 m2, mounting: wall}", "mitigation: shut-off valves").Verdict);
        Assert.Equal(Verdict.Pass, Judge("{area: 8 m2, mounting: wall}", "mitigation: shut-off valves, releasable charge: 2.5 kg").Verdict);
        var without = Judge("{area: 8 m2, mounting: wall}", "releasable charge: 2.5 kg");
        Assert.Equal(Verdict.Fail, without.Verdict);
        Assert.Contains("without shut-off valves", without.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void The_dispersal_rule_of_ASHRAE_15_2_when_its_pack_is_named()
    {
        // R-454B in 50 m³: 50 · 0.297 · 0.5 = 7.425 kg, half of it where people cannot leave by themselves: 3.7125 kg.
        var finding = JobLines.Finding(Job($"limits: {{packs: [ashrae-15]}}\n{Weighed}\nsafety: {{room: {{area: 25 m2, volume: 50 m3, occupancy: institutional}}}}", Charged), Check);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Equal("3.713 kg", finding.Trace.Single(s => s.Symbol == "EDVC").Result);
        Assert.Equal("from memory", finding.Limits[0].Mark);
    }

    [Fact]
    public void Propane_has_no_wider_steps()
    {
        // m1 = 4 · 0.038 = 0.152 kg; wall, 20 m²: 2.5 · 0.038^1.25 · 1.8 · √20 = 0.338 kg.
        string Of(string mass) => JobLines.Of($"charging: {{unit arrived: recovered and evacuated, added: {mass} +/- 0.0001, left in hoses: 0 kg +/- 0.0001}}\nsafety: {{room: {{area: 20 m2 +/- 0.01, mounting: wall}}}}", refrigerant: "R-290", system: "refrigeration", units: "si");
        Assert.Equal(Verdict.Pass, JobLines.Finding(Of("0.337 kg"), Check).Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(Of("0.339 kg"), Check).Verdict);
        Assert.Contains("0.152 kg", JobLines.Finding(Of("0.15 kg"), Check).Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void The_linear_part_governs_a_small_high_room()
    {
        // R-32, 2.5 kg at 2.2 m: quadratic 3.956 m², linear 2.5 / (0.75 · 0.307 · 2.2) = 4.935 m², which governs.
        string Of(string area) => JobLines.Of($"charging: {{unit arrived: recovered and evacuated, added: 2.5 kg +/- 0.0001, left in hoses: 0 kg +/- 0.0001}}\nsafety: {{room: {{area: {area} +/- 0.001, mounting: ceiling}}}}", refrigerant: "R-32", units: "si");
        Assert.Equal(Verdict.Fail, JobLines.Finding(Of("4.92 m2"), Check).Verdict);
        Assert.Equal(Verdict.Pass, JobLines.Finding(Of("4.95 m2"), Check).Verdict);
    }

    [Fact]
    public void The_makers_smallest_room_comes_first()
    {
        var limits = "limits: {room area: {minimum: 15 m2, from: manual p. 31}}\n";
        Assert.Equal(Verdict.Fail, JobLines.Finding(Job($"{limits}{Weighed}\nsafety: {{room: {{area: 12 m2, mounting: wall}}}}", Charged), Check).Verdict);
        var pass = JobLines.Finding(Job($"{limits}{Weighed}\nsafety: {{room: {{area: 16 m2, mounting: wall}}}}", Charged), Check);
        Assert.Equal(Verdict.Pass, pass.Verdict);
        Assert.Equal("maker", pass.Limits[0].Basis);
    }

    [Fact]
    public void What_cannot_be_known_is_said()
    {
        Assert.Equal(Verdict.NotEvaluated, Judge("{area: 20 m2}").Verdict);
        var unknown = JobLines.Finding(Job("charging: {unit arrived: unknown}\nsafety: {room: {area: 20 m2, mounting: wall}}"), Check);
        Assert.Equal(Verdict.NotEvaluated, unknown.Verdict);
        Assert.Contains("charge cannot be known", unknown.Reason, StringComparison.Ordinal);
        Assert.Empty(JobLines.Findings(JobLines.Of(Weighed, refrigerant: "R-410A"), Check));
        Assert.Empty(JobLines.Findings(Job("", work: "seasonal check"), Check));
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(JobLines.Of(Weighed, refrigerant: "R-457A"), Check).Verdict);
        Assert.Contains("below ground", Judge("{area: 20 m2, mounting: wall, below ground: yes}").Statement, StringComparison.Ordinal);
    }

    // Whoever doubts the verdict finds the place of everything it rests on.
    [Theory]
    [InlineData("{area: 20 m2, mounting: wall, ceiling height: 2.4 m, volume: 48 m3, occupancy: general, below ground: no}", "mitigation: leak sensor with fan, leak sensor: {fitted: yes, connected: yes, fan on: yes}", "area, mounting, ceiling height, volume, occupancy, below ground, mitigation, fitted, connected, fan on, unit arrived, factory charge, added, left in hoses")]
    [InlineData("{area: 20 m2, release height: 1.5 m, ducted areas: [10 m2, 12 m2]}", "mitigation: shut-off valves, releasable charge: 2.5 kg", "area, release height, ducted areas, mitigation, unit arrived, factory charge, added, left in hoses, releasable charge")]
    [InlineData("{area: 3 m2, mounting: wall}", "mitigation: shut-off valves, releasable charge: 2.5 kg", "area, mounting, mitigation, unit arrived, factory charge, added, left in hoses, releasable charge")]
    public void Everything_it_rests_on_is_named(string room, string more, string keys)
    {
        var yaml = Job($"{Weighed}\nsafety: {{room: {room}, {more}}}", Charged);
        Assert.Equal(keys.Split(", ").Prepend("refrigerant").Order(), JobLines.Keys(yaml, JobLines.Finding(yaml, Check)).Order());
    }

    [Fact]
    public void Each_step_to_the_room_is_shown()
    {
        // 3.33 kg of R-454B: m1 = 6 · 0.297 = 1.782 kg; in 40 m² at a wall 2.5 · 0.297^1.25 · 1.8 · √40 = 6.24 kg.
        var room = Judge("{area: 40 m2, mounting: wall}");
        Assert.Equal(["m1", "m_max", "A_min"], room.Trace.Select(s => s.Symbol).Where(s => s is "m1" or "m_max" or "A_min" or "m2" or "m3"));
        Assert.Contains(room.Trace, s => s.Symbol == "LFL" && s.Result == "0.297 kg/m³");
        Assert.Equal("1.782 kg", room.Trace.Single(s => s.Symbol == "m1").Result);
        Assert.Equal(6.24, room.Limits[0].UpperSi!.Value, 0.005);
        Assert.Null(room.Limits[0].LowerSi);
        Assert.Equal(3.33, room.Measured!.Value.Si, 1e-9);
        Assert.Equal("2.5 kg", Judge("{area: 8 m2, mounting: wall}", "mitigation: shut-off valves, releasable charge: 2.5 kg").Trace.Single(s => s.Symbol == "m_rel").Result);
        Assert.DoesNotContain(Judge("{area: 8 m2, mounting: wall}", "releasable charge: 2.5 kg").Trace, s => s.Symbol == "m_rel");
        // Everything at its lower flammability limit: 3 m² · 2.2 m · 0.297 kg/m³ = 1.960 kg.
        var burns = Judge("{area: 3 m2, mounting: wall}");
        Assert.Equal(3 * 2.2 * 0.297, burns.Limits[0].UpperSi!.Value, 1e-6);
        Assert.Equal("1.960 kg", burns.Trace.Single(s => s.Symbol == "m_LFL").Result);
        Assert.Null(burns.Limits[0].LowerSi);
    }

    // Of several rooms the one with the least air decides what burns, and up to a lower ceiling there is less of it.
    [Fact]
    public void The_room_with_the_least_air_is_named_where_all_of_it_burns()
    {
        var burns = Judge("[{name: hall, area: 40 m2, mounting: ceiling}, {name: closet, area: 4 m2, mounting: ceiling, ceiling height: 2.0 m}]");
        Assert.True(burns.IsDanger);
        Assert.Contains("closet", burns.Statement, StringComparison.Ordinal);
        Assert.Contains("2.0 m", burns.Statement, StringComparison.Ordinal);
        Assert.Equal(4 * 2.0 * 0.297, burns.Limits[0].UpperSi!.Value, 1e-6);
        Assert.Contains("2.2 m", Judge("{area: 4 m2, mounting: ceiling, ceiling height: 3.0 m}").Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(15.43, Verdict.Pass)]
    [InlineData(15.46, Verdict.Fail)]
    public void Without_measures_m2_holds_in_the_largest_room(double mass, Verdict verdict)
    {
        // m2 = 52 m³ · 0.297 kg/m³ = 15.444 kg.
        var finding = JobLines.Finding(Job($"{Alone(mass)}safety: {{room: {{area: 2000 m2, mounting: ceiling}}}}"), Check);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(52 * 0.297, finding.Limits[0].UpperSi!.Value, 1e-6);
        Assert.Equal("15.444 kg", finding.Trace.Single(s => s.Symbol == "m2").Result);
    }

    [Theory]
    [InlineData(77.21, Verdict.Pass)]
    [InlineData(77.23, Verdict.Fail)]
    public void With_measures_m3_holds_in_the_largest_room(double mass, Verdict verdict)
    {
        // m3 = 260 m³ · 0.297 kg/m³ = 77.22 kg; 2000 m² up to 2.2 m disperse 653 kg.
        var finding = JobLines.Finding(Job($"{Alone(mass)}safety: {{mitigation: continuous fan, room: {{area: 2000 m2, mounting: ceiling, ceiling height: 3 m}}}}"), Check);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(260 * 0.297, finding.Limits[0].UpperSi!.Value, 1e-6);
        Assert.Equal(verdict == Verdict.Fail, finding.Trace.Any(s => s.Symbol == "m3"));
    }

    // m1 is the figure itself: 1.782 kg need no room, a gram more does.
    [Theory]
    [InlineData(1.781, Verdict.Pass)]
    [InlineData(1.783, Verdict.NotEvaluated)]
    public void Above_m1_a_room_is_asked_for(double mass, Verdict verdict)
    {
        var finding = JobLines.Finding(Job(Alone(mass)), Check);
        Assert.Equal(verdict, finding.Verdict);
        if (verdict == Verdict.Pass)
            Assert.Equal(6 * 0.297, finding.Limits[0].UpperSi!.Value, 1e-6);
    }

    [Theory]
    [InlineData("new installation", true)]
    [InlineData("refrigerant change", true)]
    [InlineData("seasonal check", false)]
    public void Without_a_room_only_work_that_brings_the_charge_is_asked(string work, bool asked)
    {
        Assert.Equal(asked ? 1 : 0, JobLines.Findings(Job("", work: work), Check).Length);
        Assert.Single(JobLines.Findings(Job("safety: {room: {area: 20 m2, mounting: wall}}", work: work), Check));
    }

    [Fact]
    public void A_sensor_of_which_nothing_is_written_is_a_reservation_and_asked_for()
    {
        var dispersed = Judge("{area: 10.5 m2, mounting: floor, ceiling height: 2.4 m}", "mitigation: leak sensor with fan");
        Assert.Equal(Verdict.Conditional, dispersed.Verdict);
        Assert.NotNull(dispersed.Reservation);
        Assert.NotNull(dispersed.NextStep);
        var ducts = Judge("{area: 8.0 m2, mounting: ceiling, ducted areas: [10.0 m2, 6.0 m2]}", "mitigation: leak sensor with fan");
        Assert.Equal(Verdict.Conditional, ducts.Verdict);
        Assert.NotNull(ducts.Reservation);
        Assert.NotNull(ducts.NextStep);
        Assert.Null(Judge("{area: 10.5 m2, mounting: floor, ceiling height: 2.4 m}", "mitigation: leak sensor with fan, leak sensor: {fitted: yes}").Reservation);
    }

    // Ducts join rooms only where a fan mixes their air; either way the record says which it was.
    [Fact]
    public void Whether_ducts_counted_is_remarked()
    {
        string[] Said(string room, string more = "") => [.. Judge(room, more).Messages?.Statement.Select(m => m.Id ?? "") ?? []];
        Assert.Contains("safety.room-ducts-not-counted", Said("{area: 40 m2, mounting: ceiling, ducted areas: [20 m2]}"));
        Assert.Contains("safety.room-ducts-counted", Said("{area: 40 m2, mounting: ceiling, ducted areas: [20 m2]}", "mitigation: leak sensor with fan, leak sensor: {fitted: yes}"));
        Assert.DoesNotContain(Said("{area: 40 m2, mounting: ceiling}"), id => id.StartsWith("safety.room-ducts", StringComparison.Ordinal));
        Assert.DoesNotContain("below ground", Judge("{area: 20 m2, mounting: wall, below ground: no}").Statement, StringComparison.Ordinal);
    }

    // R-717 (ammonia) burns slowly and is toxic: its limits are those of another standard.
    [Fact]
    public void The_limits_of_toxic_gases_are_not_these() =>
        Assert.Contains("B2L", JobLines.Finding(JobLines.Of("charging: {unit arrived: recovered and evacuated, added: 2 kg}\nsafety: {room: {area: 200 m2, mounting: ceiling}}", refrigerant: "R-717", units: "si"), Check).Reason, StringComparison.Ordinal);

    private static string Alone(double mass) => FormattableString.Invariant($"charging: {{unit arrived: recovered and evacuated, added: {mass} kg +/- 0.0001, left in hoses: 0 kg +/- 0.0001}}\n");

    private static Records.Findings.Finding Judge(string room, string more = "") =>
        JobLines.Finding(Job($"{Weighed}\nsafety: {{room: {room}{(more.Length == 0 ? "" : ", " + more)}}}", Charged), Check);

    private static string Job(string lines, string equipment = "", string work = "new installation") => JobLines.Of(lines, work: work, refrigerant: "R-454B", equipment: equipment, units: "si");
}
