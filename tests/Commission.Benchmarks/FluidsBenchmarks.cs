using BenchmarkDotNet.Attributes;
using Commission.Fluids;

namespace Commission.Benchmarks;

/// <summary>
/// Saturation of refrigerants. Targets: blend of three, full solution at a pressure, 15 µs; pure fluid 10 µs; expansions 0.08 µs and no
/// allocation.
/// </summary>
[MemoryDiagnoser]
public class FluidsBenchmarks
{
    private readonly double[] _pressures = new double[256];
    private Refrigerant _pure = null!;
    private Refrigerant _ternary = null!;
    private Refrigerant _five = null!;
    private FastSaturation _fast = null!;
    private int _next;

    /// <summary>Loads the refrigerants and draws the pressures.</summary>
    [GlobalSetup]
    public void Setup()
    {
        _pure = Refrigerant.Load("R-32");
        _ternary = Refrigerant.Load("R-407C");
        _five = Refrigerant.Load("R-448A");
        _fast = _ternary.Fast;
        Random random = new(1);
        for (var i = 0; i < _pressures.Length; i++)
            _pressures[i] = 2e5 * Math.Exp(2.2 * random.NextDouble());
    }

    /// <summary>Full solution, pure fluid.</summary>
    [Benchmark]
    public double PureAtPressure() => _pure.BubbleAtPressure(Next()).Value.Temperature;

    /// <summary>Full solution, dew point of five components.</summary>
    [Benchmark]
    public double FiveDewAtPressure() => _five.DewAtPressure(Next()).Value.Temperature;

    /// <summary>Expansion, dew temperature.</summary>
    [Benchmark]
    public double FastDewTemperature() => _fast.DewTemperature(Next()).Value;

    /// <summary>Expansion, bubble pressure.</summary>
    [Benchmark]
    public double FastBubblePressure() => _fast.BubblePressure(250 + 1e-5 * Next()).Value;

    /// <summary>Expansions of a blend of three made anew.</summary>
    [Benchmark]
    public (double Low, double High) MakeExpansions() => Refrigerant.Read(_ternary.Info).Fast.Range;

    private double Next() => _pressures[_next++ & 255];
}

/// <summary>Full solutions of blends of three at a pressure; target 15 µs.</summary>
public class TernaryBenchmarks
{
    private readonly double[] _pressures = new double[256];
    private Refrigerant _blend = null!;
    private int _next;

    /// <summary>The blend.</summary>
    [Params("R-407C", "R-404A", "R-455A")]
    public string Blend { get; set; } = "";

    /// <summary>Loads the blend and draws the pressures.</summary>
    [GlobalSetup]
    public void Setup()
    {
        _blend = Refrigerant.Load(Blend);
        Random random = new(1);
        for (var i = 0; i < _pressures.Length; i++)
            _pressures[i] = 2e5 * Math.Exp(2.2 * random.NextDouble());
    }

    /// <summary>Bubble point.</summary>
    [Benchmark]
    public double Bubble() => _blend.BubbleAtPressure(_pressures[_next++ & 255]).Value.Temperature;

    /// <summary>Dew point.</summary>
    [Benchmark]
    public double Dew() => _blend.DewAtPressure(_pressures[_next++ & 255]).Value.Temperature;
}
