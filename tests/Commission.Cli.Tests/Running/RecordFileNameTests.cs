using Commission.Cli.Running;
using Xunit;

namespace Commission.Cli.Tests.Running;

public sealed class RecordFileNameTests
{
    [Theory]
    [InlineData("TL-2026-061", "TL-2026-061")]
    [InlineData("unit 14 / circuit A", "unit-14-circuit-A")]
    [InlineData("../../etc/passwd", "etc-passwd")]
    [InlineData("..", "job")]
    [InlineData("Σ", "job")]
    [InlineData("a:b*c?d", "a-b-c-d")]
    [InlineData("trailing.", "trailing")]
    public void A_job_id_becomes_a_name_that_no_file_system_trips_over(string id, string expected) =>
        Assert.Equal(expected, RecordFileName.Of(id));

    [Fact]
    public void A_long_id_is_cut() => Assert.Equal(80, RecordFileName.Of(new string('x', 300)).Length);
}
