namespace Commission.Checks.EvacuationAnalysis;

/// <summary>What a hold shows.</summary>
public enum HoldConclusion
{
    /// <summary>The data do not tell the explanations apart; <see cref="HoldResult.Reason"/> says which.</summary>
    CannotTell,

    /// <summary>No rise that counts.</summary>
    Held,

    /// <summary>A steady rise: no slowing down over the hold.</summary>
    SteadyRise,

    /// <summary>A rise that slows down towards a plateau.</summary>
    Source,

    /// <summary>A rise that slows down onto a steady rise.</summary>
    SteadyRiseAndSource,
}
