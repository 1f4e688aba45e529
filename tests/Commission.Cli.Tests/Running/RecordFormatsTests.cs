using Commission.Cli.Running;
using Xunit;

namespace Commission.Cli.Tests.Running;

public sealed class RecordFormatsTests
{
    [Fact]
    public void No_two_formats_share_a_name_or_the_end_of_a_file_name()
    {
        Assert.Distinct(RecordFormat.All.Select(f => f.Name));
        Assert.Distinct(RecordFormat.All.Select(f => f.Suffix));
        Assert.All(RecordFormat.All, f => Assert.Equal(f.Name.ToLowerInvariant(), f.Name));
    }
}
