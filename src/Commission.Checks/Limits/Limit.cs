using System.Collections.Immutable;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Messages;
using Commission.Source;

namespace Commission.Checks.Limits;

/// <summary>A limit as it applies to a job: its numbers, whose it is, where it is printed, and how it is decided.</summary>
internal sealed record Limit
{
    /// <summary>What the limit means.</summary>
    public required LimitDefinition Definition { get; init; }

    /// <summary>Its form.</summary>
    public required LimitShape Shape { get; init; }

    /// <summary>Whose it is.</summary>
    public required LimitTier Tier { get; init; }

    /// <summary>Name of the pack; empty for a figure of the job.</summary>
    public required string Pack { get; init; }

    /// <summary>What kind of document it rests on.</summary>
    public required string Basis { get; init; }

    /// <summary>Clause, page, plate.</summary>
    public required string Source { get; init; }

    /// <summary><c>published</c>, <c>from memory</c>, <c>common practice</c> or <c>job</c>.</summary>
    public required string Mark { get; init; }

    /// <summary>The decision rule in force.</summary>
    public required DecisionRule Rule { get; init; }

    /// <summary>Where it is written.</summary>
    public required SourceLocation At { get; init; }

    /// <summary>False for a figure of the crew's own, which says no source: it may ask more than the limits in force, and is not called the maker's.</summary>
    public bool HasSource { get; init; } = true;

    /// <summary>Lower bound; of a tolerance minus its half width.</summary>
    public LimitFigure? Lower { get; init; }

    /// <summary>Upper bound; of a tolerance its half width.</summary>
    public LimitFigure? Upper { get; init; }

    /// <summary>The lower bound of a limit whose form has one.</summary>
    public LimitFigure Least => Lower ?? throw new InvalidOperationException($"{Definition.Id} has no lower bound.");

    /// <summary>The upper bound of a limit whose form has one.</summary>
    public LimitFigure Most => Upper ?? throw new InvalidOperationException($"{Definition.Id} has no upper bound.");

    /// <summary>Value to aim for.</summary>
    public LimitFigure? Target { get; init; }

    /// <summary>Requirement in words.</summary>
    public Message? Statement { get; init; }

    /// <summary>Further quantities by name, such as <c>after</c>.</summary>
    public ImmutableSortedDictionary<string, LimitFigure> With { get; init; } = ImmutableSortedDictionary<string, LimitFigure>.Empty;

    /// <summary>Anything worth telling beside it.</summary>
    public Message? Note { get; init; }

    /// <summary>The published limit that asks more than this figure of the maker; the record remarks on it. Null when none does.</summary>
    public Limit? LooserThan { get; init; }

    /// <summary>A target the crew wrote without a source, that was set aside because this limit asks more. Null when there is none.</summary>
    public Limit? SetAside { get; init; }

    /// <summary>The id, such as <c>evacuation.decay</c>.</summary>
    public string Id => Definition.Id;

    /// <summary>The bounds as a tolerance in SI. Not for gauge pressures, which need an atmosphere, and not for statements.</summary>
    /// <returns>The tolerance; open on a side without a bound.</returns>
    public Tolerance ToTolerance() => new(Lower?.Si, Upper?.Si);

    /// <summary>The bounds as a tolerance of absolute pressure.</summary>
    /// <param name="atmosphere">Atmospheric pressure at the site.</param>
    /// <returns>The tolerance in Pa absolute.</returns>
    public Tolerance ToTolerance(Pressure atmosphere) => new(Lower?.ToAbsolute(atmosphere).Si, Upper?.ToAbsolute(atmosphere).Si);

    /// <summary>SI value of a further quantity, such as the time of a decay limit.</summary>
    /// <returns>The value; null when the maker's figure has none.</returns>
    public double? Companion(string name) => With.TryGetValue(name, out var figure) ? figure.Si : null;
}

/// <summary>A further quantity that belongs to a limit, such as the time of a decay limit.</summary>
/// <param name="Name">Its key.</param>
/// <param name="Quantity">What it is measured in.</param>
/// <param name="MoreIsStricter">Whether a larger value asks more of the crew.</param>
internal sealed record LimitCompanion(string Name, Dimension Quantity, bool MoreIsStricter);

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
        if (limit.Shape == LimitShape.Statement || other.Shape == LimitShape.Statement)
            return false;
        if (limit.Lower?.Reference != other.Lower?.Reference && limit.Lower is not null && other.Lower is not null)
            return false;
        if (limit.Upper?.Reference != other.Upper?.Reference && limit.Upper is not null && other.Upper is not null)
            return false;
        if (other.Lower is { } low && (limit.Lower is not { } ownLow || Below(ownLow.Si, low.Si)))
            return true;
        if (other.Upper is { } high && (limit.Upper is not { } ownHigh || Below(high.Si, ownHigh.Si)))
            return true;
        return limit.Definition.Companions.Any(companion =>
            limit.Companion(companion.Name) is { } own
            && other.Companion(companion.Name) is { } asked
            && (companion.MoreIsStricter ? Below(own, asked) : Below(asked, own)));
    }

    private static bool Below(double a, double b) => b - a > Same * Math.Max(Math.Abs(a), Math.Abs(b));
}

/// <summary>In which form a limit is written.</summary>
internal enum LimitShape
{
    /// <summary>A lower bound.</summary>
    AtLeast,

    /// <summary>An upper bound.</summary>
    AtMost,

    /// <summary>Two bounds.</summary>
    Within,

    /// <summary>Half a width around a target that comes from elsewhere.</summary>
    Tolerance,

    /// <summary>A value to aim for, with or without a tolerance; or one that a computation assumes.</summary>
    Target,

    /// <summary>A requirement in words.</summary>
    Statement,
}

/// <summary>Whose limit it is.</summary>
internal enum LimitTier
{
    /// <summary>A figure of the maker, from the job or from a maker's pack.</summary>
    Maker,

    /// <summary>A named pack.</summary>
    Pack,

    CommonPractice,
}
