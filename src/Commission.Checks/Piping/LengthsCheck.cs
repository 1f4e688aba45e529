using Commission.Checks.Findings;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>Lengths and heights of the lines against the maker's.</summary>
internal sealed class LengthsCheck : ICheck
{
    public string Id => "piping.lengths";

    public string Phase => Phases.Piping;

    public string Title => "Lengths and heights of the lines";

    public CheckHelp Help { get; } = new(
        "Are the lines within what the maker allows: all together, the longest run, from the first branch to the farthest unit, and in height?",
        "total = sum of all runs, one way; longest run = outdoor unit to the farthest indoor unit along the lines; first branch = from the first branch to the farthest indoor unit; height = largest rise between outdoor and indoor unit",
        "The maker's installation manual; there is no common figure.",
        "Ask the maker: longer lines cost capacity, oil and sometimes the guarantee. Shorten the run or move the unit.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var lines = context.Get<LineNetwork>();
        if (lines.Total is null)
            yield break;
        (string Subject, string LimitId, Uncertain? Value, bool Asked)[] measures =
        [
            ("total", "piping.total-length", lines.Total, true),
            ("longest run", "piping.longest-run", lines.Longest, true),
            ("first branch to the farthest unit", "piping.first-branch", lines.FirstBranch, lines.FirstBranch is not null),
            ("height difference", "piping.height-difference", lines.Height, true),
        ];
        var branching = context.Job.Equipment.System.Value is SystemKind.MultiSplit or SystemKind.VRF;
        var judged = false;
        foreach (var (subject, id, value, asked) in measures)
        {
            var limit = context.Limits.Find(id);
            if (limit is { Upper: null, Lower: null })
                limit = null;
            if (limit is null && !(branching && asked))
                continue;
            judged = true;
            yield return Judge(context, lines, subject, value, limit);
        }

        if (!judged)
            yield return Information(context, lines);
    }

    private Finding Judge(CheckContext context, LineNetwork lines, string subject, Uncertain? value, Limit? limit)
    {
        var finding = Begin(context, lines, subject);
        if (value is null)
        {
            return finding.NotEvaluated(
                subject == "height difference" ? "no rise is written" : "the lines are not written as a tree from the outdoor unit to the indoor units",
                subject == "height difference" ? "Write rise with each line: how much higher its indoor end is." : "Write to and from with each run.");
        }

        finding.Measure(value, DisplayKind.Length);
        var text = context.Present.Text(value, DisplayKind.Length);
        if (limit is null)
            return finding.NotEvaluated("the maker's maximum is not written", "Write it in limits with its page: total length, longest run, first branch, height difference.");
        var state = context.State(limit);
        finding.Step("L", subject, "along the lines as written", string.Join(", ", lines.Uses.Select(u => $"{u.Name} {u.Text}")), text, "definition").Judge(value.On(state), DisplayKind.Length, state);
        return finding.Passes
            ? finding.Say($"{char.ToUpperInvariant(subject[0])}{subject[1..]}: {text}; {state.Text} is allowed.").Build()
            : finding.Say($"{char.ToUpperInvariant(subject[0])}{subject[1..]}: {text}, more than the maker allows: {state.Text}.").Next(Help.WhenItFails).Build();
    }

    private Finding Information(CheckContext context, LineNetwork lines)
    {
        var present = context.Present;
        var height = lines.Height is { } h ? $", {present.Text(h, DisplayKind.Length)} between the units in height" : "";
        return Begin(context, lines, null).Measure(lines.Longest ?? lines.Total!, DisplayKind.Length)
            .Information($"The lines are {present.Text(lines.Longest ?? lines.Total!, DisplayKind.Length)} long{height}.", "the maker's maximum is not written");
    }

    private Findings.FindingBuilder Begin(CheckContext context, LineNetwork lines, string? subject)
    {
        var finding = context.Finding(this, subject).Use("system", context.Job.Equipment.System);
        foreach (var use in lines.Uses)
            finding.Use(use);
        foreach (var run in context.Job.Equipment.Piping)
            finding.Use("line from", run.From).Use("line to", run.To);
        return finding;
    }
}
