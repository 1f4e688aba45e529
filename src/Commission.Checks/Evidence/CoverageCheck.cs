using System.Globalization;
using Commission.Checks.Recording;
using Commission.Records.Findings;

namespace Commission.Checks.Evidence;

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
            ? finding.Decide(true).Say(string.Create(CultureInfo.InvariantCulture, $"All {required} required checks were judged, and the photos asked for are there.")).Build()
            : finding.Next(Help.WhenItFails).Information(string.Create(CultureInfo.InvariantCulture, $"{judged} of {required} required checks were judged.{photos}"), "what is missing stands among the reasons of the outcome");
    }
}
