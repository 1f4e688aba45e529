using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The maker's figures and what else decides.</summary>
public sealed record MakerLimits : JobPart
{
    /// <summary>Superheat at the vapor service valve.</summary>
    public QuantityLimit<TemperatureDifference, TemperatureDifference>? Superheat { get; init; }

    /// <summary>Subcooling at the liquid service valve.</summary>
    public QuantityLimit<TemperatureDifference, TemperatureDifference>? Subcooling { get; init; }

    /// <summary>Least superheat, whatever the target.</summary>
    public QuantityLimit<TemperatureDifference, TemperatureDifference>? SuperheatFloor { get; init; }

    /// <summary>Superheat at the evaporator's outlet.</summary>
    public QuantityLimit<TemperatureDifference, TemperatureDifference>? EvaporatorSuperheat { get; init; }

    /// <summary>Superheat at the compressor.</summary>
    public QuantityLimit<TemperatureDifference, TemperatureDifference>? CompressorSuperheat { get; init; }

    /// <summary>Discharge superheat.</summary>
    public QuantityLimit<TemperatureDifference, TemperatureDifference>? DischargeSuperheat { get; init; }

    /// <summary>Oil sump over suction saturation.</summary>
    public QuantityLimit<TemperatureDifference, TemperatureDifference>? SumpSuperheat { get; init; }

    /// <summary>Liquid line over outdoor air.</summary>
    public QuantityLimit<TemperatureDifference, TemperatureDifference>? Approach { get; init; }

    /// <summary>Condensing temperature over outdoor air.</summary>
    public QuantityLimit<TemperatureDifference, TemperatureDifference>? CondensingOverAmbient { get; init; }

    /// <summary>Return air or box over evaporating temperature.</summary>
    public QuantityLimit<TemperatureDifference, TemperatureDifference>? EvaporatorDifference { get; init; }

    /// <summary>Temperature drop across the drier.</summary>
    public QuantityLimit<TemperatureDifference, TemperatureDifference>? DrierDrop { get; init; }

    /// <summary>Return over supply air.</summary>
    public QuantityLimit<TemperatureDifference, TemperatureDifference>? TemperatureSplit { get; init; }

    /// <summary>Supply over return air in heating.</summary>
    public QuantityLimit<TemperatureDifference, TemperatureDifference>? HeatRise { get; init; }

    /// <summary>Vapor pressure.</summary>
    public QuantityLimit<StatedPressure, PressureDifference>? VaporPressure { get; init; }

    /// <summary>Liquid pressure.</summary>
    public QuantityLimit<StatedPressure, PressureDifference>? LiquidPressure { get; init; }

    /// <summary>Discharge line temperature.</summary>
    public QuantityLimit<Temperature, TemperatureDifference>? DischargeTemperature { get; init; }

    /// <summary>Absolute discharge over absolute suction pressure.</summary>
    public NumberLimit? CompressionRatio { get; init; }

    /// <summary>Pressure of the nitrogen test.</summary>
    public QuantityLimit<StatedPressure, PressureDifference>? TestPressure { get; init; }

    /// <summary>Time the nitrogen is held.</summary>
    public QuantityLimit<Duration, Duration>? TestHold { get; init; }

    /// <summary>Loss of nitrogen, as share of the absolute pressure.</summary>
    public QuantityLimit<Ratio, Ratio>? TestLoss { get; init; }

    /// <summary>Level to reach.</summary>
    public QuantityLimit<Pressure, PressureDifference>? Vacuum { get; init; }

    /// <summary>Level not to be passed after isolation.</summary>
    public DecayLimit? DecayLimit { get; init; }

    /// <summary>Number of nitrogen breaks.</summary>
    public NumberLimit? NitrogenBreaks { get; init; }

    /// <summary>Total charge.</summary>
    public QuantityLimit<Mass, Mass>? Charge { get; init; }

    /// <summary>How far the weighed charge may be off.</summary>
    public QuantityLimit<Mass, Mass>? ChargeTolerance { get; init; }

    /// <summary>Air flow.</summary>
    public QuantityLimit<VolumeFlow, VolumeFlow>? Airflow { get; init; }

    /// <summary>External static pressure.</summary>
    public QuantityLimit<PressureDifference, PressureDifference>? ExternalStatic { get; init; }

