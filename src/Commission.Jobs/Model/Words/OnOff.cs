namespace Commission.Jobs.Model.Words;

/// <summary>On or off.</summary>
public enum OnOff
{
    /// <summary>On.</summary>
    On,

    /// <summary>Off.</summary>
    Off,
}
