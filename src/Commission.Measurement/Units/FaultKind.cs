namespace Commission.Measurement.Units;

/// <summary>What kind of thing is wrong with a written quantity.</summary>
public enum FaultKind
{
    /// <summary>Nothing was written.</summary>
    Empty,

    /// <summary>There is no number where one belongs.</summary>
    NotANumber,

    /// <summary>A number in words.</summary>
    NumberInWords,

    /// <summary>A comma in a number.</summary>
    Comma,

    /// <summary>A number without its unit, and the field has no default.</summary>
    UnitMissing,

    /// <summary>A unit nobody knows.</summary>
    UnknownUnit,

    /// <summary>A unit of something else.</summary>
    WrongDimension,

    /// <summary>A pressure that does not say gauge or absolute.</summary>
    ReferenceMissing,

    /// <summary>A depth below atmosphere where an absolute vacuum is asked for.</summary>
    DepthNotVacuum,

    /// <summary>A value that cannot be.</summary>
    Impossible,

    /// <summary>Parts that do not belong together.</summary>
    BadCompound,

    /// <summary>An uncertainty that cannot be read.</summary>
    BadUncertainty,

    /// <summary>A range that cannot be read.</summary>
    BadRange,

    /// <summary>An accuracy statement that cannot be read.</summary>
    BadAccuracy,

    /// <summary>More text than a quantity has.</summary>
    Leftover,
}
