namespace Commission.Jobs.Model.Words;

/// <summary>What the system was doing.</summary>
public enum OperatingMode
{
    /// <summary>Cooling.</summary>
    Cooling,

    /// <summary>Heating.</summary>
    Heating,
}
