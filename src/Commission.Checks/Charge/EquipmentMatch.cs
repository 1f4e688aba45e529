using Commission.Checks.Findings;
using Commission.Jobs.Model;
using Commission.Measurement.Units;

namespace Commission.Checks.Charge;

/// <summary>Whether orifice and units belong together as the maker lists them: a target holds for that combination alone.</summary>
internal sealed class EquipmentMatch : IChargeGate
{
    // Sizes of orifices are printed in whole thousandths of an inch.
    private const double Same = 0.5e-3 * 0.0254;

    private readonly CheckContext context;
    private readonly Metering? metering;

    private EquipmentMatch(CheckContext context)
    {
        this.context = context;
        metering = context.Job.Equipment.Metering;
    }

    /// <summary>Whether the job says anything about it.</summary>
    public bool IsShown => Fits is not null || context.Job.Equipment.Matched is not null;

    /// <summary>Whether the installed orifice is the one the maker asks for; null when both sizes are not written.</summary>
    public bool? Fits => metering is { Size: { } fitted, PlateSize: { } asked } ? Math.Abs(fitted.Value.Si - asked.Value.Si) <= Same : null;

    /// <inheritdoc/>
    public string? Block => Fits == false
        ? $"the installed orifice of {Text(metering!.Size!)} is not the {Text(metering.PlateSize!)} the maker asks for, so the target does not hold"
        : null;

    /// <inheritdoc/>
    public string? Todo => Block is null ? null : "Fit the orifice the maker asks for, evacuate, weigh in and read again.";

    /// <inheritdoc/>
    public string? Reservation => context.Job.Equipment.Matched is { Value: false } ? "the maker does not list this pair of units" : null;

    /// <summary>Looks at the equipment.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    public static EquipmentMatch Of(CheckContext context) => new(context);

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding) => finding
        .Use("orifice installed", metering?.Size)
        .Use("orifice the maker asks for", metering?.PlateSize)
        .Use("matched", context.Job.Equipment.Matched);

    private string Text(Given<Measurement.Quantities.Length> size) => context.Present.Text(size.Value.Si, DisplayKind.TubeDiameter);
}
