using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Xunit;
using static Commission.Checks.Tests.Limits.JobBuilder;
using JobRule = Commission.Jobs.Model.Words.DecisionRule;

namespace Commission.Checks.Tests.Limits;

public sealed class LimitResolverTests
{
    private static readonly string[] TwoPacks = ["refrigeration", "ashrae-15"];

    [Fact]
    public void Common_practice_stands_behind_everything()
    {
        var limit = Resolve(Split()).Find("evacuation.level")!;
        Assert.Equal((LimitTier.CommonPractice, "common-practice", "common practice"), (limit.Tier, limit.Pack, limit.Mark));
    }

    [Fact]
    public void Named_packs_come_first_and_in_their_order()
    {
        var limits = Resolve(Split(), TwoPacks);
        Assert.Equal((LimitTier.Pack, "refrigeration", "published"), (limits.Find("evacuation.level")!.Tier, limits.Find("evacuation.level")!.Pack, limits.Find("evacuation.level")!.Mark));
        Assert.Equal("ashrae-15", limits.Find("pressure-test.minimum-factor")!.Pack);
        Assert.Equal("common-practice", limits.Find("charge.subcooling.tolerance")!.Pack);
        Assert.Equal("ashrae-15", Resolve(Split(), ["ashrae-15", "refrigeration"]).Find("evacuation.level")!.Pack);
    }

    [Fact]
    public void A_figure_of_the_maker_comes_before_packs()
    {
        var job = Split() with { Limits = new MakerLimits { Vacuum = Limit<Pressure, PressureDifference>(maximum: Given(Pressure.FromMicrons(200), "200 micron"), from: "manual p. 12") } };
        var limit = Resolve(job, TwoPacks).Find("evacuation.level")!;
        Assert.Equal((LimitTier.Maker, "", "manual p. 12", "job", "200 micron"), (limit.Tier, limit.Pack, limit.Source, limit.Mark, limit.Upper!.Text));
        Assert.Null(limit.LooserThan);
        Assert.Null(limit.Remark(UnitSystem.Us));
    }

    [Fact]
    public void A_looser_figure_of_the_maker_is_used_and_remarked_upon()
    {
        var job = Split() with { Limits = new MakerLimits { Vacuum = Limit<Pressure, PressureDifference>(maximum: Given(Pressure.FromMicrons(1500), "1500 micron"), from: "manual p. 12") } };
        var limit = Resolve(job).Find("evacuation.level")!;
        Assert.Equal("1500 micron", limit.Upper!.Text);
        Assert.Equal("The maker's figure, at most 1500 micron (manual p. 12), asks less than common practice: at most 500 micron.", LimitWords.In(limit.Remark(UnitSystem.Us)!));
    }

    [Fact]
    public void It_is_compared_with_the_named_pack_and_with_common_practice()
    {
        // 400 micron is stricter than common practice and looser than the refrigeration manual.
        var job = Split() with { Limits = new MakerLimits { Vacuum = Limit<Pressure, PressureDifference>(maximum: Given(Pressure.FromMicrons(400), "400 micron"), from: "manual p. 12") } };
        Assert.Equal(
            "The maker's figure, at most 400 micron (manual p. 12), asks less than the pack refrigeration (generic refrigeration installation manual): at most 250 micron.",
            LimitWords.In(Resolve(job, TwoPacks).Find("evacuation.level")!.Remark(UnitSystem.Us)!));

        // 2000 micron after 10 min is no looser than a pack of 2025 micron, and looser than common practice.
        var decay = Split() with { Limits = new MakerLimits { DecayLimit = new DecayLimit { Level = Given(Pressure.FromMicrons(2000), "2000 micron"), After = Given(Duration.FromMinutes(40), "40 min"), From = Given("manual p. 12", "manual p. 12") } } };
        Assert.Equal(
            "The maker's figure, at most 2000 micron after 40 min (manual p. 12), asks less than common practice: at most 1000 micron after 10 min.",
            LimitWords.In(Resolve(decay, ["en-378"]).Find("evacuation.decay")!.Remark(UnitSystem.Us)!));
    }

