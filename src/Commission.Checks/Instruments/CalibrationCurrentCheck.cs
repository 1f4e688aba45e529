using System.Globalization;
using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>Whether each calibrated instrument was inside its interval on the day of the job.</summary>
internal sealed class CalibrationCurrentCheck : ICheck
{
    private const int DaysAYear = 365;

    public string Id => "instrument.calibration-current";

    public string Phase => Phases.Instruments;

    public string Title => "Calibration current";

    public CheckHelp Help { get; } = new(
        "Was every instrument inside its calibration interval on the day it was used? A sensor that is field-checked at the ice point instead needs no certificate.",
        "calibration date + interval ≥ date of the job",
        "Interval stated with the instrument; 12 months where none is stated (common practice, no source).",
        "Send the instrument for calibration, or repeat the readings that need it on one that is in date. Readings taken on it stay in the record; what they support is for the reader to decide.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            if (instrument.Described.Calibrated is { } calibrated)
                yield return Judge(context, instrument, calibrated);
            else if (NeedsCalibration(instrument.Described))
                yield return context.Finding(this, instrument.Id).NotEvaluated("no calibration date is written", "Write the date from the certificate or the sticker.");
        }
    }

    // An ice point today says more about a thermocouple than a certificate of last year; a tester without a scale has none.
    private static bool NeedsCalibration(Instrument instrument) =>
        instrument.Checks?.IcePoint is null && instrument.Kind.Value is not (InstrumentKind.Stopwatch or InstrumentKind.PhaseRotationMeter or InstrumentKind.Other);

    private Finding Judge(CheckContext context, UsedInstrument instrument, Given<DateOnly> calibrated)
    {
        var described = instrument.Described;
        var limit = context.Limits.Find("instruments.calibration.interval");
        var months = limit?.Upper?.Si ?? 12;
        var period = described.Interval?.Value ?? new CalendarPeriod((int)months, 0);
        var due = period.After(calibrated.Value);
        var day = context.Job.Identity.Date.Value;
        var finding = context.Finding(this, instrument.Id)
            .Use($"{instrument.Id}: calibrated", calibrated, instrument.Id)
            .Use($"{instrument.Id}: interval", described.Interval, instrument.Id)
            .Use("date of the job", context.Job.Identity.Date)
            .Step("due", "next calibration due", "calibrated + interval", $"{calibrated.Text} + {described.Interval?.Text ?? string.Create(CultureInfo.InvariantCulture, $"{months:0} months")}", Text(due));
        var holds = due >= day && calibrated.Value <= day;
        finding.Decide(holds, described.Interval is null && limit is not null ? context.State(limit) : null);
        if (calibrated.Value > day)
            return finding.Say($"{instrument.Id}: the calibration date {calibrated.Text} lies after the job.").Next("Correct the date.").Build();
        return holds
            ? finding.Say(string.Create(CultureInfo.InvariantCulture, $"{instrument.Id}: in date until {Text(due)}{(due.DayNumber - day.DayNumber < DaysAYear / 12 ? ", due soon" : "")}.")).Build()
            : finding.Say($"{instrument.Id}: calibration ran out on {Text(due)}.").Next("Have it calibrated; repeat on an instrument in date what this one alone supports.").Build();
    }

    private static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
