using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>Lengths and heights of the lines against the maker's.</summary>
internal sealed class LengthsCheck : ICheck
{
    public string Id => "piping.lengths";

    public string Phase => Phases.Piping;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var lines = context.Get<LineNetwork>();
        if (lines.Total is null)
            yield break;
        (string Subject, string LimitId, Uncertain? Value, bool Asked)[] measures =
        [
            ("total", LimitIds.PipingTotalLength, lines.Total, true),
            ("longest run", LimitIds.PipingLongestRun, lines.Longest, true),
            ("first branch to the farthest unit", LimitIds.PipingFirstBranch, lines.FirstBranch, lines.FirstBranch is not null),
            ("height difference", LimitIds.PipingHeightDifference, lines.Height, true),
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
            yield return Judge(context, lines, subject, id == LimitIds.PipingHeightDifference, value, limit);
        }

        if (!judged)
            yield return Information(context, lines);
    }

    private Finding Judge(CheckContext context, LineNetwork lines, string subject, bool isHeight, Uncertain? value, Limit? limit)
    {
        var finding = Begin(context, lines, subject);
        if (value is null)
        {
            return isHeight
                ? finding.NotEvaluated(PipingMessages.LengthsNoRise, PipingMessages.LengthsNoRiseNext, "equipment: {piping: {vapor: {rise: …}}}")
                : finding.NotEvaluated(PipingMessages.LengthsNoTree, PipingMessages.LengthsNoTreeNext, "equipment: {piping: [{from: …, to: …}]}");
        }

        finding.Measure(value, DisplayKind.Length);
        var text = context.Present.Text(value, DisplayKind.Length);
        if (limit is null)
            return finding.NotEvaluated(PipingMessages.LengthsNoMaximum, PipingMessages.LengthsNoMaximumNext, "limits: {total length: …, longest run: …, first branch: …, height difference: …}");
        var state = context.State(limit);
        finding.Step("L", subject, "along the lines as written", string.Join(", ", lines.Uses.Select(u => $"{u.Name} {u.Text}")), text, "definition").Judge(value.On(state), DisplayKind.Length, state);
        return finding.Conclude(
            $"{char.ToUpperInvariant(subject[0])}{subject[1..]}: {text}; {state.Text} is allowed.",
            $"{char.ToUpperInvariant(subject[0])}{subject[1..]}: {text}, more than the maker allows: {state.Text}.",
            this.WhenItFails());
    }

    private Finding Information(CheckContext context, LineNetwork lines)
    {
        var present = context.Present;
        var height = lines.Height is { } h ? $", {present.Text(h, DisplayKind.Length)} between the units in height" : "";
        return Begin(context, lines, null).Measure(lines.Longest ?? lines.Total!, DisplayKind.Length)
            .Information($"The lines are {present.Text(lines.Longest ?? lines.Total!, DisplayKind.Length)} long{height}.", "the maker's maximum is not written");
    }

    private FindingBuilder Begin(CheckContext context, LineNetwork lines, string? subject)
    {
        var finding = context.Finding(this, subject).Use("system", context.Job.Equipment.System);
        foreach (var use in lines.Uses)
            finding.Use(use);
        foreach (var run in context.Job.Equipment.Piping)
            finding.Use("line from", run.From).Use("line to", run.To);
        return finding;
    }
}

/// <summary>Whether a long or high line set has what its maker asks for.</summary>
internal sealed class LongLineCheck : ICheck
{
    public string Id => "piping.long-line";

    public string Phase => Phases.Piping;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var equipment = context.Job.Equipment;
        var lines = context.Get<LineNetwork>();

        // Branching systems have maximum lengths instead; a cold room's lines are designed one by one.
        if (lines.Longest is not { } longest || equipment.System.Value is SystemKind.MultiSplit or SystemKind.VRF or SystemKind.Refrigeration)
            yield break;
        yield return Judge(context, lines, longest);
    }

    private Finding Judge(CheckContext context, LineNetwork lines, Uncertain longest)
    {
        var present = context.Present;
        var equipment = context.Job.Equipment;
        var asked = context.Job.Limits?.LongLineAccessories ?? [];
        var traps = context.Job.PipingChecks?.RiserTraps;
        var oil = context.Job.Charging?.OilAdded?.Amount;
        var finding = context.Finding(this).Use("metering", equipment.Metering?.Kind).Use("riser traps", traps).Use("oil added", oil);
        foreach (var use in lines.Uses)
            finding.Use(use);
        foreach (var accessory in equipment.Accessories)
            finding.Use("accessory", accessory);
        foreach (var accessory in asked)
            finding.Use("asked for on long lines", accessory);
        finding.Measure(longest, DisplayKind.Length);
        var length = context.Limits.Find(LimitIds.PipingLongLineLength);
        var rise = context.Limits.Find(LimitIds.PipingLongLineRise);
        var isLong = length?.Upper is { } most && longest.Value > most.Si;
        var isHigh = rise?.Upper is { } highest && lines.Height is { } height && height.Value > highest.Si;
        foreach (var limit in new[] { length, rise })
        {
            if (limit is not null)
                finding.Show(context.State(limit));
        }

        var words = present.Text(longest, DisplayKind.Length) + (lines.Height is { } h ? $" of line, {present.Text(h, DisplayKind.Length)} of height" : " of line");
        if (!isLong && !isHigh)
            return finding.Information($"{words}: within the usual length, no accessories are asked for.", "shorter than where long-line rules begin");
        var why = isLong && isHigh ? "length and height" : isLong ? "length" : "height";
        if (asked.IsEmpty)
            return finding.Say($"{words}: the {why} is beyond the {context.State(isLong ? length! : rise!).Text} within which no long-line rules apply.").NotEvaluated(PipingMessages.LongLineNoList, PipingMessages.LongLineNoListNext, "limits: {long line accessories: […]}");
        var missing = asked.Where(a => !IsFitted(a.Value, equipment, traps)).Select(a => a.Text).Distinct(StringComparer.Ordinal).ToArray();
        finding.Decide(missing.Length == 0);
        if (oil is not null)
            finding.Remark($"Oil added: {oil.Text}.");
        return missing.Length == 0
            ? finding.Say($"{words}: the {why} asks for long-line accessories, and all the maker names are fitted.").Build()
            : finding.Say($"{words}: the maker's long-line list is not complete, {string.Join(" and ", missing)} missing.").Next(this.WhenItFails()).Build();
    }

    private static bool IsFitted(Accessory accessory, Equipment equipment, Given<int>? traps) =>
        equipment.Accessories.Any(a => a.Value == accessory) || accessory switch
        {
            Accessory.TXV => equipment.Metering?.Kind.Value == MeteringKind.TXV,
            Accessory.OilTraps => traps is { Value: > 0 },
            Accessory.LiquidDrier => equipment.Drier.Any(d => d.Line?.Value != DrierLine.Suction),
            _ => false,
        };
}
