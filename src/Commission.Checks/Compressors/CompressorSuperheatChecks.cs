using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Compressors;

/// <summary>Discharge line over the dew point of the discharge pressure: little of it means that liquid comes back.</summary>
internal sealed class DischargeSuperheatCheck : ICheck
{
    public string Id => "compressor.discharge-superheat";

    public string Phase => Phases.Compressor;

    public IEnumerable<Finding> Evaluate(CheckContext context) =>
        CompressorFindings.Rows(context, r => r.Written.DischargeLine is not null && CompressorSides.HasHigh(r)).Select(row => Judge(context, row));

    private Finding Judge(CheckContext context, ChargeRow row)
    {
        var line = row.DischargeLine!;
        var sides = CompressorSides.Of(row);
        var high = sides.High!;
        var finding = CompressorFindings.Begin(context, this, row, line, high);
        return new AboveDew(row, line, high, sides.HighRemark)
        {
            Limit = LimitIds.CompressorDischargeSuperheat,
            Symbol = ("DSH", CompressorMessages.StepDischargeSuperheat, "T_discharge"),
            NoDew = CompressorMessages.DischargeNoDewNext,
            Read = found => CompressorMessages.DischargeSuperheatRead(found, new(row.Time)),
            Judged = found => CompressorMessages.DischargeSuperheatWas(found, new(row.Time)),
            Suspicion = CompressorMessages.DischargeSuperheatSuspicion,
            Next = this.WhenItFails(),
        }.Judge(context, finding);
    }
}

/// <summary>Oil sump over the saturation temperature of the suction pressure.</summary>
internal sealed class SumpSuperheatCheck : ICheck
{
    public string Id => "compressor.sump-superheat";

    public string Phase => Phases.Compressor;

    public IEnumerable<Finding> Evaluate(CheckContext context) =>
        CompressorFindings.Rows(context, r => r.Written.Sump is not null).Select(row => Judge(context, row));

    private Finding Judge(CheckContext context, ChargeRow row)
    {
        var sump = context.Readings.Temperature(context.Present.Text(CompressorMessages.ReadingSump(new(row.Time))), ReadingName.Sump, row.Written.Sump!, row.OutdoorDryBulb);
        var sides = CompressorSides.Of(row);
        var finding = CompressorFindings.Begin(context, this, row, sump, sides.Low);
        if (sides.Low is not { } low)
            return finding.NotEvaluated(CompressorMessages.SuctionNotRead, CompressorMessages.SumpSuctionNext);
        return new AboveDew(row, sump, low, sides.LowRemark)
        {
            Limit = LimitIds.CompressorSumpSuperheat,
            Symbol = ("ΔT", CompressorMessages.StepSumpSuperheat, "T_sump"),
            NoDew = CommonMessages.ReadingAndGasNext,
            Read = found => CompressorMessages.SumpSuperheatRead(found, new(row.Time)),
            Judged = found => CompressorMessages.SumpSuperheatWas(found, new(row.Time)),
            Suspicion = CompressorMessages.SumpSuspicion,
            Next = this.WhenItFails(),
        }.Judge(context, finding);
    }
}

/// <summary>Superheat where the vapor enters the compressor.</summary>
internal sealed class SuctionSuperheatCheck : ICheck
{
    public string Id => "compressor.suction-superheat";

    public string Phase => Phases.Compressor;

    public IEnumerable<Finding> Evaluate(CheckContext context) =>
        CompressorFindings.Rows(context, r => r.Written.CompressorSuctionLine is not null).Select(row => Judge(context, row));

    private Finding Judge(CheckContext context, ChargeRow row)
    {
        var present = context.Present;
        var sides = CompressorSides.Of(row);
        var finding = CompressorFindings.Begin(context, this, row, row.CompressorSuctionLine, sides.Low);
        if (sides.Low is null)
        {
            return finding.NotEvaluated(
                row.Mode == OperatingMode.Heating ? CompressorMessages.SuctionNotReadHeating : CompressorMessages.SuctionNotRead,
                CompressorMessages.SuctionLineNext);
        }

        var number = row.CompressorSuperheat;
        finding.Use(number);
        if (number.Value is not { } superheat)
            return finding.NotEvaluated(number.WhyNot!, CommonMessages.ReadingAndGasNext);
        finding.Measure(superheat, DisplayKind.TemperatureDifference);
        var was = CompressorMessages.SuctionSuperheatWas(present.InMessage(superheat, DisplayKind.TemperatureDifference), new(row.Time));
        if (row.Settling.Block is { } early)
            return finding.Say(CompressorMessages.FigureNotJudged(was, early)).NotEvaluated(early, row.Settling.Todo!);
        if (context.Limits.Find(LimitIds.CompressorSuctionSuperheat) is not { } limit || (limit.Lower is null && limit.Upper is null))
            return finding.Information(CompressorMessages.FigureOnly(was), CompressorMessages.RatioNoLimit);
        var state = context.State(limit);
        finding.Remark(sides.LowRemark).Judge(superheat.On(state), DisplayKind.TemperatureDifference, state).Remark(limit.Remark(present.Units)).RemarkUnknown(number.Readings);
        var said = CompressorMessages.FigureRequired(was, new(state.Text));
        return finding.Conclude(
            said,
            said,
            superheat.Value > state.UpperSi ? CompressorMessages.SuctionTooWarmNext : this.WhenItFails());
    }
}
