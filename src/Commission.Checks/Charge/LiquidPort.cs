using Commission.Checks.Findings;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Charge;

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
    /// <param name="context">The job and everything derived from it.</param>
    public static LiquidPort Of(CheckContext context) => new(context.Job.Charging?.ReadAt?.LiquidPressure);

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding) => finding.Use("liquid pressure read at", Place);
}
