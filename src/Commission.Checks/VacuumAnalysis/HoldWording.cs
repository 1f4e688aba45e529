using Commission.Checks.Kernel;
using Commission.Checks.Wording;
using Commission.Measurement.Units;
using Commission.Messages;
using static Commission.Messages.EvacuationMessages;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>Says in plain words what a hold shows, without claiming more. The caller decides the units.</summary>
/// <param name="Pressure">A pressure or a rise in Pa as it is to be printed.</param>
/// <param name="Rate">A rate in Pa/s as it is to be printed.</param>
/// <param name="Scene">What stands around the hold.</param>
internal sealed record HoldWording(Func<double, QuantityValue> Pressure, Func<double, QuantityValue> Rate, HoldScene Scene)
{
    // What a crew can be asked to wait, s, and the steps it is told in; a hold again is worth it from half as long again.
    private const double LongestAdvised = 3 * 3600;
    private const double StepOfAdvice = 600;
    private const double Again = 1.5;

    // An hour shows most outgassing slow down (common practice, no source).
    private const double ToSeeSlowing = 3600;

    /// <summary>One or two sentences: what was seen and what it may be.</summary>
    /// <param name="result">The analysed hold.</param>
    public Message Statement(HoldResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.Conclusion switch
        {
            HoldConclusion.Held => Held(result),
            HoldConclusion.SteadyRise => Steady(result),
            HoldConclusion.Source => Source(result),
            HoldConclusion.SteadyRiseAndSource => ShapeBoth(Constant(result), Slope(result), Scene.Refrigerant, Scene.HasHeldRig ? ShapeBothRig.Held : ShapeBothRig.Open),
            _ => CannotTell(result),
        };
    }

    /// <summary>What to do next; null where the hold asks for nothing.</summary>
    /// <param name="result">The analysed hold.</param>
    /// <param name="isTight">Whether the nitrogen hold speaks against a hole to the outside.</param>
    /// <param name="isWater">Whether it runs towards the vapor pressure of water.</param>
    public Message? NextStep(HoldResult result, bool isTight = false, bool isWater = false)
    {
        ArgumentNullException.ThrowIfNull(result);
        var isSteady = result.Conclusion is HoldConclusion.SteadyRise or HoldConclusion.SteadyRiseAndSource;

        // Under a charge nobody pulls down again; only what may be a leak is still looked for.
        if (Scene.IsCharged)
            return isSteady || result.Reason == CannotTellReason.SpeedsUp ? ShapeSteadyChargedNext : null;
        return result.Conclusion switch
        {
            HoldConclusion.Held => null,
            HoldConclusion.SteadyRise when !result.ExcludesOutgassing => ShapeSteadyOpenNext(new(Advised(ToSeeSlowing, result.Length)), Scene.IsBesideChargedUnit ? ShapeSteadyOpenNextBehind.ChargedUnit : ShapeSteadyOpenNextBehind.Other),
            HoldConclusion.SteadyRise when isTight => ShapeSteadyTightNext(Scene.IsBesideChargedUnit ? ShapeSteadyTightNextBehind.ChargedUnit : ShapeSteadyTightNextBehind.Other),
            HoldConclusion.SteadyRise => ShapeSteadyNext(Scene.IsBesideChargedUnit ? ShapeSteadyNextBehind.ChargedUnit : ShapeSteadyNextBehind.Other),
            HoldConclusion.Source when isWater => WetNext,
            HoldConclusion.Source => ShapeSourceNext(Scene.IsBesideChargedUnit ? ShapeSourceNextBehind.ChargedUnit : ShapeSourceNextBehind.Other),
            HoldConclusion.SteadyRiseAndSource => ShapeBothNext,
            _ => result.Reason switch
            {
                CannotTellReason.Falling when result.IsTemperatureKnown => ShapeShapelessKnownNext,
                CannotTellReason.Falling => ShapeFallingNext,
                CannotTellReason.OverRange => ShapeOverRangeNext,
                CannotTellReason.SpeedsUp when result.SpedUpAfter is { } after => ShapeSpeedsUpLateNext(new(after)),
                CannotTellReason.SpeedsUp or CannotTellReason.NoCurveFits => result.IsTemperatureKnown ? ShapeShapelessKnownNext : ShapeShapelessNext,
                _ when result.TimeToTell is <= LongestAdvised and var time => ShapeLongerNext(new(Advised(time, result.Length))),
                CannotTellReason.NoRows => ShapeNoRowsNext,
                _ => ShapeOtherGaugeNext,
            },
        };
    }

    /// <summary>What to do about a circuit with water in it.</summary>
    public Message WetNext => ShapeWaterNext(Scene.IsBesideChargedUnit ? ShapeWaterNextBehind.ChargedUnit : ShapeWaterNextBehind.Other);

    // What anybody sees on the display is named, although it is less than counts.
    private Message Held(HoldResult result)
    {
        var counts = Pressure(result.CountingRise);
        if (result.Wander is { } range)
            return ShapeHeldWander(Pressure(range), new(result.Length), counts);
        if (result is { Slope: null, RiseSeen: < 0 and var fall })
            return ShapeHeldDrift(Pressure(-fall), new(result.Length), counts);
        var later = result.RiseSeen is { } rise && rise >= HoldScreening.LeastStepsSeen * result.Resolution && rise < result.CountingRise
            ? ShapeHeldRise(Pressure(rise), new(result.SpanSeen), result.Preferred == HoldModel.Source ? ShapeHeldRiseLevels.Off : ShapeHeldRiseLevels.On, counts)
            : ShapeHeld(UpperSlope(result) is { } most ? Rate(most) : counts, new(result.FirstRise is null ? result.Length : result.SpanSeen));
        return result.FirstRise is { } first ? ShapeHeldFirst(Pressure(first), new(result.Length - result.SpanSeen), later) : later;
    }

