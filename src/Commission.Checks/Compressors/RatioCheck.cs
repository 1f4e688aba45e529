using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Compressors;

/// <summary>Ratio of the absolute pressures at the compressor.</summary>
internal sealed class RatioCheck : ICheck
{
    public string Id => "compressor.ratio";

    public string Phase => Phases.Compressor;

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
            return finding.NotEvaluated(CompressorMessages.RatioNoSuction, CompressorMessages.RatioNoSuctionNext);
        var ratio = high.Value / low.Value;
        var (was, time) = (present.InMessage(ratio, DisplayKind.Number), new TextValue(row.Time));
        finding.Step("r", "compression ratio", CompressionRatio.Formula, $"{present.Text(high.Value.Value, DisplayKind.AbsolutePressure)} / {present.Text(low.Value.Value, DisplayKind.AbsolutePressure)}", present.Text(ratio, DisplayKind.Number), "definition")
            .Measure(ratio, DisplayKind.Number);
        if (row.Settling.Block is { } early)
            return finding.Say(CompressorMessages.RatioNotJudged(was, time, early)).NotEvaluated(early, row.Settling.Todo!);
        finding.Remark(sides.HighRemark).Remark(sides.LowRemark);
        var limits = context.Limits.In(context.Limits.Situation with { Mode = row.Mode == OperatingMode.Heating ? "heating" : "cooling" });
        var usual = limits.Find(LimitIds.CompressorRatioRange);
        var limit = usual is { Tier: LimitTier.Maker } ? usual : limits.Find(LimitIds.CompressorRatioMaximum);
        if (compressor?.VaporInjection?.Value == true && limit?.Tier != LimitTier.Maker)
            return finding.Information(CompressorMessages.RatioWas(was, time), CompressorMessages.RatioVaporInjection);
        if (limit is null || (limit.Lower is null && limit.Upper is null))
            return finding.Information(CompressorMessages.RatioWas(was, time), CompressorMessages.RatioNoLimit);
        var state = context.State(limit);
        finding.Judge(ratio.On(state), DisplayKind.Number, state).Remark(limit.Remark(present.Units)).RemarkUnknown([high, low]);
        if (limit.Tier != LimitTier.Maker && row.OutdoorDryBulb is { } air)
            finding.Name([air]);
        finding.Use("temperature of the box", context.Job.Equipment.BoxTemperature);
        if (limit.Tier != LimitTier.Maker && finding.Passes && RunningCondition.Of(context, row).Block is null && LikelyRatio.Of(context, row) is { } likely
            && ratio.Value + ratio.Expanded < context.Limits.Require(LimitIds.CompressorRatioLikely).Lower!.Si * likely)
        {
            var below = CompressorMessages.RatioFarBelow(present.InMessage(likely, DisplayKind.Number));
            return finding.Fail(below).Say(CompressorMessages.RatioPassesGas(was, time, below)).Next(CausesMessages.CauseWeakCompressorNext).Build();
        }

        if (limit.Tier != LimitTier.Maker && usual is { Lower: { } from, Upper: { } to } && RunningCondition.Of(context, row).Block is null && (ratio.Value < from.Si || ratio.Value > to.Si))
            finding.Remark(CompressorMessages.RatioUsual(new TextValue(from.Text), new TextValue(to.Text), new TextValue(usual.Source), ratio.Value < from.Si ? CompressorMessages.RatioUsualWhere.Below : CompressorMessages.RatioUsualWhere.Above));
        return finding.Conclude(
            CompressorMessages.RatioAllowed(was, time, new TextValue(state.Text)),
            CompressorMessages.RatioOutside(was, time, new TextValue(state.Text)),
            CompressorMessages.RatioNext);
    }
}

/// <summary>Temperature of the discharge line near the compressor.</summary>
internal sealed class DischargeTemperatureCheck : ICheck
{
    public string Id => "compressor.discharge-temperature";

    public string Phase => Phases.Compressor;

    public IEnumerable<Finding> Evaluate(CheckContext context) =>
        CompressorFindings.Rows(context, r => r.Written.DischargeLine is not null).Select(row => Judge(context, row));

    private Finding Judge(CheckContext context, ChargeRow row)
    {
        var present = context.Present;
        var line = row.DischargeLine!;
        var compressor = context.Job.Equipment.Compressor?.Kind;
        var distance = context.Job.Charging?.ReadAt?.DischargeLine;
        var finding = CompressorFindings.Begin(context, this, row, line).Use("compressor", compressor).Use("distance from the compressor", distance).Measure(line.Value, DisplayKind.Temperature);
        var text = present.Text(line.Value, DisplayKind.Temperature);
        if (row.Settling.Block is { } early)
            return finding.Say($"The discharge line was at {text} at {row.Time}; this is not judged: {early}.").NotEvaluated(early, row.Settling.Todo!);
        if (context.Limits.Find(LimitIds.CompressorDischargeTemperature) is not { Upper: not null } limit)
            return finding.Information($"The discharge line was at {text} at {row.Time}.", "the maker's figure is not written, and the common one is for fixed-speed compressors");
        var state = context.State(limit);
        finding.Judge(line.Value.On(state), DisplayKind.Temperature, state).Remark(limit.Remark(present.Units)).RemarkUnknown([line]);
        var place = context.Limits.Find(LimitIds.CompressorDischargeTemperaturePlace);
        if (distance is null)
            finding.Remark($"The distance from the compressor is not written; the figure is for {(place is null ? "a short distance" : context.State(place).Text)}.");
        else if (place?.Upper is { } near && distance.Value.Si > near.Si && finding.Passes)
            finding.Reserve($"the line was read {distance.Text} from the compressor, where it has already cooled").Next($"Read it {context.State(place).Text} from the compressor.");
        return finding.Conclude(
            $"The discharge line was at {text} at {row.Time}; {state.Text} is allowed.",
            $"The discharge line was at {text} at {row.Time}, above what is allowed: {state.Text}.",
            this.WhenItFails());
    }
}
