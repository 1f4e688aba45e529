using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Messages;

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
                    context.Complain(to, Compare(to, from) == 0 ? RulesMessages.HoldWithoutLength(new(to.Text)) : RulesMessages.HoldBackward(new(to.Text), new(from.Text)), null,
                        RulesMessages.HoldNext, "time-order");
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
                context.Complain(heater, RulesMessages.LateHeater(new(heater.Text), new(start.Text)), null, RulesMessages.LateHeaterNext, "time-order");
        }

        Rising(context, context.Job.AsFound?.Readings.Select(r => r.At) ?? []);
    }

    private static void Evacuation(RuleContext context, Evacuation evacuation)
    {
        var times = evacuation.Events.Select(e => e.At).Concat(evacuation.Levels.Select(l => l.At));
        if (evacuation.Started is null && evacuation.Series?.Data?.Start is null && (evacuation.Series is not null || times.All(t => t is null)))
            context.Problems.Add(evacuation.Origin, RulesMessages.NoPumpStart, null, RulesMessages.NoPumpStartNext(new("started: \"09:25\"")), "missing-key");

        if (evacuation.Started is { } started)
        {
            foreach (var happened in evacuation.Events)
            {
                if (happened.At is not { } at || Compare(at, started) >= 0)
                    continue;
                var what = happened.What?.Value switch
                {
                    EvacuationEventKind.Isolated => RulesMessages.BeforePumpWhat.Isolated,
                    EvacuationEventKind.End => RulesMessages.BeforePumpWhat.End,
                    _ => RulesMessages.BeforePumpWhat.Other,
                };
                context.Complain(at, RulesMessages.BeforePump(what, new(at.Text), new(started.Text)), null, RulesMessages.DateOfAnotherDay, "time-order");
            }

            foreach (var level in evacuation.Levels)
            {
                if (level.At is { } at && Compare(at, started) < 0)
                    context.Complain(at, RulesMessages.LevelBeforePump(new(at.Text), new(started.Text)), null, RulesMessages.DateOfAnotherDay, "time-order");
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
        context.Complain(end, RulesMessages.EndBeforeIsolated(new(end.Text), new(isolated.Text)), null, RulesMessages.CorrectTimes, "time-order");
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
                context.Complain(time, RulesMessages.Times(new(time.Text), new(last.Text)), null, RulesMessages.TimesNext, "time-order");
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
