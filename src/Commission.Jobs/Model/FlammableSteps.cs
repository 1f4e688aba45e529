using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Steps for flammable refrigerant.</summary>
public sealed record FlammableSteps : JobPart
{
    /// <summary>The detector the area was checked with. Empty when not written.</summary>
    public ImmutableArray<Given<string>> AreaCheckedWith { get; init; } = [];

    /// <summary>The detector's alarm, in percent of the lower flammable limit.</summary>
    public Given<Ratio>? AlarmAt { get; init; }

    /// <summary>Whether ignition sources were removed.</summary>
    public Given<bool>? IgnitionSourcesRemoved { get; init; }

    /// <summary>Within what distance.</summary>
    public Given<Length>? Within { get; init; }

    /// <summary>Whether the area was ventilated.</summary>
    public Given<bool>? Ventilated { get; init; }

    /// <summary>What stood ready.</summary>
    public Given<Extinguisher>? Extinguisher { get; init; }

    /// <summary>Whether recovery machine, pump and detector may be used near flammable refrigerant.</summary>
    public Given<bool>? MachinesRated { get; init; }

    /// <summary>Whether the pump's exhaust led outdoors.</summary>
    public Given<bool>? PumpExhaustOutdoors { get; init; }

    /// <summary>Whether the area was marked.</summary>
    public Given<bool>? Signs { get; init; }

    /// <summary>Whether cylinders and equipment were bonded.</summary>
    public Given<bool>? Bonded { get; init; }

    /// <summary>Whether the cylinder has a left-hand thread.</summary>
    public Given<bool>? LeftHandThread { get; init; }

    /// <summary>What was done before the circuit was opened, in order. Empty when not written.</summary>
    public ImmutableArray<Given<FlammableStep>> Sequence { get; init; } = [];
}
