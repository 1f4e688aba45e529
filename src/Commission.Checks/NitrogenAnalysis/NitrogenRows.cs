using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;
using Commission.Source;

namespace Commission.Checks.NitrogenAnalysis;

/// <summary>The readings of a nitrogen hold, from two or more points written by hand or from a log, corrected, with what they rest on.</summary>
internal sealed class NitrogenRows
{
    // A log is thinned to this many means before the density is asked for each: the ends are averaged over more.
    private const int MostRows = 1500;

    private NitrogenRows(Message? whyNot) => WhyNot = whyNot;

    /// <summary>Why the readings give no loss; null when they do.</summary>
    public Message? WhyNot { get; private init; }

    /// <summary>What would make it possible; null when nothing is missing.</summary>
    public Message? Todo { get; private init; }

    /// <summary>How that is written in the job file; null where the words say it.</summary>
    public string? InFile { get; private init; }

    /// <summary>Whether they come from a log.</summary>
    public bool IsLog { get; private init; }

    /// <summary>Times, s from the first.</summary>
    public ImmutableArray<double> Times { get; private init; } = [];

    /// <summary>Times as written, of points; empty for a log.</summary>
    public ImmutableArray<Given<JobTime>> At { get; private init; } = [];

    /// <summary>The readings, corrected.</summary>
    public ImmutableArray<NitrogenReading> Readings { get; private init; } = [];

    /// <summary>The corrected pressures and temperatures of points, for their places and steps; empty for a log.</summary>
    public ImmutableArray<CorrectedReading> Corrected { get; private init; } = [];

    /// <summary>Absolute pressures as corrected, Pa, in order, with or without a temperature beside them.</summary>
    public ImmutableArray<double> Pressures { get; private init; } = [];

    /// <summary>What else of the job they rest on.</summary>
    public ImmutableArray<ReadingUse> Uses { get; private init; } = [];

    /// <summary>The clock at the first reading; null when it is not known.</summary>
    public DateTimeOffset? Start { get; private init; }

    /// <summary>Length of the hold, s.</summary>
    public double Length => Times.IsEmpty ? 0 : Times[^1] - Times[0];

    /// <summary>Smallest step the pressures show, Pa.</summary>
    public double Step { get; private init; }

    /// <summary>First and last point with their causes; null for a log, whose ends are means.</summary>
    public (NitrogenEnd Start, NitrogenEnd End)? Ends { get; private init; }

    /// <summary>Whether the pressures were read absolute, so that the atmosphere does not enter.</summary>
    public bool AreAbsolute { get; private init; }

    /// <summary>Whether the barometer was read at both ends.</summary>
    public bool BarometerAtBothEnds { get; private init; }

    /// <summary>Whether the accuracy of pressures and temperatures is known.</summary>
    public bool AccuracyKnown { get; private init; } = true;

    /// <summary>Reads a hold.</summary>
    public static NitrogenRows Of(CheckContext context, Jobs.Model.PressureTest test, PressureHold hold)
    {
        var points = Points(hold);
        if (hold.Series?.Data is { } log && FromLog(context, test, hold, log, points) is { } rows)
            return rows;
        return FromPoints(context, test, points);
    }

    /// <summary>The lowest and the highest pressure of a hold's log, absolute, with the accuracy of the gauge; none without a log whose unit is known.</summary>
    public static IEnumerable<CorrectedReading> Extremes(CheckContext context, Jobs.Model.PressureTest test, PressureHold hold)
    {
        if (hold.Series is not { Data: { UnitIsGuessed: false } log } || Enumerable.Range(0, log.Values.Length).Where(i => double.IsFinite(log.Values[i])).ToArray() is not { Length: > 0 } rows)
            yield break;
        foreach (var row in new[] { rows.MinBy(i => log.Values[i]), rows.MaxBy(i => log.Values[i]) }.Distinct())
        {
            var shown = new StatedPressure(log.Values[row], IsAbsolute(log) ? PressureReference.Absolute : PressureReference.Gauge);
            var text = context.Present.Text(log.Values[row], IsAbsolute(log) ? DisplayKind.AbsolutePressure : DisplayKind.Pressure);
            yield return context.Readings.Pressure(
                context.Present.Text(PressureTestMessages.PressureOfLog), ReadingName.PressureTest, new Given<StatedPressure>(shown, new SourceLocation(log.File, log.Rows[row], 1), text) { Step = log.Step }, test.With);
        }
    }

