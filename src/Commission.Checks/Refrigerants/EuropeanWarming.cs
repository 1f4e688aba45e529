using System.Collections.Immutable;
using System.Globalization;
using Commission.Fluids;

namespace Commission.Checks.Refrigerants;

/// <summary>
/// Warming potential of a refrigerant as Regulation (EU) 2024/573 counts it: gases of Annex I by AR4, those of Annex II section 1 by AR6,
/// anything else by AR4; a blend by the mass shares of its parts (from memory).
/// </summary>
/// <param name="Potential">GWP over 100 years of the whole refrigerant.</param>
/// <param name="AnnexOnePart">Part of it from gases of Annex I, for a kilogram of refrigerant.</param>
/// <param name="AnnexTwoShare">Mass share of gases of Annex II section 1.</param>
/// <param name="Formula">The sum with its numbers.</param>
internal sealed record EuropeanWarming(double Potential, double AnnexOnePart, double AnnexTwoShare, string Formula)
{
    /// <summary>Where the rule comes from.</summary>
    public const string Source = "Regulation (EU) 2024/573, annexes I, II and VI (from memory)";

    /// <summary>Whether the regulation counts the refrigerant at all.</summary>
    public bool IsFluorinated => AnnexOnePart > 0 || AnnexTwoShare > 0;

    /// <summary>Works it out.</summary>
    /// <param name="refrigerant">The refrigerant.</param>
    /// <returns>The potential; null when that of a part is not known here.</returns>
    public static EuropeanWarming? Of(RefrigerantInfo refrigerant)
    {
        double whole = 0, annexOne = 0, annexTwo = 0;
        var words = ImmutableArray.CreateBuilder<string>();
        foreach (var part in refrigerant.Composition)
        {
            if (RefrigerantCatalogue.Find(part.Designation) is not { } substance)
                return null;
            var family = GasFamilies.Of(part.Designation);
            if ((family == GasFamily.AnnexTwo ? substance.GwpAr6 : substance.GwpAr4) is not { } potential)
                return null;
            whole += part.MassFraction * potential.Value;
            annexOne += family == GasFamily.AnnexOne ? part.MassFraction * potential.Value : 0;
            annexTwo += family == GasFamily.AnnexTwo ? part.MassFraction : 0;
            words.Add(string.Create(CultureInfo.InvariantCulture, $"{part.MassFraction:0.####} × {potential.Value:0.###} ({part.Designation})"));
        }

        return new EuropeanWarming(whole, annexOne, annexTwo, string.Join(" + ", words));
    }
}
