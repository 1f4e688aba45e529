using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;

namespace Commission.Jobs.Meaning;

/// <summary>Times that run backwards.</summary>
internal static class TimeRules
{
    public static void Check(RuleContext context)
    {
        if (context.Job.PressureTest is { } test)
        {
            Rising(context, test.Stages.Select(s => s.At));
            if (test.Tightness is { } hold)
            {
                Rising(context, hold.Readings.Select(r => r.At));
                if (hold is { From.At: { } from, To.At: { } to } && Compare(to, from) <= 0)
                {
                    context.Complain(to, $"The hold ends at {to.Text}, {(Compare(to, from) == 0 ? "when it starts" : $"before it starts at {from.Text}")}.", "",
                        "Correct the times; a hold that ends on another day needs the date: 2026-06-19 08:10.", "time-order");
                }
            }
        }

        if (context.Job.Evacuation is { } evacuation)
            Evacuation(context, evacuation);
        if (context.Job.Charging is { } charging)
        {
            Rising(context, charging.Readings.Select(r => r.At));
            Rising(context, charging.Events.Select(e => e.At));
            if (charging is { CrankcaseHeaterOnSince: { } heater, CompressorStarted: { } start } && Compare(heater, start) > 0)
                context.Complain(heater, $"The crankcase heater was on since {heater.Text}, after the compressor was started at {start.Text}.", "", "Write the date with it: 2026-06-17 18:00.", "time-order");
        }

        Rising(context, context.Job.AsFound?.Readings.Select(r => r.At) ?? []);
    }

    private static void Evacuation(RuleContext context, Evacuation evacuation)
    {
        var times = evacuation.Events.Select(e => e.At).Concat(evacuation.Levels.Select(l => l.At));
        if (evacuation.Started is null && evacuation.Series?.Data?.Start is null && (evacuation.Series is not null || times.All(t => t is null)))
        {
            context.Problems.Add(evacuation.Origin, "The evacuation does not say when it was started.", "", "Write started: and the clock time, such as started: \"09:25\".", "missing-key");
        }

        if (evacuation.Started is { } started)
        {
            foreach (var happened in evacuation.Events)
            {
                if (happened.At is not { } at || Compare(at, started) >= 0)
                    continue;
                var what = happened.What?.Value switch
                {
                    EvacuationEventKind.Isolated => "The circuit was isolated",
                    EvacuationEventKind.End => "The evacuation ended",
                    _ => "This happened",
                };
                context.Complain(at, $"{what} at {at.Text}, before the pump was started at {started.Text}.", "", "Correct the times; write the date with a time of another day.", "time-order");
            }

            foreach (var level in evacuation.Levels)
            {
                if (level.At is { } at && Compare(at, started) < 0)
                    context.Complain(at, $"This level was read at {at.Text}, before the pump was started at {started.Text}.", "", "Correct the times; write the date with a time of another day.", "time-order");
            }
        }

        var told = EndBeforeIsolated(context, evacuation);

        // What precedes the start was told above; here only the order among themselves.
        if (!told)
            Rising(context, evacuation.Events.Select(e => e.At).Where(t => evacuation.Started is null || Compare(t, evacuation.Started) >= 0));
        Rising(context, evacuation.Levels.Select(l => l.At).Where(t => evacuation.Started is null || Compare(t, evacuation.Started) >= 0));
    }

    private static bool EndBeforeIsolated(RuleContext context, Evacuation evacuation)
    {
        var isolated = evacuation.Events.LastOrDefault(e => e.What?.Value == EvacuationEventKind.Isolated)?.At;
        var end = evacuation.Events.FirstOrDefault(e => e.What?.Value == EvacuationEventKind.End)?.At;
        if (isolated is null || end is null || Compare(end, isolated) >= 0)
            return false;
        context.Complain(end, $"The hold ended at {end.Text}, before the circuit was isolated at {isolated.Text}.", "", "Correct the times.", "time-order");
        return true;
    }

    private static void Rising(RuleContext context, IEnumerable<Given<JobTime>?> times)
    {
        Given<JobTime>? last = null;
        foreach (var time in times)
        {
            if (time is null)
                continue;
            if (last is not null && Compare(time, last) < 0)
                context.Complain(time, $"{time.Text} comes after {last.Text} in the list and is earlier.", "", "Put the entries in the order of time, or correct the time.", "time-order");
            else
                last = time;
        }
    }

    // Elapsed with elapsed, clock with clock; two times that cannot be compared are taken as in order.
    private static int Compare(Given<JobTime> a, Given<JobTime> b)
    {
        if (a?.Value is not { } first || b?.Value is not { } second)
            return 0;
        if (first.Clock is { } x && second.Clock is { } y)
            return x.CompareTo(y);
        return first.Elapsed is { } p && second.Elapsed is { } q ? p.Si.CompareTo(q.Si) : 0;
    }
}
