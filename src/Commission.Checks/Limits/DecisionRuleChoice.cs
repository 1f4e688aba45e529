using Commission.Jobs.Model;
using Commission.Measurement.Decisions;
using Chosen = Commission.Jobs.Model.Given<Commission.Jobs.Model.Words.DecisionRule>;

namespace Commission.Checks.Limits;

/// <summary>Where a job asks for more than the rule that belongs to a limit. It can make a limit guarded, never simple.</summary>
/// <param name="Rules">The job's choice; null when it makes none.</param>
internal sealed record DecisionRuleChoice(DecisionRules? Rules)
{
    /// <summary>The rule in force.</summary>
    /// <param name="group">First part of the limit's id.</param>
    /// <param name="own">The rule that belongs to the limit.</param>
    /// <returns>The stricter of both.</returns>
    public DecisionRule For(string group, DecisionRule own) =>
        (Of(group) ?? Rules?.All)?.Value == Jobs.Model.Words.DecisionRule.Guarded ? DecisionRule.Guarded : own;

    private Chosen? Of(string group) => group switch
    {
        "instruments" => Rules?.Instruments,
        "pressure-test" => Rules?.PressureTest,
        "evacuation" => Rules?.Evacuation,
        "charge" => Rules?.Charge,
        "air" => Rules?.Air,
        "compressor" => Rules?.Compressor,
        "electrical" => Rules?.Electrical,
        "piping" => Rules?.Piping,
        "safety" => Rules?.Safety,
        "refrigerant" => Rules?.Refrigerant,
        _ => null,
    };
}
