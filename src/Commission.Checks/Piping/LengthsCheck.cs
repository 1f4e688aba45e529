using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
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
        (Message Subject, Message Starts, string LimitId, Uncertain? Value, bool Asked)[] measures =
        [
            (PipingMessages.LengthsTotal, PipingMessages.LengthsTotalStarts, LimitIds.PipingTotalLength, lines.Total, true),
            (PipingMessages.LengthsLongest, PipingMessages.LengthsLongestStarts, LimitIds.PipingLongestRun, lines.Longest, true),
            (PipingMessages.LengthsBranch, PipingMessages.LengthsBranchStarts, LimitIds.PipingFirstBranch, lines.FirstBranch, lines.FirstBranch is not null),
            (PipingMessages.LengthsHeight, PipingMessages.LengthsHeightStarts, LimitIds.PipingHeightDifference, lines.Height, true),
        ];
        var branching = context.Job.Equipment.System.Value is SystemKind.MultiSplit or SystemKind.VRF;
        var judged = false;
        foreach (var (subject, starts, id, value, asked) in measures)
        {
            var limit = context.Limits.Find(id);
            if (limit is { Upper: null, Lower: null })
                limit = null;
            if (limit is null && !(branching && asked))
                continue;
            judged = true;
            yield return Judge(context, lines, subject, starts, id == LimitIds.PipingHeightDifference, value, limit);
        }

        if (!judged)
            yield return Information(context, lines);
    }

    private Finding Judge(CheckContext context, LineNetwork lines, Message subject, Message starts, bool isHeight, Uncertain? value, Limit? limit)
    {
        var finding = Begin(context, lines, subject);
        if (value is null)
        {
            return isHeight
                ? finding.NotEvaluated(PipingMessages.LengthsNoRise, PipingMessages.LengthsNoRiseNext, "equipment: {piping: {vapor: {rise: …}}}")
                : finding.NotEvaluated(PipingMessages.LengthsNoTree, PipingMessages.LengthsNoTreeNext, "equipment: {piping: [{from: …, to: …}]}");
        }

        finding.Measure(value, DisplayKind.Length);
        var length = context.Present.InMessage(value, DisplayKind.Length);
        if (limit is null)
            return finding.NotEvaluated(PipingMessages.LengthsNoMaximum, PipingMessages.LengthsNoMaximumNext, "limits: {total length: …, longest run: …, first branch: …, height difference: …}");
        var state = context.State(limit);
        finding.Step("L", subject, PipingMessages.LengthsFormula, string.Join(", ", lines.Uses.Select(u => $"{u.Name} {u.Text}")), context.Present.Text(value, DisplayKind.Length), PipingMessages.Definition).Judge(value.On(state), DisplayKind.Length, state);
        return finding.Conclude(
            PipingMessages.LengthsMet(starts, length, new(state.Text)),
            PipingMessages.LengthsMissed(starts, length, new(state.Text)),
            this.WhenItFails());
    }

    private Finding Information(CheckContext context, LineNetwork lines)
    {
        var present = context.Present;
        var length = present.InMessage(lines.Longest ?? lines.Total!, DisplayKind.Length);
        return Begin(context, lines, null).Measure(lines.Longest ?? lines.Total!, DisplayKind.Length)
            .Information(lines.Height is { } h ? PipingMessages.LengthsReadHeight(length, present.InMessage(h, DisplayKind.Length)) : PipingMessages.LengthsRead(length), PipingMessages.LengthsNoMaximum);
    }

    private FindingBuilder Begin(CheckContext context, LineNetwork lines, Message? subject)
    {
        var finding = context.Finding(this, subject is null ? null : context.Present.Text(subject)).Use(CommonMessages.ReadingSystem, context.Job.Equipment.System);
        foreach (var use in lines.Uses)
            finding.Use(use);
        foreach (var run in context.Job.Equipment.Piping)
            finding.Use(PipingMessages.ReadingLineFrom, run.From).Use(PipingMessages.ReadingLineTo, run.To);
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
        var finding = context.Finding(this).Use(ReadingsMessages.Metering, equipment.Metering?.Kind).Use(PipingMessages.ReadingRiserTraps, traps).Use(PipingMessages.ReadingOilAdded, oil);
        foreach (var use in lines.Uses)
            finding.Use(use);
        foreach (var accessory in equipment.Accessories)
            finding.Use(PipingMessages.ReadingAccessory, accessory);
        foreach (var accessory in asked)
            finding.Use(PipingMessages.ReadingAskedAccessory, accessory);
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

        var extent = lines.Height is { } h
            ? PipingMessages.LongLineExtentHeight(present.InMessage(longest, DisplayKind.Length), present.InMessage(h, DisplayKind.Length))
            : PipingMessages.LongLineExtent(present.InMessage(longest, DisplayKind.Length));
        if (!isLong && !isHigh)
            return finding.Information(PipingMessages.LongLineUsual(extent), PipingMessages.LongLineUsualKind);
        var why = isLong && isHigh ? PipingMessages.LongLineBoth : isLong ? PipingMessages.LongLineLength : PipingMessages.LongLineHeight;
        if (asked.IsEmpty)
            return finding.Say(PipingMessages.LongLineBeyond(extent, why, new(context.State(isLong ? length! : rise!).Text))).NotEvaluated(PipingMessages.LongLineNoList, PipingMessages.LongLineNoListNext, "limits: {long line accessories: […]}");
        var missing = asked.Where(a => !IsFitted(a.Value, equipment, traps)).Select(a => a.Text).Distinct(StringComparer.Ordinal).ToArray();
        finding.Decide(missing.Length == 0);
        if (oil is not null)
            finding.Remark(PipingMessages.LongLineOil(new(oil.Text)));
        return missing.Length == 0
            ? finding.Say(PipingMessages.LongLineComplete(extent, why)).Build()
            : finding.Say(PipingMessages.LongLineMissing(extent, new ListValue([.. missing.Select(m => (MessageValue)new TextValue(m))], ListJoin.And))).Next(this.WhenItFails()).Build();
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
