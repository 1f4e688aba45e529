using Commission.Checks.Evidence;
using Commission.Measurement.Decisions;
using Commission.Records;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Evidence;

/// <summary>What photos prove by themselves; bounds are common practice (no source), EXIF 2.32 says what a camera writes.</summary>
public sealed class PhotosCheckTests
{
    [Fact]
    public void A_picture_for_each_thing_is_proof()
    {
        var finding = Of("photos: [{file: a.jpg, shows: label}, {file: b.png, shows: wiring}]", ("a.jpg", "label"), ("b.png", "wiring; png"));
        Assert.Equal((Verdict.Pass, "2 photos are whole pictures of their own, large enough to read."), (finding!.Verdict, finding.Statement));
        Assert.False(finding.IsToLookAt);
        Assert.Equal("The photo is a whole picture, large enough to read.", Of("photos: [{file: a.jpg, shows: label}]", ("a.jpg", "label"))!.Statement);
        Assert.Null(Of(""));
    }

    [Theory]
    [InlineData("size 319x240", "319 × 240")]
    [InlineData("size 320x239", "320 × 239")]
    [InlineData("size 160x120", "160 × 120")]
    [InlineData("size 320x240", null)]
    [InlineData("size 240x320", null)]
    public void A_picture_too_small_to_read_proves_nothing(string size, string? said)
    {
        var finding = Of("photos: [{file: a.jpg, shows: label}]", ("a.jpg", $"label; {size}"))!;
        Assert.Equal(said is null ? Verdict.Pass : Verdict.NotEvaluated, finding.Verdict);
        if (said is null)
            return;
        Assert.Equal($"a.jpg (line 5) has {said} pixels, and below 320 × 240 nothing can be read off it", finding.Reason);
        Assert.NotNull(finding.NextStep);
    }

    [Fact]
    public void A_copy_proves_nothing_of_its_own()
    {
        var finding = Of("photos:\n- {file: a.jpg, shows: label}\n- {file: b.jpg, shows: wiring}\n- {file: a.jpg, shows: joints}\n", ("a.jpg", "label"), ("b.jpg", "label"))!;
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Equal("b.jpg (line 7) is the same picture as a.jpg (line 6), byte for byte; a.jpg (line 8) is the same picture as a.jpg (line 6), byte for byte", finding.Reason);
        Assert.DoesNotContain("nearly", finding.Statement, StringComparison.Ordinal);
    }

    // Where photos are asked for, one that proves nothing is missing; of two copies the first counts.
    [Theory]
    [InlineData("end", "Photos missing: gauge at end.")]
    [InlineData("isolated", null)]
    [InlineData("plate", null)]
    public void A_copy_is_no_photo_that_was_asked_for(string end, string? missing)
    {
        const string five = "photos: [{file: a.jpg, shows: outdoor nameplate}, {file: b.jpg, shows: pressure test end}, {file: c.jpg, shows: gauge at isolation}, {file: d.jpg, shows: gauge at end}, {file: e.jpg, shows: label}]";
        var record = JobLines.Record(JobLines.Of($"limits: {{packs: [photo-proof]}}\n{five}"),
            ("a.jpg", "plate"), ("b.jpg", "test"), ("c.jpg", "isolation"), ("d.jpg", missing is null ? $"{end} of the hold" : "isolation"), ("e.jpg", "label"));
        var part = record.Missing.SingleOrDefault(m => m.Checks is ["photos"]);
        Assert.Equal(missing, part?.Brief);
        Assert.Equal(missing is null, part?.NextStep is null);
    }

    [Fact]
    public void A_photo_that_is_too_small_is_no_photo_that_was_asked_for()
    {
        const string lines = "limits: {packs: [photo-proof]}\nphotos: [{file: e.jpg, shows: label}]";
        Assert.DoesNotContain("label", JobLines.Record(JobLines.Of(lines), ("e.jpg", "label")).Missing.Single(m => m.Checks is ["photos"]).Brief, StringComparison.Ordinal);
        Assert.Contains("label", JobLines.Record(JobLines.Of(lines), ("e.jpg", "label; size 200x150")).Missing.Single(m => m.Checks is ["photos"]).Brief, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("label; quality 30", true)]
    [InlineData("other; like label; size 320x240; png", true)]
    [InlineData("wiring", false)]
    public void Near_copies_are_remarked_on(string second, bool alike)
    {
        var finding = Of("photos: [{file: a.jpg, shows: label}, {file: b.jpg, shows: wiring}]", ("a.jpg", "label"), ("b.jpg", second))!;
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Equal(alike, finding.Statement.Contains("a.jpg (line 5) and b.jpg (line 5) look nearly the same", StringComparison.Ordinal));
        Assert.False(finding.IsToLookAt);
    }

    [Theory]
    [InlineData("2026:06:18 00:00:00", "", null)]
    [InlineData("2026:06:18 23:59:59", "", null)]
    [InlineData("2026:06:17 23:59:59", "", "By the camera's clock a.jpg (line 5) was taken on 2026-06-17 23:59, a day without work on this job.")]
    [InlineData("2026:06:19 00:00:00", "", "By the camera's clock a.jpg (line 5) was taken on 2026-06-19 00:00, a day without work on this job.")]
    [InlineData("2026:06:18 10:51:00", ", at: \"10:36\"", null)]
    [InlineData("2026:06:18 10:20:59", ", at: \"10:36\"", "By the camera's clock a.jpg (line 5) was taken on 2026-06-18 10:20; the job says 10:36.")]
    [InlineData("2026:06:18 10:51:01", ", at: \"10:36\"", "By the camera's clock a.jpg (line 5) was taken on 2026-06-18 10:51; the job says 10:36.")]
    // The job's zone is six hours behind UTC.
    [InlineData("2026:06:18 16:36:00; offset +00:00", ", at: \"10:36\"", null)]
    [InlineData("2026:06:19 01:00:00; offset +00:00", ", at: \"19:00\"", null)]
    [InlineData("2026:06:18 10:36:00; offset +00:00", ", at: \"10:36\"", "By the camera's clock a.jpg (line 5) was taken on 2026-06-18 04:36; the job says 10:36.")]
    public void A_camera_time_outside_the_visit_is_remarked_on(string taken, string at, string? remark)
    {
        var finding = Of($"photos: [{{file: a.jpg, shows: label{at}}}]", ("a.jpg", $"label; taken {taken}"))!;
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Equal(remark is not null, finding.IsToLookAt);
        if (remark is not null)
            Assert.EndsWith(remark, finding.Statement, StringComparison.Ordinal);
    }

    // A hold over night belongs to two days.
    [Fact]
    public void The_visit_lasts_as_long_as_the_work()
    {
        const string night = "evacuation: {started: \"2026-06-18 22:00\", levels: [{at: \"2026-06-19 06:00\", pressure: 300 micron}]}\n";
        Assert.False(Of($"{night}photos: [{{file: a.jpg, shows: label}}]", ("a.jpg", "label; taken 2026:06:19 07:00:00"))!.IsToLookAt);
        Assert.True(Of($"{night}photos: [{{file: a.jpg, shows: label}}]", ("a.jpg", "label; taken 2026:06:20 07:00:00"))!.IsToLookAt);
    }

    private static Finding? Of(string lines, params (string Name, string Text)[] files) => new PhotosCheck().Evaluate(JobText.Context(JobLines.Of(lines), files)).SingleOrDefault();
}
