using Commission.Checks.Tests.Coverage;

namespace Commission.Checks.Tests.VacuumAnalysis.Holds;

/// <summary>A hold without a leak whose walls give off gas.</summary>
/// <param name="Law">How.</param>
/// <param name="Hold">The hold.</param>
/// <param name="IsStraight">Whether no bend is to be seen through the noise.</param>
internal sealed record OutgassingHold(string Law, SimulatedHold Hold, bool IsStraight);

/// <summary>
/// Laws of outgassing. The rate of a surface falls with a power of the time since pumping began, n about 1 for metal and 0.5 for elastomers, where gas
/// diffuses to the surface (Dayton, Trans. AVS 6 (1960) 101; O'Hanlon, A User's Guide to Vacuum Technology; both from memory). Shut off, the gas
/// stays: the pressure is the integral. Others: a logarithm (Elovich), a row of sites with rates over decades, intraparticle diffusion out of
/// spheres (Crank, The Mathematics of Diffusion) and its first √t (Weber and Morris 1963), a stretched exponential; all from memory.
/// </summary>
internal static class Outgassing
{
    public static readonly string[] Laws = ["power", "1/t", "√t diffusion", "logarithm", "two pockets", "many sites", "spheres", "stretched"];

    /// <summary>Draws hold number i: laws in turn, pumped for 10 min to 5 h before, rising by 0.5 to 40 times what counts.</summary>
    public static OutgassingHold Draw(int seed, int number)
    {
        var draws = HoldDraws.Of(seed, number);
        var law = Laws[number % Laws.Length];
        var length = 60 * draws.Pick(10.0, 15, 20, 30, 45, 60, 120);
        var gauge = draws.Pick(SimulatedGauge.All);
        var level = draws.Uniform(80, 500) * SimulatedGauge.Micron;
        var counting = Math.Max(5 * gauge.StepAt(level), 0.1 * (OwnSeries.DecayLimit - level));
        var rise = counting * draws.LogUniform(0.5, 40);
        var shape = Shape(draws, law, length, 60 * draws.LogUniform(10, 300));
        var scale = rise / shape(length);
        var noise = draws.LogUniform(0.1, 6) * SimulatedGauge.Micron;
        var share = draws.Pick(0, 0.5, 1.0);
        var hold = new SimulatedHold
        {
            Pressure = t => level + scale * shape(t),
            PumpDown = 600,
            Length = length,
            Interval = draws.Pick(1.0, 2, 5, 10, 10, 30),
            Gauge = gauge,
            White = noise * Math.Sqrt(1 - share),
            Wander = noise * Math.Sqrt(share),
            Memory = draws.LogUniform(5, 120),
        };
        return new OutgassingHold(law, hold, HoldClarity.IsStraight(hold, counting));
    }

    // Zero at isolation; scaled afterwards.
    private static Func<double, double> Shape(Draws draws, string law, double length, double pumped)
    {
        switch (law)
        {
            case "power":
                var n = draws.Uniform(0.5, 1.2);
                return Math.Abs(n - 1) < 1e-3 ? t => Math.Log(1 + t / pumped) : t => (Math.Pow(pumped + t, 1 - n) - Math.Pow(pumped, 1 - n)) / (1 - n);
            case "1/t":
                return t => Math.Log(1 + t / pumped);
            case "√t diffusion":
                // From a fresh surface (oil just stirred, an elastomer just uncovered) or after pumping.
                var history = draws.Chance(0.5) ? 0 : pumped;
                return t => Math.Sqrt(history + t) - Math.Sqrt(history);
            case "logarithm":
                var begin = draws.LogUniform(10, 600);
                return t => Math.Log(1 + t / begin);
            case "two pockets":
                var (fast, slow, part) = (draws.LogUniform(30, 0.15 * length), draws.LogUniform(0.3, 5) * length, draws.Uniform(0.2, 0.8));
                return t => part * (1 - Math.Exp(-t / fast)) + (1 - part) * (1 - Math.Exp(-t / slow)) / (1 - Math.Exp(-length / slow));
            case "many sites":
                double[] constants = [.. Enumerable.Range(0, 16).Select(i => 10 * Math.Pow(1e4, i / 15.0))];
                var tilt = draws.Uniform(-0.3, 0.3);
                return t => constants.Sum(c => Math.Pow(c, tilt) * (1 - Math.Exp(-t / c)));
            case "spheres":
                var constant = draws.LogUniform(0.3, 5) * length;
                return t => 1 - 6 / (Math.PI * Math.PI) * Enumerable.Range(1, 30).Sum(k => Math.Exp(-k * k * t / constant) / (k * k));
            default:
                var (stretch, time) = (draws.Uniform(0.4, 0.8), draws.LogUniform(60, 2 * length));
                return t => 1 - Math.Exp(-Math.Pow(t / time, stretch));
        }
    }
}
