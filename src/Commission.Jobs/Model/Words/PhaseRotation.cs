namespace Commission.Jobs.Model.Words;

/// <summary>What the phase rotation meter showed.</summary>
public enum PhaseRotation
{
    /// <summary>Correct.</summary>
    Correct,

    /// <summary>Reversed.</summary>
    Reversed,

    /// <summary>There is one phase only.</summary>
    SinglePhase,
}
