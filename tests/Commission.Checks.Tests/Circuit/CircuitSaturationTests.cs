using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Tests.Charge;
using Commission.Fluids;
using Commission.Messages;
using Xunit;

namespace Commission.Checks.Tests.Circuit;

/// <summary>
/// The doubt of a blend's equations covers the way to the boiling point that ANSI/ASHRAE 34 lists, its own or that of its sisters (listed
/// values from memory).
/// </summary>
public sealed class CircuitSaturationTests
{
    // Of the unlisted: R-409A and its kind lie 8.5 % of the dew pressure off (R-22 + R-124), R-402A 10.6 % (Lorentz–Berthelot).
    [Theory]
    [InlineData("R-401C", 0.085)]
    [InlineData("R-409B", 0.085)]
    [InlineData("R-414A", 0.085)]
    [InlineData("R-461A", 0.106)]
    [InlineData("R-403B", 0.053)]
    public void An_unlisted_blend_takes_the_deviation_of_its_sisters(string refrigerant, double share)
    {
        var (budget, perPascal) = DewBudget(refrigerant);
        Assert.Equal(share / Math.Sqrt(3), Share(budget, perPascal), 1e-9);
        var named = Assert.Single(budget, b => b.Cause.ToString() == $"{refrigerant}: estimated pairs, dew point");
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"up to {100 * share:0.0} % of the pressure"), MessageWriter.Words.Format(named.Cause.Source, Language.English), StringComparison.Ordinal);
        Assert.Contains("is estimated", MessageWriter.Words.Format(named.Cause.Source, Language.English), StringComparison.Ordinal);
    }

    // Both have published pairs alone and are listed 1.1 to 1.2 K from the equations.
    [Theory]
    [InlineData("R-417A", 1.174)]
    [InlineData("R-451A", 0.813)]
    public void A_listed_blend_with_published_pairs_takes_its_own(string refrigerant, double kelvins)
    {
        var (budget, perPascal) = DewBudget(refrigerant);
        var fluid = Refrigerant.Load(refrigerant);
        var boiling = fluid.DewAtPressure(101_325).Value;
        Assert.Equal(kelvins * boiling.PressureSlope / boiling.Pressure / Math.Sqrt(3), Share(budget, perPascal), 1e-4);
        Assert.Single(budget, b => b.Cause.ToString() == $"{refrigerant}: listed normal dew point");
    }

    [Fact]
    public void A_blend_that_the_list_confirms_keeps_the_whole_common_figure()
    {
        // R-407F is listed 0.04 K from the equations: 0.5 % as a standard uncertainty, not half of it.
        var (budget, perPascal) = DewBudget("R-407F");
        Assert.Equal(0.005, Share(budget, perPascal), 1e-9);
    }

    private static (Measurement.Uncertainty.BudgetLine[] Budget, double PerPascal) DewBudget(string refrigerant)
    {
        var job = JobText.Read(ChargeJobs.FenRow.With("refrigerant: R-410A", $"refrigerant: {refrigerant}"));
        CheckContext context = new(job, new CheckSettings(job.Identity.Date.Value));
        var pressure = context.Get<ChargeAnalysis>().Rows[^1].VaporPressure!;
        var dew = context.Get<CircuitSaturation>().Dew(pressure);
        return ([.. dew.Value!.Budget.Where(b => b.Cause.ToString().StartsWith(refrigerant, StringComparison.Ordinal))], pressure.Value.Value * dew.Slope);
    }

    private static double Share(Measurement.Uncertainty.BudgetLine[] budget, double perPascal) =>
        Math.Sqrt(budget.Sum(b => b.Contribution * b.Contribution)) / perPascal;
}
