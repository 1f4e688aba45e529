using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Limits;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;

namespace Commission.Checks.Recording;

/// <summary>What the packs require of a record of this kind of work and system, and what of it is missing.</summary>
internal sealed class JobProfile : IAnalysis<JobProfile>
{
    private readonly RequiredEvidence required;
    private readonly CheckContext context;

    private JobProfile(RequiredEvidence required, CheckContext context)
    {
        this.required = required;
        this.context = context;
    }

    /// <inheritdoc/>
    public static JobProfile Create(CheckContext context) => new(context.Limits.Required(), context);

    /// <summary>Whether a check is required, alone or as one of a choice.</summary>
    /// <param name="check">Id of the check.</param>
    public bool Requires(string check) => required.Names(check);

    /// <summary>How many required checks have been judged, and how many there are.</summary>
    /// <param name="findings">The findings of the job.</param>
    public (int Judged, int Required) Coverage(IReadOnlyList<Finding> findings) =>
        (required.Checks.Count(r => Judged(r, findings)), required.Checks.Length);

    /// <summary>What is required and was not judged, one sentence each, in the order of the packs.</summary>
    /// <param name="findings">The findings of the job.</param>
    public ImmutableArray<MissingRequirement> MissingFrom(IReadOnlyList<Finding> findings)
    {
        var missing = ImmutableArray.CreateBuilder<MissingRequirement>();
        foreach (var requirement in required.Checks.Where(r => !Judged(r, findings)))
        {
            var open = findings.FirstOrDefault(f => requirement.OneOf.Contains(f.Check, StringComparer.Ordinal));
            var title = string.Join(" or ", requirement.OneOf.Select(id => CheckCatalogue.Find(id)?.Title ?? id));
            missing.Add(new MissingRequirement(
                requirement.OneOf[0],
                open is null
                    ? $"{title}: nothing is written; required because {requirement.Because} ({requirement.Pack})."
                    : $"{title}: not evaluated, {open.Reason}; required because {requirement.Because} ({requirement.Pack})."));
        }

        var shown = context.Job.Photos.Select(p => p.Shows.Value).ToHashSet();
        var absent = required.Photos.Where(p => !shown.Contains(p.Shows)).ToList();
        if (absent.Count > 0)
        {
            missing.Add(new MissingRequirement(
                "photos",
                string.Create(CultureInfo.InvariantCulture, $"Photos missing: {string.Join(", ", absent.Select(p => Words(p.Shows.ToString())))}; required because {absent[0].Because} ({absent[0].Pack}).")));
        }

        return missing.ToImmutable();
    }

    private static bool Judged(RequiredCheck requirement, IReadOnlyList<Finding> findings) =>
        findings.Any(f => f.Verdict != Verdict.NotEvaluated && requirement.OneOf.Contains(f.Check, StringComparer.Ordinal));

    private static string Words(string name) =>
        string.Concat(name.Select((c, i) => char.IsAsciiLetterUpper(c) ? (i > 0 ? " " : "") + char.ToLowerInvariant(c) : c.ToString()));
}
