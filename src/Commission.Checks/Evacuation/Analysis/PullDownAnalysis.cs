using System.Collections.Immutable;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>Compares a logged pull-down with the one that pump, hoses and volume lead to, and says what set the pace.</summary>
public static class PullDownAnalysis
{
    // Common practice, no source: a hose's bore is known to a tenth, its conductance to 40 %, the volume to a third.
    private const double Explained = 2.5;
    private const double LeastLoss = 60;
    private const double MostOfIt = 0.6;
    private const double HalfDecade = 3.1622776601683795;
    private const int CurvePoints = 120;

    // Evaporating water cools to ice before it stops mattering; a thermal gauge shows up to twice the pressure of vapour.
    private const double IcePoint = 611;
    private const double ThermalGauge = 2;

    /// <summary>Compares.</summary>
    /// <param name="series">The log.</param>
    /// <param name="pull">The pull, a part of the log.</param>
    /// <param name="model">Pump, hoses and cores.</param>
    /// <param name="volume">Volume of the system, m³, above 0.</param>
    /// <param name="target">Pressure to be reached, Pa; the comparison stops there.</param>
    /// <param name="saturation">Vapour pressure of water at the warmest likely place, Pa; null when unknown.</param>
    public static PullDownResult Compare(
        VacuumSeries series, SeriesSegment pull, PullDownModel model, double volume, double target, double? saturation)
    {
        ArgumentNullException.ThrowIfNull(series);
        ArgumentNullException.ThrowIfNull(pull);
        ArgumentNullException.ThrowIfNull(model);
        var (bands, lowest, start) = Bands(series, pull, model, volume, target);
        if (bands.Count == 0)
            return new PullDownResult(PullDownLimit.CannotTell, [], 0, 0, lowest, 0, TimeAtBoilingWater: null, AtEnd: null, []);

        var slow = bands.Where(b => b.Ratio > Explained).ToList();
        var lost = slow.Sum(Loss);
        double? atWater = saturation is { } p && WaterHoldsUp(bands, p)
            ? slow.Where(b => MayBoil(b, p)).Sum(Loss)
            : saturation is null ? null : 0;
        var atEnd = model.At(bands[^1].To);
        var expected = model.Curve(volume, bands[0].From, bands[^1].To, 0, CurvePoints);
        return new PullDownResult(
            Judge(bands, lost, atWater, atEnd, target), [.. bands], bands.Sum(b => b.MeasuredTime), bands.Sum(b => b.ExpectedTime),
            lowest, lost, atWater, atEnd, [.. expected.Select(e => (start + e.Time, e.Pressure))]);
    }

    private static bool MayBoil(PullDownBand band, double saturation) =>
        band.To <= ThermalGauge * saturation && band.From >= IcePoint / ThermalGauge;

    // Water is blamed only where the bands in which it boils are slower than the others: a slow pump is slow everywhere.
    private static bool WaterHoldsUp(List<PullDownBand> bands, double saturation)
    {
        double Pace(bool boiling)
        {
            var part = bands.Where(b => MayBoil(b, saturation) == boiling).ToList();
            return part.Count == 0 ? 1 : part.Sum(b => b.MeasuredTime) / part.Sum(b => b.ExpectedTime);
        }

        return Pace(boiling: true) > Explained * Math.Max(Pace(boiling: false), 1);
    }

    private static double Loss(PullDownBand band) => band.MeasuredTime - band.ExpectedTime;

    private static PullDownLimit Judge(List<PullDownBand> bands, double lost, double? atWater, EffectiveSpeed atEnd, double target)
    {
        var measured = bands.Sum(b => b.MeasuredTime);
        var expected = bands.Sum(b => b.ExpectedTime);
        if (lost < LeastLoss || lost < 0.3 * measured)
        {
            return atEnd.Limiting.Kind switch
            {
                FlowElementKind.Hose => PullDownLimit.Hose,
                FlowElementKind.Core => PullDownLimit.Core,
                FlowElementKind.Fitting => PullDownLimit.Fitting,
                _ => PullDownLimit.Pump,
            };
        }

        if (atWater >= MostOfIt * lost)
            return PullDownLimit.BoilingWater;

        // Lost at the lower end only, or everywhere alike.
        var upper = bands.Where(b => b.To > HalfDecade * Math.Max(target, bands[^1].To)).ToList();
        var fastAbove = upper.Count == 0 || upper.Sum(b => b.MeasuredTime) <= Explained * upper.Sum(b => b.ExpectedTime);
        return fastAbove && measured > expected ? PullDownLimit.GasLoad : PullDownLimit.SlowThroughout;
    }

    private static (List<PullDownBand> Bands, double? Lowest, double Start) Bands(
        VacuumSeries series, SeriesSegment pull, PullDownModel model, double volume, double target)
    {
        var bands = new List<PullDownBand>();
        var i = series.IndexAtOrAfter(pull.From);
        while (i < series.Count && series.Times[i] <= pull.To && series.OverRange[i])
            i++;
        if (i >= series.Count || series.Times[i] > pull.To)
            return (bands, null, pull.From);

        // The pull ran down only once the readings fall: from the last row at the top.
        var top = i;
        for (var j = i; j < series.Count && series.Times[j] <= pull.To && (series.OverRange[j] || series.Pressures[j] >= 0.98 * series.Pressures[i]); j++)
            top = series.OverRange[j] ? top : j;
        var (from, at) = (series.Pressures[top], series.Times[top]);
        var start = at;
        var lowest = from;
        var level = NextLevel(from, target);
        for (var j = top + 1; j < series.Count && series.Times[j] <= pull.To; j++)
        {
            if (series.OverRange[j])
                continue;
            lowest = Math.Min(lowest, series.Pressures[j]);
            while (level < from && series.Pressures[j] <= level)
            {
                var crossed = Crossing(series, j, level);
                bands.Add(Band(from, level, crossed - at, model, volume));
                (from, at) = (level, crossed);
                level = NextLevel(from, target);
            }
        }

        // A pull that never reached its target spent its last minutes between the last level and the lowest reading.
        if (lowest > target && lowest < 0.999 * from && pull.To > at)
            bands.Add(Band(from, lowest, pull.To - at, model, volume));
        return (bands, lowest, start);
    }

    private static double NextLevel(double from, double target) => Math.Max(from / HalfDecade, target);

    private static PullDownBand Band(double from, double to, double time, PullDownModel model, double volume)
    {
        var expected = model.Time(volume, from, to);
        var room = volume * Math.Log(from / to);
        return new PullDownBand(from, to, time, expected, room / time, room / expected);
    }

    // On a straight line in ln p from the last numbered row before.
    private static double Crossing(VacuumSeries series, int row, double level)
    {
        var before = row - 1;
        while (series.OverRange[before])
            before--;
        var (p, q) = (Math.Max(series.Pressures[before], level), Math.Max(series.Pressures[row], 1e-3));
        var share = p > q ? Math.Log(p / level) / Math.Log(p / q) : 1;
        return series.Times[before] + Math.Clamp(share, 0, 1) * (series.Times[row] - series.Times[before]);
    }
}
