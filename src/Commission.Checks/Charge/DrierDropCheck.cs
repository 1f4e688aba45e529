using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Temperature drop across the liquid-line drier: a drop means pressure is lost in it.</summary>
internal sealed class DrierDropCheck : ICheck
{
    public string Id => "charge.drier-drop";

    public string Phase => Phases.Charge;

    public string Title => "Drop across the drier";

    public CheckHelp Help { get; } = new(
        "Is the liquid line colder after the drier than before it? Liquid that flashes on the way shows a restricted drier.",
        "ΔT = T_liquid line − T_after the drier",
        "3 °F: common practice, no source; the maker's figure comes first.",
        "Replace the drier. Find out what filled it: an acid or moisture test of the oil tells more than a second drier does.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Get<ChargeAnalysis>().Spoken(OperatingMode.Cooling, r => r.Written is { LiquidLine: not null, LiquidAfterDrier: not null }) is not { } row)
            yield break;
        yield return RowDifference.Judge(
            context, this, row, row.DrierDrop, context.Limits.Find("charge.drier-drop"), "The drop across the drier", new ChargeGates(row.Settling),
            "Replace the drier and read again before the charge is touched.", "Swap the two clamps and read again: the line cannot warm up inside a drier.");
    }
}
