using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Xunit;
using static Commission.Checks.Tests.Limits.JobBuilder;

namespace Commission.Checks.Tests.Limits;

public sealed class LimitSituationTests
{
    [Fact]
    public void What_a_job_says_decides_its_cases()
    {
        var situation = LimitSituation.Of(Split());
        Assert.True(Holds("work", "new installation", situation));
        Assert.True(Holds("system", "split", situation));
        Assert.True(Holds("metering", "TXV", situation));
        Assert.True(Holds("compressor", "fixed", situation));
        Assert.True(Holds("refrigerant", "R-454B", situation));
        Assert.Equal(3 * 3516.8528420667, situation.Capacity!.Value, 1e-3);
    }

    [Fact]
    public void Outside_refrigeration_it_is_for_comfort_without_a_receiver()
    {
        var situation = LimitSituation.Of(Split());
        Assert.True(Holds("application", "AC", situation));
        Assert.True(Holds("receiver", "no", situation));
        Assert.True(Holds("ducted", "yes", situation));
        var cooler = LimitSituation.Of(With(SystemKind.Refrigeration));
        Assert.Null(cooler.Application);
        Assert.Null(cooler.Receiver);
        Assert.Null(cooler.Ducted);
        Assert.Null(LimitSituation.Of(With(SystemKind.DuctlessSplit)).Ducted);
    }

    // A house blows its air through ducts with these three; of the others nobody knows without asking (common practice, no source).
    [Theory]
    [InlineData(SystemKind.Split, true)]
    [InlineData(SystemKind.HeatPump, true)]
    [InlineData(SystemKind.Packaged, true)]
    [InlineData(SystemKind.DuctlessSplit, null)]
    [InlineData(SystemKind.MultiSplit, null)]
    [InlineData(SystemKind.VRF, null)]
    [InlineData(SystemKind.Refrigeration, null)]
    public void Ducts_are_known_of_a_split_a_heat_pump_and_a_packaged_unit(SystemKind system, bool? ducted)
    {
        Assert.Equal(ducted, LimitSituation.Of(With(system)).Ducted);
        Assert.Equal(system == SystemKind.Refrigeration ? null : "AC", LimitSituation.Of(With(system)).Application);
        Assert.Equal(system == SystemKind.Refrigeration ? null : false, LimitSituation.Of(With(system)).Receiver);
    }

    [Fact]
    public void What_is_written_comes_before_what_is_known_of_the_system()
    {
        var written = Split().Equipment with
        {
            Ducted = Given(false, "no"),
            Receiver = Given(true, "yes"),
            Application = Given(Application.Ice, "ice"),
            HermeticallySealed = Given(true, "yes"),
            Nameplate = new Nameplate { Phases = Given(3, "3") },
        };
        var situation = LimitSituation.Of(Split() with { Equipment = written });
        Assert.Equal((false, true, "Ice", true, 3), (situation.Ducted, situation.Receiver, situation.Application, situation.HermeticallySealed, situation.Phases));
        Assert.Equal((null, null), (LimitSituation.Of(Split()).HermeticallySealed, LimitSituation.Of(Split()).Phases));
        var bare = LimitSituation.Of(Split() with { Equipment = Split().Equipment with { Metering = null, Compressor = null, Capacity = null } });
        Assert.Equal((null, null, null), (bare.Metering, bare.Compressor, bare.Capacity));
    }

    // Water from an attic comes through the ceiling, so one unit there decides; else only what holds for all of them is known.
    [Theory]
    [InlineData(new UnitPlace[0], null)]
    [InlineData(new[] { UnitPlace.Closet }, "Closet")]
    [InlineData(new[] { UnitPlace.Closet, UnitPlace.Closet }, "Closet")]
    [InlineData(new[] { UnitPlace.Closet, UnitPlace.Basement }, null)]
    [InlineData(new[] { UnitPlace.Closet, UnitPlace.Attic }, "Attic")]
    [InlineData(new[] { UnitPlace.Attic }, "Attic")]
    public void The_place_of_several_units(UnitPlace[] places, string? place)
    {
        var equipment = Split().Equipment with { Indoor = [.. places.Select(p => new IndoorUnit { Place = Given(p, "") })] };
        Assert.Equal(place, LimitSituation.Of(Split() with { Equipment = equipment }).Place);
        Assert.Null(LimitSituation.Of(Split() with { Equipment = equipment with { Indoor = [new IndoorUnit(), new IndoorUnit { Place = Given(UnitPlace.Closet, "") }] } }).Place);
    }

    // 40 CFR 82 subpart A, appendices A and B: R-22 is a class II substance, R-502 holds, R-402A beside R-22 two others, hydrofluorocarbons are in neither (from memory).
    [Theory]
    [InlineData("R-22", true)]
    [InlineData("R-502", true)]
    [InlineData("R-402A", true)]
    [InlineData("R-410A", false)]
    [InlineData("R-290", false)]
    public void A_refrigerant_depletes_ozone_by_any_of_its_parts(string designation, bool depletes) =>
        Assert.Equal(depletes, GasFamilies.DepletesOzone(Commission.Fluids.RefrigerantCatalogue.All.Single(r => r.Designation == designation)));

