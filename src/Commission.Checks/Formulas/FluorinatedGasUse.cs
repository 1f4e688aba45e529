using Commission.Jobs.Model.Words;

namespace Commission.Checks.Formulas;

/// <summary>
/// Which fluorinated gases may not go into equipment that is maintained or serviced: Regulation (EU) 2024/573 article 13 paragraphs 3 to 5 (published).
/// The first charge of a new system is no service.
/// </summary>
internal static class FluorinatedGasUse
{
    private const double LargeRefrigerationTonnes = 40;

    private static readonly UseBan Refrigeration = new("13(3)", 2500, new DateOnly(2025, 1, 1), new DateOnly(2030, 1, 1), [UseExemption.Military, UseExemption.DeepCold, UseExemption.Authorized]);

    // Refrigeration of 40 t and more has been under the same ban since the regulation applies.
    private static readonly UseBan LargeRefrigeration = Refrigeration with { From = new DateOnly(2024, 3, 11) };

    private static readonly UseBan AirConditioning = new("13(4)", 2500, new DateOnly(2026, 1, 1), new DateOnly(2032, 1, 1), [UseExemption.Authorized]);

    private static readonly UseBan StationaryRefrigeration = new("13(5)", 750, new DateOnly(2032, 1, 1), null, [UseExemption.Military, UseExemption.DeepCold, UseExemption.Nuclear, UseExemption.Chiller, UseExemption.Authorized]);

    /// <summary>The bans in force for a kind of equipment, the one that reaches the higher potentials first.</summary>
    /// <param name="isRefrigeration">Whether it cools goods and not people.</param>
    /// <param name="tonnes">Charge of the equipment, t CO2e; null when it is not known.</param>
    /// <param name="date">Day of the work.</param>
    public static IEnumerable<UseBan> InForce(bool isRefrigeration, double? tonnes, DateOnly date)
    {
        UseBan[] bans = isRefrigeration ? [tonnes >= LargeRefrigerationTonnes ? LargeRefrigeration : Refrigeration, StationaryRefrigeration] : [AirConditioning];
        return bans.Where(b => date >= b.From);
    }
}

/// <summary>A ban on the use of fluorinated gases in service.</summary>
/// <param name="Paragraph">The paragraph, <c>13(3)</c>.</param>
/// <param name="FromPotential">Warming potential over 100 years from which it reaches a gas.</param>
/// <param name="From">First day.</param>
/// <param name="UsedGasUntil">The day from which reclaimed and recycled gas is banned, too; null where it never is.</param>
/// <param name="Exempt">What it does not reach.</param>
internal sealed record UseBan(string Paragraph, double FromPotential, DateOnly From, DateOnly? UsedGasUntil, UseExemption[] Exempt)
{
    /// <summary>Where it stands, as a record cites it.</summary>
    public string Citation => $"Regulation (EU) 2024/573, article {Paragraph} (published)";

    /// <summary>Whether reclaimed gas with its label, and recycled gas in the hands of the undertaking that recovered it, may still be used.</summary>
    /// <param name="date">Day of the work.</param>
    public bool SparesUsedGas(DateOnly date) => UsedGasUntil is not { } until || date < until;
}
