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
