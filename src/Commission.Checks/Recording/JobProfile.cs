using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Measurement.Decisions;
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
        (_required.Checks.Count(r => Judged(r, findings)), _required.Checks.Length);

    /// <summary>What is required and was not judged, one sentence each, in the order of the packs.</summary>
    /// <param name="findings">The findings of the job.</param>
    public ImmutableArray<MissingRequirement> MissingFrom(IReadOnlyList<Finding> findings)
    {
        var missing = ImmutableArray.CreateBuilder<MissingRequirement>();
        foreach (var requirement in _required.Checks.Where(r => !Judged(r, findings)))
        {
            var open = findings.FirstOrDefault(f => requirement.OneOf.Contains(f.Check, StringComparer.Ordinal));
            var title = string.Join(" or ", requirement.OneOf.Select(id => CheckCatalogue.Find(id)?.Title ?? id));
            missing.Add(new MissingRequirement(
                requirement.OneOf[0],
                open is null
                    ? $"{title}: nothing is written; required because {requirement.Because} ({requirement.Pack})."
                    : $"{title}: not evaluated, {open.Reason}; required because {requirement.Because} ({requirement.Pack})."));
        }

        var shown = _context.Job.Photos.Select(p => p.Shows.Value).ToHashSet();
        var absent = _required.Photos.Where(p => !shown.Contains(p.Shows)).ToList();
        if (absent.Count > 0)
        {
            missing.Add(new MissingRequirement(
                "photos",
                string.Create(CultureInfo.InvariantCulture, $"Photos missing: {string.Join(", ", absent.Select(p => Words(p.Shows.ToString())))}; required because {absent[0].Because} ({absent[0].Pack}).")));
        }

        return missing.ToImmutable();
    }

    private static bool Judged(RequiredCheck requirement, IReadOnlyList<Finding> findings) =>
        findings.Any(f => f.Verdict is not (Verdict.NotEvaluated or Verdict.CannotDecide) && requirement.OneOf.Contains(f.Check, StringComparer.Ordinal));

    private static string Words(string name) =>
        string.Concat(name.Select((c, i) => char.IsAsciiLetterUpper(c) ? (i > 0 ? " " : "") + char.ToLowerInvariant(c) : c.ToString()));
}

/// <summary>Something the profile for this kind of work and system requires and the job does not have.</summary>
/// <param name="Id">The check or the kind of evidence.</param>
/// <param name="Sentence">What is missing and what to do, in one sentence.</param>
internal sealed record MissingRequirement(string Id, string Sentence);

/// <summary>How much of what a record of this kind has to show it does show.</summary>
internal sealed class CoverageCheck : IReviewCheck
{
    public string Id => "evidence.coverage";

    public string Phase => Phases.Evidence;

    public string Title => "Coverage";

    public CheckHelp Help { get; } = new(
        "Of the checks that the packs require for this kind of work and system, how many could be judged? What is irrelevant to the job is not counted.",
        "judged / required, by the profile of the packs in force",
        "The required lists of the packs: common practice and the documents they name.",
        "Read the list of what is missing and write it, or come back and do it.");

    public IEnumerable<Finding> Review(CheckContext context, IReadOnlyList<Finding> findings)
    {
        var profile = context.Get<JobProfile>();
        var (judged, required) = profile.Coverage(findings);
        var missing = profile.MissingFrom(findings);
        var finding = context.Finding(this).Use("work", context.Job.Identity.Work).Use("system", context.Job.Equipment.System)
            .Step("c", "coverage", "judged / required", string.Create(CultureInfo.InvariantCulture, $"{judged} / {required}"), string.Create(CultureInfo.InvariantCulture, $"{judged} of {required}"), "required lists of the packs in force");
        var photos = missing.Any(m => m.Id == "photos") ? " Photos are missing." : "";
        yield return missing.IsEmpty
            ? finding.Decide(true).Say(string.Create(CultureInfo.InvariantCulture, $"All {required} required checks were judged{(profile.AsksForPhotos ? ", and the photos asked for are there" : "")}.")).Build()
            : finding.Next(Help.WhenItFails).Information(string.Create(CultureInfo.InvariantCulture, $"{judged} of {required} required checks were judged.{photos}"), "what is missing stands among the reasons of the outcome");
    }
}

/// <summary>
/// Draws the outcome from the findings. A danger or a failure first; then a required check that could not be judged; then what is
/// conditional or still to be done. A pass within its uncertainty is a pass.
/// </summary>
internal static class OutcomeMaker
{
    public static (Outcome Outcome, ImmutableArray<string> Reasons, ImmutableArray<PunchItem> Conditions) Make(
        IReadOnlyList<Finding> findings,
        IReadOnlyList<MissingRequirement> missing,
        IReadOnlyList<PunchItem> fromJob)
    {
        // Evidence states facts about the record; it does not fail a system, unless it shows a danger.
        var failed = findings.Where(f => f.IsDanger).Concat(findings.Where(f => f is { IsDanger: false, Verdict: Verdict.Fail } && f.Phase != Phases.Evidence)).ToList();
        var conditional = findings.Where(f => f.Verdict == Verdict.Conditional && f.Phase != Phases.Evidence).ToList();

        var reasons = ImmutableArray.CreateBuilder<string>();
        foreach (var f in failed)
            reasons.Add($"{Name(f)}: {(f.Check == Diagnosis.Check ? $"{f.Reason}." : f.Statement)}");
        foreach (var m in missing)
            reasons.Add(m.Sentence);
        foreach (var f in conditional)
            reasons.Add($"{Name(f)}: {Condition(f)}.");
        foreach (var item in fromJob)
            reasons.Add($"Still to be done: {item.Text}");

        var conditions = ImmutableArray.CreateBuilder<PunchItem>();
        conditions.AddRange(fromJob);
        foreach (var f in conditional)
            conditions.Add(new PunchItem($"{Name(f)}: {f.NextStep ?? Condition(f)}", f.Number));

        var outcome = failed.Count > 0 ? Outcome.NotAccepted
            : missing.Count > 0 ? Outcome.Incomplete
            : conditions.Count > 0 ? Outcome.AcceptedWithConditions
            : Outcome.Accepted;
        return (outcome, reasons.ToImmutable(), conditions.ToImmutable());
    }

    // What was not shown, or the number with its U that lies too near to the limit to be sure.
    private static string Condition(Finding f) => string.Join("; ", new[]
    {
        f is { Measured: { } measured, Limits: [var limit, ..], ConformityText: { } chance } ? $"{measured.Text}, limit {limit.Text}, conforms with {chance}" : null,
        f.Reservation,
    }.OfType<string>());

    private static string Name(Finding f) => f.Subject is null ? f.Title : $"{f.Title} ({f.Subject})";
}
