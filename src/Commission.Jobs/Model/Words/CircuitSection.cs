namespace Commission.Jobs.Model.Words;

/// <summary>Which part of the circuit was under test or under vacuum.</summary>
public enum CircuitSection
{
    /// <summary>Everything.</summary>
    WholeSystem,

    /// <summary>The lines and the indoor unit; the outdoor unit was shut off.</summary>
    LineSetAndIndoor,

    /// <summary>The lines only.</summary>
    LineSet,

    /// <summary>The indoor unit only.</summary>
    Indoor,

    /// <summary>The outdoor unit only.</summary>
    Outdoor,

    /// <summary>The low side.</summary>
    LowSide,

    /// <summary>The high side.</summary>
    HighSide,

    /// <summary>Another section, named beside it.</summary>
    Other,
}
