namespace Commission.Jobs.Model.Words;

/// <summary>What the circuit was filled with for the pressure test.</summary>
public enum TestGas
{
    /// <summary>Oxygen-free dry nitrogen.</summary>
    DryNitrogen,

    /// <summary>Dry nitrogen with a small share of a tracer.</summary>
    NitrogenWithTracer,

    /// <summary>Helium.</summary>
    Helium,

    /// <summary>Argon.</summary>
    Argon,

    /// <summary>Carbon dioxide.</summary>
    CarbonDioxide,

    /// <summary>The refrigerant itself.</summary>
    Refrigerant,

    /// <summary>Never allowed.</summary>
    CompressedAir,

    /// <summary>Never allowed.</summary>
    Oxygen,

    /// <summary>Never allowed.</summary>
    Hydrogen,

    /// <summary>Never allowed.</summary>
    Acetylene,
}
