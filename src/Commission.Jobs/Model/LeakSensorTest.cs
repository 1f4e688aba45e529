using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The unit's leak sensor.</summary>
public sealed record LeakSensorTest : JobPart
{
    /// <summary>Whether there is one.</summary>
    public required Given<bool> Fitted { get; init; }

    /// <summary>Whether it is connected.</summary>
    public Given<bool>? Connected { get; init; }

    /// <summary>Whether the maker's test was run.</summary>
    public Given<bool>? TestRun { get; init; }

    /// <summary>Whether the blower came on.</summary>
    public Given<bool>? FanOn { get; init; }

    /// <summary>Whether the compressor stopped.</summary>
    public Given<bool>? CompressorOff { get; init; }

    /// <summary>In what time.</summary>
    public Given<Duration>? RespondedIn { get; init; }

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }
}
