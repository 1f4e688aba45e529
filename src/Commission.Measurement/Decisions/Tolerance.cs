namespace Commission.Measurement.Decisions;

/// <summary>What is allowed, in the unit of the result; a missing side is open.</summary>
/// <param name="Lower">Lowest allowed, or nothing.</param>
/// <param name="Upper">Highest allowed, or nothing.</param>
public sealed record Tolerance(double? Lower, double? Upper)
{
    /// <summary>Half the width of a two-sided tolerance; nothing for a one-sided one.</summary>
    public double? HalfWidth => Upper is { } upper && Lower is { } lower ? (upper - lower) / 2 : null;

    /// <summary>Whether nothing can satisfy it: the lower side is above the upper.</summary>
    public bool IsEmpty => Lower > Upper;

    /// <summary>Not below a limit.</summary>
    /// <param name="lower">Lowest allowed.</param>
    public static Tolerance AtLeast(double lower) => new(lower, null);

    /// <summary>Not above a limit.</summary>
    /// <param name="upper">Highest allowed.</param>
    public static Tolerance AtMost(double upper) => new(null, upper);

    /// <summary>Between two limits, which are allowed themselves.</summary>
    /// <param name="lower">Lowest allowed.</param>
    /// <param name="upper">Highest allowed.</param>
    public static Tolerance Within(double lower, double upper) => new(lower, upper);

    /// <summary>A target and how far it may be missed.</summary>
    /// <param name="target">The target.</param>
    /// <param name="halfWidth">How far it may be missed.</param>
    public static Tolerance Around(double target, double halfWidth) => new(target - halfWidth, target + halfWidth);
}
