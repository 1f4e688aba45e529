using System.Collections.Immutable;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>Compares a logged pull-down with the one that pump, hoses and volume lead to, and says what set the pace.</summary>
internal static class PullDownAnalysis
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
            return new PullDownResult(PullDownLimit.CannotTell, [], 0, 0, lowest, TimeAtBoilingWater: null, AtEnd: null, []);

        var slow = bands.Where(b => b.Ratio > Explained).ToList();
        var lost = slow.Sum(Loss);
        double? atWater = saturation is { } p && WaterHoldsUp(bands, p)
            ? slow.Where(b => MayBoil(b, p)).Sum(Loss)
            : saturation is null ? null : 0;
        var atEnd = model.At(bands[^1].To);
        var expected = model.Curve(volume, bands[0].From, bands[^1].To, 0, CurvePoints);
        return new PullDownResult(
            Judge(bands, lost, atWater, atEnd, target), [.. bands], bands.Sum(b => b.MeasuredTime), bands.Sum(b => b.ExpectedTime),
            lowest, atWater, atEnd, [.. expected.Select(e => (start + e.Time, e.Pressure))]);
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

    private static PullDownBand Band(double from, double to, double time, PullDownModel model, double volume) => new PullDownBand(from, to, time, model.Time(volume, from, to));

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

/// <summary>A pull-down between two pressures, as logged and as expected.</summary>
/// <param name="From">Upper pressure, Pa.</param>
/// <param name="To">Lower pressure, Pa; at the end of a pull that stalled, the lowest that was reached.</param>
/// <param name="MeasuredTime">s.</param>
/// <param name="ExpectedTime">s, through pump, hoses and volume without any gas load.</param>
internal sealed record PullDownBand(double From, double To, double MeasuredTime, double ExpectedTime)
{
    /// <summary>Measured over expected time.</summary>
    public double Ratio => MeasuredTime / ExpectedTime;
}

/// <summary>What set the pace of a pull-down.</summary>
internal enum PullDownLimit
{
    /// <summary>Too little of the pull was logged to say.</summary>
    CannotTell,

    /// <summary>As fast as expected, and the pump itself takes the largest part of the pressure: a larger pump would help.</summary>
    Pump,

    /// <summary>As fast as expected, and a hose takes the largest part: a wider or shorter one would help.</summary>
    Hose,

    /// <summary>As fast as expected, and a valve core left in place takes the largest part.</summary>
    Core,

    /// <summary>As fast as expected, and another fitting takes the largest part.</summary>
    Fitting,

    /// <summary>The pressure lingered where water boils.</summary>
    BoilingWater,

    /// <summary>Fast at first, then held up at low pressure: inflow, outgassing, moisture from oil, or the pump's own lowest pressure.</summary>
    GasLoad,

    /// <summary>Slower than pump, hoses and volume explain at all pressures: a closed valve, a blocked core, a worn pump, or a larger volume.</summary>
    SlowThroughout,
}

/// <summary>
/// A system emptied by a pump through hoses and cores in series. In steady flow Q = S(p_in)·p_in passes each element,
/// Q = C(p̄)·(p₁ − p₂) with p̄ = (p₁ + p₂)/2, so that the speed at the system follows from the pressure at the pump.
/// </summary>
internal sealed class PullDownModel
{
    private const double Highest = 120_000;
    private const int TablePoints = 160;
    private const int Steps = 400;

    private readonly ImmutableArray<FlowElement> _elements;
    private readonly PumpCurve _pump;
    private readonly ConductanceGas _gas;
    private readonly double[] _logPressure = new double[TablePoints];
    private readonly double[] _logSpeed = new double[TablePoints];

    /// <summary>Describes the way and tabulates the speed at the system.</summary>
    /// <param name="elements">From the system to the pump; may be empty.</param>
    /// <param name="pump">The pump.</param>
    /// <param name="gas">The gas; air at 20 °C from the handbooks when null.</param>
    public PullDownModel(IEnumerable<FlowElement> elements, PumpCurve pump, ConductanceGas? gas = null)
    {
        ArgumentNullException.ThrowIfNull(pump);
        _elements = [.. elements];
        _pump = pump;
        _gas = gas ?? ConductanceGas.Air20;
        var lowest = Math.Max(1.001 * pump.Ultimate, 0.01);
        for (var i = 0; i < TablePoints; i++)
        {
            var inlet = lowest * Math.Pow(Highest / lowest, (double)i / (TablePoints - 1));
            var throughput = pump.SpeedAt(inlet) * inlet;
            var system = Upstream(inlet, throughput, drops: null);
            _logPressure[i] = Math.Log(system);
            _logSpeed[i] = Math.Log(throughput / system);
        }
    }

