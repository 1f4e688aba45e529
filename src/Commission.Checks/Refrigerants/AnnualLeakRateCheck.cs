using System.Globalization;
using Commission.Checks.Charge;
using Commission.Checks.Tables;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>The leak rate since refrigerant was last added, scaled to a year.</summary>
internal sealed class AnnualLeakRateCheck : ICheck
{
    public string Id => "refrigerant.leak-rate";

    public string Phase => Phases.Refrigerant;

    public string Title => "Leak rate";

    public CheckHelp Help { get; } = new(
        "How much of its charge does the circuit lose in a year, judged by what had to be added since the last time?",
        $"{LeakRepair.RateFormula}; a span longer than a year counts as one",
        "40 CFR 82.152, annualising method (from memory); triggers 10 % comfort cooling, 20 % commercial and 30 % industrial refrigeration: 40 CFR 82.157 and 84.106 (published).",
        "Find and repair the leak within 30 days, verify the repair at once and again after the system has run, and keep the records.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var work = context.Job.Identity.Work.Value;
        var charging = context.Job.Charging;
        if (charging is null || work is WorkKind.NewInstallation or WorkKind.RefrigerantChange or WorkKind.Decommissioning)
            yield break;
        var limit = context.Limits.Find("refrigerant.leak-rate.trigger");
        if (charging.PreviousAddition is null && limit is null)
            yield break;
        var finding = context.Finding(this).Use("previous addition", charging.PreviousAddition).Use("date of the job", context.Job.Identity.Date).Use("work", context.Job.Identity.Work);
        var ledger = context.Get<RefrigerantLedger>();
        if (ledger.Net is not { } added)
        {
            if (!ledger.Movements.IsEmpty || charging.PreviousAddition is not null)
                yield return finding.NotEvaluated("the mass added is not written", "Write the scale readings, or the mass added.");
            yield break;
        }

        foreach (var movement in ledger.Movements)
            movement.Mass!.UseIn(finding);
        yield return Judge(context, finding, limit, added);
    }

    private Finding Judge(CheckContext context, Findings.FindingBuilder finding, Limits.Limit? limit, Uncertain added)
    {
        var present = context.Present;
        var charging = context.Job.Charging!;
        if (added.Value <= 0)
            return finding.Information("No more went in than came out: nothing was lost since the last time by weight.", "no refrigerant was added");
        if (charging.PreviousAddition is not { } previous)
            return finding.NotEvaluated("it is not written when refrigerant was last added", "Write previous addition: and the date from the log-book.");
        if (context.Get<CircuitCharge>().Full is not { } full)
            return finding.NotEvaluated("the full charge is not written", "Write the factory charge, or the total on the label.");
        full.UseIn(finding);
        var days = context.Job.Identity.Date.Value.DayNumber - previous.Value.DayNumber;
        if (days < 1)
            return finding.NotEvaluated("the previous addition is not before the day of the job", "Correct the date of the previous addition.");
        var rate = Uncertain.Apply((a, f) => LeakRepair.AnnualisedRate(a, f, days), added, full.Value);
        finding.Step(
            "r", "leak rate", LeakRepair.RateFormula,
            string.Create(CultureInfo.InvariantCulture, $"{present.Text(added.Value, DisplayKind.Mass)} / {present.Text(full.Value.Value, DisplayKind.Mass)} × 365 / {Math.Min(days, 365)} × 100 %"),
            present.Text(rate, DisplayKind.Percentage), LeakRepair.RateSource);
        var said = string.Create(CultureInfo.InvariantCulture, $"{present.Text(added.Value, DisplayKind.Mass)} in {days} days: {present.Text(rate.Value, DisplayKind.Percentage)} of the charge in a year");
        var rule = context.Get<UnitedStatesRule>();
        if (limit is null || rule.Rule is null or LeakRepairRule.None)
            return finding.Measure(rate, DisplayKind.Percentage).Information($"{said}.", limit is null ? "no pack sets a trigger" : "the circuit falls under no leak-repair rule");
        finding.Use("system", context.Job.Equipment.System).Use("application", context.Job.Equipment.Application).Use("refrigerant", context.Job.Equipment.Refrigerant)
            .Judge(rate, DisplayKind.Percentage, context.State(limit));
        return finding.Passes
            ? finding.Say($"{said}, below the trigger of {UnitedStatesRule.Words(rule.Rule.Value)}.").Build()
            : finding.Say($"{said}: above the trigger of {UnitedStatesRule.Words(rule.Rule.Value)}.").Next(Help.WhenItFails).Build();
    }
}
