namespace Commission.Jobs.Model.Words;

/// <summary>Where the vapor pressure was read.</summary>
public enum VaporPressurePlace
{
    /// <summary>At the vapor service valve.</summary>
    ServiceValve,

    /// <summary>At the evaporator.</summary>
    EvaporatorOutlet,

    /// <summary>At the compressor.</summary>
    CompressorInlet,
}
