using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Static pressures against the room.</summary>
public sealed record StaticPressures : JobPart
{
    /// <summary>On the return side; negative.</summary>
    public Given<PressureDifference>? Return { get; init; }

    /// <summary>On the supply side.</summary>
    public Given<PressureDifference>? Supply { get; init; }

    /// <summary>The external static pressure, when only the sum was read.</summary>
    public Given<PressureDifference>? External { get; init; }

    /// <summary>Where the return side was read.</summary>
    public Given<StaticTap>? ReturnTap { get; init; }

    /// <summary>Where the supply side was read.</summary>
    public Given<StaticTap>? SupplyTap { get; init; }

    /// <summary>Whether the maker's external static pressure includes the coil.</summary>
    public Given<bool>? IncludesCoil { get; init; }

    /// <summary>Whether it includes the filter.</summary>
    public Given<bool>? IncludesFilter { get; init; }
}
