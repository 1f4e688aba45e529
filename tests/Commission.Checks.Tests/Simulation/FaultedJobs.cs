using System.Globalization;

namespace Commission.Checks.Tests.Simulation;

/// <summary>A job whose fault is known.</summary>
/// <param name="Yaml">The job file.</param>
/// <param name="Truth">What is wrong, in the words of <see cref="FaultedJobs.Words"/>.</param>
/// <param name="Severity">Its size, a share or K: see <see cref="FaultKind"/>.</param>
/// <param name="Description">Circuit, weather and fault in one line.</param>
public sealed record FaultedJob(string Yaml, string Truth, double Severity, string Description);

/// <summary>What a draw of a job decided, before instruments.</summary>
/// <param name="Task">The circuit.</param>
/// <param name="HeatPump">Whether it has a reversing valve.</param>
/// <param name="Weather">The air.</param>
/// <param name="Fault">What is wrong.</param>
internal sealed record DrawnCircuit(CircuitTask Task, bool HeatPump, Weather Weather, CircuitFault Fault);

/// <summary>
/// Draws circuits, weather, at most one fault, and the instruments of a crew; the same seed gives the same jobs. Ranges are common
/// practice: faults from where a technician would speak of one up to what still runs, the charge within a quarter, indoor air down to 60 %.
/// </summary>
public static class FaultedJobs
{
    private const double FaultFree = 0.25;
    private const double ShareOfValves = 0.6;
    private const double ShareOfHeatPumps = 0.4;

    /// <summary>Draws that may fail one after the other before something is wrong with the model.</summary>
    private const int MostRejections = 200;

    private static readonly string[] Refrigerants = ["R-410A", "R-32", "R-454B", "R-22", "R-134a", "R-407C"];

    /// <summary>The word for each kind of truth.</summary>
    internal static IReadOnlyDictionary<FaultKind, string> Words { get; } = new Dictionary<FaultKind, string>
    {
        [FaultKind.None] = "no fault shown",
        [FaultKind.LowCharge] = "low charge",
        [FaultKind.Overcharge] = "overcharge",
        [FaultKind.LiquidLineRestriction] = "liquid line restriction",
        [FaultKind.LowIndoorAirflow] = "low indoor airflow",
        [FaultKind.CondenserDirt] = "condenser heat rejection",
        [FaultKind.NonCondensables] = "non-condensables",
        [FaultKind.ValveUnderfeeding] = "valve underfeeding",
        [FaultKind.ValveOverfeeding] = "valve overfeeding",
        [FaultKind.WeakCompressor] = "weak compressor",
        [FaultKind.PassingReversingValve] = "passing reversing valve",
    };

    /// <summary>Draws jobs.</summary>
    /// <param name="seed">Of the random numbers.</param>
    /// <param name="count">How many.</param>
    /// <param name="rejected">Takes down the fault and reason of each draw that gave no steady state; null when nobody wants to know.</param>
    public static IEnumerable<FaultedJob> Draw(int seed, int count, ICollection<string>? rejected = null)
    {
        var random = new Random(seed);
        for (int drawn = 0, failed = 0; drawn < count && failed < MostRejections;)
        {
            var circuit = Circuit(random);
            var design = CircuitDesign.For(circuit.Task);
            var result = CircuitModel.Solve(design, circuit.Weather, circuit.Fault);
            var rated = CircuitModel.Solve(design, Weather.Us, CircuitFault.None);
            if (result.Readings is not { } readings || rated.Readings is not { } rating)
            {
                rejected?.Add($"{Words[circuit.Fault.Kind]}: {result.Reason ?? rated.Reason}");
                failed++;
                continue;
            }
            failed = 0;
            drawn++;
            var yaml = new FaultedJobText(random, circuit, design, readings, rating).Write(string.Create(CultureInfo.InvariantCulture, $"SC-{seed}-{drawn}"));
            yield return new FaultedJob(yaml, Words[circuit.Fault.Kind], circuit.Fault.Severity, Describe(circuit));
        }
    }

    internal static DrawnCircuit Circuit(Random random)
    {
        var kind = random.NextDouble() < FaultFree ? FaultKind.None : (FaultKind)random.Next(1, Words.Count);
        var valve = kind is FaultKind.ValveUnderfeeding or FaultKind.ValveOverfeeding || random.NextDouble() < ShareOfValves;
        var heatPump = kind == FaultKind.PassingReversingValve || random.NextDouble() < ShareOfHeatPumps;
        var metering = valve ? MeteringDevice.Valve : MeteringDevice.Orifice;
        var refrigerant = Refrigerants[random.Next(Refrigerants.Length)];
        var split = Split(random, refrigerant);
        // The liquid cannot come nearer to the air than the condenser allows, and with a glide its bubble point lies below the mean.
        var subcooling = Math.Min(Between(random, 4, 8), 0.6 * (split - (refrigerant == "R-407C" ? 2.5 : 0.5)));
        var task = new CircuitTask(refrigerant, metering, Between(random, 5_000, 15_000), 273.15 + Between(random, 6.5, 9.5), split, subcooling, Between(random, 4.5, 7.5));
        var (least, most) = Severities(kind);
        return new DrawnCircuit(task, heatPump, Air(random), new CircuitFault(kind, Between(random, least, most)));
    }

    /// <summary>Condensing over outdoor air at the rating point by class: new and large, ordinary, old and small (common practice).</summary>
    private static double Split(Random random, string refrigerant)
    {
        var old = refrigerant is "R-22" or "R-407C";
        return random.Next(3) switch
        {
            0 when !old => Between(random, 8, 10),
            1 => Between(random, 10, 12.5),
            _ => Between(random, 12.5, 15),
        };
    }

    private static Weather Air(Random random)
    {
        double outdoor = Between(random, 24, 40), indoor = Between(random, 22, 28), wetBulb = Between(random, 15, 20);
        return Weather.Celsius(outdoor, indoor, Math.Min(wetBulb, indoor - 3));
    }

    private static (double Least, double Most) Severities(FaultKind kind) => kind switch
    {
        FaultKind.LowCharge or FaultKind.Overcharge => (0.12, 0.25),
        FaultKind.LiquidLineRestriction => (0.3, 0.8),
        FaultKind.LowIndoorAirflow => (0.18, 0.40),
        FaultKind.CondenserDirt => (0.25, 0.55),
        FaultKind.NonCondensables => (0.07, 0.16),
        FaultKind.ValveUnderfeeding => (0.12, 0.40),
        FaultKind.ValveOverfeeding => (3.5, 6.5),
        FaultKind.WeakCompressor => (0.15, 0.40),
        FaultKind.PassingReversingValve => (0.10, 0.25),
        _ => (0, 0),
    };

    private static double Between(Random random, double low, double high) => low + (high - low) * random.NextDouble();

    private static string Describe(DrawnCircuit circuit)
    {
        var (task, air) = (circuit.Task, circuit.Weather);
        var metering = task.Metering == MeteringDevice.Valve ? "TXV" : "fixed orifice";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{task.Refrigerant}, {metering}, {(circuit.HeatPump ? "heat pump" : "split")} {task.Capacity / 1000:0.0} kW, outdoor {air.Outdoor - 273.15:0.0} °C, return {air.Return - 273.15:0.0}/{air.ReturnWetBulb - 273.15:0.0} °C: {Words[circuit.Fault.Kind]} {circuit.Fault.Severity:0.00}");
    }
}
