namespace Commission.Checks.Limits;

/// <summary>A check that has to be judged, or a choice of which one has to be.</summary>
/// <param name="OneOf">Check ids; one alone, or several of which one is enough.</param>
/// <param name="Because">Why, as a phrase.</param>
/// <param name="Pack">The pack that asks for it.</param>
internal sealed record RequiredCheck(IReadOnlyList<string> OneOf, string Because, string Pack);
