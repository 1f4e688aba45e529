using Commission.Checks.Air;
using Commission.Checks.Charge;
using Commission.Checks.Findings;
using Commission.Checks.Limits;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Compressors;

/// <summary>Temperature of the discharge line near the compressor.</summary>
internal sealed class DischargeTemperatureCheck : ICheck
{
    public string Id => "compressor.discharge-temperature";

    public string Phase => Phases.Compressor;

    public string Title => "Discharge temperature";

    public CheckHelp Help { get; } = new(
        "Does the discharge gas stay cool enough for the oil? The line is read 6 in (150 mm) from the compressor; inside it is 50 to 75 °F hotter.",
        "T_discharge, clamp insulated, at most 6 in from the compressor, ≤ the maker's figure",
        "225 °F for a fixed-speed compressor; oil breaks down near 350 °F: common practice, no source. The maker comes first, above all for R-32, which runs hotter, and for variable speed.",
        "Look for high ratio, high suction superheat, low charge, dirty condenser or air in the circuit. Burns: the line may be above 200 °F.");

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
        if (context.Limits.Find("compressor.discharge-temperature") is not { Upper: not null } limit)
            return finding.Information($"The discharge line was at {text} at {row.Time}.", "the maker's figure is not written, and the common one is for fixed-speed compressors");
        var state = context.State(limit);
        finding.Judge(line.Value.On(state), DisplayKind.Temperature, state).Remark(limit.Remark(present.Units)).RemarkUnknown([line]);
        var place = context.Limits.Find("compressor.discharge-temperature.place");
        if (distance is null)
            finding.Remark($"The distance from the compressor is not written; the figure is for {(place is null ? "a short distance" : context.State(place).Text)}.");
        else if (place?.Upper is { } near && distance.Value.Si > near.Si && finding.Passes)
            finding.Reserve($"the line was read {distance.Text} from the compressor, where it has already cooled").Next($"Read it {context.State(place).Text} from the compressor.");
        return finding.Passes
            ? finding.Say($"The discharge line was at {text} at {row.Time}; {state.Text} is allowed.").Build()
            : finding.Say($"The discharge line was at {text} at {row.Time}, above what is allowed: {state.Text}.").Next(Help.WhenItFails).Build();
    }
}