    /// <summary>Speed at a system pressure, solved for it, and where the pressure is spent.</summary>
    /// <param name="systemPressure">Pa, above the pump's lowest pressure.</param>
    /// <returns>The speed; zero at or below the pump's lowest pressure.</returns>
    public EffectiveSpeed At(double systemPressure)
    {
        if (systemPressure <= _pump.Ultimate)
            return new EffectiveSpeed(systemPressure, systemPressure, 0, 0, [new FlowShare(Name: null, Kind: null, 1)]);
        var low = _pump.Ultimate;
        var high = systemPressure;
        for (var i = 0; i < 200 && high - low > 1e-13 * high; i++)
        {
            var inlet = (low + high) / 2;
            if (Upstream(inlet, _pump.SpeedAt(inlet) * inlet, drops: null) < systemPressure)
                low = inlet;
            else
                high = inlet;
        }

        var drops = new double[_elements.Length];
        var speed = _pump.SpeedAt(high);
        Upstream(high, speed * high, drops);
        var shares = ImmutableArray.CreateBuilder<FlowShare>();
        for (var i = 0; i < _elements.Length; i++)
            shares.Add(new FlowShare(_elements[i].Name, _elements[i].Kind, drops[i] / systemPressure));
        shares.Add(new FlowShare(Name: null, Kind: null, high / systemPressure));
        return new EffectiveSpeed(systemPressure, high, speed * high / systemPressure, speed, shares.ToImmutable());
    }

    /// <summary>Time from one pressure to a lower one, s: ∫ V·dp/(S_eff(p)·(p − p_ult)); +∞ when the lower one is not above p_ult.</summary>
    /// <param name="volume">V, m³.</param>
    /// <param name="from">Pa.</param>
    /// <param name="to">Pa.</param>
    /// <param name="ultimate">p_ult, the pressure the system would reach, Pa: what leaks and outgases over the speed there.</param>
    public double Time(double volume, double from, double to, double ultimate = 0)
    {
        if (to <= ultimate)
            return double.PositiveInfinity;
        if (from <= to)
            return 0;

        // In ln(p − p_ult) the integrand is V/S_eff(p): Simpson's rule.
        var a = Math.Log(to - ultimate);
        var h = (Math.Log(from - ultimate) - a) / Steps;
        double sum = 0;
        for (var i = 0; i <= Steps; i++)
        {
            var p = ultimate + Math.Exp(a + i * h);
            var weight = i is 0 or Steps ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight / TabulatedSpeed(p);
        }

        return volume * h / 3 * sum;
    }

    /// <summary>The expected pull-down for a figure: pressures and the times at which they are reached.</summary>
    /// <param name="volume">V, m³.</param>
    /// <param name="from">Pa, at time 0.</param>
    /// <param name="to">Pa; the curve stops at what can be reached.</param>
    /// <param name="ultimate">p_ult, Pa.</param>
    /// <param name="points">Number of points, at least 2.</param>
    public ImmutableArray<(double Time, double Pressure)> Curve(double volume, double from, double to, double ultimate, int points)
    {
        var end = Math.Max(to, 1.02 * Math.Max(ultimate, _pump.Ultimate));
        var curve = ImmutableArray.CreateBuilder<(double Time, double Pressure)>(points);
        var time = 0.0;
        var last = from;
        for (var i = 0; i < points; i++)
        {
            var p = from * Math.Pow(end / from, (double)i / (points - 1));
            time += Time(volume, last, p, ultimate);
            last = p;
            curve.Add((time, p));
        }

        return curve.ToImmutable();
    }

    private double TabulatedSpeed(double pressure)
    {
        var x = Math.Log(pressure);
        var i = Array.BinarySearch(_logPressure, x);
        if (i >= 0)
            return Math.Exp(_logSpeed[i]);
        i = Math.Clamp(~i, 1, TablePoints - 1);
        var share = (x - _logPressure[i - 1]) / (_logPressure[i] - _logPressure[i - 1]);
        return Math.Exp(_logSpeed[i - 1] + share * (_logSpeed[i] - _logSpeed[i - 1]));
    }

    private double Upstream(double inlet, double throughput, double[]? drops)
    {
        var p = inlet;
        for (var i = _elements.Length - 1; i >= 0; i--)
        {
            var up = _elements[i].InletPressure(_gas, throughput, p);
            if (drops is not null)
                drops[i] = up - p;
            p = up;
        }

        return p;
    }
}

/// <summary>A logged pull-down against the expected one.</summary>
/// <param name="Limit">What set the pace.</param>
/// <param name="Bands">The pull in steps of half a decade, from the first numbered row down to the target or the lowest reading.</param>
/// <param name="MeasuredTime">Over all bands, s.</param>
/// <param name="ExpectedTime">Over all bands, s.</param>
/// <param name="Lowest">Lowest pressure of the pull, Pa; null without numbered rows.</param>
/// <param name="TimeAtBoilingWater">Part of the time lost in bands that took more than 2.5 times the expected time, in the range where water boils, s, where that range is slower than the rest; null without a saturation pressure.</param>
/// <param name="AtEnd">Speed at the system at the end of the last band, and where the pressure is spent; null without bands.</param>
/// <param name="Expected">The expected curve for a figure, on the clock of the log, s and Pa; at most 200 points.</param>
internal sealed record PullDownResult(
    PullDownLimit Limit,
    ImmutableArray<PullDownBand> Bands,
    double MeasuredTime,
    double ExpectedTime,
    double? Lowest,
    double? TimeAtBoilingWater,
    EffectiveSpeed? AtEnd,
    ImmutableArray<(double Time, double Pressure)> Expected);
