using Commission.Jobs.Model;

namespace Commission.Jobs.Meaning;

/// <summary>Instruments: their names, their calibration dates, the cylinder they were checked on.</summary>
internal static class InstrumentRules
{
    public static void Check(RuleContext context)
    {
        foreach (var instrument in context.Job.Instruments)
        {
            if (instrument.Calibrated is { } calibrated && context.Job.Identity?.Date is { } date && calibrated.Value > date.Value)
            {
                context.Complain(calibrated, $"The calibration of {calibrated.Text} lies after the job's date {date.Text}.", "", "Check the year.", "date");
            }

            if (instrument.Checks?.CheckWeight is { Applied.Value.Si: <= 0 } weight)
                context.Complain(weight.Applied, $"A check weight of {weight.Applied.Text} weighs nothing.", "", "Write its mass.", "impossible");
        }

        Twice(context, context.Job.Instruments.Select(i => i.Id), "instrument");
        Twice(context, context.Job.Equipment?.Indoor.Select(i => i.Id) ?? [], "indoor unit");
        Twice(context, context.Job.Equipment?.BranchBoxes.Select(b => b.Id) ?? [], "branch box");
        Twice(context, context.Job.Cylinders.Select(c => c.Id), "cylinder");
    }

    private static void Twice(RuleContext context, IEnumerable<Given<string>?> ids, string what)
    {
        var seen = new Dictionary<string, Given<string>>(StringComparer.OrdinalIgnoreCase);
        foreach (var id in ids)
        {
            if (id is null || seen.TryAdd(id.Value, id)) continue;
            context.Complain(id, $"Two {what}s are called \"{id.Value}\"; the first is in {Where(seen[id.Value], id)}.", "", "Give one of them another name.", "duplicate-id");
        }
    }

    private static string Where(Given<string> first, Given<string> second) =>
        first.At.File == second.At.File ? FormattableString.Invariant($"line {first.At.Line}") : first.At.ToString();
}
