using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Measurement.Corrections;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Recording;

/// <summary>The instruments as page 2 shows them: identity, calibration, field checks, corrections, what each allows to be judged.</summary>
internal static class InstrumentRows
{
    public static ImmutableArray<InstrumentRow> Make(CheckContext context, IReadOnlyList<Finding> findings) =>
        [.. context.Get<InstrumentKit>().All.Select(i => Row(context.Present, i.Described, findings))];

    // A calibration in date is a column of the table and needs no sentence.
    private const string CalibrationCheck = "instrument.calibration-current";

    private static InstrumentRow Row(Presentation present, Instrument instrument, IReadOnlyList<Finding> findings)
    {
        var id = instrument.Id.Value;
        var used = findings.Where(f => f.Instruments.Contains(id, StringComparer.Ordinal)).ToList();
        return new InstrumentRow
        {
            Id = id,
            Kind = instrument.Kind.Text,
            Maker = instrument.Maker?.Value ?? "",
            Model = instrument.Model?.Value ?? "",
            Serial = instrument.Serial?.Value ?? "",
            Certificate = instrument.Certificate?.Value ?? "",
            IsOverdue = used.Any(f => f.Check == CalibrationCheck && f.Subject == id && f.Verdict is not (Verdict.Pass or Verdict.Information or Verdict.NotEvaluated)),
            Accuracy = instrument.Accuracy?.Text ?? instrument.Sensor?.Text ?? "",
            Resolution = StepsOf(instrument),
            Calibrated = Calibration(present, instrument),
            Reads = [.. instrument.Reads.Select(r => r.Text)],
            FieldChecks = [.. used.Where(f => f.Phase == Phases.Instruments && f.Subject == id && (f.Check != CalibrationCheck || f.Verdict != Verdict.Pass)).Select(f => f.Statement)],
            Corrections = [.. used.SelectMany(f => f.Trace).Where(s => s.Instrument == id).Select(s => s.Correction).OfType<CorrectionKind>().Select(c => present.Text(Short(c))).Distinct(StringComparer.Ordinal)],
            Judges = [.. used.Where(f => f.Phase != Phases.Instruments).Select(f => f.Title).Distinct(StringComparer.Ordinal)],
        };
    }

    // 0.1 psi (≤ 100 psig), 1 psi (> 100 psig): signs, which every language reads.
    private static string StepsOf(Instrument instrument)
    {
        var steps = instrument.Resolution;
        return string.Join(", ", steps.Select((s, i) =>
        {
            string[] ends = [s.Above is { } above ? $"> {above.Text}" : "", (s.UpTo ?? (i + 1 < steps.Length ? steps[i + 1].Above : null)) is { } end ? $"≤ {end.Text}" : ""];
            var range = string.Join(", ", ends.Where(e => e.Length > 0));
            return range.Length == 0 ? s.Step.Text : $"{s.Step.Text} ({range})";
        }));
    }

    // The numbers stand in the traces; here it is enough which corrections the readings had.
    private static Message Short(CorrectionKind correction) => correction switch
    {
        CorrectionKind.Zero => RecordMessages.ZeroTakenOff,
        CorrectionKind.KnownPoints => RecordMessages.AlongKnownPressure,
        CorrectionKind.IcePoint => RecordMessages.IceTakenOff,
        _ => RecordMessages.AmbientTakenOff,
    };

    private static string Calibration(Presentation present, Instrument instrument) => instrument.Calibrated is not { } day ? ""
        : present.Text(instrument.Interval is { } interval ? RecordMessages.CalibratedEvery(day.Value, new(interval.Text)) : CommonMessages.Day(day.Value));
}
