using Commission.Checks.Kernel;
using Xunit;

namespace Commission.Checks.Tests.Kernel;

/// <summary>Times of an evacuation: seconds from one zero, printed as the crew wrote them. Worked by hand: 09:00 to 10:15 are 75 min or 4500 s.</summary>
public sealed class ClockTests
{
    [Fact]
    public void Times_of_day_count_from_the_start_of_the_pump()
    {
        var job = Job("started: \"09:00\"\n  levels: [{at: \"10:15\", pressure: 400 micron}]");
        var clock = EvacuationClock.Of(job);
        Assert.True(clock.IsOfDay);
        Assert.Equal(4500, clock.Seconds(job.Evacuation!.Levels[0].At.Value));
        Assert.Equal(("10:15", "10:15:30"), (clock.Moment(4500), clock.Moment(4530)));
        Assert.Equal("10:15:01", clock.Moment(4500.6));
        Assert.Equal(10 * 60 + 15.5, clock.Minutes(4530), 1e-9);
    }

    [Fact]
    public void Times_since_the_start_are_printed_as_minutes()
    {
        var job = Job("started: \"09:00\"\n  levels: [{at: 71 min, pressure: 400 micron}, {at: 81.5 min, pressure: 420 micron}]");
        var clock = EvacuationClock.Of(job);
        Assert.False(clock.IsOfDay);
        Assert.Equal(4260, clock.Seconds(job.Evacuation!.Levels[0].At.Value));
        Assert.Equal(("71 min", "81.5 min"), (clock.Moment(4260), clock.Moment(4890)));
        Assert.Equal(81.5, clock.Minutes(4890), 1e-9);
        Assert.Equal(0, clock.Offset(null));
    }

    [Fact]
    public void One_time_since_the_start_makes_all_of_them_minutes()
    {
        var clock = EvacuationClock.Of(Job("started: \"09:00\"\n  levels: [{at: 75 min, pressure: 400 micron}]"));
        Assert.False(clock.IsOfDay);
        Assert.Equal("75 min", clock.Moment(4500));
        Assert.Equal(75, clock.Minutes(4500), 1e-9);
    }

    [Fact]
    public void Without_a_start_the_first_time_written_is_the_zero()
    {
        var job = Job("levels: [{at: \"10:00\", pressure: 400 micron}, {at: \"10:15\", pressure: 420 micron}]");
        var clock = EvacuationClock.Of(job);
        Assert.Equal((0, 900), (clock.Seconds(job.Evacuation!.Levels[0].At.Value), clock.Seconds(job.Evacuation.Levels[1].At.Value)));
        var zero = job.Evacuation.Levels[0].At.Value.Clock!.Value;
        Assert.Equal(-600, clock.Offset(zero.AddMinutes(-10)));
    }

    private static Jobs.Model.Job Job(string lines) => JobText.Read(JobLines.Of($"evacuation:\n  section: line set\n  {lines}"));
}
