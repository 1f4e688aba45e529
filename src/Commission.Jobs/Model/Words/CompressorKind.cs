namespace Commission.Jobs.Model.Words;

/// <summary>How the compressor changes its capacity.</summary>
public enum CompressorKind
{
    /// <summary>One speed.</summary>
    Fixed,

    /// <summary>Two stages.</summary>
    TwoStage,

    /// <summary>An inverter.</summary>
    VariableSpeed,

    /// <summary>A scroll that loads and unloads.</summary>
    Digital,

    /// <summary>Two or more compressors on one circuit.</summary>
    Tandem,
}
