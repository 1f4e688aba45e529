using System.Collections.Immutable;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>
/// A system emptied by a pump through hoses and cores in series. In steady flow Q = S(p_in)·p_in passes each element,
/// Q = C(p̄)·(p₁ − p₂) with p̄ = (p₁ + p₂)/2, so that the speed at the system follows from the pressure at the pump.
/// </summary>
public sealed class PullDownModel
{
    private const double Highest = 120_000;
    private const int TablePoints = 160;
    private const int Steps = 400;

    private readonly ImmutableArray<FlowElement> elements;
    private readonly PumpCurve pump;
    private readonly ConductanceGas gas;
    private readonly double[] logPressure = new double[TablePoints];
    private readonly double[] logSpeed = new double[TablePoints];

    /// <summary>Describes the way and tabulates the speed at the system.</summary>
    /// <param name="elements">From the system to the pump; may be empty.</param>
    /// <param name="pump">The pump.</param>
    /// <param name="gas">The gas; air at 20 °C from the handbooks when null.</param>
    public PullDownModel(IEnumerable<FlowElement> elements, PumpCurve pump, ConductanceGas? gas = null)
    {
        ArgumentNullException.ThrowIfNull(pump);
        this.elements = [.. elements];
        this.pump = pump;
        this.gas = gas ?? ConductanceGas.Air20;
        var lowest = Math.Max(1.001 * pump.Ultimate, 0.01);
        for (var i = 0; i < TablePoints; i++)
        {
            var inlet = lowest * Math.Pow(Highest / lowest, (double)i / (TablePoints - 1));
            var throughput = pump.SpeedAt(inlet) * inlet;
            var system = Upstream(inlet, throughput, drops: null);
            logPressure[i] = Math.Log(system);
            logSpeed[i] = Math.Log(throughput / system);
        }
    }

    /// <summary>Speed at a system pressure, solved for it, and where the pressure is spent.</summary>
    /// <param name="systemPressure">Pa, above the pump's lowest pressure.</param>
    /// <returns>The speed; zero at or below the pump's lowest pressure.</returns>
    public EffectiveSpeed At(double systemPressure)
    {
        if (systemPressure <= pump.Ultimate)
            return new EffectiveSpeed(systemPressure, systemPressure, 0, 0, [new FlowShare("pump", Kind: null, 1)]);
        var low = pump.Ultimate;
        var high = systemPressure;
        for (var i = 0; i < 200 && high - low > 1e-13 * high; i++)
        {
            var inlet = (low + high) / 2;
            if (Upstream(inlet, pump.SpeedAt(inlet) * inlet, drops: null) < systemPressure)
                low = inlet;
            else
                high = inlet;
        }

        var drops = new double[elements.Length];
        var speed = pump.SpeedAt(high);
        Upstream(high, speed * high, drops);
        var shares = ImmutableArray.CreateBuilder<FlowShare>();
        for (var i = 0; i < elements.Length; i++)
            shares.Add(new FlowShare(elements[i].Name, elements[i].Kind, drops[i] / systemPressure));
        shares.Add(new FlowShare("pump", Kind: null, high / systemPressure));
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
        var end = Math.Max(to, 1.02 * Math.Max(ultimate, pump.Ultimate));
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
        var i = Array.BinarySearch(logPressure, x);
        if (i >= 0)
            return Math.Exp(logSpeed[i]);
        i = Math.Clamp(~i, 1, TablePoints - 1);
        var share = (x - logPressure[i - 1]) / (logPressure[i] - logPressure[i - 1]);
        return Math.Exp(logSpeed[i - 1] + share * (logSpeed[i] - logSpeed[i - 1]));
    }

    private double Upstream(double inlet, double throughput, double[]? drops)
    {
        var p = inlet;
        for (var i = elements.Length - 1; i >= 0; i--)
        {
            var up = elements[i].InletPressure(gas, throughput, p);
            if (drops is not null)
                drops[i] = up - p;
            p = up;
        }

        return p;
    }
}
