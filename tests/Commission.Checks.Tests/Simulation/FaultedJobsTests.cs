using System.Diagnostics;
using System.Globalization;
using System.Text;
using Xunit;

namespace Commission.Checks.Tests.Simulation;

/// <summary>Drawn jobs are jobs that a crew could have written.</summary>
public sealed class FaultedJobsTests(ITestOutputHelper output)
{
    private const int Seed = 20_260_714;

    [Fact]
    public void Forty_jobs_are_read_without_a_problem()
    {
        foreach (var drawn in FaultedJobs.Draw(Seed, 40))
        {
            var job = JobText.Read(drawn.Yaml);
            Assert.Equal(2, job.Charging!.Readings.Length);
        }
    }

    [Fact]
    public void The_same_seed_draws_the_same_jobs()
    {
        Assert.Equal(FaultedJobs.Draw(7, 5), FaultedJobs.Draw(7, 5));
        Assert.NotEqual(FaultedJobs.Draw(7, 5), FaultedJobs.Draw(8, 5));
    }

    /// <summary>Bounds are our own: a quarter without fault, every fault in both unit systems, heat pumps beside splits, few draws without a steady state.</summary>
    [Fact]
    public void Three_hundred_jobs_hold_every_fault()
    {
        var clock = Stopwatch.StartNew();
        var rejected = new List<string>();
        var jobs = FaultedJobs.Draw(Seed, 300, rejected).ToArray();
        Assert.Equal(300, jobs.Length);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{jobs.Length} jobs in {clock.Elapsed.TotalSeconds:0.0} s, {rejected.Count} draws without a steady state"));
        Assert.InRange(jobs.Count(j => j.Yaml.Contains("system: heat pump", StringComparison.Ordinal)), 90, 180);
        Assert.InRange(jobs.Count(j => j.Truth == FaultedJobs.Words[FaultKind.None]), 55, 110);
        foreach (var word in FaultedJobs.Words.Values)
        {
            Assert.InRange(jobs.Count(j => j.Truth == word), 8, 110);
            Assert.Contains(jobs, j => j.Truth == word && j.Yaml.Contains("units: us\n", StringComparison.Ordinal));
            Assert.Contains(jobs, j => j.Truth == word && j.Yaml.Contains("units: si\n", StringComparison.Ordinal));
        }
        Assert.InRange(rejected.Count, 0, 30);
        Assert.InRange(rejected.Count(r => r.EndsWith(CircuitModel.NoBalance, StringComparison.Ordinal)), 0, 9);
    }

    /// <summary>A fault stands only where the circuit has the part, and a standing test shows gas where there is gas.</summary>
    [Fact]
    public void Faults_fit_their_circuits()
    {
        List<double> gassy = [], clean = [];
        foreach (var job in FaultedJobs.Draw(3, 300))
        {
            if (job.Truth == FaultedJobs.Words[FaultKind.PassingReversingValve])
                Assert.Contains("system: heat pump", job.Yaml, StringComparison.Ordinal);
            if (job.Truth.StartsWith("valve ", StringComparison.Ordinal))
                Assert.Contains("metering: TXV", job.Yaml, StringComparison.Ordinal);
            Assert.Equal(job.Yaml.Contains("metering: TXV", StringComparison.Ordinal), job.Yaml.Contains("subcooling: {target", StringComparison.Ordinal));
            if (JobText.Read(job.Yaml).Charging!.StandingTest is { } test)
            {
                var fluid = RefrigerantTable.Of(job.Description[..job.Description.IndexOf(',', StringComparison.Ordinal)]);
                var rested = fluid.Bubble(test.LiquidPressure.Value.Pascals + CoilAir.Pressure) - test.LiquidLine!.Value.Si;
                (job.Truth == FaultedJobs.Words[FaultKind.NonCondensables] ? gassy : clean).Add(rested);
            }
        }
        Assert.InRange(gassy.Average(), 1.5, 5);
        Assert.InRange(clean.Average(), -0.7, 0.7);
    }

    /// <summary>Prints what each fault does to the true readings against the same circuit in the same weather without it: mean and spread over draws.</summary>
    [Fact(Explicit = true)]
    public void Mean_shifts_of_the_readings()
    {
        var random = new Random(Seed);
        var shifts = new SortedDictionary<string, List<double[]>>(StringComparer.Ordinal);
        for (var draw = 0; draw < 1500; draw++)
        {
            var circuit = FaultedJobs.Circuit(random);
            var design = CircuitDesign.For(circuit.Task);
            var sound = CircuitModel.Solve(design, circuit.Weather, CircuitFault.None).Readings;
            var faulty = CircuitModel.Solve(design, circuit.Weather, circuit.Fault).Readings;
            if (sound is null || faulty is null)
                continue;
            var none = circuit.Fault.Kind == FaultKind.None;
            var row = Columns.Select(c => none ? c.Read(faulty) : c.Read(faulty) - c.Read(sound)).Append(100 * (none ? 0 : faulty.Power / sound.Power - 1)).ToArray();
            var key = string.Create(CultureInfo.InvariantCulture, $"{circuit.Task.Metering,-8}{FaultedJobs.Words[circuit.Fault.Kind]}");
            if (!shifts.TryGetValue(key, out var rows))
                shifts[key] = rows = [];
            rows.Add(row);
        }
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{"mean ± standard deviation, K",-36}{"n",5}");
        foreach (var (name, _) in Columns)
            text.Append(CultureInfo.InvariantCulture, $"{name,13}");
        text.AppendLine(CultureInfo.InvariantCulture, $"{"power, %",13}");
        foreach (var (key, rows) in shifts)
        {
            text.Append(CultureInfo.InvariantCulture, $"{key,-36}{rows.Count,5}");
            for (var i = 0; i <= Columns.Length; i++)
            {
                var mean = rows.Average(r => r[i]);
                var spread = Math.Sqrt(rows.Average(r => Math.Pow(r[i] - mean, 2)));
                text.Append(CultureInfo.InvariantCulture, $"{mean,7:0.0} ±{spread,4:0.0}");
            }
            text.AppendLine();
        }
        output.WriteLine(text.ToString());
    }

    private static readonly (string Name, Func<CircuitReadings, double> Read)[] Columns =
    [
        ("SST", r => r.Suction - 273.15),
        ("superheat", r => r.Superheat),
        ("cond. split", r => r.CondenserSplit),
        ("subcooling", r => r.Subcooling),
        ("approach", r => r.Approach),
        ("air split", r => r.AirSplit),
        ("discharge", r => r.DischargeLine - 273.15),
        ("drier drop", r => r.DrierDrop),
        ("suct.-vapor", r => r.CompressorSuctionLine - r.VaporLine),
    ];
}
