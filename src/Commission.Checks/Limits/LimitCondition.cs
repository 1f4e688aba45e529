using System.Collections.Immutable;

namespace Commission.Checks.Limits;

/// <summary>One condition: one of some words, or a quantity between bounds.</summary>
/// <param name="Subject">What is asked about.</param>
internal sealed record LimitCondition(LimitSubject Subject)
{
    /// <summary>Words of which one has to be the job's, folded; empty for a quantity.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    /// <summary>Lower bound in SI, and whether the bound itself is inside.</summary>
    public (double Si, bool Included)? Lower { get; init; }

    /// <summary>Upper bound in SI, and whether the bound itself is inside.</summary>
    public (double Si, bool Included)? Upper { get; init; }

    /// <summary>Whether it holds.</summary>
    /// <param name="situation">What is known of the job.</param>
    /// <returns>False when the job does not say.</returns>
    public bool Holds(LimitSituation situation)
    {
        if (Subject.Quantity is not null)
        {
            return Subject.NumberIn(situation) is { } number
                && (Lower is not { } lower || number > lower.Si || (lower.Included && number >= lower.Si))
                && (Upper is not { } upper || number < upper.Si || (upper.Included && number <= upper.Si));
        }

        return Subject.WordIn(situation) is { } word && Words.Contains(Fold(word), StringComparer.Ordinal);
    }

    /// <summary>Letters and digits in lower case, so that <c>multi-split</c> and the member <c>MultiSplit</c> are one word.</summary>
    /// <param name="word">A word of the trade.</param>
    /// <returns>The folded word.</returns>
    public static string Fold(string word) => string.Concat(word.Where(char.IsLetterOrDigit)).ToLowerInvariant();
}
