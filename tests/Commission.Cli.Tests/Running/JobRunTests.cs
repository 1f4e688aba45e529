using Commission.Cli.Running;
using Xunit;

namespace Commission.Cli.Tests.Running;

public sealed class JobRunTests
{
    private static readonly DateTimeOffset Stated = new(2026, 6, 18, 16, 30, 0, TimeSpan.FromHours(-6));

    [Fact]
    public void The_option_wins_over_the_environment() => Assert.Equal(Stated, JobRun.AsOf(Stated, "0"));

    [Fact]
    public void Without_an_option_the_environment_counts() => Assert.Equal(DateTimeOffset.FromUnixTimeSeconds(1_782_000_000), JobRun.AsOf(null, "1782000000"));

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("tomorrow")]
    [InlineData("99999999999999")]
    public void Without_either_the_job_decides(string? environment) => Assert.Null(JobRun.AsOf(null, environment));
}
