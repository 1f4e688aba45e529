using System.Globalization;
using Commission.Jobs.Model;
using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>Whether old lines that were used again were flushed.</summary>
internal sealed class ReusedLinesCheck : ICheck
{
    public string Id => "piping.reused-lines";

    public string Phase => Phases.Piping;

    public string Title => "Reused lines flushed";

    public CheckHelp Help { get; } = new(
        "Were lines that served another system flushed before they were used again? Old oil, acid and copper oxide end in the new compressor and valve.",
        "flushed, in every run that was used again",
        "Makers' replacement instructions; common practice, no source.",
        "Flush with a solvent the maker allows or with liquid refrigerant into a recovery cylinder, change the drier, and look at the oil after some weeks.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var runs = context.Job.Equipment.Piping;
        for (var i = 0; i < runs.Length; i++)
        {
            if (runs[i].Reused is { Value: true })
                yield return Judge(context, runs[i], runs.Length == 1 ? null : runs[i].To?.Value ?? string.Create(CultureInfo.InvariantCulture, $"run {i + 1}"));
        }
    }

    private Finding Judge(CheckContext context, PipingRun run, string? subject)
    {
        var finding = context.Finding(this, subject).Use("lines used again", run.Reused).Use("flushed", run.Flushed);
        if (run.Flushed is not { } flushed)
            return finding.NotEvaluated("it is not written whether the reused lines were flushed", "Write flushed: yes or no.");
        finding.Decide(flushed.Value);
        return flushed.Value
            ? finding.Say("The reused lines were flushed.").Build()
            : finding.Say("The reused lines were not flushed.").Next(Help.WhenItFails).Build();
    }
}
