using Xunit;

namespace Commission.Checks.Tests.Coverage;

/// <summary>The simulated instruments have the errors that their models say, so that a coverage measured with them means something.</summary>
public sealed class SimulatedInstrumentTests
{
    private const int Count = 20_000;
    private const double HalfWidth = 0.6;
    private const double Ice = 273.15;

    private static readonly Display Fine = Display.Celsius(1e-6);

    // A rectangle of half-width A has the standard deviation A/√3 (GUM 4.3.7); the other models keep it over the range ξ = −1 … 1.
    [Theory]
    [InlineData(nameof(ErrorModel.Offset))]
    [InlineData(nameof(ErrorModel.OneProbe))]
    public void Over_its_range_the_error_has_the_deviation_of_the_makers_rectangle(string name)
    {
        var model = Enum.Parse<ErrorModel>(name);
        var squares = 0.0;
        for (var i = 0; i < Count; i++)
        {
            var draws = new Draws(1, model, i);
            var at = Ice + 50 * draws.Either();
            squares += Math.Pow(Thermometer(draws, model).Quiet("line", at) - at, 2);
        }

        // 20 000 squares of a bounded error: 1 % is three standard errors and more.
        Assert.Equal(HalfWidth / Math.Sqrt(3), Math.Sqrt(squares / Count), 0.015 * HalfWidth);
    }

    // Half of the variance is common: the correlation of two places is ½, and of two probes 0. Offsets alone are the same everywhere.
    [Theory]
    [InlineData(nameof(ErrorModel.Offset), "", "", 1)]
    [InlineData(nameof(ErrorModel.OneProbe), "", "", 0.5)]
    [InlineData(nameof(ErrorModel.TwoProbes), "return", "supply", 0)]
    public void Two_places_share_what_the_model_says(string name, string first, string second, double correlation)
    {
        var model = Enum.Parse<ErrorModel>(name);
        double product = 0, one = 0, other = 0;
        for (var i = 0; i < Count; i++)
        {
            var draws = new Draws(2, model, i);
            // The variance of p is its mean where ξ² + (1.5ξ² − 0.5)² = 8/15: ξ = 0.695.
            var at = Ice + 50 * 0.695;
            var thermometer = Thermometer(draws, model);
            var (a, b) = (thermometer.Quiet("return", at, first) - at, thermometer.Quiet("supply", at, second) - at);
            product += a * b;
            one += a * a;
            other += b * b;
        }

        Assert.Equal(correlation, product / Math.Sqrt(one * other), model == ErrorModel.Offset ? 1e-12 : 0.025);
    }

    [Fact]
    public void A_bath_shows_the_sensor_and_not_how_it_sits_on_the_pipe()
    {
        var (inBath, onPipe) = (0.0, 0.0);
        for (var i = 0; i < Count; i++)
        {
            var thermometer = Thermometer(new Draws(3, ErrorModel.OneProbe, i), ErrorModel.OneProbe);
            inBath += Math.Pow(thermometer.Quiet("line", Ice, inBath: true) - Ice, 2);
            onPipe += Math.Pow(thermometer.Quiet("line", Ice) - Ice, 2);
        }

        // At ξ = 0: A²/3 · ½ · (1 + ¼ · 15/16) in the bath, and ½ more of it on the pipe.
        var half = HalfWidth * HalfWidth / 6;
        Assert.Equal(half * (1 + 15.0 / 64), inBath / Count, 0.03 * half);
        Assert.Equal(half * (1.5 + 15.0 / 64), onPipe / Count, 0.03 * half);
    }

    [Fact]
    public void Once_adjusted_it_shows_what_it_ought_to()
    {
        var gauge = new SimulatedInstrument(new Draws(4, ErrorModel.OneProbe, 7), ErrorModel.OneProbe, new Statement("", _ => 5000, 0, 35e5), Display.PsiGauge(0.1));
        gauge.Adjust("port", 0);
        // Repeatability is 2 % of 5 kPa, 0.015 psi, and a tenth of a digit is less.
        Assert.InRange(Math.Abs(gauge.Quiet("port", 0)), 0, 5 * 0.02 * 5000);
    }

    // 57.24 °F is 287.172222 K; one step of 0.1 °F, of 0.5 psi, of 10 cfm.
    [Fact]
    public void Displays_round_as_a_display_does()
    {
        Assert.Equal("57.2 °F", Display.Fahrenheit(0.1).Text((57.24 + 459.67) / 1.8));
        Assert.Equal("118.5 psig", Display.PsiGauge(0.5).Text(118.6 * 6894.757293168));
        Assert.Equal("1210 cfm", new Display("cfm", Display.CubicFootPerMinute, 0, 10).Text(1206 * 0.028316846592 / 60));
        Assert.Equal("0.0 psig", Display.PsiGauge(0.1).Text(-0.04 * 6894.757293168));
        Assert.Equal((57.2 + 459.67) / 1.8, Display.Fahrenheit(0.1).Rounded((57.24 + 459.67) / 1.8), 1e-9);
    }

    [Fact]
    public void A_job_draws_the_same_whatever_was_drawn_before()
    {
        var first = new Draws(5, ErrorModel.Offset, 12).Either();
        _ = new Draws(5, ErrorModel.Offset, 11).Either();
        Assert.Equal(first, new Draws(5, ErrorModel.Offset, 12).Either());
        Assert.NotEqual(first, new Draws(5, ErrorModel.OneProbe, 12).Either());
        Assert.NotEqual(first, new Draws(6, ErrorModel.Offset, 12).Either());
    }

    private static SimulatedInstrument Thermometer(Draws draws, ErrorModel model) =>
        new(draws, model, new Statement("accuracy: 0.6 K", _ => HalfWidth, Ice, 50) { IsPlaced = true }, Fine);
}
