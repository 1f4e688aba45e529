namespace Commission.Jobs.Model.Words;

/// <summary>Where the vacuum gauge sat.</summary>
public enum GaugePlace
{
    /// <summary>At the system, beyond the isolation valve.</summary>
    AtTheSystem,

    /// <summary>At the pump.</summary>
    AtThePump,

    /// <summary>On the manifold.</summary>
    OnTheManifold,
}
