using Commission.Checks.Air;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>Whether a long or high line set has what its maker asks for.</summary>
internal sealed class LongLineCheck : ICheck
{
    public string Id => "piping.long-line";

    public string Phase => Phases.Piping;

    public string Title => "Long-line accessories";

    public CheckHelp Help { get; } = new(
        "Has a line set beyond the maker's usual length or height what the maker then asks for: crankcase heater, liquid solenoid, expansion valve, start kit, traps, oil?",
        "length of the longest run and height between the units against the thresholds; every accessory of the maker's long-line table fitted",
        "The maker's long-line table. Thresholds without one: 50 ft and 20 ft of height (common practice, no source).",
        "Fit what is missing before the unit runs through a season; look up oil, line size and traps in the long-line table too.");

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
        var length = context.Limits.Find("piping.long-line.length");
        var rise = context.Limits.Find("piping.long-line.rise");
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
            return finding.Say($"{words}: the {why} is beyond the {context.State(isLong ? length! : rise!).Text} within which no long-line rules apply.").NotEvaluated("what the maker asks for on long lines is not written", "Write long line accessories with the maker's list, and what is fitted under equipment accessories.");
        var missing = asked.Where(a => !IsFitted(a.Value, equipment, traps)).Select(a => a.Text).Distinct(StringComparer.Ordinal).ToArray();
        finding.Decide(missing.Length == 0);
        if (oil is not null)
            finding.Remark($"Oil added: {oil.Text}.");
        return missing.Length == 0
            ? finding.Say($"{words}: the {why} asks for long-line accessories, and all the maker names are fitted.").Build()
            : finding.Say($"{words}: the maker's long-line list is not complete, {string.Join(" and ", missing)} missing.").Next(Help.WhenItFails).Build();
    }

    private static bool IsFitted(Accessory accessory, Equipment equipment, Given<int>? traps) =>
        equipment.Accessories.Any(a => a.Value == accessory) || accessory switch
        {
            Accessory.TXV => equipment.Metering?.Kind.Value == MeteringKind.TXV,
            Accessory.OilTraps => traps is { Value: > 0 },
            Accessory.LiquidDrier => equipment.Drier is not null,
            _ => false,
        };
}
