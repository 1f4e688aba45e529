using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Jobs.Model;

/// <summary>An instrument: what it is, how good it is, what was read on it, how it was checked today.</summary>
public sealed record Instrument : JobPart
{
    /// <summary>A short name.</summary>
    public required Given<string> Id { get; init; }

    /// <summary>What it is.</summary>
    public required Given<InstrumentKind> Kind { get; init; }

    /// <summary>The maker.</summary>
    public Given<string>? Maker { get; init; }

    /// <summary>The model.</summary>
    public Given<string>? Model { get; init; }

    /// <summary>The serial number.</summary>
    public Given<string>? Serial { get; init; }

    /// <summary>The maker's accuracy statement.</summary>
    public Given<AccuracyStatement>? Accuracy { get; init; }

    /// <summary>Accuracy of the humidity reading.</summary>
    public Given<AccuracyStatement>? HumidityAccuracy { get; init; }

    /// <summary>The end of the range.</summary>
    public Given<QuantityValue>? FullScale { get; init; }

    /// <summary>The smallest step shown.</summary>
    public Given<QuantityValue>? Resolution { get; init; }

    /// <summary>When it was last calibrated.</summary>
    public Given<DateOnly>? Calibrated { get; init; }

    /// <summary>How long a calibration holds.</summary>
    public Given<CalendarPeriod>? Interval { get; init; }

    /// <summary>The calibration certificate.</summary>
    public Given<string>? Certificate { get; init; }

    /// <summary>What the sensor is.</summary>
    public Given<SensorKind>? Sensor { get; init; }

    /// <summary>Whether a pipe clamp was insulated.</summary>
    public Given<bool>? Insulated { get; init; }

    /// <summary>Where on the pipe the clamp sat.</summary>
    public Given<string>? Position { get; init; }

    /// <summary>What a pressure gauge measures from.</summary>
    public Given<GaugeReference>? Reference { get; init; }

    /// <summary>Whether it was zeroed in the air of the site.</summary>
    public Given<bool>? ZeroedAtSite { get; init; }

    /// <summary>The smallest leak a detector finds.</summary>
    public Given<MassFlow>? Sensitivity { get; init; }

    /// <summary>Gases a leak detector is made for. Empty when not written.</summary>
    public ImmutableArray<Given<string>> Detects { get; init; } = [];

    /// <summary>Whether it may be used near flammable refrigerant.</summary>
    public Given<bool>? RatedForFlammable { get; init; }

    /// <summary>What was read on it. Empty when not written.</summary>
    public ImmutableArray<Given<ReadingName>> Reads { get; init; } = [];

    /// <summary>The field checks of today.</summary>
    public InstrumentChecks? Checks { get; init; }
}
