using Commission.Checks.Readings;
using Commission.Checks.Tables;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Refrigerants;

/// <summary>Under which leak-repair rule of the United States the circuit falls.</summary>
internal sealed class UnitedStatesRule : IAnalysis<UnitedStatesRule>
{
    private UnitedStatesRule(CheckContext context)
    {
        var equipment = context.Job.Equipment;
        IsOzoneDepleting = context.Get<CircuitRefrigerant>().Info is { } info && GasFamilies.DepletesOzone(info);
        IsComfort = (equipment.Application?.Value ?? (equipment.System.Value == SystemKind.Refrigeration ? null : Application.AC)) == Application.AC;
        IsExemptSubsector = IsComfort && equipment.System.Value != SystemKind.Refrigeration;
        Potential = context.Get<CircuitRefrigerant>().Info?.GwpAr4?.Value;
        var full = context.Get<CircuitCharge>().Full;
        Rule = full is null || Potential is not { } gwp
            ? null
            : LeakRepair.RuleFor(full.Value.Value, IsOzoneDepleting, gwp, context.Job.Identity.Date.Value, IsExemptSubsector);
    }

    /// <summary>Whether the refrigerant or a part of it depletes ozone.</summary>
    public bool IsOzoneDepleting { get; }

    /// <summary>Whether the circuit cools people and not goods.</summary>
    public bool IsComfort { get; }

    /// <summary>Whether it belongs to the residential and light-commercial air-conditioning and heat-pump subsector.</summary>
    public bool IsExemptSubsector { get; }

    /// <summary>Warming potential as the rules count it (AR4); null when it is not known here.</summary>
    public double? Potential { get; }

    /// <summary>The rule; null when full charge or potential is not known.</summary>
    public LeakRepairRule? Rule { get; }

    /// <inheritdoc/>
    public static UnitedStatesRule Create(CheckContext context) => new(context);

    /// <summary>The rule in words.</summary>
    /// <param name="rule">The rule.</param>
    public static string Words(LeakRepairRule rule) => rule switch
    {
        LeakRepairRule.Section82157 => "40 CFR 82.157",
        LeakRepairRule.Section84106 => "40 CFR 84.106",
        _ => "no leak-repair rule",
    };
}
