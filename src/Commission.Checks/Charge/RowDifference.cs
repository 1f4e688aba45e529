using Commission.Checks.Limits;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>The way of a check that judges one temperature difference of a settled row by one limit.</summary>
internal static class RowDifference
{
    /// <summary>Judges it.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="check">The check that speaks.</param>
    /// <param name="row">The row.</param>
    /// <param name="number">The difference.</param>
    /// <param name="limit">The limit; null when nobody sets one, and then the number is information.</param>
    /// <param name="words">The difference in words, at the start of a sentence.</param>
    /// <param name="gates">What the judgement rests on besides.</param>
    /// <param name="high">What to do when it is too high.</param>
    /// <param name="low">What to do when it is too low.</param>
    /// <param name="subject">What the finding is about; null takes the time of the row.</param>
    /// <param name="unlimited">Why nobody sets a limit, where that is known.</param>
    public static Finding Judge(
        CheckContext context, ICheck check, ChargeRow row, RowNumber number, Limit? limit, string words, ChargeGates gates, string high, string low, string? subject = null, string? unlimited = null)
    {
        var finding = context.Finding(check, subject ?? row.Time).Use(number);
        if (number.Value is not { } value)
            return finding.NotEvaluated(number.WhyNot!, "Take the reading beside the others.");
        finding.Measure(value, DisplayKind.TemperatureDifference);
        gates.NameIn(finding);
        var text = context.Present.Text(value, DisplayKind.TemperatureDifference);
        if (limit is null || (limit.Lower is null && limit.Upper is null))
            return finding.Information($"{words} was {text} at {row.Time}.", unlimited ?? "nobody sets a limit for this system");
        if (gates.Blocked is var (why, todo))
            return finding.Say($"{words} was {text} at {row.Time} and is not judged: {why}.").NotEvaluated(why, todo);
        var state = context.State(limit);
        return finding.Remark(limit.Remark(context.Present.Units)).JudgeCharge(
            context, value, DisplayKind.TemperatureDifference, state, number.Readings, gates,
            $"{words} was {text} at {row.Time}; {state.Text} is asked for.",
            value.Value > (state.UpperSi ?? double.PositiveInfinity) ? high : low);
    }
}
