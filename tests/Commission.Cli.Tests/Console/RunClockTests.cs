using Commission.Cli.Console;
using Xunit;

namespace Commission.Cli.Tests.Console;

public sealed class RunClockTests
{
    private static readonly DateTimeOffset Stated = new(2026, 6, 18, 16, 30, 0, TimeSpan.FromHours(-6));

    [Fact]
    public void The_option_wins_over_the_environment() => Assert.Equal(Stated, RunClock.AsOf(Stated, "0"));

    [Fact]
    public void Without_an_option_the_environment_counts() => Assert.Equal(DateTimeOffset.FromUnixTimeSeconds(1_782_000_000), RunClock.AsOf(null, "1782000000"));

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("tomorrow")]
    [InlineData("99999999999999")]
    public void Without_either_the_job_decides(string? environment) => Assert.Null(RunClock.AsOf(null, environment));
}
