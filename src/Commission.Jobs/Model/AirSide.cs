using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The air side.</summary>
public sealed record AirSide : JobPart
{
    /// <summary>The filter.</summary>
    public Given<Cleanliness>? Filter { get; init; }

    /// <summary>The indoor coil.</summary>
    public Given<Cleanliness>? Coil { get; init; }

    /// <summary>The outdoor coil.</summary>
    public Given<Cleanliness>? OutdoorCoil { get; init; }

    /// <summary>Whether all panels were on.</summary>
    public Given<bool>? PanelsOn { get; init; }

    /// <summary>Whether the blower ran at its cooling speed.</summary>
    public Given<bool>? BlowerAtCoolingSpeed { get; init; }

    /// <summary>The blower's setting.</summary>
    public Given<string>? BlowerSetting { get; init; }

    /// <summary>Static pressures.</summary>
    public StaticPressures? Static { get; init; }

    /// <summary>Pressure drop of the filter.</summary>
    public Given<PressureDifference>? FilterDrop { get; init; }

    /// <summary>Pressure drop of the coil.</summary>
    public Given<PressureDifference>? CoilDrop { get; init; }

    /// <summary>Whether the coil was wet.</summary>
    public Given<bool>? WetCoil { get; init; }

    /// <summary>The maker's fan table for this setting.</summary>
    public FanTable? FanTable { get; init; }

    /// <summary>How much air was found.</summary>
    public Airflow? Airflow { get; init; }

    /// <summary>The air flow by design.</summary>
    public Given<VolumeFlow>? DesignAirflow { get; init; }

    /// <summary>Power of the blower.</summary>
    public Given<Power>? BlowerPower { get; init; }

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }

    /// <summary>The manometer, when it is not the one that reads static pressure. Empty when not written.</summary>
    public ImmutableArray<Given<string>> With { get; init; } = [];

    /// <summary>Anything worth telling.</summary>
    public Given<string>? Notes { get; init; }
}
