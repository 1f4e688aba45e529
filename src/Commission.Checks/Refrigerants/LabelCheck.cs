using System.Globalization;
using Commission.Checks.Charge;
using Commission.Checks.Findings;
using Commission.Checks.Limits;
using Commission.Checks.Readings;
using Commission.Checks.Tables;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>Whether what is written on the unit is what the circuit holds.</summary>
internal sealed class LabelCheck : ICheck
{
    public string Id => "refrigerant.label";

    public string Phase => Phases.Refrigerant;

    public string Title => "Label on the unit";

    public CheckHelp Help { get; } = new(
        "Does the label on the unit say what the scale says: factory charge, charge added, total, and where the law asks for it the warming potential and the tonnes of carbon dioxide it equals? The next technician charges by it.",
        "|label − weighed| ≤ U of their difference, which holds the scale, the hoses and the last digit on the label; t CO2e = total × GWP / 1000",
        "Regulation (EU) 2024/573, labelling (from memory); elsewhere the maker's instructions. Agreement within U: common practice, no source.",
        "Correct the label: factory charge from the plate, added by the scale, total of both.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Label is { } label)
            yield return Judge(context, label);
    }

    private Finding Judge(CheckContext context, ChargeLabel label)
    {
        var finding = context.Finding(this).Use("label: refrigerant", label.Refrigerant).Use("label: factory", label.Factory).Use("label: added", label.Added).Use("label: total", label.Total)
            .Use("label: GWP", label.GWP).Use("label: t CO2e", label.CO2Equivalent).Use("label: on unit", label.OnUnit);
        var wrong = new List<string>();
        Words(context, finding, label, wrong);
        var law = context.Limits.Find("refrigerant.label");
        var compared = Masses(context, finding, label, law, wrong);
        if (law is not null)
            finding.Show(context.State(law));
        if (wrong.Count > 0)
            return finding.Decide(false).Say($"The label does not fit: {string.Join("; ", wrong)}.").Next(Help.WhenItFails).Build();
        if (compared is null)
            return finding.NotEvaluated(context.Get<CircuitCharge>() is { IsWeighed: false, WhyNot: { } why } ? $"there is nothing to compare the label with: {why}" : "no mass is written on the label", "Write factory charge, charge added and total on the label and here.");
        finding.Decide(true).Say($"The label fits: {compared}.");
        foreach (var name in law is null ? [] : NotOn(label))
            finding.Reserve($"{name} is not on the label").Next("Complete the label and photograph it.");
        return finding.Build();
    }

    // What the law that asks for a label wants on it.
    private static IEnumerable<string> NotOn(ChargeLabel label) =>
        new[] { ("factory charge", label.Factory is not null), ("charge added", label.Added is not null), ("total", label.Total is not null), ("GWP", label.GWP is not null), ("t CO2e", label.CO2Equivalent is not null) }
            .Where(part => !part.Item2)
            .Select(part => part.Item1);

