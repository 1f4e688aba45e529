using System.Globalization;
using Commission.Cli.Running;
using Commission.Messages;
using Xunit;

namespace Commission.Cli.Tests.Running;

public sealed class JobRunTests
{
    private static readonly DateTimeOffset Stated = new(2026, 6, 18, 16, 30, 0, TimeSpan.FromHours(-6));

    [Fact]
    public void The_option_wins_over_the_environment() => Assert.Equal((true, Stated, ""), AsOf(Stated, "0"));

    [Fact]
    public void Without_an_option_the_environment_counts() => Assert.Equal((true, DateTimeOffset.FromUnixTimeSeconds(1_782_000_000), ""), AsOf(null, "1782000000"));

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    public void Without_either_the_job_decides(string? environment) => Assert.Equal((true, null, ""), AsOf(null, environment));

    // A record that is dated by something else than what was asked would be a false one.
    [Theory]
    [InlineData("tomorrow")]
    [InlineData("99999999999999")]
    [InlineData("-1")]
    public void A_moment_that_cannot_be_read_is_refused(string environment)
    {
        var (isRead, moment, said) = AsOf(null, environment);
        Assert.False(isRead);
        Assert.Null(moment);
        Assert.StartsWith($"SOURCE_DATE_EPOCH: \"{environment}\" is not a time.", said, StringComparison.Ordinal);
    }

    private static (bool IsRead, DateTimeOffset? Moment, string Said) AsOf(DateTimeOffset? option, string? environment)
    {
        using var error = new StringWriter(CultureInfo.InvariantCulture);
        var isRead = JobRun.TryAsOf(option, new CommandStreams(TextWriter.Null, error, Language.English, name => name == "SOURCE_DATE_EPOCH" ? environment : null), out var moment);
        return (isRead, moment, error.ToString());
    }
}
