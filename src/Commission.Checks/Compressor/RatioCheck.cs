using Commission.Checks.Air;
using Commission.Checks.Charge;
using Commission.Checks.Findings;
using Commission.Checks.Limits;
using Commission.Checks.Tables;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Compressors;

/// <summary>Ratio of the absolute pressures at the compressor.</summary>
internal sealed class RatioCheck : ICheck
{
    public string Id => "compressor.ratio";

    public string Phase => Phases.Compressor;

    public string Title => "Compression ratio";

    public CheckHelp Help { get; } = new(
        "How hard does the compressor have to work? The ratio of its absolute pressures heats the gas and wears the machine.",
        "ratio = p_discharge / p_suction, both absolute, corrected for the site's pressure",
        "About 10 at most, 11 for some; 2.3 to 3.5 usual for air conditioning, 5 to 8 for heat pumps in the cold: common practice, no source. The maker's figure comes first; with vapor injection the common figure means nothing.",
        "High: dirty condenser, low outdoor airflow, overcharge, air in the circuit, or a starved evaporator. Low: worn valves, a leaking reversing valve or a bypass.");

    public IEnumerable<Finding> Evaluate(CheckContext context) =>
        CompressorFindings.Rows(context, r => CompressorSides.HasHigh(r) && CompressorSides.HasLow(r)).Select(row => Judge(context, row));

    private Finding Judge(CheckContext context, ChargeRow row)
    {
        var sides = CompressorSides.Of(row);
        var (high, low) = (sides.High!, sides.Low!);
        var present = context.Present;
        var compressor = context.Job.Equipment.Compressor;
        var finding = CompressorFindings.Begin(context, this, row, high, low).Use("compressor", compressor?.Kind).Use("vapor injection", compressor?.VaporInjection).Use("running", row.Running);
        if (!(low.Value.Value > 0))
            return finding.NotEvaluated("the suction pressure is no pressure", "Check the reading.");
        var ratio = high.Value / low.Value;
        var text = present.Text(ratio, DisplayKind.Number);
        finding.Step("r", "compression ratio", CompressionRatio.Formula, $"{present.Text(high.Value.Value, DisplayKind.AbsolutePressure)} / {present.Text(low.Value.Value, DisplayKind.AbsolutePressure)}", text, "definition")
            .Measure(ratio, DisplayKind.Number);
        if (row.Settling.Block is { } early)
            return finding.Say($"Compression ratio {text} at {row.Time}; this is not judged: {early}.").NotEvaluated(early, row.Settling.Todo!);
        finding.Remark(sides.HighRemark).Remark(sides.LowRemark);
        var limits = context.Limits.In(context.Limits.Situation with { Mode = row.Mode == OperatingMode.Heating ? "heating" : "cooling" });
        var usual = limits.Find("compressor.ratio.range");
        var limit = usual is { Tier: LimitTier.Maker } ? usual : limits.Find("compressor.ratio.maximum");
        if (compressor?.VaporInjection?.Value == true && limit?.Tier != LimitTier.Maker)
            return finding.Information($"Compression ratio {text} at {row.Time}.", "vapor is injected between the stages: the common figure for one stage says nothing here");
        if (limit is null || (limit.Lower is null && limit.Upper is null))
            return finding.Information($"Compression ratio {text} at {row.Time}.", "nobody sets a limit");
        var state = context.State(limit);
        finding.Judge(ratio.On(state), DisplayKind.Number, state).Remark(limit.Remark(present.Units)).RemarkUnknown([high, low]);
        if (limit.Tier != LimitTier.Maker && usual is { Lower: { } from, Upper: { } to } && RunningCondition.Of(context, row).Block is null && (ratio.Value < from.Si || ratio.Value > to.Si))
            finding.Remark($"Usual at full load is {from.Text} to {to.Text}, {usual.Source} (common practice): {(ratio.Value < from.Si ? "look at valves, reversing valve and load" : "look at both coils and their airflow")}.");
        return finding.Passes
            ? finding.Say($"Compression ratio {text} at {row.Time}; {state.Text} is allowed.").Build()
            : finding.Say($"Compression ratio {text} at {row.Time}, outside what is allowed: {state.Text}.").Next(Help.WhenItFails).Build();
    }
}
