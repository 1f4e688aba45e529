using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Xunit;

namespace Commission.Checks.Tests.Limits;

/// <summary>The figures of the packs in SI, against numbers worked out from the documents named beside them.</summary>
public sealed class PublishedLimitTests
{
    // 1 micron of the conventional millimetre of mercury, NIST SP 811 [from memory].
    private const double Micron = 0.133322387415;
    private const double Torr = 101325.0 / 760;
    private const double Psi = 6894.757293168;

    private static readonly LimitSituation Split = new() { System = "split", Work = "new installation", Application = "AC", Mode = "cooling" };

    // Level to reach, level or rise allowed, seconds of hold.
    [Theory]
    [InlineData("common-practice", "split", 500 * Micron, 1000 * Micron, 600)] // common practice, no source
    [InlineData("common-practice", "multi-split", 500 * Micron, 1000 * Micron, 1200)] // common practice, no source
    [InlineData("common-practice", "VRF", 500 * Micron, 1000 * Micron, 3600)] // common practice, no source
    [InlineData("common-practice", "refrigeration", 500 * Micron, 1000 * Micron, 1800)] // common practice, no source
    [InlineData("refrigeration", "refrigeration", 250 * Micron, 700 * Micron, 900)] // generic refrigeration manual [published]
    [InlineData("us-guide-spec", "split", 300 * Micron, 800 * Micron, 3600)] // UFGS 15182: 300, rise 500 in an hour [published]
    [InlineData("ashrae-15", "split", 500 * Micron, 1500 * Micron, 600)] // ASHRAE 15.2-2022 [from memory]
    [InlineData("en-378", "split", 270, 270, 1800)] // EN 378-2:2016 6.3 [from memory]
    [InlineData("hold-at-level", "split", 500 * Micron, 500 * Micron, 1200)] // generic manual [published]
    [InlineData("air-to-water-heat-pump", "heat pump", 5 * Torr, 5 * Torr, 3600)] // generic manual, 5 Torr [published]
    public void Evacuation(string pack, string system, double level, double decay, double seconds)
    {
        var limits = Resolver(Split with { System = system }, pack);
        Assert.Equal(level, limits.Find("evacuation.level")!.Upper!.Si, level * 1e-9);
        Assert.Equal(decay, limits.Find("evacuation.decay")!.Upper!.Si, decay * 1e-9);
        Assert.Equal(seconds, limits.Find("evacuation.decay")!.Companion("after")!.Value, 9);
    }

    [Fact]
    public void A_large_packaged_unit_is_held_an_hour()
    {
        var large = Split with { System = "packaged", Capacity = 21 * 3516.8528420667 };
        Assert.Equal(3600, Resolver(large).Find("evacuation.decay")!.Companion("after")!.Value, 9);
        Assert.Equal(600, Resolver(large with { Capacity = 19 * 3516.85 }).Find("evacuation.decay")!.Companion("after")!.Value, 9);
        Assert.Equal(600, Resolver(large with { Capacity = null }).Find("evacuation.decay")!.Companion("after")!.Value, 9);
    }

    [Fact]
    public void EN_378_holds_an_hour_above_200_kilograms()
    {
        Assert.Equal(3600, Resolver(Split with { FullCharge = 200.1 }, "en-378").Find("evacuation.decay")!.Companion("after")!.Value, 9);
        Assert.Equal(1800, Resolver(Split with { FullCharge = 200 }, "en-378").Find("evacuation.decay")!.Companion("after")!.Value, 9);
    }

    [Theory]
    [InlineData(21, 1000, 1)]
    [InlineData(20, 600, 1)]
    [InlineData(10, 600, 1)]
    [InlineData(9.9, 250, 2)]
    [InlineData(0, 250, 2)]
    [InlineData(-0.1, 200, 3)]
    [InlineData(-10, 200, 3)]
    public void Level_by_ambient_temperature_takes_the_colder_row(double celsius, double pascals, double hours)
    {
        // A generic installation manual, French practice [published]: 1000 Pa above 20 °C, 600 at 10, 250 at 0, 200 at -10 °C.
        var limits = Resolver(Split with { Ambient = celsius + 273.15 }, "temperature-dependent-vacuum");
        Assert.Equal(pascals, limits.Find("evacuation.level")!.Upper!.Si, 9);
        Assert.Equal(pascals, limits.Find("evacuation.decay")!.Upper!.Si, 9);
        Assert.Equal(hours * 3600, limits.Find("evacuation.decay")!.Companion("after")!.Value, 9);
    }

