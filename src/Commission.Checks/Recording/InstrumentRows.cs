using System.Collections.Immutable;
using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Recording;

/// <summary>The instruments as page 2 shows them: identity, calibration, field checks, corrections, what each allows to be judged.</summary>
internal static class InstrumentRows
{
    public static ImmutableArray<InstrumentRow> Make(CheckContext context, IReadOnlyList<Finding> findings) =>
        [.. context.Get<InstrumentKit>().All.Select(i => Row(i.Described, findings))];

    private static InstrumentRow Row(Instrument instrument, IReadOnlyList<Finding> findings)
    {
        var id = instrument.Id.Value;
        var used = findings.Where(f => f.Instruments.Contains(id, StringComparer.Ordinal)).ToList();
        return new InstrumentRow
        {
            Id = id,
            Kind = instrument.Kind.Text,
            Serial = instrument.Serial?.Value ?? "",
            Accuracy = instrument.Accuracy?.Text ?? instrument.Sensor?.Text ?? "",
            Resolution = instrument.Resolution?.Text ?? "",
            Calibrated = Joined(instrument.Calibrated?.Text, instrument.Interval?.Text),
            Reads = [.. instrument.Reads.Select(r => r.Text)],
            FieldChecks = [.. used.Where(f => f.Phase == Phases.Instruments && f.Subject == id).Select(f => f.Statement)],
            Corrections = [.. used.SelectMany(f => f.Trace).Where(s => s.Name.EndsWith($" of {id}", StringComparison.Ordinal)).Select(s => Short(s.Symbol)).Distinct(StringComparer.Ordinal)],
            Judges = [.. used.Where(f => f.Phase != Phases.Instruments).Select(f => f.Title).Distinct(StringComparer.Ordinal)],
        };
    }

    // The numbers stand in the traces; here it is enough which corrections the readings had.
    private static string Short(string correction) => correction switch
    {
        "zero" => "zero offset taken off",
        "known points" => "along the line through the known pressure",
        "ice point" => "ice-point residual taken off",
        "clamp" => "bias toward ambient taken off",
        _ => correction,
    };

    private static string Joined(string? date, string? interval) => date is null ? "" : interval is null ? date : $"{date}, every {interval}";
}
