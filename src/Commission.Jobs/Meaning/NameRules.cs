using Commission.Jobs.Model;
using Commission.Jobs.Problems;
using Commission.Source;

namespace Commission.Jobs.Meaning;

/// <summary>Short names that refer to something must find it.</summary>
internal static class NameRules
{
    public static void Check(RuleContext context)
    {
        var job = context.Job;
        var instruments = job.Instruments.Select(i => i.Id?.Value).OfType<string>().ToArray();
        foreach (var name in InstrumentNames(job)) Known(context, name, instruments, "an instrument", "instruments");
        if (job.Cylinders.Length > 0)
        {
            var cylinders = job.Cylinders.Select(c => c.Id?.Value).OfType<string>().ToArray();
            foreach (var name in (Given<string>?[])[job.Recovery?.Cylinder, job.Recovery?.Scale?.Cylinder, .. job.Charging?.Scale.Select(s => s.Cylinder) ?? []])
                Known(context, name, cylinders, "a cylinder", "cylinders");
        }

        if (job.Equipment is not { } equipment) return;
        var units = equipment.Indoor.Select(i => i.Id?.Value).Concat(equipment.BranchBoxes.Select(b => b.Id?.Value)).OfType<string>().Append("outdoor").ToArray();
        if (units.Length == 1) return;
        foreach (var run in equipment.Piping)
        {
            Known(context, run.To, units, "an indoor unit or branch box", "equipment");
            Known(context, run.From, units, "an indoor unit or branch box", "equipment");
        }
    }

    private static IEnumerable<Given<string>?> InstrumentNames(Job job) =>
    [
        .. job.PressureTest?.With ?? [],
        .. job.PressureTest?.Joints.SelectMany(j => j.With) ?? [],
        .. job.Recovery?.With ?? [],
        .. job.Evacuation?.With ?? [],
        .. job.Charging?.With ?? [],
        .. job.Air?.With ?? [],
        .. job.Air?.Airflow?.With ?? [],
        .. job.Electrical?.With ?? [],
        .. job.PipingChecks?.Flares.SelectMany(f => f.With) ?? [],
        .. job.Safety?.Flammable?.AreaCheckedWith ?? [],
        .. job.LeakCheck?.With ?? [],
        .. job.Instruments.Select(i => i.Checks?.Pair?.With),
        .. job.Instruments.Select(i => i.Checks?.AgainstSecondGauge?.With),
    ];

    private static void Known(RuleContext context, Given<string>? name, string[] known, string what, string list)
    {
        if (name is null || known.Contains(name.Value, StringComparer.Ordinal)) return;
        var nearest = NearestName.Of(name.Value, known);
        var advice = (known.Length, nearest) switch
        {
            (0, _) => $"List it under {list}.",
            (_, null) => $"Under {list} there are {ValueText.OneOf(known)}.",
            _ => $"Did you mean \"{nearest}\"?",
        };
        context.Complain(name, $"\"{name.Value}\" is not {what} of this job.", "", advice, "unknown-name");
    }
}
