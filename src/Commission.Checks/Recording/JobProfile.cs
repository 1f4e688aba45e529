using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Recording;

/// <summary>What the packs require of a record of this kind of work and system, and what of it is missing.</summary>
internal sealed class JobProfile : IAnalysis<JobProfile>
{
    private readonly RequiredEvidence _required;
    private readonly CheckContext _context;

    private JobProfile(RequiredEvidence required, CheckContext context)
    {
        _required = required;
        _context = context;
    }

    /// <inheritdoc/>
    public static JobProfile Create(CheckContext context) => new(context.Limits.Required(), context);

    /// <summary>Whether a check is required, alone or as one of a choice.</summary>
    /// <param name="check">Id of the check.</param>
    public bool Requires(string check) => _required.Names(check);

    /// <summary>Whether a pack asks for photos.</summary>
    public bool AsksForPhotos => !_required.Photos.IsEmpty;

    /// <summary>How many required checks have been judged, and how many there are.</summary>
    /// <param name="findings">The findings of the job.</param>
    public (int Judged, int Required) Coverage(IReadOnlyList<Finding> findings) =>
        (_required.Checks.Count(r => MissingWork.IsJudged(r, findings)), _required.Checks.Length);

    /// <summary>What is required and was not judged, in the order of the work.</summary>
    /// <param name="findings">The findings of the job.</param>
    public ImmutableArray<MissingPart> MissingFrom(IReadOnlyList<Finding> findings) => MissingWork.Of(_context, _required, findings);
}

/// <summary>How much of what a record of this kind has to show it does show.</summary>
internal sealed class CoverageCheck : IReviewCheck
{
    public string Id => "evidence.coverage";

    public string Phase => Phases.Evidence;

    public IEnumerable<Finding> Review(CheckContext context, IReadOnlyList<Finding> findings)
    {
        var profile = context.Get<JobProfile>();
        var (judged, required) = profile.Coverage(findings);
        var missing = profile.MissingFrom(findings);
        var finding = context.Finding(this).Use(ReadingsMessages.Work, context.Job.Identity.Work).Use(CommonMessages.ReadingSystem, context.Job.Equipment.System)
            .Step("c", EvidenceMessages.CoverageShare, EvidenceMessages.CoverageFormula, string.Create(CultureInfo.InvariantCulture, $"{judged} / {required}"), EvidenceMessages.CoverageResult(judged, required), EvidenceMessages.CoverageSource);
        yield return missing.IsEmpty
            ? finding.Decide(true).Say(EvidenceMessages.CoverageFull(required, profile.AsksForPhotos ? EvidenceMessages.CoverageFullPhotos.There : EvidenceMessages.CoverageFullPhotos.NotRequired)).Build()
            : finding.Next(this.WhenItFails()).Remark(missing.Any(m => m.Checks is [MissingWork.Photos]) ? EvidenceMessages.CoveragePhotosMissing : null)
                .Information(EvidenceMessages.CoveragePart(judged, required), EvidenceMessages.CoveragePartKind);
    }
}
