using System.Collections.Immutable;

namespace Commission.Records;

/// <summary>What the readings of the running system say together: the figures against what they should be, one diagnosis, one next step.</summary>
public sealed record Diagnosis
{
    /// <summary>The check that tells it among the findings.</summary>
    public const string Check = "charge.diagnosis";

    /// <summary>The reading it rests on, as the job writes its time.</summary>
    public required string At { get; init; }

    /// <summary>The diagnosis in one or two plain sentences.</summary>
    public required string Sentence { get; init; }

    /// <summary>What a technician does next; empty when nothing is to be done.</summary>
    public required string NextStep { get; init; }

    /// <summary>What it advises to do to the charge: <c>none</c>, <c>add</c> or <c>recover</c>.</summary>
    public string Advice { get; init; } = "none";

    /// <summary>At most three explanations, the likeliest first; none when the conditions allow no diagnosis.</summary>
    public ImmutableArray<RankedCause> Ranked { get => field.IsDefault ? [] : field; init; }

    /// <summary>Superheat, subcooling, split and what else was weighed, each against what it should be.</summary>
    public ImmutableArray<WeighedReading> Readings { get => field.IsDefault ? [] : field; init; }
}

/// <summary>An explanation of the readings.</summary>
/// <param name="Cause">The kind of cause, the same in every language, for example <c>low charge</c>.</param>
/// <param name="Probability">How likely it is among the causes known, 0 to 1.</param>
/// <param name="TellApart">How to tell it from the others, as an order without a full stop; null when nothing is needed.</param>
public sealed record RankedCause(string Cause, double Probability, string? TellApart);

/// <summary>A reading that was weighed.</summary>
/// <param name="Name">What was read, for example <c>subcooling</c>.</param>
/// <param name="Text">The value as printed, with its U.</param>
/// <param name="Expected">What it should be, as printed, with where that comes from.</param>
/// <param name="Place"><c>far below</c>, <c>below</c>, <c>as expected</c>, <c>above</c>, <c>far above</c>, or a word of its own such as <c>bubbles</c>; the same in every language.</param>
public sealed record WeighedReading(string Name, string Text, string Expected, string Place)
{
    /// <summary>The place as a page prints it; empty where the reading is as expected, and for a thing seen.</summary>
    public string PlaceText { get; init; } = "";
}
