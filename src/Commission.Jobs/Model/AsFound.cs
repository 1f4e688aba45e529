using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>What was found before any work.</summary>
public sealed record AsFound : JobPart
{
    /// <summary>The refrigerant that was in it, when it was changed.</summary>
    public Given<string>? Refrigerant { get; init; }

    /// <summary>Readings. Empty when not written.</summary>
    public ImmutableArray<Reading> Readings { get; init; } = [];

    /// <summary>Charge recovered.</summary>
    public Given<Mass>? ChargeRecovered { get; init; }

    /// <summary>What was complained of.</summary>
    public Given<string>? Complaint { get; init; }

    /// <summary>What was found to be the cause.</summary>
    public Given<string>? Cause { get; init; }

    /// <summary>Where it leaked.</summary>
    public Given<string>? LeakPlace { get; init; }

    /// <summary>The part that failed.</summary>
    public FailedPart? FailedPart { get; init; }

    /// <summary>Test of the oil or refrigerant for acid.</summary>
    public Given<AcidResult>? AcidTest { get; init; }

    /// <summary>Test for moisture.</summary>
    public Given<AcidResult>? MoistureTest { get; init; }

    /// <summary>Oil found.</summary>
    public Oil? Oil { get; init; }

    /// <summary>Whether the circuit was flushed.</summary>
    public Given<bool>? Flushed { get; init; }

    /// <summary>Anything worth telling.</summary>
    public Given<string>? Notes { get; init; }
}
