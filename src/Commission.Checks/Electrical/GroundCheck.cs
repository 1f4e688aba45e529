using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Equipment ground and disconnect.</summary>
internal sealed class GroundCheck : ICheck
{
    public string Id => "electrical.ground";

    public string Phase => Phases.Electrical;

    public string Title => "Ground and disconnect";

    public CheckHelp Help { get; } = new(
        "Is the equipment ground (protective earth) continuous, and can the unit be disconnected within sight?",
        "ground continuous, or its resistance within the pack's limit; disconnect within sight",
        "NEC articles 250 and 440 (from memory); 1 ohm continuity: common practice, no source.",
        "Do not run the unit. Have a licensed electrician make the ground good or fit a disconnect.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { Supply: { } supply } electrical)
            yield break;
        if (supply.EquipmentGround is { } ground)
        {
            var finding = context.Finding(this, "equipment ground").Use("equipment ground", ground);
            yield return ground.Value == ContinuityResult.NotChecked
                ? finding.NotEvaluated("nobody checked the equipment ground", "Measure its continuity from the unit to the panel with the power locked out, and write equipment ground: continuous.")
                : finding.Decide(ground.Value == ContinuityResult.Continuous).Passes
                ? finding.Say("The equipment ground is continuous.").Build()
                : finding.Say($"The equipment ground is {ground.Text}.").Next(Help.WhenItFails).Build();
        }

        if (supply.ProtectiveEarth is { } earth && context.Limits.Find("electrical.protective-earth") is { } limit)
        {
            // Resistances print in megohms, where this one would be nothing: it prints in ohms, as the limit does, without its unit.
            var reading = context.Readings.Plain("protective earth", ReadingName.Electrical, earth, DisplayKind.Resistance, electrical.With);
            var finding = context.Finding(this, "protective earth").Use(reading).Judge(reading.Value, DisplayKind.Number, context.State(limit));
            yield return finding.Passes
                ? finding.Say($"Protective earth {earth.Text}.").Build()
                : finding.Say($"Protective earth {earth.Text}: too much.").Next(Help.WhenItFails).Build();
        }

        if (supply.DisconnectWithinSight is { } sight)
        {
            var finding = context.Finding(this, "disconnect").Use("disconnect within sight", sight).Decide(sight.Value);
            yield return finding.Passes
                ? finding.Say("A disconnect is within sight of the unit.").Build()
                : finding.Say("No disconnect is within sight of the unit.").Next(Help.WhenItFails).Build();
        }
    }
}
