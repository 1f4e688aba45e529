using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Circuit;

/// <summary>What the kind of a system says about where its circuit was closed.</summary>
internal static class FactoryBuilt
{
    /// <summary>Whether the whole circuit comes charged from the factory: one housing, or a water machine without lines of the site.</summary>
    public static bool ComesWhole(this Equipment equipment) => equipment.System.Value switch
    {
        SystemKind.Packaged => true,
        SystemKind.AirToWaterHeatPump or SystemKind.Chiller => equipment.Piping.IsEmpty,
        _ => false,
    };
}
