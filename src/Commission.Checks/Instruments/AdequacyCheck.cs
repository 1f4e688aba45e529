using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>Whether the instruments were good enough for the limits they were judged by, and which would have to be better.</summary>
internal sealed class AdequacyCheck : IReviewCheck
{
    public string Id => "instrument.adequacy";

    public string Phase => Phases.Instruments;

    public IEnumerable<Finding> Review(CheckContext context, IReadOnlyList<Finding> findings)
    {
        var judged = findings.Where(f => f is { Adequacy: not null, Measured: not null }).ToList();
        if (judged.Count == 0)
            yield break;
        var usable = context.Limits.Find(LimitIds.InstrumentsAdequacyUsable)?.Lower?.Si ?? 2;
        // A one-sided limit that is missed or met by little has a small distance whatever the instrument: only a band says how fine an instrument has to be.
        var weak = judged.Where(f => f.Adequacy < usable && f.Limits[0] is { LowerSi: not null, UpperSi: not null }).ToList();
        foreach (var f in weak)
            yield return Weak(context, f, usable);
        if (weak.Count == 0)
        {
            yield return context.Finding(this).Information(
                string.Create(CultureInfo.InvariantCulture, $"All {judged.Count} judged numbers with a tolerance band were read finely enough: tolerance over U is {usable:0} or more."),
                "compares each tolerance with the U of its number");
        }
    }

    private Finding Weak(CheckContext context, Finding f, double usable)
    {
        var finding = context.Finding(this, f.Subject is null ? f.Title : $"{f.Title}, {f.Subject}");
        foreach (var use in f.Readings)
            finding.Use(use);
        var grade = f.Adequacy < 1 ? "no verdict possible" : "weak";
        var ratio = f.Adequacy!.Value.ToString("0.0", CultureInfo.InvariantCulture);
        var sentence = $"{f.Title}: tolerance over U is {ratio}, {grade}.";
        if (f.Budget.IsEmpty)
            return finding.Information(sentence, "compares the tolerance with U");
        var first = f.Budget[0];
        var k = f.Measured!.CoverageFactor ?? 2;
        var half = (f.Limits[0].UpperSi!.Value - f.Limits[0].LowerSi!.Value) / 2;
        var allowed = Math.Pow(half / (usable * k), 2);
        var rest = f.Budget.Skip(1).Sum(b => b.ContributionSi * b.ContributionSi);
        finding.Step("a", "adequacy", "half the tolerance / U", f.Limits[0].Text, ratio, "common practice, no source");
        finding.Next(allowed > rest
            ? string.Create(CultureInfo.InvariantCulture, $"Largest cause: {first.Cause} ({first.ShareText}). With it cut to {100 * Math.Sqrt((allowed - rest) / (first.ContributionSi * first.ContributionSi)):0} % of what it is, the ratio would be {usable:0}.")
            : string.Create(CultureInfo.InvariantCulture, $"Largest cause: {first.Cause} ({first.ShareText}); no single instrument would do, the others have to be better too."));
        return finding.Information(sentence, "compares the tolerance with U");
    }
}

/// <summary>Whether each calibrated instrument was inside its interval on the day of the job.</summary>
internal sealed class CalibrationCurrentCheck : ICheck
{
    private const int DaysAYear = 365;

    public string Id => "instrument.calibration-current";

    public string Phase => Phases.Instruments;

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
        var limit = context.Limits.Find(LimitIds.InstrumentsCalibrationInterval);
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