    [Fact]
    public void Every_condition_has_to_hold()
    {
        LimitCondition Is(string key, string word) => new(LimitSubject.All.Single(subject => subject.Key == key)) { Words = [LimitCondition.Fold(word)] };
        var situation = new LimitSituation { Work = "leak repair", System = "split" };
        Assert.True(LimitConditions.Always.Hold(situation));
        Assert.True(new LimitConditions([Is("work", "leak repair"), Is("system", "split")]).Hold(situation));
        Assert.False(new LimitConditions([Is("work", "leak repair"), Is("system", "VRF")]).Hold(situation));
        Assert.False(new LimitConditions([Is("work", "seasonal check"), Is("system", "split")]).Hold(situation));
    }

    [Theory]
    [InlineData(1e-9, true)]
    [InlineData(-1e-9, true)]
    public void An_open_side_lets_everything_in(double offset, bool holds)
    {
        var subject = LimitSubject.All.Single(s => s.Key == "full charge");
        Assert.Equal(holds, new LimitCondition(subject) { Lower = (2, true) }.Holds(new LimitSituation { FullCharge = 1e6 + offset }));
        Assert.Equal(holds, new LimitCondition(subject) { Upper = (2, true) }.Holds(new LimitSituation { FullCharge = offset }));
        Assert.False(new LimitCondition(subject) { Lower = (2, true) }.Holds(new LimitSituation { FullCharge = 1.9 }));
        Assert.False(new LimitCondition(subject) { Upper = (2, true) }.Holds(new LimitSituation { FullCharge = 2.1 }));
    }

    [Fact]
    public void Every_word_of_the_job_file_is_met_by_the_same_word_of_a_pack()
    {
        Assert.Equal(Enum.GetNames<WorkKind>().Select(LimitCondition.Fold), LimitSubject.All.Single(subject => subject.Key == "work").Words.Select(LimitCondition.Fold));
        Assert.Equal(Enum.GetNames<SystemKind>().Select(LimitCondition.Fold), LimitSubject.All.Single(subject => subject.Key == "system").Words.Select(LimitCondition.Fold));
        Assert.Equal(Enum.GetNames<MeteringKind>().Select(LimitCondition.Fold), LimitSubject.All.Single(subject => subject.Key == "metering").Words.Select(LimitCondition.Fold));
        Assert.Equal(Enum.GetNames<Application>().Select(LimitCondition.Fold), LimitSubject.All.Single(subject => subject.Key == "application").Words.Select(LimitCondition.Fold));
        Assert.Equal(Enum.GetNames<CompressorKind>().Select(LimitCondition.Fold), LimitSubject.All.Single(subject => subject.Key == "compressor").Words.Select(LimitCondition.Fold));
        Assert.Equal(Enum.GetNames<OperatingMode>().Select(LimitCondition.Fold), LimitSubject.All.Single(subject => subject.Key == "mode").Words.Select(LimitCondition.Fold));
    }

    [Fact]
    public void A_leak_sensor_is_known_from_its_test_or_from_the_mitigation()
    {
        Assert.Null(LimitSituation.Of(Split()).LeakSensor);
        Assert.Null(LimitSituation.Of(Split() with { Safety = new Jobs.Model.Safety() }).LeakSensor);
        Assert.False(LimitSituation.Of(Split() with { Safety = new Jobs.Model.Safety { Mitigation = Given(Mitigation.None, "none") } }).LeakSensor);
        Assert.True(LimitSituation.Of(Split() with { Safety = new Jobs.Model.Safety { Mitigation = Given(Mitigation.LeakSensorWithFan, "leak sensor with fan") } }).LeakSensor);
        Assert.False(LimitSituation.Of(Split() with { Safety = new Jobs.Model.Safety { LeakSensor = new LeakSensorTest { Fitted = Given(false, "no") } } }).LeakSensor);
        Assert.True(LimitSituation.Of(Split() with { Safety = new Jobs.Model.Safety { LeakSensor = new LeakSensorTest { Fitted = Given(true, "yes") } } }).LeakSensor);
    }

    [Fact]
    public void What_is_not_known_holds_for_nothing() =>
        Assert.All(LimitSubject.All, subject =>
        {
            var condition = new LimitCondition(subject) { Words = [.. subject.Words.Select(LimitCondition.Fold)], Lower = (0, true) };
            Assert.False(condition.Holds(new LimitSituation()));
        });

    [Theory]
    [InlineData(1.0, true, false)]
    [InlineData(1.0, false, false)]
    [InlineData(2.0, true, true)]
    [InlineData(2.0, false, false)]
    [InlineData(3.0, true, true)]
    [InlineData(4.0, false, true)]
    [InlineData(5.0, true, true)]
    [InlineData(5.0, false, false)]
    [InlineData(6.0, true, false)]
    public void Bounds_are_inside_or_not_as_written(double value, bool included, bool holds)
    {
        var condition = new LimitCondition(LimitSubject.All.Single(subject => subject.Key == "full charge")) { Lower = (2, included), Upper = (5, included) };
        Assert.Equal(holds, condition.Holds(new LimitSituation { FullCharge = value }));
    }

    private static Job With(SystemKind system) => Split() with { Equipment = Split().Equipment with { System = Given(system, "") } };

    private static bool Holds(string key, string word, LimitSituation situation) =>
        new LimitCondition(LimitSubject.All.Single(subject => subject.Key == key)) { Words = [LimitCondition.Fold(word)] }.Holds(situation);
}
