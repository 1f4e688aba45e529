using System.Collections.Immutable;
using Commission.Checks.Inference;
using Commission.Messages;
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

    // Two causes by hand. Three to one for the sound circuit; a reading two steps up with a band of √(0.6² + 0.8²) = 1 step; one reading in fifty is simply wrong, with
    // a band of 4 steps. Normal densities: N(2;1) = 0.0539910, N(2;4) = 0.0880163. Sound: 0.98 · 0.0539910 + 0.02 · 0.0880163 = 0.0546715. The fault shifts it by
    // 2 steps in the sizes 0.45, 0.7, 1, 1.5, 2.2, which leaves 1.1, 0.6, 0, −1 and −2.4: (0.217852 + 0.333225 + 0.398942 + 0.241971 + 0.022395)/5 = 0.242877, and
    // 0.98 · 0.242877 + 0.0017603 = 0.239780. Fault: 0.239780 / (0.239780 + 3 · 0.0546715) = 0.59382.
    [Fact]
    public void Bayes_rule_by_hand()
    {
        var weighed = Two([new Deviation(Scale, 2, 0.8, "".Plain(), "".Plain())]);
        Assert.Equal("fault", weighed[0].Cause.Id);
        Assert.Equal(0.59382, weighed[0].Probability, 2e-5);
        Assert.Equal(1 - 0.59382, weighed[1].Probability, 2e-5);
        // The size that fits best leaves nothing: ln (0.98 · 0.398942 + 0.0017603) − ln 0.0546715.
        Assert.Equal(Math.Log(0.3927235 / 0.0546715), Assert.Single(weighed[0].Moves).LogFactor, 2e-5);
        Assert.Equal(0, Assert.Single(weighed[1].Moves).LogFactor);
        Assert.Equal("a", weighed[0].Moves[0].Evidence);
    }

    // Two equal readings count twice, as things that do not depend on each other: the sizes are weighed for both at once.
    [Fact]
    public void Readings_count_together_in_one_size_of_the_fault()
    {
        double[] one = [0.217852, 0.333225, 0.398942, 0.241971, 0.0223945];
        var fault = one.Average(n => Math.Pow((0.98 * n) + 0.0017603, 2));
        var weighed = Two([new Deviation(Scale, 2, 0.8, "".Plain(), "".Plain()), new Deviation(Scale, 2, 0.8, "".Plain(), "".Plain())]);
        Assert.Equal(fault / (fault + (3 * 0.0546715 * 0.0546715)), weighed[0].Probability, 2e-5);
    }

    // Bubbles: 0.6 under the fault, 0.1 in a sound circuit. 6 · 1 / (6 · 1 + 3) = 2/3; what nobody foresaw leaves 1/4 as it was.
    [Theory]
    [InlineData("glass", "bubbles", 2.0 / 3, 6.0)]
    [InlineData("glass", "clear", 1.0 / 10, 1.0 / 3)]
    [InlineData("glass", "milk", 1.0 / 4, 1.0)]
    [InlineData("frost", "none", 1.0 / 4, 1.0)]
    [InlineData("smell", "burnt", 1.0 / 4, 1.0)]
    public void Things_seen_by_hand(string what, string word, double probability, double factor)
    {
        var fault = Two([], new Seen(what, word)).Single(w => w.Cause.Id == "fault");
        Assert.Equal(probability, fault.Probability, 1e-12);
        Assert.Equal(what, Assert.Single(fault.Moves).Evidence);
        Assert.Equal(Math.Log(factor), fault.Moves[0].LogFactor, 1e-12);
    }

    // What needs a thing that is not there is left out, and so is a cause that says nothing of this way of working.
    [Fact]
    public void A_cause_is_weighed_where_it_can_be()
    {
        var table = new CauseTable(new Dictionary<string, ReadingScale> { ["a"] = Scale }, [Cause("sound", 3, []), Cause("fault", 1, [Line(2)]) with { Needs = "reversing valve" }], new Dictionary<string, Messages.Message>());
        Assert.Equal(2, Weighing.Weigh(table, [], [], CircuitWay.Valve, []).Length);
        Assert.Equal(2, Weighing.Weigh(table, [], [], CircuitWay.Valve, ["full condenser"]).Length);
        Assert.Single(Weighing.Weigh(table, [], [], CircuitWay.Valve, ["full condenser", "reversing valve"]));
        Assert.Single(Weighing.Weigh(table, [], [], CircuitWay.Heating, []));
        Assert.Equal(1, Weighing.Weigh(table, [], [], CircuitWay.Heating, [])[0].Probability);
    }

    // Of two ways in which a fault shows itself the one that fits moves the reading: 2 steps up or 2 steps down.
    [Fact]
    public void Either_way_of_a_fault_may_fit()
    {
        var table = new CauseTable(new Dictionary<string, ReadingScale> { ["a"] = Scale }, [Cause("sound", 3, []), Cause("fault", 1, [Line(2), Line(-2)])], new Dictionary<string, Messages.Message>());
        var up = Weighing.Weigh(table, [new Deviation(Scale, 2, 0.8, "".Plain(), "".Plain())], [], CircuitWay.Valve, []);
        var down = Weighing.Weigh(table, [new Deviation(Scale, -2, 0.8, "".Plain(), "".Plain())], [], CircuitWay.Valve, []);
        Assert.Equal(up.Single(w => w.Cause.Id == "fault").Probability, down.Single(w => w.Cause.Id == "fault").Probability, 1e-12);
        Assert.Equal(Math.Log(0.3927235 / 0.0546715), down.Single(w => w.Cause.Id == "fault").Moves[0].LogFactor, 2e-5);
    }

    // 1.25 and 2.5 bands; a band is never less than 0.3 steps.
    [Theory]
    [InlineData(1.24, 1.0, ReadingPlace.AsExpected)]
    [InlineData(1.26, 1.0, ReadingPlace.Above)]
    [InlineData(2.49, 1.0, ReadingPlace.Above)]
    [InlineData(2.51, 1.0, ReadingPlace.FarAbove)]
    [InlineData(-1.24, 1.0, ReadingPlace.AsExpected)]
    [InlineData(-1.26, 1.0, ReadingPlace.Below)]
    [InlineData(-2.49, 1.0, ReadingPlace.Below)]
    [InlineData(-2.51, 1.0, ReadingPlace.FarBelow)]
    [InlineData(0.37, 0.0, ReadingPlace.AsExpected)]
    [InlineData(0.38, 0.0, ReadingPlace.Above)]
    [InlineData(0.76, 0.0, ReadingPlace.FarAbove)]
    internal void Places_begin_at_one_and_a_quarter_bands(double steps, double band, ReadingPlace place)
    {
        var deviation = new Deviation(Scale, steps, 0.8 * band, "".Plain(), "".Plain()) { Scatter = 0.6 * band };
        Assert.Equal(place, deviation.Place);
        Assert.Equal(ReadingPlace.AsExpected, (deviation with { IsInside = true }).Place);
    }

    [Theory]
    [InlineData(4.0, 1.0)]
    [InlineData(-2.6, -1.0)]
    [InlineData(-5.2, -2.0)]
    [InlineData(0.0, 0.0)]
    public void Steps_differ_above_and_below(double difference, double steps) => Assert.Equal(steps, new ReadingScale("superheat", "superheat".Plain(), 4, 2.6, 0.6).Steps(difference), 1e-12);

    private static readonly ReadingScale Scale = new("a", "a reading".Plain(), 1, 1, 0.6);

    private static ImmutableArray<WeighedCause> Two(IReadOnlyList<Deviation> deviations, params Seen[] seen) => Weighing.Weigh(
        new CauseTable(
            new Dictionary<string, ReadingScale> { ["a"] = Scale },
            [
                Cause("sound", 3, []) with { Seen = new Dictionary<string, Dictionary<string, double>> { ["glass"] = new() { ["clear"] = 0.9, ["bubbles"] = 0.1 }, ["frost"] = new() { ["none"] = 0.9 } } },
                Cause("fault", 1, [Line(2)]) with { Seen = new Dictionary<string, Dictionary<string, double>> { ["glass"] = new() { ["clear"] = 0.3, ["bubbles"] = 0.6 } } },
            ],
            new Dictionary<string, Messages.Message>()),
        deviations, seen, CircuitWay.Valve, []);

    private static ImmutableDictionary<string, double> Line(double steps) => ImmutableDictionary<string, double>.Empty.Add("a", steps);

    private static CauseEntry Cause(string id, double often, ImmutableArray<IReadOnlyDictionary<string, double>> lines) => new(id, often)
    {
        Advice = "none",
        Said = new CauseSayings(id.Plain(), null, null),
        Needs = null,
        IsCondition = false,
        Valve = lines,
        Orifice = lines,
        Heating = [],
        Seen = new Dictionary<string, Dictionary<string, double>>(),
    };

    private static Deviation At(string id, double steps) => new(Table.Readings[id], steps, 0.1, "".Plain(), "".Plain());

    private static ImmutableArray<WeighedCause> Weigh(CircuitWay way, IEnumerable<Deviation> deviations, params Seen[] seen) => Weighing.Weigh(Table, [.. deviations], seen, way, []);
}