    [Fact]
    public void A_shorter_hold_is_looser_even_at_the_same_level()
    {
        var job = Split() with { Limits = new MakerLimits { DecayLimit = new DecayLimit { Level = Given(Pressure.FromMicrons(1000), "1000 micron"), After = Given(Duration.FromMinutes(5), "5 min"), From = Given("manual p. 12", "manual p. 12") } } };
        Assert.NotNull(Resolve(job).Find("evacuation.decay")!.LooserThan);
    }

    [Fact]
    public void The_crews_own_target_may_ask_more_but_not_less()
    {
        Assert.Equal(("common-practice", null), Aimed(500, "500 micron"));
        Assert.Equal(("", null), Aimed(300, "300 micron"));
        Assert.Equal(
            ("common-practice", "The job's own target, at most 2000 micron, has no source and asks less than common practice: at most 500 micron. It was not used."),
            Aimed(2000, "2000 micron"));

        static (string Pack, string? Remark) Aimed(double microns, string text)
        {
            var limit = Resolve(Split() with { Evacuation = new Jobs.Model.Evacuation { Target = Given(Pressure.FromMicrons(microns), text) } }).Find("evacuation.level")!;
            return (limit.Pack, limit.Remark(UnitSystem.Us) is { } remark ? LimitWords.In(remark) : null);
        }
    }

    [Fact]
    public void A_target_of_the_crew_is_set_aside_only_where_something_published_asks_more()
    {
        // Nobody publishes an approach for every unit: there the crew's own figure is all there is.
        var own = Split() with { Limits = new MakerLimits { Approach = Limit(Degrees(9, "9 °F"), Degrees(3, "3 °F")) } };
        var alone = ResolveOwn(own, "charge.approach").Find("charge.approach")!;
        Assert.Equal(("9 °F", DecisionRule.Simple, null, null), (alone.Target!.Text, alone.Rule, alone.SetAside, alone.LooserThan));

        // Beside common practice of 500 micron: the same, less, and more.
        Assert.Null(Own(500).SetAside);
        Assert.Null(Own(400).SetAside);
        Assert.Equal("400 micron", Own(400).Upper!.Text);
        Assert.Equal("501 micron", Own(501).SetAside!.Upper!.Text);
        Assert.Equal("500 micron", Own(501).Upper!.Text);

        static Limit Own(double microns)
        {
            var job = Split() with { Limits = new MakerLimits { Vacuum = Limit<Pressure, PressureDifference>(maximum: Given(Pressure.FromMicrons(microns), $"{microns} micron")) } };
            return ResolveOwn(job, "evacuation.level").Find("evacuation.level")!;
        }

        static LimitResolver ResolveOwn(Job job, string id) =>
            new(LimitLibrary.Embedded, [], LimitWords.Figures(job).SetItem(id, LimitWords.Figures(job)[id] with { HasSource = false }), LimitSituation.Of(job), new DecisionRuleChoice(null));
    }

    [Fact]
    public void Another_situation_keeps_packs_figures_and_rules()
    {
        var job = Split() with
        {
            Limits = new MakerLimits
            {
                Vacuum = Limit<Pressure, PressureDifference>(maximum: Given(Pressure.FromMicrons(200), "200 micron"), from: "manual p. 12"),
                DecisionRule = new DecisionRules { Evacuation = Given(JobRule.Guarded, "guarded") },
            },
        };
        var other = Resolve(job, TwoPacks).In(new LimitSituation { Work = "new installation", System = "VRF" });
        Assert.Equal("VRF", other.Situation.System);
        Assert.Equal("200 micron", other.Find("evacuation.level")!.Upper!.Text);
        Assert.Equal("ashrae-15", other.Find("pressure-test.minimum-factor")!.Pack);
        Assert.Equal(DecisionRule.Guarded, other.Find("evacuation.decay")!.Rule);

        // Common practice: a leak raises a large volume slowly, so a VRF is held for an hour and a split for ten minutes.
        Assert.Equal((600, 3600), (Resolve(Split()).Find("evacuation.decay")!.Companion("after"), Resolve(Split()).In(other.Situation).Find("evacuation.decay")!.Companion("after")));
    }

    [Fact]
    public void A_limit_that_is_required_and_that_nobody_has_is_a_fault()
    {
        Assert.Equal("500 micron", Resolve(Split()).Require("evacuation.level").Upper!.Text);
        Assert.Throws<InvalidOperationException>(() => Resolve(Split()).Require("charge.approach"));
    }

