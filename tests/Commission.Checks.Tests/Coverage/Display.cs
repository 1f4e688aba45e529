using System.Globalization;

namespace Commission.Checks.Tests.Coverage;

/// <summary>The display of an instrument: its unit, and the step to which it rounds. Factors are those of NIST SP 811.</summary>
/// <param name="Unit">As a crew writes it behind the number.</param>
/// <param name="Factor">SI for one unit.</param>
/// <param name="Offset">What the unit shows at SI zero.</param>
/// <param name="Step">One step, in the unit.</param>
internal sealed record Display(string Unit, double Factor, double Offset, double Step)
{
    private const double FahrenheitAtZero = -459.67;
    private const double CelsiusAtZero = -273.15;

    public const double Psi = 6894.757293168;
    public const double Bar = 1e5;
    public const double InchOfWater = 249.08891;
    public const double Micron = 0.133322368421;
    public const double Pound = 0.45359237;
    public const double Ounce = Pound / 16;
    public const double CubicFootPerMinute = 0.028316846592 / 60;
    public const double FootPerMinute = 0.3048 / 60;
    public const double SquareFoot = 0.09290304;

    /// <summary>One step in SI.</summary>
    public double Digit => Step * Factor;

    public static Display PsiGauge(double step) => new("psig", Psi, 0, step);

    public static Display BarGauge(double step) => new("bar(g)", Bar, 0, step);

    public static Display Fahrenheit(double step) => new("°F", 1 / 1.8, FahrenheitAtZero, step);

    public static Display Celsius(double step) => new("°C", 1, CelsiusAtZero, step);

    /// <summary>What it shows, in SI.</summary>
    public double Rounded(double si) => (Steps(si) * Step - Offset) * Factor;

    /// <summary>What the crew writes.</summary>
    public string Text(double si) => $"{Number(Steps(si) * Step)} {Unit}";

    /// <summary>A number in the unit, with the digits of the step.</summary>
    public string Number(double inUnit)
    {
        var decimals = Step >= 1 ? 0 : (int)Math.Ceiling(-Math.Log10(Step) - 1e-9);
        // 0.5 and 0.05 need the place of their five.
        if (Math.Abs(Math.Round(Step, decimals) - Step) > 1e-12)
            decimals++;
        var text = inUnit.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.TrimStart('-').Trim('0', '.').Length == 0 ? text.TrimStart('-') : text;
    }

    private double Steps(double si) => Math.Round(si / Factor / Step + Offset / Step);
}
