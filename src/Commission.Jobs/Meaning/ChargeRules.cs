using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Meaning;

/// <summary>Masses that do not add up, and the one thing a new installation must say.</summary>
internal static class ChargeRules
{
    public static void Check(RuleContext context)
    {
        var job = context.Job;
        foreach (var given in Masses(job))
        {
            if (given is { Value.Si: < 0 }) context.Complain(given, $"A mass of {given.Text} is below zero.", "", "Write it without the minus sign; what was taken out stands under removed.", "impossible");
        }

        if (job.Recovery?.Scale is { } recovered && recovered.After?.Value.Si < recovered.Before?.Value.Si)
            context.Complain(recovered.After, $"The recovery cylinder became lighter: {recovered.Before.Text} before, {recovered.After.Text} after.", "", "Check whether they are swapped.", "impossible");
        foreach (var cylinder in job.Cylinders)
        {
            if (cylinder is { Tare: { } tare, Before: { } gross } && gross.Value.Si < tare.Value.Si)
                context.Complain(gross, $"The cylinder weighs {gross.Text}, less than its tare {tare.Text}.", "", "Write gross masses: cylinder and refrigerant together.", "impossible");
        }

        if (job.Charging is not { } charging) return;
        foreach (var scale in charging.Scale)
        {
            if (scale.After?.Value.Si > scale.Before?.Value.Si)
                context.Complain(scale.After, $"The cylinder became heavier: {scale.Before.Text} before, {scale.After.Text} after.", "", "Check whether they are swapped; what was taken out stands under removed.", "impossible");
        }

        if (charging.Added is { } added && charging.Scale.Length > 0)
            context.Complain(added, "The mass added is written twice: as added and as scale readings.", "", "Keep the scale readings.", "duplicate-key");
        if (charging.UnitArrived is null && job.Identity?.Work is { Value: WorkKind.NewInstallation } && job.Equipment?.System is { Value: not SystemKind.Packaged })
        {
            context.Problems.Add(charging.Origin, "The charging of a new installation does not say \"unit arrived\".", "The scale sees the whole charge or only what was added, depending on it.",
                "Write unit arrived: charged, nitrogen holding charge, recovered and evacuated, or unknown.", "missing-key");
        }

        foreach (var change in charging.Events)
        {
            if (change is { Added: null, Removed: null, Note: null })
                context.Problems.Add(change.Origin, "This event says nothing.", "", "Write added, removed or note.", "no-figure");
        }
    }

    private static IEnumerable<Given<Mass>?> Masses(Job job) =>
    [
        job.Recovery?.Mass,
        job.Charging?.Added,
        job.Charging?.Removed,
        job.Charging?.LeftInHoses,
        .. job.Charging?.Scale.SelectMany(s => new[] { s.Before, s.After }) ?? [],
        .. job.Charging?.Events.SelectMany(e => new[] { e.Added, e.Removed }) ?? [],
        .. job.Cylinders.SelectMany(c => new[] { c.WaterCapacity, c.Tare, c.Before, c.After }),
        job.AsFound?.ChargeRecovered,
        job.Label?.Factory,
        job.Label?.Total,
    ];
}
