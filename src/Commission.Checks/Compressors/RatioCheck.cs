using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
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
        var finding = CompressorFindings.Begin(context, this, row, high, low).Use(ReadingsMessages.Compressor, compressor?.Kind).Use(CompressorMessages.ReadingInjection, compressor?.VaporInjection).Use(CompressorMessages.ReadingRunning, row.Running);
        if (!(low.Value.Value > 0))
            return finding.NotEvaluated(CompressorMessages.RatioNoSuction, CompressorMessages.RatioNoSuctionNext);
        var ratio = high.Value / low.Value;
        var (was, time) = (present.InMessage(ratio, DisplayKind.Number), new TextValue(row.Time));
        finding.Step("r", CompressorMessages.StepRatio, CompressionRatio.Formula, $"{present.Text(high.Value.Value, DisplayKind.AbsolutePressure)} / {present.Text(low.Value.Value, DisplayKind.AbsolutePressure)}", present.Text(ratio, DisplayKind.Number), CompressorMessages.StepDefinition)
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
        finding.Use(ReadingsMessages.TemperatureOfBox, context.Job.Equipment.BoxTemperature);
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
        var finding = CompressorFindings.Begin(context, this, row, line).Use(ReadingsMessages.Compressor, compressor).Use(CompressorMessages.ReadingDistance, distance).Measure(line.Value, DisplayKind.Temperature);
        var (found, time) = (present.InMessage(line.Value, DisplayKind.Temperature), new TextValue(row.Time));
        if (row.Settling.Block is { } early)
            return finding.Say(CompressorMessages.FigureNotJudged(CompressorMessages.DischargeLineWas(found, time), early)).NotEvaluated(early, row.Settling.Todo!);
        if (context.Limits.Find(LimitIds.CompressorDischargeTemperature) is not { Upper: not null } limit)
            return finding.Information(CompressorMessages.FigureOnly(CompressorMessages.DischargeLineWas(found, time)), CompressorMessages.DischargeNoLimit);
        var state = context.State(limit);
        finding.Judge(line.Value.On(state), DisplayKind.Temperature, state).Remark(limit.Remark(present.Units)).RemarkUnknown([line]);
        var place = context.Limits.Find(LimitIds.CompressorDischargeTemperaturePlace);
        if (distance is null)
            finding.Remark(place is null ? CompressorMessages.DistanceNotWrittenShort : CompressorMessages.DistanceNotWritten(new(context.State(place).Text)));
        else if (place?.Upper is { } near && distance.Value.Si > near.Si && finding.Passes)
            finding.Reserve(CompressorMessages.DistanceTooFar(new(distance.Text))).Next(CompressorMessages.DistanceTooFarNext(new(context.State(place).Text)));
        return finding.Conclude(
            CompressorMessages.DischargeAllowed(found, time, new(state.Text)),
            CompressorMessages.DischargeAbove(found, time, new(state.Text)),
            this.WhenItFails());
    }
}
