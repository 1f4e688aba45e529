namespace Commission.Jobs.Model.Words;

/// <summary>What is in a cylinder.</summary>
public enum CylinderContents
{
    /// <summary>New refrigerant.</summary>
    Virgin,

    /// <summary>Reclaimed: as good as new by analysis.</summary>
    Reclaimed,

    /// <summary>Cleaned on site.</summary>
    Recycled,

    /// <summary>Recovered, as it came.</summary>
    Recovered,

    /// <summary>An empty cylinder.</summary>
    Empty,
}