    [Fact]
    public void What_a_pack_says_beside_its_figure_comes_along()
    {
        var library = LimitLibraryTests.With("pack: aldermoor\ntitle: Aldermoor OC-36\npublished by: Aldermoor\nedition: 2026\ndefaults: {basis: standard, mark: published}\nlimits:\n  evacuation.level: {at most: 400 micron, source: manual p. 12, note: with the valves open}\n", out _);
        var limit = Resolve(Split(), ["aldermoor"], library).Find("evacuation.level")!;
        Assert.Equal((LimitTier.Pack, "standard", "manual p. 12", "with the valves open"), (limit.Tier, limit.Basis, limit.Source, LimitWords.In(limit.Note!)));
    }

    [Fact]
    public void The_same_number_in_another_unit_is_not_looser()
    {
        // 66.66 Pa is 499.99 micron; 66.6611936 Pa is 500 micron to nine digits.
        var same = Split() with { Limits = new MakerLimits { Vacuum = Limit<Pressure, PressureDifference>(maximum: Given(Pressure.FromPascals(66.66), "66.66 Pa")) } };
        Assert.Null(Resolve(same).Find("evacuation.level")!.LooserThan);
    }

    [Fact]
    public void An_open_side_is_looser_than_a_bound()
    {
        var job = Split() with { Limits = new MakerLimits { Superheat = Limit<TemperatureDifference, TemperatureDifference>(minimum: Degrees(6, "6 °F"), from: "valve sheet") } };
        var limit = Resolve(job).Find("charge.metering-superheat.range")!;
        Assert.Equal((LimitShape.AtLeast, LimitTier.Maker), (limit.Shape, limit.Tier));
        Assert.NotNull(limit.LooserThan);
    }

    [Fact]
    public void A_limit_that_nobody_sets_is_null_and_one_that_does_not_exist_is_a_fault()
    {
        Assert.Null(Resolve(Split()).Find("charge.approach"));
        Assert.Throws<ArgumentException>(() => Resolve(Split()).Find("charge.aproach"));
    }

    [Fact]
    public void The_rule_belongs_to_the_limit_and_a_maker_figure_inherits_it()
    {
        var job = Split() with { Limits = new MakerLimits { TestPressure = Limit<StatedPressure, PressureDifference>(minimum: Gauge(400), maximum: Gauge(450)), Subcooling = Limit(Degrees(9, "9 °F"), Degrees(3, "3 °F")), TestLoss = Limit<Ratio, Ratio>(maximum: Given(Ratio.FromPercent(0.5), "0.5 %")) } };
        var limits = Resolve(job);
        Assert.Equal(DecisionRule.Guarded, limits.Find("pressure-test.level")!.Rule);
        Assert.Equal(DecisionRule.Guarded, limits.Find("pressure-test.hold.loss")!.Rule);
        Assert.Equal(DecisionRule.Simple, limits.Find("charge.subcooling.tolerance")!.Rule);

        static Given<StatedPressure> Gauge(double psi) => Given(new StatedPressure(psi * 6894.757293168, PressureReference.Gauge), $"{psi} psig");
    }

    [Fact]
    public void A_job_can_ask_for_guarded_decisions_and_not_for_less()
    {
        var everywhere = Resolve(Split() with { Limits = new MakerLimits { DecisionRule = new DecisionRules { All = Given(JobRule.Guarded, "guarded") } } });
        Assert.Equal(DecisionRule.Guarded, everywhere.Find("charge.subcooling.tolerance")!.Rule);
        var charge = Resolve(Split() with { Limits = new MakerLimits { DecisionRule = new DecisionRules { Charge = Given(JobRule.Guarded, "guarded"), All = Given(JobRule.Simple, "simple") } } });
        Assert.Equal(DecisionRule.Guarded, charge.Find("charge.subcooling.tolerance")!.Rule);
        Assert.Equal(DecisionRule.Simple, charge.Find("evacuation.level")!.Rule);
        Assert.Equal(DecisionRule.Guarded, charge.Find("pressure-test.maximum-factor")!.Rule);
    }

