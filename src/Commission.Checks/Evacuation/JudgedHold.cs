using Commission.Checks.EvacuationAnalysis;
using Commission.Measurement.Uncertainty;

namespace Commission.Checks.Evacuation;

/// <summary>What of a hold is held against a limit: the highest pressure until the stated time, or why there is none.</summary>
/// <param name="Highest">Highest pressure until the stated time; null when there is none to be judged.</param>
/// <param name="IsAboveRange">Whether the pressure rose above the gauge's range, and so above the level, before the stated time.</param>
/// <param name="WhyNot">Why nothing can be judged; null when it can.</param>
/// <param name="Todo">What would make it possible; null when it is.</param>
/// <param name="Reservation">What the judgement rests on and was not shown; null when nothing.</param>
internal sealed record JudgedHold(Uncertain? Highest, bool IsAboveRange, string? WhyNot, string? Todo, string? Reservation)
{
    /// <summary>Reads a hold.</summary>
    /// <param name="run">The evacuation.</param>
    /// <param name="decay">The hold as read for the stated time.</param>
    /// <param name="level">The level that must not be passed, Pa.</param>
    public static JudgedHold Of(EvacuationRun run, DecayReading decay, double level)
    {
        if (decay.OverRangeRows > 0 && HasShown(run.Rows.Series, level))
            return new JudgedHold(null, true, null, null, null);
        if (decay is not { Highest: { } value, HighestAt: { } at })
            return Not("there is no reading between isolation and the stated time", "Log the hold, or write the level at isolation and the level after the stated time.");
        var highest = run.Rows.At(at) ?? Uncertain.Exact(value);
        if (value > level)
            return new JudgedHold(highest, false, null, null, null);
        if (decay.OverRangeRows > 0)
            return Not("the gauge went over its range and has never shown the limit itself", "Use a gauge whose range holds the limit.");
        if (decay.Reached)
            return new JudgedHold(highest, false, null, null, BetweenTwo(run, decay, level));
        return run.Parts.HoldEnd < decay.Due ? EndsEarly(run, decay, highest) : AfterGap(run, decay, level, highest);
    }

    private static JudgedHold Not(string why, string todo) => new(null, false, why, todo, null);

    // A hold that ends within one step of its log before the stated time has lasted as long as the log can tell.
    private static JudgedHold EndsEarly(EvacuationRun run, DecayReading decay, Uncertain highest)
    {
        var asked = EvacuationClock.Span(decay.Due - run.Parts.Isolation!.Value);
        return decay.Due - run.Parts.HoldEnd <= run.Slack
            ? new JudgedHold(highest, false, null, null, null)
            : Not($"the hold ended after {EvacuationClock.Span(decay.HoldLength)}, and {asked} are asked", $"Hold again for at least {asked} after the valve is closed.");
    }

    // The next reading bounds what the gap hides, as far as a closed vacuum only rises.
    private static JudgedHold AfterGap(EvacuationRun run, DecayReading decay, double level, Uncertain highest)
    {
        var series = run.Rows.Series;
        var next = series.IndexAtOrAfter(decay.Due);
        if (next >= series.Count || series.Times[next] > run.Parts.HoldEnd || series.OverRange[next] || series.Pressures[next] > level)
            return Not("the log has a gap at the stated time", "Hold again, with a log that does not stop.");
        return new JudgedHold(
            series.Pressures[next] > highest.Value ? run.Rows.Row(next) : highest, false, null, null,
            $"the log has a gap at the stated time; the next reading, {EvacuationClock.Span(series.Times[next] - decay.Due)} later, stands for it");
    }

    // Levels by hand far apart: a rise that slows down may have passed the limit between two of them although the straight line did not.
    private static string? BetweenTwo(EvacuationRun run, DecayReading decay, double level)
    {
        var series = run.Rows.Series;
        var next = series.IndexAtOrAfter(decay.Due);
        return run.Rows.Log is null && next < series.Count && series.Times[next] > decay.Due && series.Pressures[next] > level
            ? $"the pressure at the stated time lies between two readings, and the later one, {EvacuationClock.Span(series.Times[next] - decay.Due)} after it, is above the limit"
            : null;
    }

    // A gauge that has shown the limit itself and then goes over range is above it.
    private static bool HasShown(VacuumSeries series, double level)
    {
        for (var i = 0; i < series.Count; i++)
        {
            if (!series.OverRange[i] && series.Pressures[i] >= level)
                return true;
        }

        return false;
    }
}
