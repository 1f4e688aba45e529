namespace Commission.Checks.Limits;

/// <summary>Whether one limit asks less than another.</summary>
internal static class LimitComparison
{
    // Figures that differ only by the rounding of a unit are the same figure.
    private const double Same = 1e-9;

    /// <summary>Whether a limit lets pass what another would not.</summary>
    /// <param name="limit">The limit that may be looser.</param>
    /// <param name="other">The limit it is compared with, of the same id.</param>
    /// <returns>False also when they cannot be compared: a statement, a target of one without the other's.</returns>
    public static bool IsLooser(Limit limit, Limit other)
    {
        if (limit.Shape == LimitShape.Statement || other.Shape == LimitShape.Statement) return false;
        if (limit.Lower?.Reference != other.Lower?.Reference && limit.Lower is not null && other.Lower is not null) return false;
        if (limit.Upper?.Reference != other.Upper?.Reference && limit.Upper is not null && other.Upper is not null) return false;
        if (other.Lower is { } low && (limit.Lower is not { } ownLow || Below(ownLow.Si, low.Si))) return true;
        if (other.Upper is { } high && (limit.Upper is not { } ownHigh || Below(high.Si, ownHigh.Si))) return true;
        return limit.Definition.Companions.Any(companion =>
            limit.Companion(companion.Name) is { } own
            && other.Companion(companion.Name) is { } asked
            && (companion.MoreIsStricter ? Below(own, asked) : Below(asked, own)));
    }

    private static bool Below(double a, double b) => b - a > Same * Math.Max(Math.Abs(a), Math.Abs(b));
}
