namespace Commission.Checks.VacuumAnalysis;

/// <summary>Says in plain words what a hold shows, without claiming more. Numbers are written by the caller's formatters.</summary>
/// <param name="Pressure">Writes a pressure or a rise in Pa with its unit.</param>
/// <param name="Rate">Writes a rate in Pa/s with its unit.</param>
/// <param name="Duration">Writes a time in s with its unit.</param>
public sealed record HoldWording(Func<double, string> Pressure, Func<double, string> Rate, Func<double, string> Duration)
{
    /// <summary>One or two sentences: what was seen and what it may be.</summary>
    /// <param name="result">The analysed hold.</param>
    public string Statement(HoldResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.Conclusion switch
        {
            HoldConclusion.Held => result.Slope is { } s && double.IsFinite(s.High) && s.High > 0
                ? $"Held: no rise above {Rate(s.High)} seen over {Duration(result.Length)}."
                : $"Held: no rise above {Pressure(result.CountingRise)} seen over {Duration(result.Length)}.",
            HoldConclusion.SteadyRise => SteadyRise(result),
            HoldConclusion.Source => Source(result),
            HoldConclusion.SteadyRiseAndSource =>
                $"A rise that slows down, time constant {Tau(result)}, onto a steady rise of {Slope(result)}. "
                + "The first may be water, oil or outgassing; the steady part air coming in, the rig, or refrigerant passing a valve or leaving the oil.",
            _ => CannotTell(result),
        };
    }

    /// <summary>What to do next; null where the hold asks for nothing.</summary>
    /// <param name="result">The analysed hold.</param>
    public string? NextStep(HoldResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.Conclusion switch
        {
            HoldConclusion.Held => null,
            HoldConclusion.SteadyRise =>
                "Blank off the rig and watch it alone, then close the service valves and hold again: what stays tells the rig, a valve and the circuit apart. Find the place under nitrogen pressure.",
            HoldConclusion.Source =>
                "Warm the coldest part, break with dry nitrogen, pull down again and repeat the hold: a lower plateau means drying.",
            HoldConclusion.SteadyRiseAndSource =>
                "Blank off the rig and watch it alone; break with dry nitrogen, pull down again and repeat the hold: the part that slows should shrink, the steady part stays until its cause is found.",
            _ => result.Reason switch
            {
                CannotTellReason.Falling => "Record the temperature at both ends and hold again.",
                CannotTellReason.OverRange => "The rise is far beyond any limit: look for the leak under nitrogen pressure.",
                _ when result.TimeToTell is { } time => $"Hold again for at least {Duration(time)}.",
                CannotTellReason.NoRows => "Log the hold at steps of 10 s or less, from isolation to its end.",
                _ => "A longer hold with this gauge would not tell within a day: use a gauge with smaller steps or less scatter.",
            },
        };
    }

    private string SteadyRise(HoldResult result)
    {
        var slower = result.SourcesExcludedUpTo is { } tau
            ? $" A source with a time constant above {Duration(tau)} would look the same."
            : string.Empty;
        return $"A steady rise of {Slope(result)}, no slowing seen over {Duration(result.Length)}: "
            + $"air coming in, the rig, or refrigerant passing a valve or leaving the oil.{slower}";
    }

    private string Source(HoldResult result)
    {
        var plateau = result.Plateau is { } p
            ? $" towards {Pressure(p.Value)} ({Bounds(p, Pressure)})"
            : string.Empty;
        var beneath = result.Slope is { } s && double.IsFinite(s.High) && s.High > 0
            ? $" A steady rise of up to {Rate(s.High)} could lie beneath it."
            : string.Empty;
        return $"A rise that slows down{plateau}, time constant {Tau(result)}: water, oil or outgassing.{beneath}";
    }

    private string CannotTell(HoldResult result) => result.Reason switch
    {
        CannotTellReason.NoRows => "Cannot tell: the log has no usable readings after isolation.",
        CannotTellReason.TooFewBlocks =>
            $"Cannot tell the cause: the readings wander so slowly that {Duration(result.Length)} hold only {result.Blocks} independent ones.",
        CannotTellReason.ScatterHidesRise =>
            $"Cannot tell: a rise of {Pressure(result.CountingRise)} over the hold could hide in the scatter of the readings.",
        CannotTellReason.LineOrSource =>
            $"A rise{Seen(result)}; cannot tell whether it is steady or slowing down: over {Duration(result.Length)} both look alike.",
        CannotTellReason.SourceWithOrWithoutLine =>
            $"A rise that slows down{Seen(result)}; cannot tell whether a steady rise lies beneath it.",
        CannotTellReason.LineWithOrWithoutSource =>
            $"A rise{Seen(result)}, at least partly steady; cannot tell whether a part of it slows down.",
        CannotTellReason.Falling =>
            "Cannot tell: the pressure fell by more than its scatter. Temperature, gauge or absorption may do that, and a rise could hide behind it.",
        CannotTellReason.OverRange => "Cannot tell the cause: the pressure rose above the range of the gauge.",
        _ => "Cannot tell.",
    };

    private string Seen(HoldResult result) => result.RiseSeen is { } rise && rise > 0 ? $" of {Pressure(rise)}" : string.Empty;

    private string Slope(HoldResult result) => result.Slope is { } s ? $"{Rate(s.Value)} ({Bounds(s, Rate)})" : "unknown size";

    private string Tau(HoldResult result) =>
        result.TimeConstant is { } t ? $"{Duration(t.Value)} ({Bounds(t, Duration)})" : "unknown";

    private static string Bounds(Interval interval, Func<double, string> write) =>
        (double.IsFinite(interval.Low), double.IsFinite(interval.High)) switch
        {
            (true, true) => $"95 %: {write(interval.Low)} to {write(interval.High)}",
            (true, false) => $"95 %: at least {write(interval.Low)}",
            (false, true) => $"95 %: at most {write(interval.High)}",
            _ => "no bounds from this hold",
        };
}
