using System.Globalization;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Whether the breaker or fuse is no larger than the nameplate allows.</summary>
internal sealed class OvercurrentCheck : ICheck
{
    public string Id => "electrical.overcurrent";

    public string Phase => Phases.Electrical;

    public string Title => "Overcurrent device against MOP";

    public CheckHelp Help { get; } = new(
        "Is the breaker or fuse no larger than the maximum overcurrent protection on the nameplate?",
        "rating of breaker or fuse ≤ MOP on the nameplate",
        "NEC article 440 (from memory); elsewhere the maker's instructions and IEC 60364.",
        "Have a licensed electrician fit the size on the nameplate before the unit runs.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical?.Supply is not { } supply || (supply.Breaker ?? supply.Fuse) is not { } device)
            yield break;
        var plate = context.Job.Equipment.Nameplate?.MOP;
        var word = supply.Breaker is null ? "fuse" : "breaker";
        var finding = context.Finding(this).Use(word, device).Use("MOP", plate);
        if (plate is null)
        {
            yield return finding.NotEvaluated("the nameplate's MOP is not written", "Write nameplate: {MOP: 35 A}.");
            yield break;
        }

        if (context.Limits.Find("electrical.overcurrent.factor") is not { Upper: { } factor } limit)
        {
            yield return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
            yield break;
        }

        var most = factor.Si * plate.Value.Si;
        finding.Step("I_max", "largest overcurrent device", "factor × MOP", string.Create(CultureInfo.InvariantCulture, $"{factor.Si:0.##} × {plate.Text}"), context.Present.Text(most, DisplayKind.Current), limit.Source);
        // The rating printed on a device and on a plate is not a measurement: it has no uncertainty.
        finding.Judge(Uncertain.Exact(device.Value.Si), DisplayKind.Current, context.State(limit) with { Kind = LimitKind.AtMost, Text = $"at most {context.Present.Text(most, DisplayKind.Current)}", LowerSi = null, UpperSi = most });
        yield return finding.Passes
            ? finding.Say($"{device.Text} {word}, at most {plate.Text} allowed.").Build()
            : finding.Say($"{device.Text} {word}, larger than the {plate.Text} on the nameplate.").Next(Help.WhenItFails).Build();
    }
}
