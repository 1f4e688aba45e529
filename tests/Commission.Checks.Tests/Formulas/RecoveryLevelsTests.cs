using Commission.Checks.Formulas;
using Commission.Measurement.Quantities;
using Commission.Messages;
using Commission.Records;
using Xunit;

namespace Commission.Checks.Tests.Formulas;

/// <summary>40 CFR 82.156 table 1 [published]; conversions worked by hand.</summary>
public sealed class RecoveryLevelsTests
{
    [Theory]
    [InlineData(AppliancePressureClass.VeryHigh, 10, false, "0 inHg vac")]
    [InlineData(AppliancePressureClass.VeryHigh, 500, false, "0 inHg vac")]
    [InlineData(AppliancePressureClass.High, 199, false, "0 inHg vac")]
    [InlineData(AppliancePressureClass.High, 200, false, "10 inHg vac")]
    [InlineData(AppliancePressureClass.Medium, 199, false, "10 inHg vac")]
    [InlineData(AppliancePressureClass.Medium, 200, false, "15 inHg vac")]
    [InlineData(AppliancePressureClass.Low, 10, false, "25 mmHg absolute")]
    [InlineData(AppliancePressureClass.VeryHigh, 500, true, "0 inHg vac")]
    [InlineData(AppliancePressureClass.High, 199, true, "0 inHg vac")]
    [InlineData(AppliancePressureClass.High, 200, true, "4 inHg vac")]
    [InlineData(AppliancePressureClass.Medium, 10, true, "4 inHg vac")]
    [InlineData(AppliancePressureClass.Medium, 200, true, "4 inHg vac")]
    [InlineData(AppliancePressureClass.Low, 200, true, "25 mmHg absolute")]
    internal void Every_row_of_the_table(AppliancePressureClass pressureClass, double pounds, bool oldMachine, string wording) =>
        Assert.Equal(wording, RecordWords.Text(RecoveryLevels.Wording(pressureClass, Mass.FromPounds(pounds), oldMachine), Language.English));

    [Theory]
    [InlineData(AppliancePressureClass.High, 10, 101325)]
    [InlineData(AppliancePressureClass.High, 250, 67461)]
    [InlineData(AppliancePressureClass.Medium, 250, 50529)]
    [InlineData(AppliancePressureClass.Low, 250, 3333)]
    internal void Depths_are_counted_from_a_standard_atmosphere(AppliancePressureClass pressureClass, double pounds, double pascals)
    {
        // 29.92 - 10 = 19.92 inHg = 67.5 kPa; 14.92 inHg = 50.5 kPa; 25 mmHg = 3333 Pa.
        Assert.Equal(pascals, RecoveryLevels.Required(pressureClass, Mass.FromPounds(pounds), machineBuiltBefore15November1993: false).Pascals, 0.6);
    }

    [Theory]
    [InlineData(1533.58, AppliancePressureClass.High)]
    [InlineData(1016.59, AppliancePressureClass.Medium)]
    [InlineData(2425.64, AppliancePressureClass.High)]
    [InlineData(2478.31, AppliancePressureClass.VeryHigh)]
    [InlineData(299.9, AppliancePressureClass.Low)]
    internal void Classes_by_liquid_saturation_at_104_Fahrenheit(double kilopascals, AppliancePressureClass expected)
    {
        // 104 °F is 40 °C. R-22, R-134a, R-410A and R-32 by their equations of state [computed]; R-410A is listed as high pressure,
        // R-134a as medium in the preamble of 40 CFR 82 [from memory].
        Assert.Equal(expected, RecoveryLevels.ClassOf(kilopascals * 1000));
    }

    [Fact]
    public void Carbon_dioxide_is_critical_below_that_and_of_very_high_pressure() =>
        Assert.Equal(AppliancePressureClass.VeryHigh, RecoveryLevels.ClassOf(null));
}
