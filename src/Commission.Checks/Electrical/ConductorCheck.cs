using System.Globalization;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Whether the conductor carries at least the minimum circuit ampacity.</summary>
internal sealed class ConductorCheck : ICheck
{
    public string Id => "electrical.conductor";

    public string Phase => Phases.Electrical;

    public string Title => "Conductor against MCA";

    public CheckHelp Help { get; } = new(
        "Does the wire, as it is installed, carry at least the minimum circuit ampacity on the nameplate?",
        "ampacity of the conductor as installed ≥ MCA on the nameplate",
        "NEC article 440 (from memory); elsewhere the maker's instructions and IEC 60364.",
        "Have a licensed electrician fit a larger conductor, or confirm the ampacity for its insulation, grouping and ambient temperature.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical?.Supply is not { } supply || (supply.Ampacity is null && supply.Wire is null))
            yield break;
        var plate = context.Job.Equipment.Nameplate?.MCA;
        var finding = context.Finding(this).Use("wire", supply.Wire).Use("ampacity", supply.Ampacity).Use("MCA", plate);
        if (supply.Ampacity is not { } ampacity)
        {
            yield return finding.NotEvaluated("the ampacity of the wire is not written", "Write ampacity: 30 A, from the table of your code for this wire and its installation.");
            yield break;
        }

        if (plate is null)
        {
            yield return finding.NotEvaluated("the nameplate's MCA is not written", "Write nameplate: {MCA: 22.0 A}.");
            yield break;
        }

        if (context.Limits.Find("electrical.conductor.factor") is not { Lower: { } factor } limit)
        {
            yield return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
            yield break;
        }

        var least = factor.Si * plate.Value.Si;
        finding.Step("I_min", "least ampacity", "factor × MCA", string.Create(CultureInfo.InvariantCulture, $"{factor.Si:0.##} × {plate.Text}"), context.Present.Text(least, DisplayKind.Current), limit.Source);
        finding.Judge(Uncertain.Exact(ampacity.Value.Si), DisplayKind.Current, context.State(limit) with { Kind = LimitKind.AtLeast, Text = $"at least {context.Present.Text(least, DisplayKind.Current)}", LowerSi = least, UpperSi = null });
        yield return finding.Passes
            ? finding.Say($"Conductor good for {ampacity.Text}, at least {plate.Text} needed.").Build()
            : finding.Say($"Conductor good for {ampacity.Text} only; the nameplate asks for {plate.Text}.").Next(Help.WhenItFails).Build();
    }
}
