using Commission.Records;
using Xunit;

namespace Commission.Checks.Tests.Recording;

/// <summary>A photo that follows is a condition with its date, and no hole in the record (common practice of handovers, no source).</summary>
public sealed class PhotosToFollowTests
{
    private const string Promised = "photos to follow: [{shows: label, by: 2026-12-04}]\n";

    [Theory]
    [InlineData("", true)]
    [InlineData(Promised, false)]
    public void What_is_promised_is_not_missing(string lines, bool missing)
    {
        var record = JobLines.Record(JobLines.Of(lines + "limits: {packs: [photo-proof]}", "new installation"));
        Assert.Equal(missing, record.Missing.Single(m => m.Checks is ["photos"]).Sentence.Contains("label", StringComparison.Ordinal));
        Assert.Equal(missing ? 0 : 1, record.Conditions.Count(c => c.Text.Contains("2026-12-04", StringComparison.Ordinal)));
    }
}
