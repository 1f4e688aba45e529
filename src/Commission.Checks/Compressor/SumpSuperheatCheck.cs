using Commission.Checks.Charge;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Compressors;

/// <summary>Oil sump over the saturation temperature of the suction pressure.</summary>
internal sealed class SumpSuperheatCheck : ICheck
{
    public string Id => "compressor.sump-superheat";

    public string Phase => Phases.Compressor;

    public string Title => "Sump superheat";

    public CheckHelp Help { get; } = new(
        "Is the oil warm enough to keep refrigerant out of it? Oil thinned with refrigerant foams and does not lubricate.",
        "sump superheat = T_sump − T_dew(p_suction, absolute)",
        "20 °F: common practice, no source; less is a suspicion, not a fault. The maker's figure comes first.",
        "Check the crankcase heater, liquid coming back and the charge; let it run warm and read again.");

    public IEnumerable<Finding> Evaluate(CheckContext context) =>
        CompressorFindings.Rows(context, r => r.Written.Sump is not null).Select(row => Judge(context, row));

    private Finding Judge(CheckContext context, ChargeRow row)
    {
        var present = context.Present;
        var sump = context.Readings.Temperature($"sump, {row.Time}", ReadingName.Sump, row.Written.Sump!, row.OutdoorDryBulb);
        var sides = CompressorSides.Of(row);
        var finding = CompressorFindings.Begin(context, this, row, sump, sides.Low);
        if (sides.Low is not { } low)
            return finding.NotEvaluated("the suction pressure was not read", "Read the true suction pressure beside the sump.");
        var saturation = context.Get<CircuitSaturation>();
        var dew = saturation.Dew(low);
        if (dew.Value is not { } point)
            return finding.NotEvaluated(dew.WhyNot!.TrimEnd('.'), "Check the reading and the refrigerant's name.");
        var superheat = sump.Value - point;
        var text = present.Text(superheat, DisplayKind.TemperatureDifference);
        finding.Step("T_dew", $"dew point at {low.Name}", "dew curve of the refrigerant", present.Text(low.Value.Value, DisplayKind.AbsolutePressure), present.Text(point, DisplayKind.Temperature), saturation.Source)
            .Step("ΔT", "sump superheat", "T_sump − T_dew", $"{present.Text(sump.Value.Value, DisplayKind.Temperature)} − {present.Text(point.Value, DisplayKind.Temperature)}", text, "definition")
            .Measure(superheat, DisplayKind.TemperatureDifference);
        if (row.Settling.Block is { } early)
            return finding.Say($"Sump superheat {text} at {row.Time}; this is not judged: {early}.").NotEvaluated(early, row.Settling.Todo!);
        if (context.Limits.Find("compressor.sump-superheat") is not { } limit || (limit.Lower is null && limit.Upper is null))
            return finding.Information($"Sump superheat {text} at {row.Time}.", "nobody sets a limit");
        return finding.Remark(sides.LowRemark).JudgeOrDoubt(
            context, superheat, DisplayKind.TemperatureDifference, limit, [sump, low], $"The sump was {text} above saturation at {row.Time}",
            "a sump this near to saturation suggests refrigerant in the oil", Help.WhenItFails);
    }
}
