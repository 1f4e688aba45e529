using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>How the vacuum was broken.</summary>
public sealed record FirstCharge : JobPart
{
    /// <summary>Into which side.</summary>
    public Given<ChargePort>? Into { get; init; }

    /// <summary>As liquid or vapor.</summary>
    public Given<RefrigerantPhase>? As { get; init; }

    /// <summary>To what pressure before the compressor ran.</summary>
    public Given<StatedPressure>? VacuumBrokenTo { get; init; }

    /// <summary>Whether liquid into the vapor side was throttled.</summary>
    public Given<bool>? Throttled { get; init; }
}
