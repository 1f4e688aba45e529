namespace Commission.Jobs.Model.Words;

/// <summary>Which valve separated the circuit from the pump.</summary>
public enum IsolationPlace
{
    /// <summary>A valve on the service port or core tool.</summary>
    ValveOnTheServicePort,

    /// <summary>The manifold's valves: the hoses are inside the hold.</summary>
    Manifold,

    /// <summary>The valve at the pump: hoses and manifold are inside the hold.</summary>
    PumpValve,
}
