namespace Commission.Jobs.Model.Words;

/// <summary>Where the vapor line's temperature was read.</summary>
public enum VaporLinePlace
{
    /// <summary>At the service valve.</summary>
    ServiceValve,

    /// <summary>At the evaporator, by the bulb.</summary>
    EvaporatorOutlet,

    /// <summary>At the compressor.</summary>
    CompressorInlet,
}