    [Fact]
    public void Below_the_coldest_row_the_next_pack_is_asked() =>
        Assert.Equal("common-practice", Resolver(Split with { Ambient = 262 }, "temperature-dependent-vacuum").Find("evacuation.level")!.Pack);

    [Fact]
    public void Triple_evacuation_and_the_rows_that_use_it()
    {
        foreach (var pack in new[] { "triple-evacuation", "us-guide-spec-15730" })
        {
            Assert.Equal(1500 * Micron, Resolver(Split, pack).Find("evacuation.break.level")!.Upper!.Si, 1e-6);
            Assert.Equal(2, Resolver(Split, pack).Find("evacuation.break.count")!.Lower!.Si, 12);
        }

        Assert.Equal(133, Resolver(Split, "us-guide-spec-15730").Find("evacuation.rig.pump-alone")!.Upper!.Si, 9);
        Assert.Equal(0.5 * Torr, Resolver(Split, "half-torr").Find("evacuation.level")!.Upper!.Si, 1e-9);
        Assert.Equal(1.5 * Torr, Resolver(Split, "half-torr").Find("evacuation.break.level")!.Upper!.Si, 1e-9);
        Assert.Equal(1, Resolver(Split, "hold-at-level").Find("evacuation.break.count")!.Lower!.Si, 12);
        Assert.Equal(150 * Psi, Resolver(Split, "hold-at-level").Find("evacuation.break.regulator")!.Upper!.Si, 1e-3);
    }

    [Fact]
    public void The_guide_specification_also_limits_the_rise_and_the_ambient()
    {
        var limits = Resolver(Split, "us-guide-spec");
        Assert.Equal(500 * Micron, limits.Find("evacuation.rise")!.Upper!.Si, 1e-6);
        Assert.Equal(3600, limits.Find("evacuation.rise")!.Companion("after")!.Value, 9);
        Assert.Equal((35 + 459.67) / 1.8, limits.Find("evacuation.ambient")!.Lower!.Si, 9);
        Assert.Equal(24 * 3600, limits.Find("pressure-test.hold.time")!.Lower!.Si, 9);
        Assert.Equal(1.25, limits.Find("pressure-test.maximum-factor")!.Upper!.Si, 12);
    }

    // California RA3.2 [published, as marked in the pack], in °F of difference.
    [Theory]
    [InlineData("california-title-24", "charge.superheat.tolerance", 5)]
    [InlineData("california-title-24", "charge.subcooling.tolerance", 3)]
    [InlineData("california-title-24", "air.temperature-split.tolerance", 3)]
    [InlineData("california-title-24-rater", "charge.superheat.tolerance", 6)]
    [InlineData("california-title-24-rater", "charge.subcooling.tolerance", 4)]
    [InlineData("california-title-24-rater", "air.temperature-split.tolerance", 4)]
    [InlineData("acca-quality-installation", "charge.superheat.tolerance", 5)] // ANSI/ACCA 5 QI-2015 [from memory]
    [InlineData("acca-quality-installation", "charge.subcooling.tolerance", 3)] // ANSI/ACCA 5 QI-2015 [from memory]
    public void Charge_tolerances(string pack, string id, double degrees)
    {
        var limit = Resolver(Split, pack).Find(id)!;
        Assert.Equal(degrees / 1.8, limit.Upper!.Si, 12);
        Assert.Equal(-degrees / 1.8, limit.Lower!.Si, 12);
    }

