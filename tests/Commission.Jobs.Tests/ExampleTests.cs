using System.Diagnostics;
using Xunit;

namespace Commission.Jobs.Tests;

public sealed class ExampleTests
{
    [Fact]
    public void The_first_example_fits_one_screen_and_reads()
    {
        var text = Reading.Data("first-split.yaml");
        Assert.True(text.Split('\n').Length <= 26);
        var clock = Stopwatch.StartNew();
        var (reading, problems) = Reading.Of(text);
        TestContext.Current.TestOutputHelper!.WriteLine("first read ms " + clock.ElapsedMilliseconds);
        clock.Restart();
        Reading.Of(text);
        TestContext.Current.TestOutputHelper!.WriteLine("second read ms " + clock.ElapsedMilliseconds);
        Assert.Empty(problems);
        Assert.NotNull(reading.Job);
    }

    [Fact]
    public void The_long_example_reads()
    {
        var (reading, problems) = Reading.Of(Reading.Data("tarn-lane.yaml"), Reading.TarnLaneFolder());
        Assert.Equal("", string.Join("\n", problems));
        Assert.NotNull(reading.Job);
    }
}
