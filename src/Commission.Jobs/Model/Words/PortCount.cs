namespace Commission.Jobs.Model.Words;

/// <summary>From which ports the circuit was evacuated.</summary>
public enum PortCount
{
    /// <summary>One port.</summary>
    One,

    /// <summary>Both ports.</summary>
    Both,
}
