using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The leak check after start.</summary>
public sealed record LeakCheck : JobPart
{
    /// <summary>When.</summary>
    public required Given<DateOnly> Date { get; init; }

    /// <summary>With a detector or from readings.</summary>
    public Given<LeakCheckKind>? Kind { get; init; }

    /// <summary>The method.</summary>
    public Given<LeakMethod>? Method { get; init; }

    /// <summary>The detector. Empty when not written.</summary>
    public ImmutableArray<Given<string>> With { get; init; } = [];

    /// <summary>The smallest leak it finds.</summary>
    public Given<MassFlow>? Sensitivity { get; init; }

    /// <summary>When the detector was last checked.</summary>
    public Given<DateOnly>? DetectorChecked { get; init; }

    /// <summary>How long the system had run.</summary>
    public Given<Duration>? RunningFor { get; init; }

    /// <summary>Whether this is the check after a repair.</summary>
    public Given<bool>? AfterRepair { get; init; }

    /// <summary>What was found.</summary>
    public required Given<LeakResult> Result { get; init; }

    /// <summary>When the next one is due.</summary>
    public Given<DateOnly>? NextDue { get; init; }

    /// <summary>Anything worth telling.</summary>
    public Given<string>? Notes { get; init; }
}
