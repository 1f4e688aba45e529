using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>What the readings were before any work.</summary>
internal sealed class AsFoundCheck : ICheck
{
    public string Id => "charge.as-found";

    public string Phase => Phases.Charge;

    public string Title => "As found";

    public CheckHelp Help { get; } = new(
        "What were superheat and subcooling before any work? An adjustment is shown as found and as left.",
        "superheat and subcooling of the readings taken before the work",
        "Definitions; nothing is judged.",
        "Read both sides before refrigerant is touched, and write the readings under as found.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        var found = context.Job.AsFound;
        if (analysis.AsFound.LastOrDefault() is { } row)
            yield return Tell(context, found!, row);
        else if (context.Job.Identity.Work.Value == WorkKind.ChargeAdjustment)
            yield return context.Finding(this).NotEvaluated("the readings before the work are not written", "Write them under as found.");
    }

    private Finding Tell(CheckContext context, AsFound found, ChargeRow row)
    {
        var finding = context.Finding(this, row.Time);
        var circuit = context.Get<CircuitRefrigerant>();
        if (found.Refrigerant is { } other && Fluids.RefrigerantCatalogue.Find(other.Value)?.Designation != circuit.Designation)
            return finding.Use("refrigerant found", other).Information($"The circuit was found with {other.Text}; its readings are listed and not worked out.", "the refrigerant was changed");
        var parts = new List<string>();
        foreach (var (name, number) in new[] { ("superheat", row.Superheat), ("subcooling", row.Subcooling) })
        {
            if (number.Value is not { } value)
                continue;
            finding.Use(number).Measure(value, DisplayKind.TemperatureDifference);
            parts.Add($"{name} {context.Present.Text(value, DisplayKind.TemperatureDifference)}");
        }

        if (found.ChargeRecovered is { } recovered)
        {
            finding.Use("charge recovered", recovered);
            parts.Add($"{recovered.Text} recovered");
        }

        return parts.Count == 0
            ? finding.NotEvaluated(row.Superheat.WhyNot ?? row.Subcooling.WhyNot!, "Read pressure and line temperature of a side together.")
            : finding.Information($"As found at {row.Time}: {string.Join(", ", parts)}.", "before any work");
    }
}
