using System.Collections.Immutable;

namespace Commission.Fluids;

/// <summary>
/// What is known of a refrigerant without its equations: names, composition, safety, environment. A value that is absent is not known
/// here; a value "from memory" must be called so wherever it is printed.
/// </summary>
public sealed record RefrigerantInfo
{
    /// <summary>e.g. "R-454B".</summary>
    public required string Designation { get; init; }

    /// <summary>Chemical name of a pure refrigerant; null for a blend.</summary>
    public string? ChemicalName { get; init; }

    /// <summary>Further names that are understood ("HFC-32", "propane", "CO2"); spelling without hyphen and in any case is understood too.</summary>
    public required ImmutableArray<string> Aliases { get; init; }

    /// <summary>Components by mass; one component with 1.0 for a pure refrigerant.</summary>
    public required ImmutableArray<BlendComponent> Composition { get; init; }

    /// <summary>Where the composition comes from: mark and document.</summary>
    public SourcedText? CompositionSource { get; init; }

    /// <summary>True for a blend.</summary>
    public bool IsBlend => Composition.Length > 1;

    /// <summary>kg/mol; null when a component is not at hand.</summary>
    public double? MolarMass { get; init; }

    /// <summary>Safety group of ANSI/ASHRAE 34 ("A1", "A2L", …).</summary>
    public SourcedText? SafetyGroup { get; init; }

    /// <summary>100-year GWP on the base of IPCC AR4 (the base of EU and US rules for HFCs).</summary>
    public SourcedValue? GwpAr4 { get; init; }

    /// <summary>100-year GWP on the base of IPCC AR5.</summary>
    public SourcedValue? GwpAr5 { get; init; }

    /// <summary>100-year GWP on the base of IPCC AR6.</summary>
    public SourcedValue? GwpAr6 { get; init; }

    /// <summary>Lower flammability limit, kg/m³.</summary>
    public SourcedValue? LowerFlammabilityLimit { get; init; }

    /// <summary>Refrigerant concentration limit, kg/m³. From memory and unconfirmed: never to be shipped as a limit without the standard.</summary>
    public SourcedValue? ConcentrationLimit { get; init; }

    /// <summary>Bubble and dew point at 101.325 kPa listed by ANSI/ASHRAE 34, to be set beside the computed ones.</summary>
    public BoilingRange? ListedBoilingRange { get; init; }

    /// <summary>The component without a published equation of state at hand, for which properties cannot be computed; null when they can.</summary>
    public string? LacksEquationOf { get; init; }

    /// <summary>True when <see cref="Refrigerant.Load"/> has equations for it.</summary>
    public bool IsComputable => LacksEquationOf is null;

    /// <summary>"32/125 (50/50)" for a blend, the chemical name for a pure refrigerant.</summary>
    public string CompositionText
    {
        get
        {
            if (!IsBlend)
                return ChemicalName ?? Designation;
            var names = string.Join('/', Composition.Select(c => c.Designation[2..]));
            var shares = string.Join('/', Composition.Select(c => (100 * c.MassFraction).ToString("0.##", System.Globalization.CultureInfo.InvariantCulture)));
            return $"R-{names} ({shares} % by mass)";
        }
    }
}

/// <summary>A component of a refrigerant.</summary>
/// <param name="Designation">e.g. "R-32".</param>
/// <param name="MassFraction">kg/kg, 0…1.</param>
public sealed record BlendComponent(string Designation, double MassFraction);

/// <summary>Bubble and dew temperature at 101.325 kPa as another document lists them.</summary>
/// <param name="Bubble">K.</param>
/// <param name="Dew">K.</param>
/// <param name="Mark">How the values are known.</param>
/// <param name="Source">The document.</param>
public sealed record BoilingRange(double Bubble, double Dew, string Mark, string Source);

/// <summary>A word (a safety group) and how it is known.</summary>
/// <param name="Value">The word.</param>
/// <param name="Mark">"published", "computed", "from memory" or "from memory, unconfirmed".</param>
/// <param name="Source">The document.</param>
public sealed record SourcedText(string Value, string Mark, string Source);

/// <summary>A number and how it is known.</summary>
/// <param name="Value">The number in the unit of the member that holds it.</param>
/// <param name="Mark">"published", "computed", "from memory" or "from memory, unconfirmed".</param>
/// <param name="Source">The document.</param>
public sealed record SourcedValue(double Value, string Mark, string Source);
