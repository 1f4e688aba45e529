using Commission.Checks.Formulas;
using Commission.Measurement.Quantities;
using Xunit;

namespace Commission.Checks.Tests.Formulas;

public sealed class FlareTorqueTests
{
    // JIS B 8607 states torque in kgf·cm: 160, 370, 560, 700, 1100 [from memory]; manuals print ± 10 % of it in N·m, rounded inwards.
    [Theory]
    [InlineData(6.35, 160)]
    [InlineData(9.52, 370)]
    [InlineData(12.7, 560)]
    [InlineData(15.88, 700)]
    [InlineData(19.05, 1100)]
    public void The_standard_set_is_ten_percent_around_the_kilogram_force_values(double millimetres, double kilogramForceCentimetres)
    {
        var centre = kilogramForceCentimetres * 9.80665 / 100;
        var (least, most) = Range(millimetres, FlareTorqueSet.JisB8607)!.Value;
        Assert.InRange(least - (0.9 * centre), -0.05, 0.12);
        Assert.InRange(most - (1.1 * centre), -0.12, 0.05);
    }

    // The same manuals print set A in lbf·in as well, rounded on its own: 120-160, 300-360, 430-540.
    [Theory]
    [InlineData(6.35, 120, 160)]
    [InlineData(12.7, 430, 540)]
    public void Set_A_in_pound_force_inches_agrees_within_its_own_rounding(double millimetres, double least, double most)
    {
        const double PoundForceInch = 4.4482216152605 * 0.0254;
        var range = Range(millimetres, FlareTorqueSet.ManualA)!.Value;
        Assert.Equal(least, range.Least / PoundForceInch, 6.0);
        Assert.Equal(most, range.Most / PoundForceInch, 6.0);
    }

    [Theory]
    [InlineData(6.35, 120, 160)]
    [InlineData(9.525, 300, 360)]
    [InlineData(12.7, 430, 540)]
    public void Set_A_in_pound_force_inches_as_printed(double millimetres, double least, double most)
    {
        const double PoundForceInch = 4.4482216152605 * 0.0254;
        var range = Range(millimetres, FlareTorqueSet.ManualAInches)!.Value;
        Assert.Equal(least, range.Least / PoundForceInch, 1e-9);
        Assert.Equal(most, range.Most / PoundForceInch, 1e-9);
    }

    [Fact]
    public void Set_A_of_three_eighths_is_not_what_the_manual_prints_in_pound_force_inches()
    {
        // 34-42 N·m is 301-372 lbf·in; the manual prints 300-360. Kept so that nobody corrects one by the other.
        Assert.Equal(372, Range(9.525, FlareTorqueSet.ManualA)!.Value.Most / (4.4482216152605 * 0.0254), 0.5);
    }

    [Fact]
    public void Set_B_ends_at_half_an_inch()
    {
        Assert.Equal((16, 18), Range(6.35, FlareTorqueSet.ManualB));
        Assert.Equal((30, 42), Range(9.52, FlareTorqueSet.ManualB));
        Assert.Equal((50, 62), Range(12.7, FlareTorqueSet.ManualB));
        Assert.Null(Range(15.88, FlareTorqueSet.ManualB));
        Assert.Null(Range(19.05, FlareTorqueSet.ManualB));
    }

    [Theory]
    [InlineData(6.35, 17, 8.7, 9.1, 60, 90)]
    [InlineData(9.52, 22, 12.8, 13.2, 60, 90)]
    [InlineData(12.7, 26, 16.2, 16.6, 30, 60)]
    [InlineData(15.88, 29, 19.3, 19.7, 30, 60)]
    public void Wrench_flare_and_angle(double millimetres, double wrench, double flareLeast, double flareMost, double angleLeast, double angleMost)
    {
        var nut = FlareTorque.For(Length.FromMillimeters(millimetres))!;
        Assert.Equal(wrench, nut.Wrench * 1000, 9);
        Assert.Equal(flareLeast, nut.Flare!.Value.Least * 1000, 9);
        Assert.Equal(flareMost, nut.Flare!.Value.Most * 1000, 9);
        Assert.Equal((angleLeast, angleMost), nut.Angle);
    }

    [Fact]
    public void Three_quarter_inch_has_a_torque_but_no_published_flare()
    {
        var nut = FlareTorque.For(Length.FromInches(0.75))!;
        Assert.Equal(36, nut.Wrench * 1000, 9);
        Assert.Null(nut.Flare);
        Assert.Equal("common practice", nut.MarkOf(FlareTorqueSet.ManualA));
        Assert.Equal("published", nut.MarkOf(FlareTorqueSet.JisB8607));
        Assert.Equal((20, 35), nut.Angle);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(22.2)]
    public void A_size_without_a_row_has_no_torque(double millimetres) => Assert.Null(FlareTorque.For(Length.FromMillimeters(millimetres)));

    private static (double Least, double Most)? Range(double millimetres, FlareTorqueSet set) =>
        FlareTorque.For(Length.FromMillimeters(millimetres))!.Torque.TryGetValue(set, out var range) ? range : null;
}
