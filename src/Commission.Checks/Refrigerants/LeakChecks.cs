using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
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

    public string Title => "Leak check after start";

    public CheckHelp Help { get; } = new(
        "Was the filled circuit searched for leaks once it was in service, with a method that sees a small leak and a detector that was itself checked? When is the next check due?",
        "result none; sensitivity of the detector at most the pack's; detector checked within the pack's interval; after a repair: again within the pack's time, with the system run for the time asked; next due at most the interval after this one",
        "Regulation (EU) 2024/573, articles 4(5) and 5, and Regulation (EC) 1516/2007, articles 6 and 10 (published); before March 2024 Regulation (EU) 517/2014 (a month after repair published, else from memory).",
        "Mark the place, recover, repair, test with nitrogen and check again. Search with a detector made for the gas or with bubbles, never with a flame.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.LeakCheck is { } check)
        {
            var detector = check.With.IsDefaultOrEmpty ? null : check.With.Select(w => context.Get<InstrumentKit>().Find(w.Value)).FirstOrDefault(i => i is not null);
            yield return Found(context, check, detector);
            if (Detector(context, check, detector) is { } tested)
                yield return tested;
        }

        if (AfterRepair(context) is { } repaired)
            yield return repaired;
        if (context.Job.LeakCheck is { } last && NextDue(context, last) is { } next)
            yield return next;
    }

    private Finding Found(CheckContext context, LeakCheck check, UsedInstrument? detector)
    {
        var sensitivity = check.Sensitivity ?? detector?.Described.Sensitivity;
        var finding = context.Finding(this).Use("result", check.Result, detector?.Id).Use("method", check.Method, detector?.Id).Use("kind", check.Kind).Use("date", check.Date).Use("sensitivity", sensitivity, detector?.Id);
        var how = check.Method is { } method ? $" by {method.Text}" : "";
        if (check.Result.Value == LeakResult.Leak)
            return finding.Decide(false).Say($"The check of {check.Date.Text}{how} found a leak.").Next(Help.WhenItFails).Build();
        if (check is { Method: null, Kind: null })
            return finding.NotEvaluated("neither the method nor the kind of check is written", "Write the method: bubble solution, electronic, indirect.");
        var repaired = check.Result.Value == LeakResult.LeakRepaired;
        var isElectronic = check.Method?.Value is LeakMethod.Electronic or LeakMethod.ElectronicWithTracer;
        if (isElectronic && sensitivity is not null && context.Limits.Find(LimitIds.RefrigerantLeakCheckSensitivity) is { } limit)
        {
            finding.Judge(Uncertain.Exact(sensitivity.Value.Si), DisplayKind.LeakRate, context.State(limit));
            finding.Say(finding.Passes
                ? $"No leak left on {check.Date.Text}{how}, which sees {sensitivity.Text}."
                : $"No leak left on {check.Date.Text}{how}, but it sees no less than {sensitivity.Text}.");
            if (!finding.Passes)
                finding.Next("Search again with a finer detector.");
        }
        else
        {
            finding.Decide(true).Say($"No leak {(repaired ? "left" : "found")} on {check.Date.Text}{how}.");
            if (isElectronic)
                finding.Reserve("the detector's sensitivity is not written").Next("Write the detector's sensitivity.");
        }

        if (check.Kind?.Value == LeakCheckKind.Indirect || check.Method?.Value == LeakMethod.Indirect)
            finding.Reserve("it was checked indirectly, from readings, only").Next("Check the joints directly, with bubbles or a detector.");
        if (repaired && context.Limits.Find(LimitIds.RefrigerantLeakCheckRecheck) is null)
            finding.Reserve("a leak was repaired; the repair is checked again after the system has run").Next("Check the repair again within a month, after a day of running.");
        return finding.Build();
    }

    private Finding? Detector(CheckContext context, LeakCheck check, UsedInstrument? detector)
    {
        if ((check.DetectorChecked ?? detector?.Described.Calibrated) is not { } last || context.Limits.Find(LimitIds.InstrumentsLeakDetectorInterval) is not { Upper: { } months } limit)
            return null;
        var due = last.Value.AddMonths((int)months.Si);
        var finding = context.Finding(this, "detector").Use("detector checked", last, detector?.Id).Use("date", check.Date)
            .Step("due", "next check of the detector", "checked + interval", $"{last.Text} + {months.Text}", Text(due), limit.Source)
            .Decide(due >= check.Date.Value && last.Value <= check.Date.Value, context.State(limit));
        return finding.Conclude(
            $"The detector was checked on {last.Text}.",
            $"The detector was checked on {last.Text}, too long before or only after the leak check of {check.Date.Text}.",
            "Check the detector on a reference leak and repeat the search.");
    }

    // What the law asks for after a leak was repaired, of equipment that it has checked for leaks: a second look once the system has run. It is owed
    // whether or not anybody wrote of it; smaller equipment owes none.
    private Finding? AfterRepair(CheckContext context)
    {
        var job = context.Job;
        var check = job.LeakCheck;
        var isRepair = job.Identity.Work.Value == WorkKind.LeakRepair;
        if (context.Limits.Find(LimitIds.RefrigerantLeakCheckRecheck) is not { Upper: { } months } limit || check?.Result.Value == LeakResult.Leak
            || !(isRepair || check?.Result.Value == LeakResult.LeakRepaired || check?.AfterRepair?.Value == true))
            return null;
        var repair = check is { Result.Value: LeakResult.LeakRepaired } && !isRepair ? check.Date : job.Identity.Date;
        var latest = repair.Value.AddMonths((int)months.Si);
        var duties = context.Get<EuropeanDuties>();
        var finding = context.Finding(this, "after repair").Use("work", job.Identity.Work).Use("date", check?.Date).Use("date of the job", job.Identity.Date).Use("after repair", check?.AfterRepair).Use("result", check?.Result).Use("running for", check?.RunningFor);
        duties.UseIn(finding);
        if (duties.Plan is { Months: null } free)
            return finding.Show(context.State(limit)).Information(RefrigerantMessages.LeakRecheckNotOwed(new TextValue(free.Because)));
        finding.Step("t", "latest day of the check", "repair + time allowed", $"{repair.Text} + {months.Text}", Text(latest), limit.Source);
        if (check is null || check.AfterRepair?.Value == false || (check.AfterRepair is null && check.Date.Value <= repair.Value))
            return ToCome(context, finding.Decide(true, context.State(limit)), duties.Plan is null ? RefrigerantMessages.LeakRecheckUnknown : RefrigerantMessages.LeakRecheckOpen, latest);
        finding.Decide(check.Date.Value <= latest && check.Date.Value >= repair.Value, context.State(limit));
        return finding.Passes && Running(context) is { } running ? JudgeRunning(context, finding.Show(context.State(running)), check, running, latest) : Checked(finding, check, latest);
    }

    // The regulation before asked for no running time.
    private static Limit? Running(CheckContext context) =>
        context.Get<EuropeanDuties>().Edition == FluorinatedGasEdition.Regulation517Of2014 ? null : context.Limits.Find(LimitIds.RefrigerantLeakCheckRecheckRunning);

    private static Finding JudgeRunning(CheckContext context, FindingBuilder finding, LeakCheck check, Limit running, DateOnly latest)
    {
        if (check.RunningFor is { } ran && ran.Value.Si < running.Lower!.Si)
            return ToCome(context, finding, RefrigerantMessages.LeakRecheckTooEarly(new TextValue(ran.Text)), latest);
        if (check.RunningFor is null)
            finding.Reserve(RefrigerantMessages.LeakRecheckHoursUnknown).Next(RefrigerantMessages.LeakRecheckHoursUnknownNext, "running for: 24 h");
        return Checked(finding, check, latest);
    }

    private static Finding Checked(FindingBuilder finding, LeakCheck check, DateOnly latest) => finding.Conclude(
        check.RunningFor is { } ran ? RefrigerantMessages.LeakRecheckDoneAfter(check.Date.Value, new TextValue(ran.Text)) : RefrigerantMessages.LeakRecheckDone(check.Date.Value),
        RefrigerantMessages.LeakRecheckLate(check.Date.Value, latest),
        RefrigerantMessages.LeakRecheckLateNext);

    private static Finding ToCome(CheckContext context, FindingBuilder finding, Message why, DateOnly latest)
    {
        finding.Reserve(why);
        return Running(context) is { Lower: { } hours } running
            ? finding.Show(context.State(running)).Say(RefrigerantMessages.LeakRecheckToCome(new TextValue(hours.Text), latest)).Next(RefrigerantMessages.LeakRecheckNext(new TextValue(hours.Text), latest)).Build()
            : finding.Say(RefrigerantMessages.LeakRecheckToComeBy(latest)).Next(RefrigerantMessages.LeakRecheckNextBy(latest)).Build();
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
        return finding.Conclude(
            $"The next leak check is written for {written.Text}, due by {Text(due)}.",
            $"The next leak check is written for {written.Text}; it is due by {Text(due)}. {plan.Because}",
            "Enter the earlier date in the log-book.");
    }

    private static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

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
        return finding.Conclude(
            $"{said}, below the trigger of {UnitedStatesRule.Words(rule.Rule.Value)}.",
            $"{said}: above the trigger of {UnitedStatesRule.Words(rule.Rule.Value)}.",
            Help.WhenItFails);
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
