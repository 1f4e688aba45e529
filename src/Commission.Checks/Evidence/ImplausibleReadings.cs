using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.VacuumAnalysis;
using Commission.Jobs.Model;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Evidence;

/// <summary>Pressures that no reading of such a job can be: a vacuum deeper than a field pump makes it through hoses, exactly nothing, a log whose unit nobody wrote.</summary>
internal sealed class ImplausibleReadings(CheckContext context, ICheck check)
{
    public IEnumerable<Finding> Findings()
    {
        if (context.Job.Evacuation is { } evacuation)
        {
            if (TooDeep() is { } deep)
                yield return deep;
            if (Guessed(EvidenceMessages.LogUnit, evacuation.Series) is { } vacuum)
                yield return vacuum;
        }

        if (context.Job.PressureTest?.Tightness is { } hold && Guessed(EvidenceMessages.PressureLogUnit, hold.Series) is { } pressure)
            yield return pressure;
    }

    // A log holds thousands of rows; the deepest speaks for all, and each is impeached.
    private Finding? TooDeep()
    {
        if (context.Limits.Find(LimitIds.EvidenceVacuumLeast) is not { Lower: { } least } limit)
            return null;
        var run = context.Get<EvacuationRun>();
        var series = run.Rows.Series;
        int? deepest = null;
        var finding = context.Finding(check, EvidenceMessages.SubjectVacuumDepth).Show(context.State(limit));
        for (var i = 0; i < series.Count; i++)
        {
            if (series.OverRange[i] || !IsTooDeep(run, i, least.Si))
                continue;
            finding.Impeach(run.Rows.Use(i));
            if (deepest is null || series.Pressures[i] < series.Pressures[deepest.Value])
                deepest = i;
        }

        if (deepest is not { } row)
            return null;
        var when = new TextValue(run.Clock.Moment(series.Times[row]));
        return finding.Decide(false).Next(EvidenceMessages.VacuumImplausibleNext).Say(series.Pressures[row] == 0
            ? EvidenceMessages.VacuumZero(when)
            : EvidenceMessages.VacuumTooDeep(context.Present.InMessage(series.Pressures[row], DisplayKind.Vacuum), when, context.Present.InMessage(least.Si, DisplayKind.Vacuum))).Build();
    }

    // A step of 25 micron shows nothing where there are ten: nothing is below the range of such a gauge, and no level either.
    private static bool IsTooDeep(EvacuationRun run, int row, double least) =>
        run.Rows.Series.Pressures[row] <= 0 || (run.Rows.Series.Pressures[row] < least && run.Rows.Row(row) is var level && level.Value + level.Expanded < least);

    private Finding? Guessed(Message subject, LogFile? log) => log is { Data: { UnitIsGuessed: true } data }
        ? context.Finding(check, subject).Impeach(log.File.Use(context.Present.Text(subject))).Decide(false)
            .Next(EvidenceMessages.UnitGuessedNext(new(data.File), new(data.Unit)))
            .Say(EvidenceMessages.UnitGuessed(new(data.File), new(data.Unit))).Build()
        : null;
}