    [Theory]
    [InlineData("instruments.ice-point.good")]
    [InlineData("pressure-test.minimum-factor")]
    [InlineData("evacuation.level")]
    [InlineData("air.airflow.minimum")]
    [InlineData("compressor.suction-superheat")]
    [InlineData("electrical.current-unbalance")]
    [InlineData("piping.velocity.riser")]
    [InlineData("safety.device.trip-tolerance")]
    [InlineData("refrigerant.leak-check.sensitivity")]
    public void Each_group_can_be_asked_for_alone(string id)
    {
        var guarded = Given(JobRule.Guarded, "guarded");
        var rules = new DecisionRules { Instruments = guarded, PressureTest = guarded, Evacuation = guarded, Air = guarded, Compressor = guarded, Electrical = guarded, Piping = guarded, Safety = guarded, Refrigerant = guarded };
        var job = Split() with { Limits = new MakerLimits { DecisionRule = rules } };
        Assert.Equal(DecisionRule.Simple, Resolve(Split()).Find(id)!.Rule);
        Assert.Equal(DecisionRule.Guarded, Resolve(job).Find(id)!.Rule);
        Assert.Equal(DecisionRule.Simple, Resolve(job).Find("charge.subcooling.tolerance")!.Rule);
    }

    [Fact]
    public void Only_the_packs_that_are_asked_are_read()
    {
        var read = new List<string>();
        var chain = new PackChain(
            name =>
            {
                read.Add(name);
                return LimitLibrary.Embedded.Find(name);
            },
            ["california-title-24-rater", "ashrae-15"]);
        Assert.Empty(read);
        Assert.Equal("california-title-24-rater", chain.First().Name);
        Assert.Equal(["california-title-24-rater"], read);
        Assert.Equal(["california-title-24-rater", "california-title-24", "ashrae-15", "common-practice", "iec-60335-2-40", "iec-60335-2-89", "ansi-z21-47"], chain.Select(pack => pack.Name));
        Assert.Equal(["california-title-24-rater", "california-title-24", "ashrae-15", "common-practice", "iec-60335-2-40", "iec-60335-2-89", "ansi-z21-47"], chain.Select(pack => pack.Name));
        Assert.Equal(7, read.Count);
    }

    [Fact]
    public void A_pack_named_twice_or_building_in_a_circle_is_asked_once()
    {
        var empty = new Dictionary<string, IReadOnlyList<LimitEntry>>(StringComparer.Ordinal);
        LimitPack Pack(string name, params string[] below) =>
            new(name, name.Plain(), name.Plain(), "1".Plain(), [.. below.Select(other => new PackReference(other, Nowhere))], empty, []);
        var packs = new[] { Pack("a", "b"), Pack("b", "a", "common-practice"), Pack("common-practice") }.ToDictionary(pack => pack.Name, StringComparer.Ordinal);
        Assert.Equal(["a", "b", "common-practice"], new PackChain(packs.GetValueOrDefault, ["a", "a", "b"]).Select(pack => pack.Name));
    }

    [Fact]
    public void A_name_that_was_not_checked_before_is_a_fault() =>
        Assert.Throws<ArgumentException>(() => new PackChain(_ => null, ["a"]).ToList());

    [Fact]
    public void A_makers_pack_speaks_for_the_maker_by_its_name_and_by_its_file()
    {
        var library = LimitLibraryTests.With("pack: aldermoor\ntitle: Aldermoor OC-36\npublished by: Aldermoor\nedition: 2026\ndefaults: {basis: maker, mark: published}\nlimits:\n  charge.subcooling: {target: 9 °F, tolerance: 3 °F, source: unit plate}\n", out var problems);
        Assert.Empty(problems);
        foreach (var named in new[] { "aldermoor", "packs/aldermoor.yaml" })
        {
            var limit = Resolve(Split(), [named], library).Find("charge.subcooling")!;
            Assert.Equal((LimitTier.Maker, "aldermoor", "published"), (limit.Tier, limit.Pack, limit.Mark));
        }
    }

    private static LimitResolver Resolve(Job job, string[]? packs = null, LimitLibrary? library = null) =>
        new(library ?? LimitLibrary.Embedded, packs ?? [], LimitWords.Figures(job), LimitSituation.Of(job), new DecisionRuleChoice(job.Limits?.DecisionRule));
}
