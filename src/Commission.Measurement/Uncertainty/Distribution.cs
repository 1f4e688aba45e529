namespace Commission.Measurement.Uncertainty;

/// <summary>The probability distribution assigned to a root cause (GUM 4.3, JCGM 101 6.4).</summary>
public enum Distribution
{
    /// <summary>Normal; with finite degrees of freedom the scaled and shifted t.</summary>
    Normal,

    /// <summary>Rectangular: bounds and nothing else known.</summary>
    Rectangular,

    /// <summary>Triangular: bounds with the middle more likely, or the difference of two equal rectangles.</summary>
    Triangular,

    /// <summary>U-shaped (arc sine): something that swings between its bounds.</summary>
    UShaped,
}