    private static void Words(CheckContext context, FindingBuilder finding, ChargeLabel label, List<string> wrong)
    {
        var circuit = context.Get<CircuitRefrigerant>();
        if (label.Refrigerant is { } written && !string.Equals(RefrigerantCatalogue.Find(written.Value)?.Designation, circuit.Designation, StringComparison.Ordinal))
            wrong.Add($"it says {written.Value}, the circuit holds {circuit.Designation}");
        if (label.OnUnit?.Value == false)
            wrong.Add("it is not on the unit");
        finding.Use("refrigerant", context.Job.Equipment.Refrigerant);
        if (label.GWP is not { } potential || circuit.Info is not { } info)
            return;
        var european = EuropeanWarming.Of(info)?.Potential;
        double?[] known = [info.GwpAr4?.Value, info.GwpAr5?.Value, info.GwpAr6?.Value, european];
        // Lists print whole numbers, and whoever writes them rounds once more.
        if (known.Any(k => k is not null) && !known.Any(k => k is { } gwp && Math.Abs(gwp - potential.Value) <= 1))
            wrong.Add(string.Create(CultureInfo.InvariantCulture, $"GWP {potential.Text}, known are {string.Join(", ", known.OfType<double>().Select(k => k.ToString("0.#", CultureInfo.InvariantCulture)).Distinct(StringComparer.Ordinal))}"));
    }

    private static string? Masses(CheckContext context, FindingBuilder finding, ChargeLabel label, Limit? law, List<string> wrong)
    {
        var weighed = context.Get<WeighedCharge>();
        string? compared = null;
        if (label.Factory is { } factory && context.Job.Equipment.Nameplate?.FactoryCharge is { } plate)
        {
            finding.Use("factory charge", plate);
            var difference = Written(context, "label: factory", factory) - Written(context, "factory charge", plate);
            Compare(context, finding, "factory charge", factory.Text, plate.Text, difference, wrong);
            compared = $"factory charge {factory.Text}";
        }

        if (label.Added is { } added && Beyond(context, weighed, label.Factory) is { } put)
        {
            put.UseIn(finding);
            Compare(context, finding, "charge added", added.Text, context.Present.Text(put.Value, DisplayKind.Mass), Written(context, "label: added", added) - put.Value, wrong);
            compared = $"{added.Text} added";
        }

        if (label.Total is { } total && weighed.Total is { } whole)
        {
            whole.UseIn(finding);
            Compare(context, finding, "total", total.Text, context.Present.Text(whole.Value, DisplayKind.Mass), Written(context, "label: total", total) - whole.Value, wrong);
            compared = $"total {total.Text}";
        }
        else if (label is { Total: { } sum, Factory: { } part, Added: { } more })
        {
            var difference = Written(context, "label: total", sum) - Written(context, "label: factory", part) - Written(context, "label: added", more);
            Compare(context, finding, "total on the label", sum.Text, $"{part.Text} + {more.Text}", difference, wrong);
            compared ??= $"total {sum.Text}";
        }

        if (label is { CO2Equivalent: { } tonnes, Total: { } mass, GWP: { } gwp })
            Equivalent(context, finding, law, tonnes, mass, gwp, wrong);
        return compared;
    }

    // Where all of it went in anew, "added" is all of it, or what lies beyond the factory charge when the label writes that too.
    private static MassNumber? Beyond(CheckContext context, WeighedCharge weighed, Given<Mass>? factory)
    {
        if (!weighed.SawWholeCharge || factory is null || weighed.Put is not { } all)
            return weighed.Put;
        var beyond = all.Value - Written(context, "label: factory", factory);
        var step = new TraceStep("m_add", "charge beyond the factory charge", "put in − factory charge", $"{context.Present.Text(all.Value.Value, DisplayKind.Mass)} − {factory.Text}", context.Present.Text(beyond, DisplayKind.Mass), "definition");
        return new MassNumber(beyond, all.Readings, all.Uses, [.. all.Steps, step]);
    }

    private static void Equivalent(CheckContext context, FindingBuilder finding, Limit? law, Given<Mass> tonnes, Given<Mass> mass, Given<double> potential, List<string> wrong)
    {
        var expected = CarbonDioxideEquivalent.Tonnes(1, potential.Value) * 1000 * Written(context, "label: total", mass);
        finding.Step("CO2e", "carbon-dioxide equivalent on the label", CarbonDioxideEquivalent.Formula, $"{mass.Text} × {potential.Text}", $"{Tonnes(expected.Value)}, label {tonnes.Text}", law?.Source ?? "");
        var difference = Written(context, "label: t CO2e", tonnes) - expected;
        if (Math.Abs(difference.Value) > Math.Max(difference.Expanded, 0.005 * expected.Value))
            wrong.Add($"{tonnes.Text} CO2e, its own total and GWP make {Tonnes(expected.Value)}");
    }

    private static void Compare(CheckContext context, FindingBuilder finding, string what, string labelled, string weighed, Uncertain difference, List<string> wrong)
    {
        var present = context.Present;
        finding.Measure(difference, DisplayKind.Mass)
            .Step("d", $"{what}: label against weighed", "label − weighed", $"{labelled} − {weighed}", present.Text(difference, DisplayKind.Mass), "agreement within U: common practice, no source");
        if (Math.Abs(difference.Value) > difference.Expanded + 1e-9)
            wrong.Add($"{what} {labelled} on the label, {weighed} by weight");
    }

    private static Uncertain Written(CheckContext context, string name, Given<Mass> given) => WrittenNumber.Of(context, name, given, DisplayKind.Mass);

    private static string Tonnes(double kilograms) => string.Create(CultureInfo.InvariantCulture, $"{kilograms / 1000:0.00} t");
}
