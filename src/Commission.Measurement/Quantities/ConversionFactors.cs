namespace Commission.Measurement.Quantities;

/// <summary>SI values of the units of the trade, exact unless said otherwise: the one place where a factor is written. Source: NIST SP 811 (2008), appendix B, from memory; checked in the tests against an independent library.</summary>
public static class ConversionFactors
{
    /// <summary>m/s² (3rd CGPM, 1901).</summary>
    public const double StandardGravity = 9.80665;

    /// <summary>Pa (10th CGPM, 1954).</summary>
    public const double StandardAtmosphere = 101325.0;

    /// <summary>0 °C in K.</summary>
    public const double CelsiusZero = 273.15;

    /// <summary>One degree Fahrenheit of difference in K.</summary>
    public const double FahrenheitDegree = 5.0 / 9.0;

    /// <summary>0 °F in °R: add it to a reading in °F, then take <see cref="FahrenheitDegree"/> times the sum.</summary>
    public const double FahrenheitOffset = 459.67;

    /// <summary>m (international inch, 1959).</summary>
    public const double Inch = 0.0254;

    /// <summary>m (international foot, 1959).</summary>
    public const double Foot = 0.3048;

    /// <summary>m³.</summary>
    public const double CubicFoot = Foot * Foot * Foot;

    /// <summary>kg (international avoirdupois pound, 1959).</summary>
    public const double Pound = 0.45359237;

    /// <summary>kg.</summary>
    public const double Ounce = Pound / 16.0;

    /// <summary>kg.</summary>
    public const double Gram = 1e-3;

    /// <summary>N.</summary>
    public const double PoundForce = Pound * StandardGravity;

    /// <summary>Pa.</summary>
    public const double Psi = PoundForce / (Inch * Inch);

    /// <summary>Pa.</summary>
    public const double Torr = StandardAtmosphere / 760.0;

    /// <summary>Pa; conventional: mercury of 13 595.1 kg/m³ under standard gravity.</summary>
    public const double MillimeterOfMercury = 133.322387415;

    /// <summary>Pa; a thousandth of the conventional millimeter of mercury.</summary>
    public const double Micron = MillimeterOfMercury / 1000.0;

    /// <summary>Pa; conventional, 25.4 mm of mercury.</summary>
    public const double InchOfMercury = 25.4 * MillimeterOfMercury;

    /// <summary>Pa; conventional: water of 1000 kg/m³ under standard gravity.</summary>
    public const double InchOfWater = 25.4 * StandardGravity;

    /// <summary>J; International Table.</summary>
    public const double Btu = 1055.05585262;

    /// <summary>W; 12 000 Btu/h.</summary>
    public const double TonOfRefrigeration = 12000.0 * Btu / 3600.0;

    /// <summary>W; 550 ft·lbf/s.</summary>
    public const double Horsepower = 550.0 * PoundForce * Foot;

    /// <summary>s.</summary>
    public const double Day = 86400.0;

    /// <summary>s; the Julian year of 365.25 days (IAU style manual, 1989), for every yearly rate. What a rule counts in days of its own keeps its 365.</summary>
    public const double Year = 365.25 * Day;
}
