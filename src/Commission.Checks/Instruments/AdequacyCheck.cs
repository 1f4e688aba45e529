using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Messages;
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
                InstrumentsMessages.ReadFinelyEnough(judged.Count, new(usable, 0)), InstrumentsMessages.ReadFinelyEnoughKind);
        }
    }

    private Finding Weak(CheckContext context, Finding f, double usable)
    {
        var finding = f.Subject is null ? context.Finding(this, f.Title) : context.Finding(this, InstrumentsMessages.TitleOf(new(f.Title), new(f.Subject)));
        foreach (var use in f.Readings)
            finding.Use(use);
        var ratio = new NumberValue(f.Adequacy!.Value, 1);
        var sentence = InstrumentsMessages.ReadTooCoarsely(new(f.Title), ratio, f.Adequacy < 1 ? InstrumentsMessages.ReadTooCoarselyGrade.None : InstrumentsMessages.ReadTooCoarselyGrade.Weak);
        if (f.Budget.IsEmpty)
            return finding.Information(sentence, InstrumentsMessages.ReadTooCoarselyKind);
        var first = f.Budget[0];
        var k = f.Measured!.CoverageFactor ?? 2;
        var half = (f.Limits[0].UpperSi!.Value - f.Limits[0].LowerSi!.Value) / 2;
        var allowed = Math.Pow(half / (usable * k), 2);
        var rest = f.Budget.Skip(1).Sum(b => b.ContributionSi * b.ContributionSi);
        finding.Step("a", InstrumentsMessages.Adequacy, InstrumentsMessages.AdequacyFormula, f.Limits[0].Text, context.Present.Text(ratio), CommonMessages.CommonPracticeNoSource);
        finding.Next(allowed > rest
            ? InstrumentsMessages.LargestCause(new(first.Cause), new(first.ShareText), new(100 * Math.Sqrt((allowed - rest) / (first.ContributionSi * first.ContributionSi)), 0), new(usable, 0))
            : InstrumentsMessages.LargestCauseOfMany(new(first.Cause), new(first.ShareText)));
        return finding.Information(sentence, InstrumentsMessages.ReadTooCoarselyKind);
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
                yield return context.Finding(this, instrument.Id).NotEvaluated(InstrumentsMessages.NotCalibrated, InstrumentsMessages.NotCalibratedNext);
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
            .Use(InstrumentsMessages.ReadingCalibrated(new(instrument.Id)), calibrated, instrument.Id)
            .Use(InstrumentsMessages.ReadingInterval(new(instrument.Id)), described.Interval, instrument.Id)
            .Use(ReadingsMessages.DateOfJob, context.Job.Identity.Date)
            .Step(
                "due", InstrumentsMessages.CalibrationDue, InstrumentsMessages.CalibrationDueFormula,
                described.Interval is { } own ? InstrumentsMessages.DayPlus(calibrated.Value, new(own.Text)) : InstrumentsMessages.DayPlusMonths(calibrated.Value, (int)months), CommonMessages.Day(due));
        var holds = due >= day && calibrated.Value <= day;
        finding.Decide(holds, described.Interval is null && limit is not null ? context.State(limit) : null);
        if (calibrated.Value > day)
            return finding.Say(InstrumentsMessages.CalibratedLater(new(instrument.Id), calibrated.Value)).Next(InstrumentsMessages.CalibratedLaterNext).Build();
        return holds
            ? finding.Say(InstrumentsMessages.InDate(new(instrument.Id), due, due.DayNumber - day.DayNumber < DaysAYear / 12 ? InstrumentsMessages.InDateWhen.Soon : InstrumentsMessages.InDateWhen.Later)).Build()
            : finding.Say(InstrumentsMessages.OutOfDate(new(instrument.Id), due)).Next(InstrumentsMessages.OutOfDateNext).Build();
    }
}
