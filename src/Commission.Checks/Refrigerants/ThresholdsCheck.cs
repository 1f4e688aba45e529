using System.Globalization;
using Commission.Checks.Charge;
using Commission.Checks.Tables;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>Whether the circuit falls under a leak-repair rule of the United States, where their pack is named.</summary>
internal sealed class ThresholdsCheck : ICheck
{
    public string Id => "refrigerant.thresholds";

    public string Phase => Phases.Refrigerant;

    public string Title => "Leak-repair rules";

    public CheckHelp Help { get; } = new(
        "Does the circuit fall under one of the leak-repair rules of the United States?",
        "ozone-depleting: full charge ≥ 50 lb; substitute with GWP (AR4) above 53 from 1 January 2026: full charge ≥ 15 lb, residential and light-commercial air conditioning and heat pumps excepted",
        "40 CFR 82.157 and 40 CFR 84.106 (published).",
        "Write the full charge (label, or factory charge and what was weighed in). Under a rule the leak rate is worked out at every addition, and records are kept.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Limits.Find("refrigerant.leak-rate.threshold") is not { } limit)
            yield break;
        var rule = context.Get<UnitedStatesRule>();
        var equipment = context.Job.Equipment;
        var finding = context.Finding(this).Show(context.State(limit)).Use("refrigerant", equipment.Refrigerant).Use("system", equipment.System).Use("application", equipment.Application).Use("date of the job", context.Job.Identity.Date);
        if (context.Get<CircuitCharge>().Full is not { } full)
        {
            yield return finding.NotEvaluated("the full charge is not written", "Write the factory charge, or the total on the label.");
            yield break;
        }

        full.UseIn(finding);
        if (rule.Rule is not { } applies || rule.Potential is not { } potential)
        {
            yield return finding.NotEvaluated("the warming potential is not known here", "Take it from the regulation's tables.");
            yield break;
        }

        var facts = string.Create(
            CultureInfo.InvariantCulture,
            $"full charge {context.Present.Text(full.Value.Value, DisplayKind.Mass)}, GWP {potential:0.#}, {(rule.IsOzoneDepleting ? "ozone-depleting" : "not ozone-depleting")}{(rule.IsExemptSubsector ? ", residential and light-commercial air conditioning or heat pump" : "")}");
        yield return finding.Measure(full.Value, DisplayKind.Mass).Information(
            applies == LeakRepairRule.None ? $"The circuit falls under {UnitedStatesRule.Words(applies)}: {facts}." : $"The circuit falls under {UnitedStatesRule.Words(applies)}: {facts}. The leak rate is worked out at every addition.",
            "what the rules count");
    }
}
