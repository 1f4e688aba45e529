using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Readings taken together.</summary>
public sealed record Reading : JobPart
{
    /// <summary>When.</summary>
    public required Given<JobTime> At { get; init; }

    /// <summary>What the system was doing.</summary>
    public Given<OperatingMode>? Mode { get; init; }

    /// <summary>How the compressor ran.</summary>
    public Given<RunningState>? Running { get; init; }

    /// <summary>The compressor's speed.</summary>
    public Given<Frequency>? Speed { get; init; }

    /// <summary>Pressure at the vapor service valve.</summary>
    public Given<StatedPressure>? VaporPressure { get; init; }

    /// <summary>Pressure at the liquid service valve.</summary>
    public Given<StatedPressure>? LiquidPressure { get; init; }

    /// <summary>Pressure at the compressor's inlet.</summary>
    public Given<StatedPressure>? TrueSuctionPressure { get; init; }

    /// <summary>Pressure at the compressor's outlet.</summary>
    public Given<StatedPressure>? DischargePressure { get; init; }

    /// <summary>Temperature of the vapor line at the service valve.</summary>
    public Given<Temperature>? VaporLine { get; init; }

    /// <summary>Temperature of the liquid line at the service valve.</summary>
    public Given<Temperature>? LiquidLine { get; init; }

    /// <summary>Temperature of the suction line at the compressor.</summary>
    public Given<Temperature>? CompressorSuctionLine { get; init; }

    /// <summary>Temperature of the discharge line.</summary>
    public Given<Temperature>? DischargeLine { get; init; }

    /// <summary>Temperature of the liquid line after the drier.</summary>
    public Given<Temperature>? LiquidAfterDrier { get; init; }

    /// <summary>Temperature of the vapor line at the evaporator.</summary>
    public Given<Temperature>? EvaporatorOutlet { get; init; }

    /// <summary>Temperature of the liquid leaving the indoor coil in heating.</summary>
    public Given<Temperature>? IndoorCoilOutlet { get; init; }

    /// <summary>Temperature of the oil sump.</summary>
    public Given<Temperature>? Sump { get; init; }

    /// <summary>Outdoor air into the coil, dry bulb.</summary>
    public Given<Temperature>? OutdoorDryBulb { get; init; }

    /// <summary>Outdoor air into the coil, wet bulb.</summary>
    public Given<Temperature>? OutdoorWetBulb { get; init; }

    /// <summary>Outdoor relative humidity.</summary>
    public Given<Ratio>? OutdoorHumidity { get; init; }

    /// <summary>Return air at the unit, dry bulb.</summary>
    public Given<Temperature>? ReturnDryBulb { get; init; }

    /// <summary>Return air at the unit, wet bulb.</summary>
    public Given<Temperature>? ReturnWetBulb { get; init; }

    /// <summary>Return air, relative humidity.</summary>
    public Given<Ratio>? ReturnHumidity { get; init; }

    /// <summary>Supply air, dry bulb.</summary>
    public Given<Temperature>? SupplyDryBulb { get; init; }

    /// <summary>Supply air, wet bulb.</summary>
    public Given<Temperature>? SupplyWetBulb { get; init; }

    /// <summary>Supply air, relative humidity.</summary>
    public Given<Ratio>? SupplyHumidity { get; init; }

    /// <summary>Air in the cold room.</summary>
    public Given<Temperature>? BoxTemperature { get; init; }

    /// <summary>Compressor current.</summary>
    public Given<ElectricCurrent>? CompressorCurrent { get; init; }

    /// <summary>Electrical power of the unit.</summary>
    public Given<Power>? Power { get; init; }

    /// <summary>What the sight glass showed.</summary>
    public Given<SightGlass>? SightGlass { get; init; }

    /// <summary>How full the receiver was.</summary>
    public Given<Ratio>? ReceiverLevel { get; init; }

    /// <summary>Time since the last defrost ended.</summary>
    public Given<Duration>? SinceDefrost { get; init; }

    /// <summary>Whether the outdoor coil was clear of frost.</summary>
    public Given<bool>? CoilClearOfFrost { get; init; }

    /// <summary>Whether auxiliary heat was on.</summary>
    public Given<OnOff>? AuxiliaryHeat { get; init; }
}