    [Theory]
    [InlineData("california-title-24", 4, 25)]
    [InlineData("california-title-24-rater", 3, 26)]
    public void Metering_superheat(string pack, double low, double high)
    {
        var limit = Resolver(Split, pack).Find("charge.metering-superheat.range")!;
        Assert.Equal(low / 1.8, limit.Lower!.Si, 12);
        Assert.Equal(high / 1.8, limit.Upper!.Si, 12);
    }

    [Fact]
    public void Air_side_of_the_installation_standards()
    {
        // ANSI/ACCA 5 QI-2015 and ANSI/RESNET/ACCA/ICC 310-2020 [from memory].
        const double WattPerCfm = 60 / 0.028316846592;
        var quality = Resolver(Split, "acca-quality-installation");
        Assert.Equal(0.15, quality.Find("air.airflow.design-tolerance")!.Upper!.Si, 12);
        Assert.Equal(0.25, quality.Find("air.static.design-tolerance")!.Upper!.Si, 12);
        Assert.Equal(24.9, quality.Find("air.static.design-tolerance-minimum")!.Upper!.Si, 0.02);
        var grading = Resolver(Split, "resnet-310");
        Assert.Equal(0.45 * WattPerCfm, grading.Find("air.fan-power")!.Upper!.Si, 1e-6);
        Assert.Equal(0.58 * WattPerCfm, grading.Find("air.fan-power.grade-two")!.Upper!.Si, 1e-6);
        Assert.Equal(0.25, grading.Find("air.airflow.grade-two")!.Upper!.Si, 12);
        Assert.Equal(0.15, grading.Find("air.airflow.design-tolerance")!.Upper!.Si, 12);
    }

    [Fact]
    public void The_rater_falls_back_on_the_installers_figures() =>
        Assert.Equal("california-title-24", Resolver(Split, "california-title-24-rater").Find("charge.stabilised.time")!.Pack);

    [Fact]
    public void Superheat_floor_by_metering_device()
    {
        Assert.Equal(5 / 1.8, Resolver(Split with { Metering = "fixed orifice" }).Find("charge.superheat-floor")!.Lower!.Si, 12);
        Assert.Equal(5 / 1.8, Resolver(Split with { Metering = "Capillary" }).Find("charge.superheat-floor")!.Lower!.Si, 12);
        Assert.Equal(4 / 1.8, Resolver(Split with { Metering = "TXV" }).Find("charge.superheat-floor")!.Lower!.Si, 12);
        Assert.Null(Resolver(Split).Find("charge.superheat-floor"));
    }

    [Fact]
    public void Airflow_of_new_ducted_systems_in_California()
    {
        const double CfmPerTon = 0.028316846592 / 60 / 3516.8528420667;
        Assert.Equal(350, Resolver(Split, "california-title-24").Find("air.airflow.minimum")!.Lower!.Si / CfmPerTon, 6);
        Assert.Equal(300, Resolver(Split with { Work = "charge adjustment" }, "california-title-24").Find("air.airflow.minimum")!.Lower!.Si / CfmPerTon, 6);
        Assert.Equal(300, Resolver(Split).Find("air.airflow.minimum")!.Lower!.Si / CfmPerTon, 6);
    }

    [Fact]
    public void Refrigeration_has_superheats_and_differences_of_its_own()
    {
        var cooler = Split with { System = "refrigeration", Application = "medium temperature" };
        Assert.Equal(6 / 1.8, Resolver(cooler).Find("charge.evaporator-superheat.range")!.Lower!.Si, 12);
        Assert.Equal(8 / 1.8, Resolver(cooler).Find("charge.evaporator-difference.range")!.Lower!.Si, 12);
        Assert.Null(Resolver(Split).Find("charge.evaporator-superheat.range"));
        Assert.Equal(30 / 1.8, Resolver(Split).Find("charge.evaporator-difference.range")!.Lower!.Si, 12);
        Assert.Null(Resolver(cooler).Find("charge.condensing-over-ambient.range"));
    }

    [Fact]
    public void Compression_ratio_by_mode()
    {
        Assert.Equal(3.5, Resolver(Split).Find("compressor.ratio.range")!.Upper!.Si, 12);
        Assert.Equal(8, Resolver(Split).In(Split with { Mode = "heating" }).Find("compressor.ratio.range")!.Upper!.Si, 12);
    }

