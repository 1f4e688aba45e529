using Commission.Messages;
using static Commission.Messages.EvacuationMessages;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>Says in plain words what a hold shows, without claiming more. The caller decides the units.</summary>
/// <param name="Pressure">A pressure or a rise in Pa as it is to be printed.</param>
/// <param name="Rate">A rate in Pa/s as it is to be printed.</param>
internal sealed record HoldWording(Func<double, QuantityValue> Pressure, Func<double, QuantityValue> Rate)
{
    // Below two steps a display may only have changed its last digit.
    private const double LeastStepsSeen = 2;

    /// <summary>One or two sentences: what was seen and what it may be.</summary>
    /// <param name="result">The analysed hold.</param>
    public Message Statement(HoldResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.Conclusion switch
        {
            HoldConclusion.Held => Held(result),
            HoldConclusion.SteadyRise => result.SourcesExcludedUpTo is { } slower
                ? ShapeSteadySlowSource(Slope(result), new(result.Length), new(slower))
                : ShapeSteady(Slope(result), new(result.Length)),
            HoldConclusion.Source => Source(result),
            HoldConclusion.SteadyRiseAndSource => ShapeBoth(Constant(result), Slope(result)),
            _ => CannotTell(result),
        };
    }

    /// <summary>What to do next; null where the hold asks for nothing.</summary>
    /// <param name="result">The analysed hold.</param>
    public static Message? NextStep(HoldResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.Conclusion switch
        {
            HoldConclusion.Held => null,
            HoldConclusion.SteadyRise => ShapeSteadyNext,
            HoldConclusion.Source => ShapeSourceNext,
            HoldConclusion.SteadyRiseAndSource => ShapeBothNext,
            _ => result.Reason switch
            {
                CannotTellReason.Falling => ShapeFallingNext,
                CannotTellReason.OverRange => ShapeOverRangeNext,
                _ when result.TimeToTell is { } time => ShapeLongerNext(new(time)),
                CannotTellReason.NoRows => ShapeNoRowsNext,
                _ => ShapeOtherGaugeNext,
            },
        };
    }

    // A rise that anybody sees on the display is named, although it is less than counts.
    private Message Held(HoldResult result) => result.RiseSeen is { } rise && rise >= LeastStepsSeen * result.Resolution && rise < result.CountingRise
        ? ShapeHeldRise(Pressure(rise), new(result.Length), result.Preferred is HoldModel.Source or HoldModel.LineAndSource ? ShapeHeldRiseLevels.Off : ShapeHeldRiseLevels.On, Pressure(result.CountingRise))
        : ShapeHeld(UpperSlope(result) is { } most ? Rate(most) : Pressure(result.CountingRise), new(result.Length));

    private static double? UpperSlope(HoldResult result) => result.Slope is { } s && double.IsFinite(s.High) && s.High > 0 ? s.High : null;

    private Message Source(HoldResult result)
    {
        var source = result.Plateau is { } plateau ? ShapeSourcePlateau(Bounds(plateau, Pressure), Constant(result)) : ShapeSource(Constant(result));
        return UpperSlope(result) is { } most ? ShapeSourceLineBeneath(source, Rate(most)) : source;
    }

    private Message CannotTell(HoldResult result)
    {
        var rise = result.RiseSeen is { } seen and > 0 ? Pressure(seen) : null;
        return result.Reason switch
        {
            CannotTellReason.NoRows => ShapeNoRows,
            CannotTellReason.TooFewBlocks => ShapeTooFewBlocks(new(result.Length), result.Blocks),
            CannotTellReason.ScatterHidesRise => ShapeScatter(Pressure(result.CountingRise)),
            CannotTellReason.LineOrSource => rise is null ? ShapeSteadyOrSlowing(new(result.Length)) : ShapeSteadyOrSlowingSeen(rise, new(result.Length)),
            CannotTellReason.SourceWithOrWithoutLine => rise is null ? ShapeSlowingMaybeSteady : ShapeSlowingMaybeSteadySeen(rise),
            CannotTellReason.LineWithOrWithoutSource => rise is null ? ShapeSteadyMaybeSlowing : ShapeSteadyMaybeSlowingSeen(rise),
            CannotTellReason.Falling => ShapeFalling,
            CannotTellReason.OverRange => ShapeOverRange,
            _ => ShapeUnknown,
        };
    }

    private Message Slope(HoldResult result) => result.Slope is { } slope ? Bounds(slope, Rate) : SlopeUnknown;

    private static Message Constant(HoldResult result) => result.TimeConstant is { } constant ? Spans(constant) : ConstantUnknown;

    private static Message Bounds(Interval interval, Func<double, QuantityValue> print) => (double.IsFinite(interval.Low), double.IsFinite(interval.High)) switch
    {
        (true, true) => BoundsBetween(print(interval.Value), print(interval.Low), print(interval.High)),
        (true, false) => BoundsAtLeast(print(interval.Value), print(interval.Low)),
        (false, true) => BoundsAtMost(print(interval.Value), print(interval.High)),
        _ => BoundsNone(print(interval.Value)),
    };

    private static Message Spans(Interval interval) => (double.IsFinite(interval.Low), double.IsFinite(interval.High)) switch
    {
        (true, true) => SpanBetween(new(interval.Value), new(interval.Low), new(interval.High)),
        (true, false) => SpanAtLeast(new(interval.Value), new(interval.Low)),
        (false, true) => SpanAtMost(new(interval.Value), new(interval.High)),
        _ => SpanNoBounds(new(interval.Value)),
    };
}
