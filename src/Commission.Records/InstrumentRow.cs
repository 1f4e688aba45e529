using System.Collections.Immutable;

namespace Commission.Records;

/// <summary>An instrument: what it is, how it was checked, what was corrected and what it is fit to judge.</summary>
public sealed record InstrumentRow
{
    /// <summary>The crew's name for it.</summary>
    public required string Id { get; init; }

    /// <summary>Kind, for example <c>pressure gauge</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>Serial number; empty when none was written.</summary>
    public string Serial { get; init; } = "";

    /// <summary>Accuracy as stated.</summary>
    public string Accuracy { get; init; } = "";

    /// <summary>Resolution as stated.</summary>
    public string Resolution { get; init; } = "";

    /// <summary>Calibration date and interval as printed.</summary>
    public string Calibrated { get; init; } = "";

    /// <summary>What it read.</summary>
    public ImmutableArray<string> Reads { get => field.IsDefault ? [] : field; init; }

    /// <summary>Field checks of the day, one sentence each.</summary>
    public ImmutableArray<string> FieldChecks { get => field.IsDefault ? [] : field; init; }

    /// <summary>Corrections applied, one sentence each.</summary>
    public ImmutableArray<string> Corrections { get => field.IsDefault ? [] : field; init; }

    /// <summary>What it allows to be judged, one phrase each.</summary>
    public ImmutableArray<string> Judges { get => field.IsDefault ? [] : field; init; }
}
