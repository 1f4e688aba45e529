using System.Collections.Immutable;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Refrigerant taken out before the circuit was opened.</summary>
public sealed record Recovery : JobPart
{
    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }

    /// <summary>Pressure reached.</summary>
    public required Given<StatedPressure> To { get; init; }

    /// <summary>How long that pressure held.</summary>
    public Given<Duration>? Held { get; init; }

    /// <summary>The recovery machine.</summary>
    public EquipmentUnit? Machine { get; init; }

    /// <summary>When the machine was made; the rules differ before 15 November 1993.</summary>
    public Given<DateOnly>? MachineMade { get; init; }

    /// <summary>Mass recovered.</summary>
    public Given<Mass>? Mass { get; init; }

    /// <summary>The scale before and after.</summary>
    public ScaleReading? Scale { get; init; }

    /// <summary>The cylinder it went into.</summary>
    public Given<string>? Cylinder { get; init; }

    /// <summary>Whether the circuit leaks, so that a deep vacuum would draw in air.</summary>
    public Given<bool>? Leaking { get; init; }

    /// <summary>Where the refrigerant goes.</summary>
    public Given<string>? Facility { get; init; }

    /// <summary>That facility's certificate number.</summary>
    public Given<string>? FacilityCertificate { get; init; }

    /// <summary>The gauge. Empty when not written.</summary>
    public ImmutableArray<Given<string>> With { get; init; } = [];

    /// <summary>Who watched.</summary>
    public Witness? Witnessed { get; init; }

    /// <summary>Anything worth telling.</summary>
    public Given<string>? Notes { get; init; }
}