    private static ImmutableArray<HoldPoint> Points(PressureHold hold)
    {
        var points = new[] { hold.From }.Concat(hold.Readings).Append(hold.To).OfType<HoldPoint>().ToList();
        return [.. points.DistinctBy(p => p.Pressure.At)];
    }

    private static NitrogenRows FromPoints(CheckContext context, Jobs.Model.PressureTest test, ImmutableArray<HoldPoint> points)
    {
        if (points.Length < 2)
            return new NitrogenRows(PressureTestMessages.NoReadingAtBothEnds) { Todo = PressureTestMessages.HoldEndsNotReadNext, InFile = "pressure test: {tightness: {from: {at: …, pressure: …, temperature: …}, to: {at: …, pressure: …, temperature: …}}}" };
        var pressures = points.Select(p => context.Readings.Pressure(Named(context, ReadingsMessages.TestPressure, p), ReadingName.PressureTest, p.Pressure, test.With)).ToList();
        var temperatures = points.Select(p => p.Temperature.Select((t, i) => context.Readings.Temperature(Named(context, p.Temperature.Length > 1 ? ReadingsMessages.TestTemperatureNumbered(i + 1) : ReadingsMessages.TestTemperature, p), ReadingName.PressureTestTemperature, t, null, test.With)).ToList()).ToList();
        var times = points.Select(p => Seconds(points[0].At.Value, p.At.Value)).ToList();
        var partial = new NitrogenRows(whyNot: null)
        {
            At = [.. points.Select(p => p.At)],
            Corrected = [.. pressures, .. temperatures.SelectMany(t => t)],
            Pressures = [.. pressures.Select(r => r.Value.Value)],
            Start = points[0].At.Value.Clock,
        };
        if (temperatures[0].Count == 0 || temperatures[^1].Count == 0)
            return partial.Lacking(PressureTestMessages.NoTemperature, PressureTestMessages.NoTemperatureNext);
        if (times.Exists(t => t is null))
            return partial.Lacking(PressureTestMessages.TimesUnlike, PressureTestMessages.HoldTimesUnlikeNext, "pressure test: {started: \"09:10\"}");

        var atmospheres = points.Select(p => p.StationPressure?.Value.Si ?? context.Get<SiteAtmosphere>().Value.Value).ToList();
        var both = points[0].StationPressure is not null && points[^1].StationPressure is not null;
        // The corrected pressure is absolute by the site's atmosphere; a barometer read at the moment takes its place.
        var site = context.Get<SiteAtmosphere>().Value.Value;
        var kept = Enumerable.Range(0, points.Length).Where(i => temperatures[i].Count > 0).ToList();
        NitrogenEnd End(int i)
        {
            var pressure = points[i].StationPressure is { } barometer && !IsAbsoluteReading(points[i])
                ? pressures[i].Value - context.Get<SiteAtmosphere>().Value + barometer.Value.Si
                : pressures[i].Value;
            return new NitrogenEnd(pressure, Mean(temperatures[i]), IsAbsoluteReading(points[i]) ? site : atmospheres[i]);
        }

        return new NitrogenRows(whyNot: null)
        {
            At = partial.At,
            Corrected = partial.Corrected,
            Start = partial.Start,
            Times = [.. kept.Select(i => times[i]!.Value)],
            Readings = [.. kept.Select(i => new NitrogenReading(pressures[i].Value.Value - site, IsAbsoluteReading(points[i]) ? site : atmospheres[i], Mean(temperatures[i]).Value))],
            Uses = [.. points.Where(p => p.StationPressure is not null).Select(p => new ReadingUse(Named(context, ReadingsMessages.StationPressure, p), p.StationPressure!.Text, p.StationPressure.At, null))],
            Step = points.Max(p => p.Pressure.Step ?? 0),
            Ends = (End(0), End(points.Length - 1)),
            AreAbsolute = points.All(IsAbsoluteReading),
            BarometerAtBothEnds = both,
            AccuracyKnown = pressures.TrueForAll(p => p.AccuracyKnown) && temperatures.TrueForAll(t => t.TrueForAll(r => r.AccuracyKnown)),
        };
    }

    private NitrogenRows Lacking(Message why, Message todo, string? inFile = null) => new(why) { Todo = todo, InFile = inFile, At = At, Corrected = Corrected, Pressures = Pressures, Start = Start };

