using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A field joint.</summary>
public sealed record Joint : JobPart
{
    /// <summary>Where.</summary>
    public required Given<string> Place { get; init; }

    /// <summary>How it is made.</summary>
    public Given<JointKind>? Kind { get; init; }

    /// <summary>How many.</summary>
    public Given<int>? Count { get; init; }

    /// <summary>How leaks were looked for.</summary>
    public Given<LeakMethod>? Method { get; init; }

    /// <summary>The detector. Empty when not written.</summary>
    public ImmutableArray<Given<string>> With { get; init; } = [];

    /// <summary>The smallest leak the method finds.</summary>
    public Given<MassFlow>? Sensitivity { get; init; }

    /// <summary>What was found.</summary>
    public required Given<LeakResult> Result { get; init; }

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }

    /// <summary>Whether it is indoors.</summary>
    public Given<bool>? Indoor { get; init; }

    /// <summary>Whether it will be hidden.</summary>
    public Given<bool>? Concealed { get; init; }

    /// <summary>Whether an old flare was cut off and made anew.</summary>
    public Given<bool>? Remade { get; init; }

    /// <summary>How a brazed joint was looked at.</summary>
    public Given<BrazeInspection>? Inspected { get; init; }
}