    /// <summary>Pressure drop of the filter.</summary>
    public QuantityLimit<PressureDifference, PressureDifference>? FilterDrop { get; init; }

    /// <summary>Pressure drop of the coil.</summary>
    public QuantityLimit<PressureDifference, PressureDifference>? CoilDrop { get; init; }

    /// <summary>Fan power for each air flow.</summary>
    public QuantityLimit<PowerPerFlow, PowerPerFlow>? FanPower { get; init; }

    /// <summary>Supply voltage.</summary>
    public QuantityLimit<Voltage, Voltage>? Voltage { get; init; }

    /// <summary>Voltage unbalance.</summary>
    public QuantityLimit<Ratio, Ratio>? VoltageUnbalance { get; init; }

    /// <summary>Current unbalance.</summary>
    public QuantityLimit<Ratio, Ratio>? CurrentUnbalance { get; init; }

    /// <summary>Voltage drop at start.</summary>
    public QuantityLimit<Ratio, Ratio>? VoltageDropAtStart { get; init; }

    /// <summary>Compressor current.</summary>
    public QuantityLimit<ElectricCurrent, ElectricCurrent>? CompressorCurrent { get; init; }

    /// <summary>Insulation resistance.</summary>
    public QuantityLimit<Resistance, Resistance>? Insulation { get; init; }

    /// <summary>Control voltage.</summary>
    public QuantityLimit<Voltage, Voltage>? ControlVoltage { get; init; }

    /// <summary>Torque on electrical terminals.</summary>
    public QuantityLimit<Torque, Torque>? TerminalTorque { get; init; }

    /// <summary>Torque on flare nuts by tube diameter. Empty when not written.</summary>
    public ImmutableArray<FlareLimit> FlareTorque { get; init; } = [];

    /// <summary>Length of all lines together.</summary>
    public QuantityLimit<Length, Length>? TotalLength { get; init; }

    /// <summary>Longest run.</summary>
    public QuantityLimit<Length, Length>? LongestRun { get; init; }

    /// <summary>From the first branch to the farthest unit.</summary>
    public QuantityLimit<Length, Length>? FirstBranch { get; init; }

    /// <summary>Height between outdoor and indoor unit.</summary>
    public QuantityLimit<Length, Length>? HeightDifference { get; init; }

    /// <summary>Length from which the maker's long-line rules hold.</summary>
    public QuantityLimit<Length, Length>? LongLineOver { get; init; }

    /// <summary>What the maker asks for on long lines. Empty when not written.</summary>
    public ImmutableArray<Given<Accessory>> LongLineAccessories { get; init; } = [];

    /// <summary>Number of oil traps.</summary>
    public NumberLimit? Traps { get; init; }

    /// <summary>Smallest room for this charge.</summary>
    public QuantityLimit<Area, Area>? RoomArea { get; init; }

    /// <summary>Time the crankcase heater is on before start.</summary>
    public QuantityLimit<Duration, Duration>? CrankcaseHeaterBeforeStart { get; init; }

    /// <summary>Running time before readings count.</summary>
    public QuantityLimit<Duration, Duration>? StabilisedAfter { get; init; }

    /// <summary>Outdoor range in which the charging figures hold.</summary>
    public Given<QuantityRange<Temperature>>? ValidOutdoor { get; init; }

    /// <summary>Return air range in which the charging figures hold.</summary>
    public Given<QuantityRange<Temperature>>? ValidIndoor { get; init; }

    /// <summary>Return wet bulb range in which the charging figures hold.</summary>
    public Given<QuantityRange<Temperature>>? ValidIndoorWetBulb { get; init; }

    /// <summary>How the maker wants the charge set.</summary>
    public Given<ChargeMethod>? ChargeBy { get; init; }

    /// <summary>The maker's charging charts. Empty when not written.</summary>
    public ImmutableArray<MakerChart> Charts { get; init; } = [];

    /// <summary>Limit packs to use: names, or files beside the job. Empty when not written.</summary>
    public ImmutableArray<Given<string>> Packs { get; init; } = [];

    /// <summary>How uncertainty enters the verdicts, for all groups or by group.</summary>
    public DecisionRules? DecisionRule { get; init; }
}
