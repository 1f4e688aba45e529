namespace Commission.Fluids;

/// <summary>Which branch of the equation of state a density is looked for on, or what a state is.</summary>
public enum Phase
{
    /// <summary>Liquid, also compressed and metastable liquid.</summary>
    Liquid,

    /// <summary>Vapour, also superheated and metastable vapour.</summary>
    Vapor,

    /// <summary>Liquid and vapour together.</summary>
    TwoPhase,

    /// <summary>Above the critical temperature: one fluid.</summary>
    Supercritical,
}
