using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>What was tried and whether it works.</summary>
public sealed record Functional : JobPart
{
    /// <summary>Thermostat calls for cooling.</summary>
    public Given<TestResult>? CoolingCall { get; init; }

    /// <summary>Thermostat calls for heating.</summary>
    public Given<TestResult>? HeatingCall { get; init; }

    /// <summary>Thermostat calls for the fan.</summary>
    public Given<TestResult>? FanCall { get; init; }

    /// <summary>The reversing valve, both ways.</summary>
    public Given<TestResult>? ReversingValve { get; init; }

    /// <summary>Defrost starts.</summary>
    public Given<TestResult>? DefrostStarts { get; init; }

    /// <summary>Defrost ends.</summary>
    public Given<TestResult>? DefrostEnds { get; init; }

    /// <summary>Each stage of the auxiliary heat.</summary>
    public Given<TestResult>? AuxiliaryHeat { get; init; }

    /// <summary>Lockout of the auxiliary heat.</summary>
    public Given<TestResult>? AuxiliaryHeatLockout { get; init; }

    /// <summary>Fans turn the right way.</summary>
    public Given<TestResult>? FanRotation { get; init; }

    /// <summary>Water poured in runs off.</summary>
    public Given<TestResult>? CondensateDrains { get; init; }

    /// <summary>The trap.</summary>
    public Given<TestResult>? CondensateTrap { get; init; }

    /// <summary>The drain's slope.</summary>
    public Given<TestResult>? DrainSlope { get; init; }

    /// <summary>The float switch trips and stops cooling.</summary>
    public Given<TestResult>? FloatSwitch { get; init; }

    /// <summary>The second drain or pan.</summary>
    public Given<TestResult>? SecondaryDrain { get; init; }

    /// <summary>The thermostat is set up for this system.</summary>
    public Given<TestResult>? ThermostatSetUp { get; init; }

    /// <summary>Fault codes.</summary>
    public FaultCodes? FaultCodes { get; init; }

    /// <summary>The low-pressure control.</summary>
    public ControlSetting? LowPressureControl { get; init; }

    /// <summary>The high-pressure control.</summary>
    public ControlSetting? HighPressureControl { get; init; }

    /// <summary>The oil level.</summary>
    public Given<OilLevel>? OilLevel { get; init; }

    /// <summary>Net oil pressure.</summary>
    public Given<PressureDifference>? OilPressureDifference { get; init; }

    /// <summary>Defrosts in a day.</summary>
    public Given<int>? DefrostsPerDay { get; init; }

    /// <summary>Temperature that ends a defrost.</summary>
    public Given<Temperature>? DefrostTerminatesAt { get; init; }

    /// <summary>Setting of the evaporator pressure regulator.</summary>
    public Given<StatedPressure>? EPRSetting { get; init; }

    /// <summary>The box's pull-down.</summary>
    public PullDown? BoxPullDown { get; init; }

    /// <summary>Who watched.</summary>
    public Witness? Witnessed { get; init; }

    /// <summary>Anything worth telling.</summary>
    public Given<string>? Notes { get; init; }
}
