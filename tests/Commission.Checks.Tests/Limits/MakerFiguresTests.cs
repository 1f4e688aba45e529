using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Xunit;
using static Commission.Checks.Tests.Limits.JobBuilder;

namespace Commission.Checks.Tests.Limits;

public sealed class MakerFiguresTests
{
    [Fact]
    public void Subcooling_of_a_plate_gives_a_target_and_a_tolerance()
    {
        var figures = LimitWords.Figures(Split() with { Limits = new MakerLimits { Subcooling = Limit(Degrees(9, "9 °F"), Degrees(3, "3 °F")) } });
        Assert.Equal(["charge.subcooling", "charge.subcooling.tolerance"], figures.Keys.Order(StringComparer.Ordinal));
        var target = figures["charge.subcooling"].Limit;
        Assert.Equal((LimitShape.Target, "9 ± 3 °F", "unit plate", "job"), (target.Shape, LimitWords.Text(target, UnitSystem.Us), target.Source, target.Mark));
        Assert.Equal("± 3 °F", LimitWords.Text(figures["charge.subcooling.tolerance"].Limit, UnitSystem.Us));
        Assert.Equal(Nowhere, target.At);
    }

    [Fact]
    public void A_target_without_tolerance_leaves_the_tolerance_to_the_packs()
    {
        var figures = LimitWords.Figures(Split() with { Limits = new MakerLimits { Superheat = Limit<TemperatureDifference, TemperatureDifference>(Degrees(12, "12 °F")) } });
        Assert.Equal(["charge.superheat"], figures.Keys);
        Assert.Equal((LimitShape.Target, null, null), (figures["charge.superheat"].Limit.Shape, figures["charge.superheat"].Limit.Lower, figures["charge.superheat"].Limit.Upper));
    }

    [Fact]
    public void A_range_of_superheat_is_also_the_range_of_the_valve()
    {
        var figures = LimitWords.Figures(Split() with { Limits = new MakerLimits { Superheat = Limit<TemperatureDifference, TemperatureDifference>(minimum: Degrees(6, "6 °F"), maximum: Degrees(14, "14 °F")) } });
        Assert.Equal("6 to 14 °F", LimitWords.Text(figures["charge.metering-superheat.range"].Limit, UnitSystem.Us));
        Assert.Equal("6 to 14 °F", LimitWords.Text(figures["charge.superheat"].Limit, UnitSystem.Us));
    }

    [Fact]
    public void A_target_where_only_a_bound_makes_sense_is_that_bound()
    {
        var figures = LimitWords.Figures(Split() with { Limits = new MakerLimits { Vacuum = Limit<Pressure, PressureDifference>(Given(Pressure.FromMicrons(400), "400 micron")), TestHold = Limit<Duration, Duration>(Given(Duration.FromHours(24), "24 h")) } });
        Assert.Equal("at most 400 micron", LimitWords.Text(figures["evacuation.level"].Limit, UnitSystem.Us));
        Assert.Equal("at least 24 h", LimitWords.Text(figures["pressure-test.hold.time"].Limit, UnitSystem.Us));
    }

    [Fact]
    public void The_plate_sets_the_external_static_and_the_makers_limits_replace_it()
    {
        var plate = Split() with { Equipment = Split().Equipment with { Nameplate = new Nameplate { MaxStatic = Given(PressureDifference.FromInchesOfWater(0.5), "0.50 inwc") } } };
        Assert.Equal(("nameplate", "at most 0.50 inwc"), Static(plate));
        Assert.Equal(("manual p. 3", "at most 0.6 inwc"), Static(plate with { Limits = new MakerLimits { ExternalStatic = Limit<PressureDifference, PressureDifference>(maximum: Given(PressureDifference.FromInchesOfWater(0.6), "0.6 inwc"), from: "manual p. 3") } }));

        static (string Source, string Text) Static(Job job)
        {
            var limit = LimitWords.Figures(job)["air.static.external-maximum"].Limit;
            return (limit.Source, LimitWords.Text(limit, UnitSystem.Us));
        }
    }

    [Fact]
    public void Numbers_validity_ranges_and_thresholds()
    {
        var figures = LimitWords.Figures(Split() with
        {
            Limits = new MakerLimits
            {
                CompressionRatio = new NumberLimit { Maximum = Given(8.0, "8"), From = Given("compressor sheet", "compressor sheet") },
                NitrogenBreaks = new NumberLimit { Minimum = Given(2.0, "2"), From = Given("manual p. 12", "manual p. 12") },
                ValidOutdoor = Given(new Jobs.Model.QuantityRange<Temperature>(Given(Temperature.FromFahrenheit(65), "65 °F"), Given(Temperature.FromFahrenheit(105), "105 °F")), "65 to 105 °F"),
                LongLineOver = Limit<Length, Length>(minimum: Given(Length.FromFeet(80), "80 ft")),
                ChargeTolerance = Limit<Mass, Mass>(maximum: Given(Mass.FromOunces(2), "2 oz")),
                TestPressure = Limit<StatedPressure, PressureDifference>(minimum: Given(new StatedPressure(400 * 6894.757293168, PressureReference.Gauge), "400 psig"), maximum: Given(new StatedPressure(450 * 6894.757293168, PressureReference.Gauge), "450 psig")),
                DischargeTemperature = Limit<Temperature, TemperatureDifference>(maximum: Given(Temperature.FromFahrenheit(220), "220 °F")),
            },
        });
        Assert.Equal("at most 8", Text("compressor.ratio.maximum"));
        Assert.Equal("at least 2", Text("evacuation.break.count"));
        Assert.Equal("65 to 105 °F", Text("charge.validity.outdoor"));
        Assert.Equal("at most 80 ft", Text("piping.long-line.length"));
        Assert.Equal("± 2 oz", Text("charge.weight.tolerance-mass"));
        Assert.Equal("400 to 450 psig", Text("pressure-test.level"));
        Assert.Equal("at most 220 °F", Text("compressor.discharge-temperature"));
        Assert.Equal(PressureReference.Gauge, figures["pressure-test.level"].Limit.Lower!.Reference);

        string Text(string id) => LimitWords.Text(figures[id].Limit, UnitSystem.Us);
    }

    [Fact]
    public void A_decay_limit_with_a_source_is_the_makers_and_without_one_the_crews()
    {
        Assert.True(Decay(Given("manual p. 12", "manual p. 12")).HasSource);
        Assert.False(Decay(null).HasSource);
        Assert.Equal("at most 900 micron after 15 min", LimitWords.Text(Decay(null).Limit, UnitSystem.Us));

        static MakerFigure Decay(Given<string>? from) => LimitWords.Figures(Split() with
        {
            Evacuation = new Jobs.Model.Evacuation { DecayLimit = new DecayLimit { Level = Given(Pressure.FromMicrons(900), "900 micron"), After = Given(Duration.FromMinutes(15), "15 min"), From = from } },
        })["evacuation.decay"];
    }

    [Fact]
    public void A_job_without_figures_has_none() => Assert.Empty(LimitWords.Figures(Split()));

    [Fact]
    public void A_text_that_is_not_canonical_is_a_fault_of_this_program() =>
        Assert.Throws<InvalidOperationException>(() => LimitWords.Figures(Split() with { Limits = new MakerLimits { DrierDrop = Limit<TemperatureDifference, TemperatureDifference>(maximum: Degrees(3, "three")) } }));
}
