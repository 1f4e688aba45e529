using System.Globalization;
using Commission.Checks.Readings;
using Commission.Checks.Tables;
using Commission.Fluids;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>The charge as tonnes of carbon dioxide, and what the European regulation makes of it where its pack is named.</summary>
internal sealed class CarbonDioxideCheck : ICheck
{
    public string Id => "refrigerant.co2e";

    public string Phase => Phases.Refrigerant;

    public string Title => "Carbon-dioxide equivalent";

    public CheckHelp Help { get; } = new(
        "How many tonnes of carbon dioxide would the charge equal if it were let out? In Europe the leak checks follow from it.",
        $"{CarbonDioxideEquivalent.Formula}; leak checks every 12, 6 or 3 months from 5, 50 or 500 t of Annex I gases (10 t when hermetic and labelled), or from 1, 10 or 100 kg of Annex II gases, whichever is stricter; twice as long with leakage detection",
        "GWP: IPCC AR4; in the European Union AR4 for Annex I and AR6 for Annex II, Regulation (EU) 2024/573, articles 5 and annexes (from memory).",
        "Write on the label what the law asks for, enter the next leak check in the log-book, and fit leakage detection where it is prescribed.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var circuit = context.Get<CircuitRefrigerant>();
        var charge = context.Get<CircuitCharge>();
        if (circuit.Info is not { } info || (charge.Total is null && IsSilent(context)))
            yield break;
        yield return Tonnes(context, info, charge);
        if (context.Limits.Find("refrigerant.leak-check.interval") is { } limit && context.Get<EuropeanDuties>() is { Plan: { } plan } duties)
            yield return Checks(context, limit, duties, plan);
    }

    // An adjustment of a circuit that nobody weighed as a whole has no total, and need not have one unless the law asks.
    private static bool IsSilent(CheckContext context) => context.Job.Charging is not { } charging
        || (charging.UnitArrived is null && context.Job.Identity.Work.Value is WorkKind.ChargeAdjustment or WorkKind.SeasonalCheck && context.Limits.Find("refrigerant.leak-check.interval") is null);

    private Finding Tonnes(CheckContext context, RefrigerantInfo info, CircuitCharge charge)
    {
        var finding = context.Finding(this).Use("refrigerant", context.Job.Equipment.Refrigerant);
        if (charge.Total is not { } total)
            return finding.NotEvaluated($"the charge cannot be known: {charge.WhyNot}", "Write how the unit arrived, its factory charge and what was weighed in.");
        total.UseIn(finding);
        if (info.GwpAr4 is not { } potential)
            return finding.NotEvaluated($"the warming potential of {info.Designation} is not known here", "Take it from the cylinder's label or the regulation's annex.");
        var mass = context.Present.Text(total.Value.Value, DisplayKind.Mass);
        var tonnes = Of(total.Value, potential.Value);
        finding.Step("CO2e", "carbon-dioxide equivalent, AR4", CarbonDioxideEquivalent.Formula, string.Create(CultureInfo.InvariantCulture, $"{total.Value.Value:0.000} kg × {potential.Value:0.#} / 1000"), Text(tonnes), $"{potential.Source} ({potential.Mark})");
        var european = "";
        if (context.Get<EuropeanDuties>().Warming is { } warming)
        {
            if (warming.IsFluorinated)
            {
                var counted = Of(total.Value, warming.Potential);
                finding.Step("GWP_EU", "warming potential as the European Union counts it", "Σ share × GWP", warming.Formula, warming.Potential.ToString("0.0", CultureInfo.InvariantCulture), EuropeanWarming.Source)
                    .Step("CO2e_EU", "carbon-dioxide equivalent, European Union", CarbonDioxideEquivalent.Formula, string.Create(CultureInfo.InvariantCulture, $"{total.Value.Value:0.000} kg × {warming.Potential:0.0} / 1000"), Text(counted), EuropeanWarming.Source);
                if (Text(counted) != Text(tonnes))
                    european = string.Create(CultureInfo.InvariantCulture, $"; as the European Union counts it {Text(counted)} (GWP {warming.Potential:0.0})");
            }
            else
            {
                european = "; it is no fluorinated gas of the European regulation";
            }
        }

        return finding.Information(string.Create(CultureInfo.InvariantCulture, $"{mass} of {info.Designation} equal {Text(tonnes)} (AR4, GWP {potential.Value:0.#}){european}."), charge.IsWeighed ? "a number for label and log-book" : "a number for label and log-book, from the charge as written on the unit");
    }

    private Finding Checks(CheckContext context, Limits.Limit limit, EuropeanDuties duties, LeakCheckPlan plan)
    {
        var finding = context.Finding(this, "leak checks").Show(context.State(limit));
        duties.UseIn(finding);
        if (plan.Months is not { } months)
            return finding.Information($"No regular leak check is prescribed: {plan.Because}", "below the first step of both triggers");
        var detection = context.Job.Equipment.LeakDetectionSystem?.Value == true;
        if (plan.DetectionObligatory && !detection)
            finding.Next("Fit a leakage detection system that alerts the operator; it is prescribed from this step.");
        return finding.Information(
            string.Create(CultureInfo.InvariantCulture, $"A leak check is due every {months} months{(detection ? ", with leakage detection" : "")}: {plan.Because}{(plan.DetectionObligatory ? " A leakage detection system is prescribed." : "")}"),
            "both triggers were looked at: tonnes of Annex I gases, kilograms of Annex II gases");
    }

    private static Uncertain Of(Uncertain kilograms, double potential) => CarbonDioxideEquivalent.Tonnes(1, potential) * kilograms;

    private static string Text(Uncertain tonnes) => tonnes.Expanded >= 0.005
        ? string.Create(CultureInfo.InvariantCulture, $"{tonnes.Value:0.00} ± {tonnes.Expanded:0.00} t CO2e")
        : string.Create(CultureInfo.InvariantCulture, $"{tonnes.Value:0.00} t CO2e");
}