    private Message Steady(HoldResult result)
    {
        var steady = ShapeSteady(
            Slope(result), new(result.Length), result.SlowsDown ? ShapeSteadyBefore.Slowing : ShapeSteadyBefore.None, result.ExcludesOutgassing ? ShapeSteadyFirst.Inflow : ShapeSteadyFirst.Outgassing, Scene.Refrigerant,
            Scene.HasHeldRig ? ShapeSteadyRig.Held : ShapeSteadyRig.Open, Scene.IsBesideChargedUnit ? ShapeSteadyWalls.Bare : ShapeSteadyWalls.Oil);
        return result.SourcesExcludedUpTo is { } slower && result.ExcludesOutgassing ? ShapeSteadySlowSource(steady, new(slower)) : steady;
    }

    private static double Advised(double time, double held) => Math.Ceiling(Math.Max(time, Again * held) / StepOfAdvice) * StepOfAdvice;

    private static double? UpperSlope(HoldResult result) => result.Slope is { } s && double.IsFinite(s.High) && s.High > 0 ? s.High : null;

    private Message Source(HoldResult result)
    {
        var source = result.Preferred == HoldModel.Outgassing ? ShapeOutgassing : result.Plateau is { } plateau ? ShapeSourcePlateau(Bounds(plateau, Pressure), Constant(result)) : ShapeSource(Constant(result));
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
            CannotTellReason.LineOrSource when rise is not null && result.SlowsDown => ShapeSlowingOpen(rise, new(result.Length)),
            CannotTellReason.LineOrSource => rise is null ? ShapeSteadyOrSlowing(new(result.Length)) : ShapeSteadyOrSlowingSeen(rise, new(result.Length)),
            CannotTellReason.SourceWithOrWithoutLine => rise is null ? ShapeSlowingMaybeSteady : ShapeSlowingMaybeSteadySeen(rise),
            CannotTellReason.LineWithOrWithoutSource => rise is null ? ShapeSteadyMaybeSlowing : ShapeSteadyMaybeSlowingSeen(rise),
            CannotTellReason.Falling => result.Fall is { } fall ? ShapeFell(Pressure(fall.High), Pressure(fall.Low), new(fall.To - fall.From)) : ShapeFalling,
            CannotTellReason.SpeedsUp => result.SpedUpAfter is { } after ? ShapeSpeedsUpLate(new(after)) : ShapeSpeedsUp,
            CannotTellReason.NoCurveFits => ShapeNoCurve,
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

/// <summary>What stands around a hold and bears on what its shape may be, and on what can still be done.</summary>
/// <param name="IsBesideChargedUnit">Whether the section under vacuum ends at closed service valves that a charge stands behind; then no compressor's oil is in it.</param>
/// <param name="IsCharged">Whether the circuit holds its charge by now.</param>
/// <param name="HasHeldRig">Whether the rig was watched alone and held.</param>
internal sealed record HoldScene(bool IsBesideChargedUnit, bool IsCharged, bool HasHeldRig)
{
    /// <summary>Where refrigerant may come from.</summary>
    public Message Refrigerant => IsBesideChargedUnit ? GasFromValve : GasFromEither;
}

/// <summary>Vacuum levels, rises and rates in words: at least two digits that mean something, whatever the unit.</summary>
internal static class VacuumText
{
    private const int MostDecimals = 4;

    /// <summary>A level or a rise, with its unit.</summary>
    /// <param name="present">How the job prints numbers.</param>
    /// <param name="pascals">Pa.</param>
    public static string Level(Presentation present, double pascals) => Text(present, pascals, DisplayKind.Vacuum);

    /// <summary>A level or a rise, as a message carries it.</summary>
    /// <param name="present">How the job prints numbers.</param>
    /// <param name="pascals">Pa.</param>
    public static QuantityValue Value(Presentation present, double pascals) => Value(present, pascals, DisplayKind.Vacuum);

    /// <summary>A rate of rise, with its unit.</summary>
    /// <param name="present">How the job prints numbers.</param>
    /// <param name="pascalsPerSecond">Pa/s.</param>
    public static string Rate(Presentation present, double pascalsPerSecond) => Text(present, pascalsPerSecond, DisplayKind.VacuumRise);

    /// <summary>What a hold shows, in the job's units.</summary>
    /// <param name="present">How the job prints numbers.</param>
    /// <param name="scene">What stands around the hold.</param>
    public static HoldWording Wording(Presentation present, HoldScene scene) => new(p => Value(present, p, DisplayKind.Vacuum), r => Value(present, r, DisplayKind.VacuumRise), scene);

    private static string Text(Presentation present, double si, DisplayKind kind) => QuantityWriter.Instance.Write(Value(present, si, kind), Language.English);

    private static QuantityValue Value(Presentation present, double si, DisplayKind kind)
    {
        var size = Math.Abs(present.Value(si, kind));
        var decimals = size > 0 ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(size)), 0, MostDecimals) : Math.Min(1, present.Units[kind].Decimals);
        return present.Value(si, kind, decimals);
    }
}
