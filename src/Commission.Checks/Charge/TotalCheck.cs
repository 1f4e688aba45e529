using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>What the circuit holds in the end: the number behind label, room size and leak-check duties.</summary>
internal sealed class TotalCheck : ICheck
{
    public string Id => "charge.total";

    public string Phase => Phases.Charge;

    public string Title => "Total charge";

    public CheckHelp Help { get; } = new(
        "How much refrigerant does the circuit hold in the end? Label, carbon-dioxide equivalent, room size for flammable refrigerants and leak-check duties all follow from it.",
        "total = factory charge + added − removed − left in hoses when the unit came charged; what the scale saw when it came empty",
        "Definition; the maker's total where the job gives one.",
        "Write how the unit arrived and the factory charge from its nameplate. When nobody knows what it held, recover everything and weigh the whole charge in.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Charging is null || context.Job.Identity.Work.Value == WorkKind.Decommissioning)
            yield break;
        var weighed = context.Get<WeighedCharge>();
        var finding = context.Finding(this);
        if (weighed.Total is not { } total)
        {
            if (context.Job.Charging.UnitArrived is not null || context.Job.Identity.Work.Value is not (WorkKind.SeasonalCheck or WorkKind.ChargeAdjustment))
                yield return finding.Use("unit arrived", context.Job.Charging.UnitArrived).NotEvaluated(weighed.WhyNoTotal!, "Write unit arrived and the factory charge; or recover, evacuate and weigh the whole charge in.");
            yield break;
        }

        total.UseIn(finding);
        if (weighed.Put is null)
            finding.Remark("Nothing added or removed is written.");
        finding.Measure(total.Value, DisplayKind.Mass);
        var text = context.Present.Text(total.Value, DisplayKind.Mass);
        if (context.Limits.Find("charge.total") is not { } limit)
        {
            yield return finding.Information($"The circuit holds {text} of {context.Get<CircuitSaturation>().Designation}.", "no total of the maker is written");
            yield break;
        }

        var state = limit is { Lower: null, Upper: null, Target: { } target } && ByWeightCheck.Tolerance(context, target.Si) is var (half, tolerance)
            ? context.State(limit) with
            {
                Text = $"{target.Text} ± {context.Present.Text(half, DisplayKind.Mass)}",
                LowerSi = target.Si - half,
                UpperSi = target.Si + half,
                Source = $"{limit.Source}; tolerance: {tolerance.Source}",
            }
            : context.State(limit);
        yield return finding.Remark(limit.Remark(context.Present.Units)).JudgeCharge(
            context, total.Value, DisplayKind.Mass, state, total.Readings, new ChargeGates(),
            $"The circuit holds {text}; the maker asks for {state.Text}.", "Add or recover the difference by weight, and write the new total on the unit.");
    }
}
