using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A pressure control.</summary>
public sealed record ControlSetting : JobPart
{
    /// <summary>Cuts in at.</summary>
    public Given<StatedPressure>? CutIn { get; init; }

    /// <summary>Cuts out at.</summary>
    public Given<StatedPressure>? CutOut { get; init; }

    /// <summary>How the test ended.</summary>
    public Given<TestResult>? Tested { get; init; }
}
