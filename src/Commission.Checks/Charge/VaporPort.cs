using Commission.Checks.Findings;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Charge;

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
    /// <param name="context">The job and everything derived from it.</param>
    public static VaporPort Of(CheckContext context) => new(context.Job.Charging?.ReadAt);

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding) =>
        finding.Use("vapor pressure read at", Places?.VaporPressure).Use("vapor line read at", Places?.VaporLine);
}
