using Commission.Checks.Formulas;
using Xunit;

namespace Commission.Checks.Tests.Formulas;

public sealed class ElectricalFormulaTests
{
    // Worked examples of installation manuals [published]; two of them print a coarser rounding than the arithmetic gives.
    [Theory]
    [InlineData(460, 467, 450, 1.961)]
    [InlineData(203, 210, 212, 2.56)]
    [InlineData(462, 463, 455, 1.087)]
    [InlineData(480, 476, 472, 0.840)]
    [InlineData(220, 216, 213, 1.695)]
    [InlineData(236, 240, 241, 1.255)]
    public void Unbalance_of_published_examples(double a, double b, double c, double percent) =>
        Assert.Equal(percent, 100 * PhaseUnbalance.Of([a, b, c]), percent is 2.56 ? 0.005 : 0.0005);

    [Fact]
    public void The_mean_of_the_first_example_is_459_volts_and_its_largest_departure_9() =>
        Assert.Equal(9.0 / 459, PhaseUnbalance.Of([460, 467, 450]), 12);

    [Fact]
    public void Equal_phases_are_balanced_and_order_does_not_matter()
    {
        Assert.Equal(0, PhaseUnbalance.Of([400, 400, 400]), 15);
        Assert.Equal(PhaseUnbalance.Of([460, 467, 450]), PhaseUnbalance.Of([450, 460, 467]), 15);
    }

    [Theory]
    [InlineData(0.005, 1)]
    [InlineData(0.01, 1)]
    [InlineData(0.02, 0.95)]
    [InlineData(0.025, 0.925)]
    [InlineData(0.03, 0.90)]
    public void Derating(double unbalance, double factor) => Assert.Equal(factor, PhaseUnbalance.Derating(unbalance)!.Value, 9);

    [Fact]
    public void Above_three_percent_no_factor_was_found() => Assert.Null(PhaseUnbalance.Derating(0.031));

    [Fact]
    public void A_run_capacitor_of_39_98_microfarad() =>
        Assert.Equal(39.98, RunCapacitor.Farads(5.2, 345, 60) * 1e6, 0.005);

    [Theory]
    [InlineData(60, 2652.6)]
    [InlineData(50, 3183.1)]
    public void The_field_factors_of_the_run_capacitor(double hertz, double factor) =>
        Assert.Equal(factor, RunCapacitor.Farads(1, 1, hertz) * 1e6, 0.05);
}
