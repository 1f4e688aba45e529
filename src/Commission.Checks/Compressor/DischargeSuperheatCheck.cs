using Commission.Checks.Charge;
using Commission.Checks.Readings;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Compressors;

/// <summary>Discharge line over the dew point of the discharge pressure: little of it means that liquid comes back.</summary>
internal sealed class DischargeSuperheatCheck : ICheck
{
    public string Id => "compressor.discharge-superheat";

    public string Phase => Phases.Compressor;

    public string Title => "Discharge superheat";

    public CheckHelp Help { get; } = new(
        "Is the discharge gas well above its dew point? A compressor that gets liquid with its vapor discharges hardly hotter than saturation, whatever the suction line says.",
        "DSH = T_discharge − T_dew(p_discharge, absolute)",
        "20 °F: common practice, no source; less is a suspicion, not a fault. The maker's figure comes first.",
        "Check superheat at the compressor, the valve's bulb, the accumulator and the charge; listen for slugging. Do not run it with liquid coming back.");

    public IEnumerable<Finding> Evaluate(CheckContext context) =>
        CompressorFindings.Rows(context, r => r.Written.DischargeLine is not null && CompressorSides.HasHigh(r)).Select(row => Judge(context, row));

    private Finding Judge(CheckContext context, ChargeRow row)
    {
        var present = context.Present;
        var line = row.DischargeLine!;
        var sides = CompressorSides.Of(row);
        var high = sides.High!;
        var finding = CompressorFindings.Begin(context, this, row, line, high);
        var saturation = context.Get<CircuitSaturation>();
        var dew = saturation.Dew(high);
        if (dew.Value is not { } point)
            return finding.NotEvaluated(dew.WhyNot!.TrimEnd('.'), "Check the reading; above the critical point there is no saturation and no discharge superheat.");
        var superheat = line.Value - point;
        var text = present.Text(superheat, DisplayKind.TemperatureDifference);
        finding.Step("T_dew", $"dew point at {high.Name}", "dew curve of the refrigerant", present.Text(high.Value.Value, DisplayKind.AbsolutePressure), present.Text(point, DisplayKind.Temperature), saturation.Source)
            .Step("DSH", "discharge superheat", "T_discharge − T_dew", $"{present.Text(line.Value.Value, DisplayKind.Temperature)} − {present.Text(point.Value, DisplayKind.Temperature)}", text, "definition")
            .Measure(superheat, DisplayKind.TemperatureDifference);
        if (row.Settling.Block is { } early)
            return finding.Say($"Discharge superheat {text} at {row.Time}; this is not judged: {early}.").NotEvaluated(early, row.Settling.Todo!);
        if (context.Limits.Find("compressor.discharge-superheat") is not { } limit || (limit.Lower is null && limit.Upper is null))
            return finding.Information($"Discharge superheat {text} at {row.Time}.", "nobody sets a limit");
        return finding.Remark(sides.HighRemark).JudgeOrDoubt(
            context, superheat, DisplayKind.TemperatureDifference, limit, [line, high], $"Discharge superheat was {text} at {row.Time}",
            "so little discharge superheat suggests liquid coming back to the compressor", Help.WhenItFails);
    }
}
