using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>The leak check on the running system: how it was made, with what, and when the next is due.</summary>
internal sealed class AfterStartLeakCheck : ICheck
{
    public string Id => "refrigerant.leak-check";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var second = context.Get<SecondCheck>();
        var isTold = false;
        if (context.Job.LeakCheck is { } check)
        {
            var found = Found(context, check, second);
            isTold = second.State == SecondCheckState.ToCome && found.Verdict is Verdict.Conditional;
            yield return found;
        }

        if (!isTold && AfterRepair(context, second) is { } repaired)
            yield return repaired;
        if (context.Job.LeakCheck is { } last && NextDue(context, last) is { } next)
            yield return next;
    }

    private Finding Found(CheckContext context, LeakCheck check, SecondCheck second)
    {
        var detector = context.Get<InstrumentKit>().FirstOf(check.With);
        var sensitivity = check.Sensitivity ?? detector?.Described.Sensitivity;
        var finding = context.Finding(this).Use("result", check.Result, detector?.Id).Use("method", check.Method, detector?.Id).Use("kind", check.Kind).Use("date", check.Date).Use("sensitivity", sensitivity, detector?.Id);
        TextValue day = new(check.Date.Text), how = new(check.Method?.Text ?? check.Kind?.Text ?? "");
        if (check.Result.Value == LeakResult.Leak)
            return finding.Decide(false).Say(RefrigerantMessages.LeakCheckLeak(day)).Next(this.WhenItFails()).Build();
        if (check is { Method: null, Kind: null })
            return finding.NotEvaluated(RefrigerantMessages.LeakCheckHowUnknown, RefrigerantMessages.LeakCheckHowUnknownNext, "leak check: {method: bubble solution}");
        var repaired = check.Result.Value == LeakResult.LeakRepaired;
        var isElectronic = check.Method?.Value is LeakMethod.Electronic or LeakMethod.ElectronicWithTracer;
        if (isElectronic && sensitivity is not null && context.Limits.Find(LimitIds.RefrigerantLeakCheckSensitivity) is { } limit)
        {
            // What the detector can show is no reading of the circuit: the search found a leak or none.
            TextValue finest = new(sensitivity.Text);
            finding.Decide(sensitivity.Value.Si <= limit.Most.Si, context.State(limit));
            if (finding.Passes)
            {
                finding.Say(RefrigerantMessages.LeakCheckNoneFrom(repaired ? RefrigerantMessages.LeakCheckNoneFromState.Repaired : RefrigerantMessages.LeakCheckNoneFromState.Tight, day, how, finest));
            }
            else
            {
                finding.Say(RefrigerantMessages.LeakCheckCoarse(repaired ? RefrigerantMessages.LeakCheckCoarseState.Repaired : RefrigerantMessages.LeakCheckCoarseState.Tight, day, how, finest))
                    .Next(RefrigerantMessages.LeakCheckCoarseNext);
            }
        }
        else
        {
            finding.Decide(true).Say(RefrigerantMessages.LeakCheckNone(repaired ? RefrigerantMessages.LeakCheckNoneState.Repaired : RefrigerantMessages.LeakCheckNoneState.Tight, day, how));
            if (isElectronic)
                finding.Reserve(RefrigerantMessages.LeakCheckSensitivityNotWritten).Next(RefrigerantMessages.LeakCheckSensitivityNotWrittenNext);
        }

        if (check.Kind?.Value == LeakCheckKind.Indirect || check.Method?.Value == LeakMethod.Indirect)
            finding.Reserve("it was checked indirectly, from readings, only").Next("Check the joints directly, with bubbles or a detector.");
        if (repaired && second.State == SecondCheckState.NotAsked)
            finding.Reserve("a leak was repaired; the repair is checked again after the system has run").Next("Check the repair again within a month, after a day of running.");
        // One line for the search of the day and for the one that is still to come: a repair is not proved by half of it.
        if (second.State == SecondCheckState.ToCome && finding.Passes)
            ToCome(context, second.UseIn(finding), second).Remark(second.Sentence);
        return finding.Build();
    }

    private Finding? AfterRepair(CheckContext context, SecondCheck second)
    {
        if (second.State == SecondCheckState.NotAsked)
            return null;
        var finding = second.UseIn(context.Finding(this, "after repair")).Use("result", context.Job.LeakCheck?.Result);
        switch (second.State)
        {
            case SecondCheckState.NotOwed:
                return finding.Show(context.State(second.Limit)).Information(second.Sentence);
            case SecondCheckState.ToCome:
                return ToCome(context, finding.Decide(true, context.State(second.Limit)).Say(second.Sentence), second).Build();
            default:
                finding.Step("t", "latest day of the check", "repair + time allowed", second.Span, Text(second.Latest), second.Limit.Source).Decide(second.IsInTime, context.State(second.Limit));
                if (second.Running is { } running)
                    finding.Show(context.State(running));
                if (finding.Passes && second.AreHoursUnknown)
                    finding.Reserve(RefrigerantMessages.LeakRecheckHoursUnknown).Next(RefrigerantMessages.LeakRecheckHoursUnknownNext, "running for: 24 h");
                return finding.Conclude(second.Sentence, second.Sentence, RefrigerantMessages.LeakRecheckLateNext);
        }
    }

    private static FindingBuilder ToCome(CheckContext context, FindingBuilder finding, SecondCheck second)
    {
        if (second.Running is { } running)
            finding.Show(context.State(running));
        return finding.Reserve(second.Why).Next(second.Next);
    }

    private Finding? NextDue(CheckContext context, LeakCheck check)
    {
        if (context.Limits.Find(LimitIds.RefrigerantLeakCheckInterval) is not { } limit || context.Get<EuropeanDuties>() is not { Plan: { } plan } duties)
            return null;
        var finding = context.Finding(this, "next check").Use("date", check.Date).Use("next due", check.NextDue);
        duties.UseIn(finding);
        if (plan.Months is not { } months)
            return finding.Information($"No regular leak check is prescribed: {plan.Because}", "below the first step");
        var due = check.Date.Value.AddMonths(months);
        finding.Step("due", "next leak check", "date + interval", string.Create(CultureInfo.InvariantCulture, $"{check.Date.Text} + {months} months"), Text(due), duties.Citation);
        if (check.NextDue is not { } written)
            return finding.Show(context.State(limit)).Information($"The next leak check is due by {Text(due)}. {plan.Because}", "no date is written in the job");
        finding.Decide(written.Value <= due, context.State(limit));
        TextValue day = new(written.Text), last = new(Text(due));
        return finding.Conclude(
            written.Value == due ? RefrigerantMessages.LeakCheckNextLastDay(day) : RefrigerantMessages.LeakCheckNextInTime(day, last),
            RefrigerantMessages.LeakCheckNextLate(day, last, new(plan.Because)),
            RefrigerantMessages.LeakCheckNextLateNext);
    }

    private static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

