using Commission.Checks.Kernel;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Messages;

namespace Commission.Checks.Circuit;

/// <summary>Where vapor pressure and vapor line were read: at different places the line's pressure drop is in the superheat.</summary>
/// <param name="Places">The places as written; null when they are not.</param>
internal sealed record VaporPort(ReadingPlaces? Places) : IChargeGate
{
    /// <inheritdoc/>
    public Message? Block => null;

    /// <inheritdoc/>
    public Message? Todo => null;

    /// <inheritdoc/>
    public Message? Reservation => (Places?.VaporPressure?.Value, Places?.VaporLine?.Value) switch
    {
        (VaporPressurePlace.ServiceValve, VaporLinePlace.ServiceValve)
            or (VaporPressurePlace.EvaporatorOutlet, VaporLinePlace.EvaporatorOutlet)
            or (VaporPressurePlace.CompressorInlet, VaporLinePlace.CompressorInlet) => null,
        ({ }, { }) => CircuitMessages.LineInSuperheat(SchemaWords.Of(Places!.VaporPressure!.Value), SchemaWords.Of(Places.VaporLine!.Value)),
        _ => null,
    };

    /// <summary>Where this job read them.</summary>
    public static VaporPort Of(CheckContext context) => new(context.Job.Charging?.ReadAt);

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding) =>
        finding.Use(CircuitMessages.VaporPressurePlace, Places?.VaporPressure).Use(CircuitMessages.VaporLinePlace, Places?.VaporLine);
}

/// <summary>Where the liquid pressure was read: before the condenser it is higher than at its outlet, and subcooling reads high.</summary>
/// <param name="Place">The place as written; null when it is not.</param>
internal sealed record LiquidPort(Given<LiquidPressurePlace>? Place) : IChargeGate
{
    /// <inheritdoc/>
    public Message? Block => null;

    /// <inheritdoc/>
    public Message? Todo => null;

    /// <inheritdoc/>
    public Message? Reservation => Place?.Value == LiquidPressurePlace.DischargePort
        ? CircuitMessages.BeforeCondenser
        : null;

    /// <summary>Where this job read it.</summary>
    public static LiquidPort Of(CheckContext context) => new(context.Job.Charging?.ReadAt?.LiquidPressure);

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding) => finding.Use(CircuitMessages.LiquidPressurePlace, Place);
}
