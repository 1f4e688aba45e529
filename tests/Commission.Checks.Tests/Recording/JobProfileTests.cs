using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Recording;

/// <summary>
/// What a record of a kind of work has to show, and how it is said that something is missing. What is asked for is common practice, no source:
/// of a seasonal check calibration and signature, of a new installation what RequiredEvidenceTests lists.
/// </summary>
public sealed class JobProfileTests
{
    private const string Photos = "photos: [{file: a.jpg, shows: outdoor nameplate}, {file: b.jpg, shows: pressure test end}, {file: c.jpg, shows: gauge at isolation}, {file: d.jpg, shows: gauge at end}, {file: e.jpg, shows: label}]";

    private static CheckContext Seasonal => JobText.Context(JobLines.Of(work: "seasonal check"));

    [Fact]
    public void What_is_not_written_is_named_with_its_reason_and_its_pack()
    {
        var missing = Seasonal.Get<JobProfile>().MissingFrom([]);
        Assert.Equal(["evidence.signature", "instrument.calibration-current"], missing.SelectMany(m => m.Checks).Order(StringComparer.Ordinal));
        Assert.All(missing, m => Assert.EndsWith(" (common-practice).", m.Sentence, StringComparison.Ordinal));
        Assert.All(missing, m => Assert.Contains(": not recorded. Required because ", m.Sentence, StringComparison.Ordinal));
        Assert.All(missing, m => Assert.EndsWith(": not recorded.", m.Brief, StringComparison.Ordinal));
        Assert.StartsWith(Title("instrument.calibration-current"), missing.First(m => m.Checks.Contains("instrument.calibration-current")).Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Verdict.Pass, true)]
    [InlineData(Verdict.PassWithinUncertainty, true)]
    [InlineData(Verdict.Conditional, true)]
    [InlineData(Verdict.Fail, true)]
    [InlineData(Verdict.Information, true)]
    [InlineData(Verdict.CannotDecide, false)]
    [InlineData(Verdict.NotEvaluated, false)]
    public void A_check_that_could_not_be_evaluated_is_missing_and_says_why(Verdict verdict, bool judged)
    {
        var profile = Seasonal.Get<JobProfile>();
        var findings = new[] { Found("evidence.signature", verdict), Found("evidence.signature", Verdict.NotEvaluated) };
        Assert.Equal((judged ? 1 : 0, 2), profile.Coverage(findings));
        var missing = profile.MissingFrom(findings);
        Assert.Equal(judged, !missing.Any(m => m.Checks.Contains("evidence.signature")));
        if (!judged)
            Assert.StartsWith($"{Title("evidence.signature")}: nobody signed. Required because ", missing.Single(m => m.Checks.Contains("evidence.signature")).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_a_choice_one_is_enough()
    {
        var profile = JobText.Context(JobLines.Of(work: "leak repair")).Get<JobProfile>();
        const string One = "charge.receiver";
        Assert.Contains(profile.MissingFrom([]), m => m.Checks.Contains("charge.by-weight") && m.Checks.Contains(One));
        Assert.DoesNotContain(profile.MissingFrom([Found(One, Verdict.Pass)]), m => m.Checks.Contains("charge.by-weight"));
        Assert.True(profile.Requires(One));
        Assert.False(profile.Requires("evacuation.humidity"));
    }

    [Fact]
    public void Photos_that_are_missing_are_named_in_the_words_of_the_job()
    {
        Assert.DoesNotContain(JobText.Context(JobLines.Of()).Get<JobProfile>().MissingFrom([]), m => m.Checks.Contains("photos"));
        Assert.False(JobText.Context(JobLines.Of()).Get<JobProfile>().AsksForPhotos);
        var none = Proof("");
        Assert.True(none.AsksForPhotos);
        Assert.Equal(
            "Photos missing: outdoor nameplate, pressure test end, gauge at isolation, gauge at end and label. Required because the house rule asks for photos of the steps (photo-proof).",
            none.MissingFrom([]).Single(m => m.Checks.Contains("photos")).Sentence);
        var most = Proof(Photos.Replace(", {file: d.jpg, shows: gauge at end}", "", StringComparison.Ordinal));
        Assert.Equal("Photos missing: gauge at end. Required because the house rule asks for photos of the steps (photo-proof).", most.MissingFrom([]).Single(m => m.Checks.Contains("photos")).Sentence);
        Assert.DoesNotContain(Proof(Photos).MissingFrom([]), m => m.Checks.Contains("photos"));
    }

    [Fact]
    public void Coverage_counts_and_says_what_of_it_is_photos()
    {
        static Finding Cover(CheckContext context, params Finding[] findings) => Assert.Single(new CoverageCheck().Review(context, findings));
        static Finding[] All(CheckContext context) => [.. context.Limits.Required().Checks.Select(c => Found(c.Choice.OneOf[^1], Verdict.Pass))];

        var plain = JobText.Context(JobLines.Of());
        var required = plain.Limits.Required().Checks.Length;
        var covered = Cover(plain, All(plain));
        Assert.Equal((Verdict.Pass, $"All {required} required checks were judged."), (covered.Verdict, covered.Statement));
        Assert.Null(covered.NextStep);
        Assert.Equal(($"{required} / {required}", $"{required} of {required}"), (covered.Trace[0].Substitution, covered.Trace[0].Result));
        var lacking = Cover(plain, All(plain)[1..]);
        Assert.Equal((Verdict.Information, $"{required - 1} of {required} required checks were judged."), (lacking.Verdict, lacking.Statement));
        Assert.Equal("Read the list of what is missing and write it, or come back and do it.", lacking.NextStep);

        var proof = ProofContext(Photos);
        Assert.Equal($"All {required} required checks were judged, and the required photos are there.", Cover(proof, All(proof)).Statement);
        var without = ProofContext("");
        Assert.Equal($"{required} of {required} required checks were judged. Photos are missing.", Cover(without, All(without)).Statement);
    }

    private static string Title(string check) => RecordWords.Text(CheckCatalogue.Find(check)!.Title(), Language.English);

    private static JobProfile Proof(string photos) => ProofContext(photos).Get<JobProfile>();

    private static CheckContext ProofContext(string photos)
    {
        var job = JobText.Read(JobLines.Of($"limits: {{packs: [photo-proof]}}\n{photos}"), [.. "abcde".Select(c => ($"{c}.jpg", $"picture {c}"))]);
        return new CheckContext(job, new CheckSettings(job.Identity.Date.Value));
    }

    private static Finding Found(string check, Verdict verdict) =>
        new() { Check = check, Phase = Phases.Evidence, Title = "Signature", Verdict = verdict, Reason = "nobody signed", Statement = "As invented." };
}
