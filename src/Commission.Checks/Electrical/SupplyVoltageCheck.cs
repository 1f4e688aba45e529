using System.Globalization;
using Commission.Checks.Limits;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Whether the supply lies in the range the nameplate allows.</summary>
internal sealed class SupplyVoltageCheck : ICheck
{
    public string Id => "electrical.supply-voltage";

    public string Phase => Phases.Electrical;

    public string Title => "Supply voltage";

    public CheckHelp Help { get; } = new(
        "Is the voltage at the unit, with everything running, inside what the nameplate allows?",
        "maker's range, else nameplate voltage less and plus the pack's tolerance (a range such as 208 to 230 V: from its lower end to its upper end)",
        "± 10 % utilisation: common practice, no source.",
        "Measure again at the disconnect with the compressor running. Low under load: look for a loose lug or an undersized wire. Low or high throughout: the utility or the transformer tap. This is work for a licensed electrician.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { LineToLine.IsEmpty: false })
            yield break;
        var readings = context.Get<ElectricalReadings>().LineToLine;
        var plate = context.Job.Equipment.Nameplate?.Voltage;
        foreach (var reading in readings)
        {
            var finding = context.Finding(this, readings.Length == 1 ? null : reading.Name).Use(reading).Use("nameplate voltage", plate);
            if (context.Limits.Find("electrical.voltage") is { } makers)
            {
                yield return Said(finding.Judge(reading.Value, DisplayKind.Voltage, context.State(makers)), context, reading.Value.Value);
                continue;
            }

            if (plate is null || context.Limits.Find("electrical.voltage.utilisation") is not { Upper: { } share } limit)
            {
                yield return finding.NotEvaluated("the nameplate voltage is not written", "Write nameplate: {voltage: 208 to 230 V}.");
                continue;
            }

            var low = plate.Value.Low.Si * (1 - share.Si);
            var high = plate.Value.High.Si * (1 + share.Si);
            var text = $"{context.Present.Text(low, DisplayKind.Voltage)} to {context.Present.Text(high, DisplayKind.Voltage)}";
            finding.Step("V", "allowed range", "nameplate less and plus the tolerance", string.Create(CultureInfo.InvariantCulture, $"{plate.Text}, {100 * share.Si:0} %"), text, limit.Source);
            yield return Said(finding.Judge(reading.Value, DisplayKind.Voltage, context.State(limit) with { Kind = LimitKind.Within, Text = text, LowerSi = low, UpperSi = high }), context, reading.Value.Value);
        }
    }

    private Finding Said(Findings.FindingBuilder finding, CheckContext context, double volts) => finding.Passes
        ? finding.Say($"{context.Present.Text(volts, DisplayKind.Voltage)} at the unit, inside the allowed range.").Build()
        : finding.Say($"{context.Present.Text(volts, DisplayKind.Voltage)} at the unit, outside the allowed range.").Next(Help.WhenItFails).Build();
}