/// <summary>The leak rate since refrigerant was last added, scaled to a year.</summary>
internal sealed class AnnualLeakRateCheck : ICheck
{
    public string Id => "refrigerant.leak-rate";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var work = context.Job.Identity.Work.Value;
        var charging = context.Job.Charging;
        if (charging is null || work is WorkKind.NewInstallation or WorkKind.RefrigerantChange or WorkKind.Decommissioning)
            yield break;
        var limit = context.Limits.Find(LimitIds.RefrigerantLeakRateTrigger);
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

    private Finding Judge(CheckContext context, FindingBuilder finding, Limits.Limit? limit, Uncertain added)
    {
        var present = context.Present;
        var charging = context.Job.Charging!;
        if (added.Value <= 0)
            return finding.Information("No more went in than came out: nothing was lost since the last time by weight.", "no refrigerant was added");
        if (charging.PreviousAddition is not { } previous)
            return finding.NotEvaluated(RefrigerantMessages.LeakRateNoAddition, RefrigerantMessages.LeakRateNoAdditionNext, "charging: {previous addition: 2025-09-30}");
        if (context.Get<CircuitCharge>().Full is not { } full)
            return finding.NotEvaluated("the full charge is not written", "Write the factory charge, or the total on the label.");
        full.UseIn(finding);
        var days = context.Job.Identity.Date.Value.DayNumber - previous.Value.DayNumber;
        if (days < 1)
            return finding.NotEvaluated("the previous addition is not before the day of the job", "Correct the date of the previous addition.");
        var rate = Uncertain.Apply((a, f) => LeakRepair.AnnualisedRate(a, f, days), added, full.Value);
        finding.Step(
            "r", "leak rate", LeakRepair.RateFormula,
            string.Create(CultureInfo.InvariantCulture, $"{present.Text(added.Value, DisplayKind.Mass)} / {present.Text(full.Value.Value, DisplayKind.Mass)} × {LeakRepair.DaysInYear} / {Math.Min(days, LeakRepair.DaysInYear)} × 100 %"),
            present.Text(rate, DisplayKind.Percentage), LeakRepair.RateSource);
        var said = RefrigerantMessages.LeakRateSaid(
            present.InMessage(added.Value, DisplayKind.Mass), days, days > LeakRepair.DaysInYear ? RefrigerantMessages.LeakRateSaidSpan.Longer : RefrigerantMessages.LeakRateSaidSpan.Within, present.InMessage(rate.Value, DisplayKind.Percentage));
        var rule = context.Get<UnitedStatesRule>();
        if (limit is null || rule.Rule is null or LeakRepairRule.None)
            return finding.Measure(rate, DisplayKind.Percentage).Information(RefrigerantMessages.LeakRateTold(said), limit is null ? "no pack sets a trigger" : "the circuit falls under no leak-repair rule");
        finding.Use("system", context.Job.Equipment.System).Use("application", context.Job.Equipment.Application).Use("refrigerant", context.Job.Equipment.Refrigerant)
            .Judge(rate, DisplayKind.Percentage, context.State(limit));
        return finding.Conclude(
            RefrigerantMessages.LeakRateBelow(said, new(UnitedStatesRule.Words(rule.Rule.Value))),
            RefrigerantMessages.LeakRateAbove(said, new(UnitedStatesRule.Words(rule.Rule.Value))),
            this.WhenItFails());
    }
}

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
    public static string Words(LeakRepairRule rule) => rule switch
    {
        LeakRepairRule.Section82157 => "40 CFR 82.157",
        LeakRepairRule.Section84106 => "40 CFR 84.106",
        _ => "no leak-repair rule",
    };
}
