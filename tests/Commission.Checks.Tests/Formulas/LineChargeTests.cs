using Commission.Checks.Formulas;
using Commission.Measurement.Quantities;
using Commission.Messages;
using Commission.Records;
using Xunit;

namespace Commission.Checks.Tests.Formulas;

/// <summary>Worked weigh-in examples of generic installation manuals and a public web page [published].</summary>
public sealed class LineChargeTests
{
    private const double Ounce = 0.45359237 / 16;
    private const double Foot = 0.3048;
    private const double OuncePerFoot = Ounce / Foot;

    [Fact]
    public void Seventy_five_feet_of_half_inch_line_with_fifteen_feet_of_three_eighths_inside()
    {
        var allowance = LineCharge.Allowance(0.60 * OuncePerFoot, 15 * Foot);
        Assert.Equal(81, LineCharge.Adjustment(1.2 * OuncePerFoot, 75 * Foot, allowance) / Ounce, 9);
    }

    [Fact]
    public void A_short_quarter_inch_line_means_recovering_six_and_three_quarter_ounces() =>
        Assert.Equal(-6.75, LineCharge.Adjustment(0.27 * OuncePerFoot, 25 * Foot, 13.5 * Ounce) / Ounce, 9);

    [Fact]
    public void Forty_five_feet_of_five_sixteenths_is_four_and_a_half_ounces_and_not_the_nine_a_manual_prints()
    {
        // The manual's formula line prints 9 oz, its text 4.5; the arithmetic gives 18 - 13.5.
        Assert.Equal(4.5, LineCharge.Adjustment(0.40 * OuncePerFoot, 45 * Foot, 13.5 * Ounce) / Ounce, 9);
    }

    [Fact]
    public void Five_pounds_and_twenty_feet_extra_of_three_eighths()
    {
        var figure = 0.58 * OuncePerFoot;
        Assert.Equal(11.6, LineCharge.Adjustment(figure, 35 * Foot, LineCharge.Allowance(figure, 15 * Foot)) / Ounce, 9);
    }

    [Theory]
    [InlineData(0.25, 0.190)]
    [InlineData(0.3125, 0.2485)]
    [InlineData(0.375, 0.311)]
    [InlineData(0.5, 0.436)]
    [InlineData(0.625, 0.555)]
    [InlineData(0.75, 0.680)]
    [InlineData(0.875, 0.785)]
    [InlineData(1.125, 1.025)]
    [InlineData(1.375, 1.265)]
    [InlineData(1.625, 1.505)]
    [InlineData(2.125, 1.985)]
    public void Bores_of_type_ACR_tube(double outsideInches, double boreInches)
    {
        // Inside diameters as ASTM B280 lists them [from memory]; 0.311 and 0.785 in also stand in published worked examples.
        Assert.Equal(boreInches, Length.FromSi(AcrTube.Find(Length.FromInches(outsideInches))!.Bore).Inches, 9);
    }

    [Theory]
    [InlineData(6.35, 0.190)]
    [InlineData(9.52, 0.311)]
    [InlineData(15.88, 0.555)]
    public void Metric_names_of_inch_tubes_are_the_same_tubes(double millimetres, double boreInches) =>
        Assert.Equal(boreInches, Length.FromSi(AcrTube.Find(Length.FromMillimeters(millimetres))!.Bore).Inches, 9);

    // EN 12735-1, usual walls [from memory]; bores as wholesalers' tables print them.
    [Theory]
    [InlineData(6, 4)]
    [InlineData(8, 6)]
    [InlineData(10, 8)]
    [InlineData(12, 10)]
    [InlineData(15, 13)]
    [InlineData(16, 14)]
    [InlineData(18, 16)]
    [InlineData(22, 20)]
    [InlineData(28, 25)]
    [InlineData(35, 32)]
    [InlineData(42, 39)]
    [InlineData(54, 50)]
    [InlineData(64, 60)]
    [InlineData(76.1, 72.1)]
    [InlineData(88.9, 84.9)]
    public void A_metric_tube_has_the_wall_of_its_own_standard(double millimetres, double bore)
    {
        var tube = AcrTube.Find(Length.FromMillimeters(millimetres))!;
        Assert.Equal(bore, tube.Bore * 1000, 9);
        Assert.StartsWith("EN 12735-1", tube.Source.Said(), StringComparison.Ordinal);
    }

    // 2 1/8 in is 53.975 mm: the nearer size counts. 5/16 in is 7.94 mm.
    [Theory]
    [InlineData(53.975, "ASTM B280")]
    [InlineData(53.98, "ASTM B280")]
    [InlineData(54.0, "EN 12735-1")]
    [InlineData(7.94, "ASTM B280")]
    [InlineData(8.0, "EN 12735-1")]
    [InlineData(15.9, "ASTM B280")]
    [InlineData(34.93, "ASTM B280")]
    public void Of_two_near_sizes_the_nearer_counts(double millimetres, string standard) =>
        Assert.StartsWith(standard, RecordWords.Text(AcrTube.Find(Length.FromMillimeters(millimetres))!.Source, Language.English), StringComparison.Ordinal);

    [Theory]
    [InlineData(14)]
    [InlineData(20)]
    [InlineData(26)]
    public void A_size_of_no_standard_is_not_guessed(double millimetres) =>
        Assert.Null(AcrTube.Find(Length.FromMillimeters(millimetres)));
}
