using Commission.Checks.Charge;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Measurement.Uncertainty;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>The same computation with drawn errors (JCGM 101) agrees with the law of propagation, in y and in u, within the scatter of its trials.</summary>
public sealed class MonteCarloTests
{
    private const int Trials = 800;

    [Fact]
    public void Superheat_and_subcooling_of_Tarn_Lane()
    {
        var job = JobText.Read(ChargeJobs.TarnLane);
        var settings = new CheckSettings(job.Identity.Date.Value);
        var row = Last(new CheckContext(job, settings));
        var linear = (Superheat: row.Superheat.Value!, Subcooling: row.Subcooling.Value!);
        var scope = new SamplingScope(new Random(20260618));
        var (superheat, subcooling) = (new double[Trials], new double[Trials]);
        for (var i = 0; i < Trials; i++)
        {
            scope.NextTrial();
            var drawn = Last(new CheckContext(job, settings with { Scope = scope }));
            superheat[i] = drawn.Superheat.Value!.Value;
            subcooling[i] = drawn.Subcooling.Value!.Value;
        }

        Agree(linear.Superheat, superheat);
        Agree(linear.Subcooling, subcooling);
    }

    private static ChargeRow Last(CheckContext context) => context.Get<ChargeAnalysis>().Rows[^1];

    // The scatter of u from 800 trials is u/√(2·800), 2.5 %: three of these.
    private static void Agree(Uncertain linear, double[] drawn)
    {
        var mean = drawn.Average();
        var u = Math.Sqrt(drawn.Sum(x => (x - mean) * (x - mean)) / (drawn.Length - 1));
        Assert.Equal(linear.Value, mean, 3 * linear.StandardUncertainty / Math.Sqrt(Trials));
        Assert.Equal(linear.StandardUncertainty, u, 0.075 * linear.StandardUncertainty);
    }
}
