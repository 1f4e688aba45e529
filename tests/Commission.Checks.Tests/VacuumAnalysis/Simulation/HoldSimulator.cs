using Commission.Checks.Formulas;
using Commission.Checks.VacuumAnalysis;

namespace Commission.Checks.Tests.VacuumAnalysis.Simulation;

/// <summary>Draws holds and the logs a gauge would have made of them. Same seed, same logs.</summary>
internal sealed class HoldSimulator(int seed)
{
    private readonly Random _random = new(seed);
    private double? _spare;

    /// <summary>A hold of one kind under drawn conditions: 10 to 60 min, rows each 1 to 10 s, wander 0.02 to 3 Pa with lag-1
    /// correlation up to 0.98, gauge steps of 0.1, 1 or 10 micron, gain error within ±10 %, and every trap in a part of the logs.</summary>
    public HoldTruth Draw(HoldConclusion kind, double? correlation = null, double leastNoise = 0.02, double mostNoise = 3)
    {
        var length = Pick(600.0, 900, 1320, 1800, 2700, 3600);
        var level = Uniform(30, 65);
        var truth = new HoldTruth
        {
            Kind = kind,
            Length = length,
            Interval = Pick(1.0, 1, 2, 5, 10),
            Level = level,
            Noise = LogUniform(leastNoise, mostNoise),
            Correlation = correlation ?? Pick(0, 0.5, 0.9, 0.98),
            Resolution = Pick(0.0133322, 0.133322, 0.133322, 1.33322),
            GainHalfWidth = 0.1,
            GainError = Uniform(-0.1, 0.1),
            TemperatureChange = Uniform(-1, 1),
            Spikes = _random.Next(3) == 0 ? 1 : 0,
            DroppedShare = _random.Next(3) == 0 ? 0.08 : 0,
            OverRangeRows = _random.Next(5) == 0 ? 2 : 0,
            StepAtIsolation = _random.Next(4) == 0 ? Uniform(-20, 60) : 0,
        };
        var counting = truth.Counting;
        return kind switch
        {
            HoldConclusion.SteadyRise => truth with { Slope = LogUniform(1.5, 20) * counting / length },
            HoldConclusion.Source => WithSource(truth),
            HoldConclusion.SteadyRiseAndSource => WithSource(truth) with { Slope = LogUniform(1.5, 20) * counting / length },
            _ => truth,
        };

        HoldTruth WithSource(HoldTruth t)
        {
            var tau = LogUniform(90, 1.2 * length);
            return t with { Tau = tau, Step = LogUniform(1.5, 20) * counting / (1 - Math.Exp(-length / tau)) };
        }
    }

    /// <summary>The log of a hold that starts at time 0.</summary>
    public VacuumSeries Log(HoldTruth truth)
    {
        var rows = (int)(truth.Length / truth.Interval) + 1;
        var times = new List<double>(rows);
        var pressures = new List<double>(rows);
        var over = new List<bool>(rows);
        var wander = truth.Noise * Normal();
        var spikes = Enumerable.Range(0, truth.Spikes).Select(_ => _random.Next(rows / 10, rows)).ToHashSet();
        var above = Enumerable.Range(0, truth.OverRangeRows).Select(_ => _random.Next(rows / 10, rows)).ToHashSet();
        for (var i = 0; i < rows; i++)
        {
            var t = i * truth.Interval;
            if (i > 0)
                wander = truth.Correlation * wander + Math.Sqrt(1 - truth.Correlation * truth.Correlation) * truth.Noise * Normal();
            var p = truth.At(t) * (1 + truth.TemperatureChange / 293.15 * t / truth.Length);
            p += truth.StepAtIsolation * Math.Exp(-t / 9);
            p = p / (1 + truth.GainError) + wander;
            if (spikes.Contains(i))
                p *= _random.Next(2) == 0 ? 2.5 : 0.3;
            if (truth.Resolution > 0)
                p = Math.Round(p / truth.Resolution) * truth.Resolution;
            if (_random.NextDouble() < truth.DroppedShare)
                continue;
            times.Add(t);
            pressures.Add(Math.Max(p, 0));
            over.Add(above.Contains(i));
        }

        return VacuumSeries.From(times, pressures, over);
    }

    public double Uniform(double low, double high) => low + (high - low) * _random.NextDouble();

    public double LogUniform(double low, double high) => low * Math.Pow(high / low, _random.NextDouble());

    public double Normal()
    {
        if (_spare is { } kept)
        {
            _spare = null;
            return kept;
        }

        // Box and Muller (1958).
        var r = Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble()));
        var a = 2 * Math.PI * _random.NextDouble();
        _spare = r * Math.Sin(a);
        return r * Math.Cos(a);
    }

    private T Pick<T>(params ReadOnlySpan<T> of) => of[_random.Next(of.Length)];
}
