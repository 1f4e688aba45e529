using System.Globalization;

namespace Commission.Checks.Tables;

/// <summary>
/// Leak-check intervals of the European regulations on fluorinated gases: 517/2014 article 4 and 2024/573 article 5. The 5 t and 50 t
/// steps with 12 months are published; the other steps and the kilogram trigger are from memory.
/// </summary>
internal static class FluorinatedGasLeakChecks
{
    /// <summary>How sure the intervals are.</summary>
    public const string Mark = "from memory";

    /// <summary>The article, as the record cites it.</summary>
    /// <param name="edition">Which regulation.</param>
    /// <returns>The citation.</returns>
    public static string SourceOf(FluorinatedGasEdition edition) => edition == FluorinatedGasEdition.Regulation517Of2014
        ? "Regulation (EU) 517/2014, article 4"
        : "Regulation (EU) 2024/573, article 5";

    /// <summary>The plan for a circuit; of both triggers the stricter governs.</summary>
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
                ? string.Create(CultureInfo.InvariantCulture, $"{annexOneTonnes:0.00} t CO2e is below {least.Tonnes} t.")
                : string.Create(CultureInfo.InvariantCulture, $"{annexOneTonnes:0.00} t CO2e is below {least.Tonnes} t, and {annexTwoKilograms:0.00} kg of Annex II gas is below {least.Kilograms} kg."));
        }

        var months = step switch { 1 => 12, 2 => 6, _ => 3 } * (hasLeakageDetection ? 2 : 1);
        var because = byTonnes >= byKilograms
            ? string.Create(CultureInfo.InvariantCulture, $"{annexOneTonnes:0.00} t CO2e reaches {(step switch { 1 => isHermeticAndLabelled ? 10 : 5, 2 => 50, _ => 500 })} t.")
            : string.Create(CultureInfo.InvariantCulture, $"{annexTwoKilograms:0.00} kg of Annex II gas reaches {(step switch { 1 => isHermeticAndLabelled ? 2 : 1, 2 => 10, _ => 100 })} kg.");
        return new LeakCheckPlan(months, step == 3, because);
    }

    private static int Step(double amount, double first, double second, double third) =>
        amount >= third ? 3 : amount >= second ? 2 : amount >= first ? 1 : 0;
}
