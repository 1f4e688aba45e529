using Commission.Checks.Air;
using Commission.Checks.Charge;
using Commission.Checks.Findings;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Compressors;

/// <summary>Superheat where the vapor enters the compressor.</summary>
internal sealed class SuctionSuperheatCheck : ICheck
{
    public string Id => "compressor.suction-superheat";

    public string Phase => Phases.Compressor;

    public string Title => "Superheat at the compressor";

    public CheckHelp Help { get; } = new(
        "Is the vapor dry where it enters the compressor? Superheat at the evaporator says little of it when the line is long or cold.",
        "SH = T_suction line at the compressor − T_dew(p_suction, absolute)",
        "5 °F least, 10 to 20 °F typical: common practice, no source. The maker's minimum comes first.",
        "Do not run it with liquid coming back. Check the valve and its bulb, the airflow, the charge and the insulation of the suction line.");

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
        if (context.Limits.Find("compressor.suction-superheat") is not { } limit || (limit.Lower is null && limit.Upper is null))
            return finding.Information($"Superheat at the compressor was {text} at {row.Time}.", "nobody sets a limit");
        var state = context.State(limit);
        finding.Remark(sides.LowRemark).Judge(superheat.On(state), DisplayKind.TemperatureDifference, state).Remark(limit.Remark(present.Units)).RemarkUnknown(number.Readings);
        return finding.Passes
            ? finding.Say($"Superheat at the compressor was {text} at {row.Time}; {state.Text} is asked for.").Build()
            : finding.Say($"Superheat at the compressor was {text} at {row.Time}; {state.Text} is asked for.").Next(superheat.Value > state.UpperSi ? "The vapor comes back too warm, which heats the motor: check the charge, the valve and the insulation of the suction line." : Help.WhenItFails).Build();
    }
}
