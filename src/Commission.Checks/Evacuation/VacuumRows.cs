using System.Globalization;
using Commission.Checks.EvacuationAnalysis;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;
using Commission.Source;

namespace Commission.Checks.Evacuation;

/// <summary>The readings of an evacuation, from the log or, without one, from the levels written by hand, on the evacuation's clock.</summary>
internal sealed class VacuumRows
{
    private readonly CheckContext context;
    private readonly Jobs.Model.Evacuation evacuation;
    private readonly EvacuationClock clock;
    private readonly VacuumLevel[] levels = [];
    private readonly Dictionary<int, Uncertain> read = [];

    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="evacuation">The evacuation.</param>
    /// <param name="clock">Its clock.</param>
    /// <param name="gauge">Its gauge.</param>
    public VacuumRows(CheckContext context, Jobs.Model.Evacuation evacuation, EvacuationClock clock, VacuumGauge gauge)
    {
        this.context = context;
        this.evacuation = evacuation;
        this.clock = clock;
        Gauge = gauge;
        Log = evacuation.Series?.Data;
        if (Log is { } log)
        {
            var offset = clock.Offset(log.Start);
            var times = new double[log.Times.Length];
            for (var i = 0; i < times.Length; i++)
                times[i] = log.Times[i] + offset;
            Series = VacuumSeries.From(times, log.Values, log.OverRange);
        }
        else
        {
            levels = [.. evacuation.Levels.Where(l => clock.Seconds(l.At.Value) is not null)];
            Series = VacuumSeries.From([.. levels.Select(l => clock.Seconds(l.At.Value)!.Value)], [.. levels.Select(l => l.Pressure.Value.Si)]);
        }
    }

    /// <summary>The log as read; null when the levels were written by hand.</summary>
    public ReadSeries? Log { get; }

    /// <summary>The gauge.</summary>
    public VacuumGauge Gauge { get; }

    /// <summary>The readings.</summary>
    public VacuumSeries Series { get; }

    /// <summary>Longest time between two rows that is bridged by a straight line, s: levels by hand stand far apart, a log that stops has a gap.</summary>
    public double LongestBridge => Log is null ? double.PositiveInfinity : Math.Max(120, 2.5 * Series.MedianInterval);

    /// <summary>A row with what makes it doubtful.</summary>
    /// <param name="row">Its index in the series; not an over-range row.</param>
    public Uncertain Row(int row)
    {
        if (read.TryGetValue(row, out var known))
            return known;
        var name = Name(row);
        known = Log is null
            ? context.Readings.Plain(name, ReadingName.Evacuation, levels[Series.SourceRows[row]].Pressure, DisplayKind.Vacuum, evacuation.With).Value
            : Gauge.Reading(name, Series.Pressures[row]);
        read.Add(row, known);
        return known;
    }

    /// <summary>The pressure at a time, on a straight line between the rows on either side.</summary>
    /// <param name="time">Time, s.</param>
    /// <returns>The pressure; null outside the readings, in a gap, or over range.</returns>
    public Uncertain? At(double time)
    {
        if (Series.PressureAt(time, LongestBridge) is null)
            return null;
        var after = Series.IndexAtOrAfter(time);
        if (Series.Times[after] == time)
            return Row(after);
        var share = (time - Series.Times[after - 1]) / (Series.Times[after] - Series.Times[after - 1]);
        return Row(after - 1) + (share * (Row(after) - Row(after - 1)));
    }

    /// <summary>A row as a reading that a finding names.</summary>
    /// <param name="row">Its index in the series.</param>
    public ReadingUse Use(int row)
    {
        if (Log is null)
        {
            var level = levels[Series.SourceRows[row]];
            return new ReadingUse(Name(row), level.Pressure.Text, level.Pressure.At, Gauge.Id);
        }

        var text = Series.OverRange[row] ? "over range" : context.Present.Text(Series.Pressures[row], DisplayKind.Vacuum);
        return new ReadingUse(Name(row), text, new SourceLocation(Log.File, Log.Rows[Series.SourceRows[row]], 1), Gauge.Id);
    }

    /// <summary>How the rows are called in a sentence: the log, or the levels written by hand.</summary>
    public string Words => Log is null
        ? string.Create(CultureInfo.InvariantCulture, $"{Series.Count} levels written by hand")
        : string.Create(CultureInfo.InvariantCulture, $"A log of {Series.Count:#,0} rows");

    private string Name(int row) => $"vacuum at {clock.Moment(Series.Times[row])}";
}
