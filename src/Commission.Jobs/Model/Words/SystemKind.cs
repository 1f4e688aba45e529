namespace Commission.Jobs.Model.Words;

/// <summary>What kind of system the circuit belongs to.</summary>
public enum SystemKind
{
    /// <summary>One outdoor and one indoor unit with ducts.</summary>
    Split,

    /// <summary>One outdoor and one indoor unit without ducts.</summary>
    DuctlessSplit,

    /// <summary>One outdoor unit and several indoor units, each with its own lines.</summary>
    MultiSplit,

    /// <summary>Variable refrigerant flow: branches, many indoor units.</summary>
    VRF,

    /// <summary>Everything in one housing, charged in the factory.</summary>
    Packaged,

    /// <summary>A split system that heats and cools.</summary>
    HeatPump,

    /// <summary>Cold room, reach-in, rack circuit.</summary>
    Refrigeration,
}
