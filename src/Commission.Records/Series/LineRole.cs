namespace Commission.Records.Series;

/// <summary>What a reference line means.</summary>
public enum LineRole
{
    /// <summary>A level to reach.</summary>
    Target,

    /// <summary>The level a hold must stay below.</summary>
    DecayLimit,

    /// <summary>Saturation of water or refrigerant.</summary>
    Saturation,

    /// <summary>An edge of a tolerance.</summary>
    Tolerance,
}
