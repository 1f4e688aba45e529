using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Evidence;

public sealed class CoverageCheckTests
{
    [Fact]
    public void It_counts_what_the_packs_require()
    {
        // Common practice asks a seasonal check without a metering device for calibration and signature alone.
        var bare = JobLines.Finding(JobLines.Of(work: "seasonal check"), "evidence.coverage");
        Assert.Equal(Verdict.Information, bare.Verdict);
        Assert.Equal("0 of 2 required checks were judged.", bare.Statement);
        Assert.NotNull(bare.NextStep);
        var signed = JobLines.Finding(JobLines.Of("instruments: [{id: g, kind: pressure gauge, calibrated: 2026-01-01}]\nsignatures: [{name: Mira Solend, date: 2026-06-18}]", "seasonal check"), "evidence.coverage");
        Assert.Equal(Verdict.Pass, signed.Verdict);
        Assert.Equal("All 2 required checks were judged.", signed.Statement);
    }

    [Fact]
    public void Photos_count_where_a_pack_asks_for_them()
    {
        Assert.DoesNotContain("hotos", JobLines.Finding(JobLines.Of(), "evidence.coverage").Statement, StringComparison.Ordinal);
        Assert.EndsWith("Photos are missing.", JobLines.Finding(JobLines.Of("limits: {packs: [photo-proof]}"), "evidence.coverage").Statement, StringComparison.Ordinal);
    }
}
