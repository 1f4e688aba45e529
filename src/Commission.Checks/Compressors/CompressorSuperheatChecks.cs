using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
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
            Symbol = ("DSH", "discharge superheat", "T_discharge"),
            NoDew = "Check the reading; above the critical point there is no saturation and no discharge superheat.",
            Read = text => $"Discharge superheat {text} at {row.Time}",
            Judged = text => $"Discharge superheat was {text} at {row.Time}",
            Suspicion = "so little discharge superheat suggests liquid coming back to the compressor",
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
        var sump = context.Readings.Temperature($"sump, {row.Time}", ReadingName.Sump, row.Written.Sump!, row.OutdoorDryBulb);
        var sides = CompressorSides.Of(row);
        var finding = CompressorFindings.Begin(context, this, row, sump, sides.Low);
        if (sides.Low is not { } low)
            return finding.NotEvaluated("the suction pressure was not read", "Read the true suction pressure beside the sump.");
        return new AboveDew(row, sump, low, sides.LowRemark)
        {
            Limit = LimitIds.CompressorSumpSuperheat,
            Symbol = ("ΔT", "sump superheat", "T_sump"),
            NoDew = "Check the reading and the refrigerant's name.",
            Read = text => $"Sump superheat {text} at {row.Time}",
            Judged = text => $"The sump was {text} above saturation at {row.Time}",
            Suspicion = "a sump this near to saturation suggests refrigerant in the oil",
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
                row.Mode == OperatingMode.Heating ? "in heating only a pressure at the compressor's inlet tells the low side, and it was not read" : "the suction pressure was not read",
                "Read the true suction pressure beside the suction line.");
        }

        var number = row.CompressorSuperheat;
        finding.Use(number);
        if (number.Value is not { } superheat)
            return finding.NotEvaluated(number.WhyNot!, "Check the reading and the refrigerant's name.");
        finding.Measure(superheat, DisplayKind.TemperatureDifference);
        var text = present.Text(superheat, DisplayKind.TemperatureDifference);
        if (row.Settling.Block is { } early)
            return finding.Say($"Superheat at the compressor was {text} at {row.Time}; this is not judged: {early}.").NotEvaluated(early, row.Settling.Todo!);
        if (context.Limits.Find(LimitIds.CompressorSuctionSuperheat) is not { } limit || (limit.Lower is null && limit.Upper is null))
            return finding.Information($"Superheat at the compressor was {text} at {row.Time}.", "nobody sets a limit");
        var state = context.State(limit);
        finding.Remark(sides.LowRemark).Judge(superheat.On(state), DisplayKind.TemperatureDifference, state).Remark(limit.Remark(present.Units)).RemarkUnknown(number.Readings);
        return finding.Conclude(
            $"Superheat at the compressor was {text} at {row.Time}; {state.Text} is asked for.",
            $"Superheat at the compressor was {text} at {row.Time}; {state.Text} is asked for.",
            superheat.Value > state.UpperSi ? "The vapor comes back too warm, which heats the motor: check the charge, the valve and the insulation of the suction line." : this.WhenItFails());
    }
}
