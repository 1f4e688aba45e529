using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Circuit;

/// <summary>Where vapor pressure and vapor line were read: at different places the line's pressure drop is in the superheat.</summary>
/// <param name="Places">The places as written; null when they are not.</param>
internal sealed record VaporPort(ReadingPlaces? Places) : IChargeGate
{
    /// <inheritdoc/>
    public string? Block => null;

    /// <inheritdoc/>
    public string? Todo => null;

    /// <inheritdoc/>
    public string? Reservation => (Places?.VaporPressure?.Value, Places?.VaporLine?.Value) switch
    {
        (VaporPressurePlace.ServiceValve, VaporLinePlace.ServiceValve)
            or (VaporPressurePlace.EvaporatorOutlet, VaporLinePlace.EvaporatorOutlet)
            or (VaporPressurePlace.CompressorInlet, VaporLinePlace.CompressorInlet) => null,
        ({ }, { }) => $"the pressure was read at the {Places!.VaporPressure!.Text} and the temperature at the {Places.VaporLine!.Text}, so the line between is in the superheat",
        _ => null,
    };

    /// <summary>Where this job read them.</summary>
    public static VaporPort Of(CheckContext context) => new(context.Job.Charging?.ReadAt);

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding) =>
        finding.Use("vapor pressure read at", Places?.VaporPressure).Use("vapor line read at", Places?.VaporLine);
}

/// <summary>Where the liquid pressure was read: before the condenser it is higher than at its outlet, and subcooling reads high.</summary>
/// <param name="Place">The place as written; null when it is not.</param>
internal sealed record LiquidPort(Given<LiquidPressurePlace>? Place) : IChargeGate
{
    /// <inheritdoc/>
    public string? Block => null;

    /// <inheritdoc/>
    public string? Todo => null;

    /// <inheritdoc/>
    public string? Reservation => Place?.Value == LiquidPressurePlace.DischargePort
        ? "the pressure was read at the discharge port, before the condenser's own pressure drop, so subcooling reads high"
        : null;

    /// <summary>Where this job read it.</summary>
    public static LiquidPort Of(CheckContext context) => new(context.Job.Charging?.ReadAt?.LiquidPressure);

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding) => finding.Use("liquid pressure read at", Place);
}