    [Fact]
    public void Discharge_temperature_counts_for_fixed_speed_only()
    {
        Assert.Equal((225 + 459.67) / 1.8, Resolver(Split with { Compressor = "fixed" }).Find("compressor.discharge-temperature")!.Upper!.Si, 9);
        Assert.Null(Resolver(Split with { Compressor = "variable speed" }).Find("compressor.discharge-temperature"));
    }

    [Fact]
    public void Leak_rates_and_thresholds_of_the_United_States()
    {
        var limits = Resolver(Split with { OzoneDepleting = true }, "us-epa-608");
        Assert.Equal(0.10, limits.Find("refrigerant.leak-rate.trigger")!.Upper!.Si, 12);
        Assert.Equal(50 * 0.45359237, limits.Find("refrigerant.leak-rate.threshold")!.Lower!.Si, 9);
        Assert.Equal(15 * 0.45359237, limits.In(Split with { OzoneDepleting = false }).Find("refrigerant.leak-rate.threshold")!.Lower!.Si, 9);
        Assert.Equal(0.20, limits.In(Split with { Application = "low temperature" }).Find("refrigerant.leak-rate.trigger")!.Upper!.Si, 12);
    }

    [Fact]
    public void Calendar_spans_are_months()
    {
        Assert.Equal(12, Resolver(Split).Find("instruments.calibration.interval")!.Upper!.Si, 12);
        Assert.Equal(1, Resolver(Split).Find("instruments.field-check.interval")!.Upper!.Si, 12);
    }

    [Fact]
    public void The_flammable_rules_stand_behind_common_practice()
    {
        var limits = Resolver(Split with { RefrigerantClass = "A2L" });
        Assert.Equal("iec-60335-2-40", limits.Find("safety.flammable.charge")!.Pack);
        Assert.Equal(LimitTier.Pack, limits.Find("safety.flammable.charge")!.Tier);
        Assert.Null(Resolver(Split with { RefrigerantClass = "A1" }).Find("safety.flammable.charge"));
        Assert.Equal("ashrae-15", Resolver(Split with { RefrigerantClass = "A2L" }, "ashrae-15").Find("safety.flammable.charge")!.Pack);
    }

    [Fact]
    public void A_test_pressure_can_be_chosen_under_every_pack()
    {
        // Minimum and maximum over the same design pressure leave room: no honest test could pass otherwise.
        foreach (var pack in LimitLibrary.EmbeddedNames)
        {
            var limits = Resolver(Split, pack);
            var least = limits.Find("pressure-test.minimum-factor")!.Lower!.Si;
            var most = limits.Find("pressure-test.maximum-factor")!.Upper!.Si;
            Assert.True(least < most, $"{pack}: {least} to {most}");
        }
    }

    [Fact]
    public void Common_practice_leaves_room_below_a_weakest_part_rated_at_the_design_pressure()
    {
        var limits = Resolver(Split);
        Assert.True(limits.Find("pressure-test.minimum-factor")!.Lower!.Si < limits.Find("pressure-test.maximum-factor.weakest-part")!.Upper!.Si);
    }

    [Fact]
    public void A_decay_limit_is_never_below_the_level_at_isolation()
    {
        foreach (var pack in LimitLibrary.EmbeddedNames)
        {
            foreach (var system in new[] { "split", "ductless split", "multi-split", "VRF", "packaged", "heat pump", "refrigeration" })
            {
                var limits = Resolver(Split with { System = system, Ambient = 288 }, pack);
                Assert.True(limits.Find("evacuation.level")!.Upper!.Si <= limits.Find("evacuation.decay")!.Upper!.Si * (1 + 1e-12), $"{pack}, {system}");
            }
        }
    }

    private static LimitResolver Resolver(LimitSituation situation, params string[] packs) =>
        new(LimitLibrary.Embedded, packs, ImmutableDictionary<string, MakerFigure>.Empty, situation, new DecisionRuleChoice(null));
}
