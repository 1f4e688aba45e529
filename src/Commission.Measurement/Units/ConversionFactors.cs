namespace Commission.Measurement.Units;

/// <summary>SI values of the units, exact unless said otherwise. Source: NIST SP 811 (2008), appendix B, from memory; checked in the tests against an independent library.</summary>
internal static class ConversionFactors
{
    internal const double StandardGravity = 9.80665;
    internal const double StandardAtmosphere = 101325.0;
    internal const double CelsiusZero = 273.15;
    internal const double FahrenheitDegree = 5.0 / 9.0;
    internal const double FahrenheitOffset = 459.67;
    internal const double Inch = 0.0254;
    internal const double Foot = 0.3048;
    internal const double CubicFoot = Foot * Foot * Foot;
    internal const double Pound = 0.45359237;
    internal const double Ounce = Pound / 16.0;
    internal const double PoundForce = Pound * StandardGravity;
    internal const double Psi = PoundForce / (Inch * Inch);
    internal const double Torr = StandardAtmosphere / 760.0;

    /// <summary>Conventional: mercury of 13 595.1 kg/m³ under standard gravity.</summary>
    internal const double MillimeterOfMercury = 133.322387415;
    internal const double Micron = MillimeterOfMercury / 1000.0;
    internal const double InchOfMercury = 25.4 * MillimeterOfMercury;

    /// <summary>Conventional: water of 1000 kg/m³ under standard gravity.</summary>
    internal const double InchOfWater = 25.4 * StandardGravity;

    /// <summary>International Table.</summary>
    internal const double Btu = 1055.05585262;
    internal const double TonOfRefrigeration = 12000.0 * Btu / 3600.0;
    internal const double Horsepower = 550.0 * PoundForce * Foot;

    /// <summary>365 days, as leak rates are annualised (40 CFR 82.152).</summary>
    internal const double Year = 365.0 * 86400.0;
}
