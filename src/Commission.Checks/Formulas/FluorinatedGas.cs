using Commission.Jobs.Model.Words;
using Commission.Messages;

namespace Commission.Checks.Formulas;

/// <summary>Which European regulation on fluorinated gases.</summary>
internal enum FluorinatedGasEdition
{
    /// <summary>Regulation (EU) 517/2014: thresholds in t CO2e only.</summary>
    Regulation517Of2014,

    /// <summary>Regulation (EU) 2024/573: thresholds in t CO2e, and in kg for the unsaturated gases of Annex II section 1.</summary>
    Regulation573Of2024,
}

/// <summary>
/// Leak checks of the European regulations on fluorinated gases: 2024/573 article 5 paragraphs 1 and 6 and article 6 paragraph 1 (published), before
/// it 517/2014 article 4 (from memory).
/// </summary>
internal static class FluorinatedGasLeakChecks
{
    // 2024/573 article 5(1), third subparagraph.
    private const double ResidentialKilograms = 3;

    /// <summary>How sure the intervals are.</summary>
    /// <param name="edition">Which regulation.</param>
    public static string MarkOf(FluorinatedGasEdition edition) => edition == FluorinatedGasEdition.Regulation517Of2014 ? "from memory" : "published";

    /// <summary>The article, as the record cites it.</summary>
    /// <param name="edition">Which regulation.</param>
    /// <returns>The citation.</returns>
    public static string SourceOf(FluorinatedGasEdition edition) => edition == FluorinatedGasEdition.Regulation517Of2014
        ? "Regulation (EU) 517/2014, article 4"
        : "Regulation (EU) 2024/573, articles 5(1), 5(6) and 6(1)";

    /// <summary>
    /// Whether a hermetically sealed unit in a residential building is not checked: labelled so, and less than 3 kg of fluorinated gases. It is read as
    /// a further relief beside that below 10 t or 2 kg.
    /// </summary>
    /// <param name="fluorinatedKilograms">Charge of fluorinated gases, kg.</param>
    /// <param name="isHermeticAndLabelled">Whether the circuit is hermetically sealed and labelled so.</param>
    /// <param name="isResidential">Whether it stands in a residential building.</param>
    /// <param name="edition">Which regulation.</param>
    public static bool IsFreeInResidence(double fluorinatedKilograms, bool isHermeticAndLabelled, bool isResidential, FluorinatedGasEdition edition) =>
        edition == FluorinatedGasEdition.Regulation573Of2024 && isHermeticAndLabelled && isResidential && fluorinatedKilograms < ResidentialKilograms;

    /// <summary>
    /// The plan for a circuit; of both triggers the stricter governs. Article 5(1) frees a sealed unit that meets one of its two conditions; each is
    /// asked of the gas it names, as a circuit of HFC alone would else never be checked.
    /// </summary>
    /// <param name="annexOneTonnes">Charge of gases of Annex I (HFC), t CO2e.</param>
    /// <param name="annexTwoKilograms">Charge of gases of Annex II section 1 (HFO), kg; part of a blend counts as that part.</param>
    /// <param name="isHermeticAndLabelled">Whether the circuit is hermetically sealed and labelled so.</param>
    /// <param name="hasLeakageDetection">Whether a leakage detection system alerts the operator.</param>
    /// <param name="edition">Which regulation.</param>
    /// <returns>The interval, or that none is prescribed.</returns>
    public static LeakCheckPlan For(
        double annexOneTonnes, double annexTwoKilograms, bool isHermeticAndLabelled, bool hasLeakageDetection, FluorinatedGasEdition edition)
    {
        var byTonnes = Step(annexOneTonnes, isHermeticAndLabelled ? 10 : 5, 50, 500);
        var byKilograms = edition == FluorinatedGasEdition.Regulation517Of2014
            ? 0
            : Step(annexTwoKilograms, isHermeticAndLabelled ? 2 : 1, 10, 100);
        var step = Math.Max(byTonnes, byKilograms);
        if (step == 0)
        {
            var least = isHermeticAndLabelled ? (Tonnes: 10, Kilograms: 2) : (Tonnes: 5, Kilograms: 1);
            return new LeakCheckPlan(null, false, edition == FluorinatedGasEdition.Regulation517Of2014
                ? RefrigerantMessages.LeakCheckBelowTonnes(Printed(annexOneTonnes), least.Tonnes)
                : RefrigerantMessages.LeakCheckBelowBoth(Printed(annexOneTonnes), least.Tonnes, Printed(annexTwoKilograms), least.Kilograms));
        }

        var months = step switch { 1 => 12, 2 => 6, _ => 3 } * (hasLeakageDetection ? 2 : 1);
        var because = byTonnes >= byKilograms
            ? RefrigerantMessages.LeakCheckReachesTonnes(Printed(annexOneTonnes), step switch { 1 => isHermeticAndLabelled ? 10 : 5, 2 => 50, _ => 500 })
            : RefrigerantMessages.LeakCheckReachesMass(Printed(annexTwoKilograms), step switch { 1 => isHermeticAndLabelled ? 2 : 1, 2 => 10, _ => 100 });
        return new LeakCheckPlan(months, step == 3, because);
    }

    private static NumberValue Printed(double amount) => new(amount, 2);

    private static int Step(double amount, double first, double second, double third) =>
        amount >= third ? 3 : amount >= second ? 2 : amount >= first ? 1 : 0;
}

/// <summary>How often a circuit has to be checked for leaks.</summary>
/// <param name="Months">Longest time between checks, calendar months; null when no check is prescribed.</param>
/// <param name="DetectionObligatory">Whether a leakage detection system is prescribed.</param>
/// <param name="Because">Which trigger governs, without a full stop.</param>
internal sealed record LeakCheckPlan(int? Months, bool DetectionObligatory, Message Because);

/// <summary>Charge as tonnes of carbon dioxide with the same warming over a hundred years.</summary>
internal static class CarbonDioxideEquivalent
{
    /// <summary>The formula, as a trace prints it.</summary>
    public static Message Formula => FormulasMessages.Co2e;

    /// <summary>Tonnes of a charge.</summary>
    /// <param name="kilograms">Charge, kg.</param>
    /// <param name="warmingPotential">GWP over 100 years.</param>
    /// <returns>Tonnes CO2e.</returns>
    public static double Tonnes(double kilograms, double warmingPotential) => kilograms * warmingPotential / 1000;
}

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
    public string Citation => $"Regulation (EU) 2024/573, article {Paragraph}";

    /// <summary>Whether reclaimed gas with its label, and recycled gas in the hands of the undertaking that recovered it, may still be used.</summary>
    /// <param name="date">Day of the work.</param>
    public bool SparesUsedGas(DateOnly date) => UsedGasUntil is not { } until || date < until;
}