    private static NitrogenRows? FromLog(CheckContext context, Jobs.Model.PressureTest test, PressureHold hold, ReadSeries log, ImmutableArray<HoldPoint> points)
    {
        var uses = ImmutableArray.CreateBuilder<ReadingUse>();
        uses.Add(new ReadingUse(context.Present.Text(PressureTestMessages.ReadingLog), hold.Series!.File.Text, hold.Series.File.At, context.Get<InstrumentKit>().For(ReadingName.PressureTest, test.With)?.Id));
        var usable = Enumerable.Range(0, log.Times.Length).Where(i => double.IsFinite(log.Values[i])).ToArray();
        var absolute = IsAbsolute(log);
        var site = context.Get<SiteAtmosphere>().Value.Value;
        if (Temperatures(context, hold, log, points, uses) is not { } temperature)
        {
            return points.Length >= 2 ? null : new NitrogenRows(PressureTestMessages.NoTemperatureLogged)
            {
                Todo = PressureTestMessages.NoTemperatureLoggedNext,
                Uses = uses.ToImmutable(),
                Pressures = usable.Length < 2 ? [] : [log.Values[usable[0]] + (absolute ? 0 : site), log.Values[usable[^1]] + (absolute ? 0 : site)],
            };
        }

        if (usable.Length < 3)
            return null;
        var group = (usable.Length + MostRows - 1) / MostRows;
        var times = ImmutableArray.CreateBuilder<double>();
        var readings = ImmutableArray.CreateBuilder<NitrogenReading>();
        for (var i = 0; i < usable.Length; i += group)
        {
            var (t, p, n) = (0.0, 0.0, 0);
            for (var j = i; j < Math.Min(i + group, usable.Length); j++, n++)
            {
                t += log.Times[usable[j]];
                p += log.Values[usable[j]];
            }

            times.Add(t / n);
            readings.Add(new NitrogenReading((p / n) - (absolute ? site : 0), site, temperature(t / n)));
        }

        return new NitrogenRows(whyNot: null)
        {
            IsLog = true,
            Times = times.ToImmutable(),
            Readings = readings.ToImmutable(),
            Uses = uses.ToImmutable(),
            Start = log.Start,
            Step = log.Step,
            AreAbsolute = absolute,
            AccuracyKnown = context.Get<InstrumentKit>().For(ReadingName.PressureTest, test.With)?.AccuracyKnown == true,
        };
    }

    // From the temperature log, between its rows on straight lines; else on a straight line between the temperatures at both ends.
    private static Func<double, double>? Temperatures(CheckContext context, PressureHold hold, ReadSeries log, ImmutableArray<HoldPoint> points, ImmutableArray<ReadingUse>.Builder uses)
    {
        double Offset(DateTimeOffset? other) => other is { } o && log.Start is { } s ? (o - s).TotalSeconds : 0;
        if (hold.TemperatureSeries is { Data: { } warm } file)
        {
            uses.Add(file.File.Use(context.Present.Text(PressureTestMessages.TemperatureLog)));
            var rows = Enumerable.Range(0, warm.Times.Length).Where(i => double.IsFinite(warm.Values[i])).ToArray();
            return rows.Length == 0 ? null : Polyline.Through([.. rows.Select(i => warm.Times[i] + Offset(warm.Start))], [.. rows.Select(i => warm.Values[i])]);
        }

        var read = points.Where(p => !p.Temperature.IsEmpty && p.At.Value.Clock is not null).ToList();
        if (read.Count < 2)
            return null;
        foreach (var p in read)
            uses.AddRange(p.Temperature.Select(t => t.Use(Named(context, ReadingsMessages.TestTemperature, p))));
        return Polyline.Through(
            [.. read.Select(p => Offset(p.At.Value.Clock))],
            [.. read.Select(p => p.Temperature.Average(t => context.Readings.Temperature(Named(context, ReadingsMessages.TestTemperature, p), ReadingName.PressureTestTemperature, t).Value.Value))]);
    }

    private static string Named(CheckContext context, Message name, HoldPoint point) => context.Present.Text(ReadingsMessages.AtTime(name, new(point.At.Text)));

    private static Uncertain Mean(List<CorrectedReading> readings) => readings.Select(r => r.Value).Aggregate((a, b) => a + b) / readings.Count;

    /// <summary>Whether a log holds absolute pressures.</summary>
    public static bool IsAbsolute(ReadSeries log) => UnitTable.Find(log.Unit, Dimension.Pressure)?.Reference == PressureReference.Absolute;

    private static bool IsAbsoluteReading(HoldPoint point) => point.Pressure.Value.Reference == PressureReference.Absolute;

    private static double? Seconds(JobTime first, JobTime then) =>
        first.Clock is { } a && then.Clock is { } b ? (b - a).TotalSeconds
        : first.Elapsed is { } p && then.Elapsed is { } q ? q.Si - p.Si
        : null;
}
