using System.Collections.Immutable;
using Commission.Checks.Inference;
using Xunit;

namespace Commission.Checks.Tests.Inference;

/// <summary>
/// The weighing of causes. Directions as Rossi and Braun (HVAC&amp;R Research 3, 1997) and Breuker and Braun (1998) print them in their rule tables, from memory.
/// </summary>
public sealed class WeighingTests
{
    private static readonly CauseTable Table = CauseTable.Instance;

    public static TheoryData<string, string> CausesByWay() => new(
        from cause in Table.Causes
        from way in Enum.GetValues<CircuitWay>()
        where !cause.Shifts(way).IsEmpty
        select (cause.Id, way.ToString()));

    [Fact]
    public void The_sound_circuit_stands_first_and_every_fault_says_what_to_do()
    {
        Assert.Equal("no fault shown", Table.Causes[0].Id);
        Assert.True(Table.Causes[0].IsSound);
        Assert.All(Table.Causes.Skip(1), c => Assert.True(c.Said is { Next: not null, Apart: not null }, c.Id));
        Assert.Equal(["add"], Table.Causes.Where(c => c.Id == "low charge").Select(c => c.Advice));
        Assert.DoesNotContain(Table.Causes, c => c.Advice == "add" && c.Id != "low charge");
    }

    [Theory]
    [MemberData(nameof(CausesByWay))]
    public void A_cause_that_shows_itself_clearly_is_among_the_first_three(string name, string how)
    {
        var way = Enum.Parse<CircuitWay>(how);
        var cause = Table.Causes.Single(c => c.Id == name);
        foreach (var line in cause.Shifts(way))
        {
            var weighed = Weigh(way, line.Select(shift => At(shift.Key, 1.4 * shift.Value)));
            Assert.Contains(name, weighed.Take(3).Select(w => w.Cause.Id));
        }
    }

    [Fact]
    public void Probabilities_add_up_and_fall()
    {
        var weighed = Weigh(CircuitWay.Valve, [At("superheat", 1.3), At("subcooling", -0.4)]);
        Assert.Equal(1, weighed.Sum(w => w.Probability), 1e-12);
        Assert.Equal(weighed.Select(w => w.Probability).OrderDescending(), weighed.Select(w => w.Probability));
    }

    [Fact]
    public void Without_evidence_causes_are_as_often_as_they_are_met()
    {
        var weighed = Weigh(CircuitWay.Valve, []);
        var all = Table.Causes.Where(c => c == Table.Causes[0] || !c.Valve.IsEmpty).Sum(c => c.Often);
        Assert.Equal(Table.Causes[0].Often / all, weighed[0].Probability, 1e-12);
        Assert.All(weighed[0].Moves, m => Assert.Equal(0, m.LogFactor));
    }

    // Rossi and Braun: high superheat with low subcooling is low charge, with high subcooling a restriction; low superheat with high subcooling behind an orifice too much.
    [Theory]
    [InlineData(CircuitWay.Valve, 1.8, -1.8, "low charge")]
    [InlineData(CircuitWay.Valve, 2.4, 1.2, "valve underfeeding", "liquid line restriction")]
    [InlineData(CircuitWay.Valve, 0.0, -1.9, "low charge")]
    [InlineData(CircuitWay.Valve, 0.0, 2.0, "overcharge")]
    [InlineData(CircuitWay.Valve, -2.0, -0.5, "valve overfeeding")]
    [InlineData(CircuitWay.Orifice, 2.0, -1.6, "low charge")]
    [InlineData(CircuitWay.Orifice, -1.6, 1.5, "overcharge")]
    internal void Superheat_and_subcooling_together(CircuitWay way, double superheat, double subcooling, params string[] causes) =>
        Assert.Contains(Weigh(way, [At("superheat", superheat), At("subcooling", subcooling), At("evaporator split", 0), At("condenser split", 0)])[0].Cause.Id, causes);

    [Fact]
    public void A_drier_that_drops_temperature_tells_a_restriction_from_a_valve()
    {
        Deviation[] starved = [At("superheat", 2.2), At("subcooling", 0.8), At("evaporator split", 1.5)];
        Assert.Equal("liquid line restriction", Weigh(CircuitWay.Valve, [.. starved, At("drier", 2)])[0].Cause.Id);
        Assert.Equal("valve underfeeding", Weigh(CircuitWay.Valve, [.. starved, At("drier", 0)])[0].Cause.Id);
    }

    [Theory]
    [InlineData("foreign gas", "non-condensables")]
    [InlineData("clean", "overcharge")]
    public void The_standing_test_tells_air_from_too_much_refrigerant(string tested, string cause) =>
        Assert.Equal(cause, Weigh(CircuitWay.Valve, [At("subcooling", 1.8), At("condenser split", 1)], new Seen("standing test", tested))[0].Cause.Id);

    [Fact]
    public void A_weak_compressor_is_not_low_charge()
    {
        var weighed = Weigh(CircuitWay.Valve, [At("superheat", 0), At("subcooling", -0.4), At("evaporator split", -1.7), At("condenser split", -1.2), At("air split", -1.5), At("current", -1.4)]);
        Assert.Equal("weak compressor", weighed[0].Cause.Id);
        Assert.Equal("none", weighed[0].Cause.Advice);
    }

    [Theory]
    [InlineData("passing", "passing reversing valve")]
    [InlineData("tight", "weak compressor")]
    public void The_suction_pipe_tells_the_reversing_valve_from_the_compressor(string valve, string cause) => Assert.Equal(
        cause, Weigh(CircuitWay.Valve, [At("evaporator split", -1.7), At("condenser split", -1.2), At("air split", -1.5), At("current", -1.1)], new Seen("reversing valve", valve))[0].Cause.Id);

    [Fact]
    public void A_circuit_without_a_reversing_valve_cannot_have_one_that_passes() =>
        Assert.DoesNotContain(Weighing.Weigh(Table, [At("evaporator split", -1.7)], [], CircuitWay.Valve, ["reversing valve"]), w => w.Cause.Id == "passing reversing valve");

    // One reading in fifty is simply wrong: it must not decide alone, however far out it lies.
    [Fact]
    public void One_wild_reading_among_sound_ones_moves_little()
    {
        Deviation[] sound = [At("superheat", 0), At("evaporator split", 0), At("condenser split", 0), At("air split", 0), At("current", 0)];
        var clear = Weigh(CircuitWay.Valve, [.. sound, At("subcooling", 0)])[0];
        Assert.Equal("no fault shown", clear.Cause.Id);
        Assert.Equal("no fault shown", Weigh(CircuitWay.Valve, [.. sound, At("discharge", 12)])[0].Cause.Id);
    }

    [Theory]
    [InlineData(0, ReadingPlace.AsExpected)]
    [InlineData(0.9, ReadingPlace.Above)]
    [InlineData(-0.9, ReadingPlace.Below)]
    [InlineData(2.2, ReadingPlace.FarAbove)]
    [InlineData(-2.2, ReadingPlace.FarBelow)]
    internal void Places(double steps, ReadingPlace place) => Assert.Equal(place, At("superheat", steps).Place);

    [Fact]
    public void Doubt_widens_the_band() => Assert.Equal(ReadingPlace.AsExpected, (At("superheat", 0.9) with { Doubt = 1 }).Place);

    private static Deviation At(string id, double steps) => new(Table.Readings[id], steps, 0.1, "", "");

    private static ImmutableArray<WeighedCause> Weigh(CircuitWay way, IEnumerable<Deviation> deviations, params Seen[] seen) => Weighing.Weigh(Table, [.. deviations], seen, way, []);
}
