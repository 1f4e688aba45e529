using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.NitrogenAnalysis;

/// <summary>The nitrogen hold of a job, worked out once: its readings corrected, referred to the temperature at the start by the density of real nitrogen, and the loss with its causes.</summary>
internal sealed class NitrogenRun : IAnalysis<NitrogenRun>
{
    private const double Hour = 3600;

    private readonly CheckContext _context;

    private NitrogenRun(CheckContext context)
    {
        _context = context;
        Test = context.Job.PressureTest;
        if (Test?.Tightness is not { } hold)
        {
            WhyNot = PressureTestMessages.NoHold;
            return;
        }

        Hold = hold;
        Gauge = context.Get<InstrumentKit>().For(ReadingName.PressureTest, Test.With);
        Rows = NitrogenRows.Of(context, Test, hold);
        WhyNot = Rows.WhyNot;
        if (WhyNot is null)
            Compute();
    }

    /// <summary>The test; null when the job has none.</summary>
    public Jobs.Model.PressureTest? Test { get; }

    /// <summary>The hold; null when none is written.</summary>
    public PressureHold? Hold { get; }

    /// <summary>The gauge; null when the job names none.</summary>
    public UsedInstrument? Gauge { get; }

    /// <summary>The readings; null without a hold.</summary>
    public NitrogenRows? Rows { get; }

    /// <summary>Why there is no loss; null when there is.</summary>
    public Message? WhyNot { get; private set; }

    /// <summary>The loss between the ends; null when it cannot be computed.</summary>
    public NitrogenLoss? Loss { get; private set; }

    /// <summary>The first reading that was written by hand, whether as the start of the hold or as the first of its readings; null when there is none.</summary>
    public static HoldPoint? First(PressureHold hold) => hold.From ?? (hold.Readings.IsEmpty ? null : hold.Readings[0]);

    /// <summary>The log referred to the first temperature; null without a log.</summary>
    public NitrogenSeriesResult? Course { get; private set; }

    /// <inheritdoc/>
    public static NitrogenRun Create(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return new NitrogenRun(context);
    }

    /// <summary>Density of nitrogen, kg/m³; null outside the equation.</summary>
    /// <param name="kelvin">K.</param>
    /// <param name="pascals">Pa absolute.</param>
    public static double? Density(double kelvin, double pascals) => Nitrogen.Density(kelvin, pascals) is { Ok: true, Value: var rho } ? rho : null;

    private void Compute()
    {
        var rows = Rows!;
        var ends = rows.Ends;
        if (rows.IsLog)
        {
            Course = NitrogenSeries.Analyze(rows.Times, rows.Readings, Errors(rows), Density);
            ends = Course is { } course ? (Logged(PressureTestMessages.AtStart, course.Loss.Start, rows), Logged(PressureTestMessages.AtEnd, course.Loss.End, rows)) : null;
        }

        if (ends is { } e)
        {
            var gas = GasBesideClamp.Of(_context, Test!, Hold!, rows.Length, e.End.Temperature.Value - e.Start.Temperature.Value);
            Loss = NitrogenHold.Between(Doubted(PressureTestMessages.AtStart, e.Start, gas, rows, last: false), Doubted(PressureTestMessages.AtEnd, e.End, gas, rows, last: true), Density);
        }

        if (Loss is null)
            WhyNot = PressureTestMessages.OutsideNitrogen;
    }

    /// <summary>How long the gas had rested after filling when the hold began, s: as written, or from the clock; null when neither tells.</summary>
    /// <param name="test">The test.</param>
    /// <param name="hold">Its hold.</param>
    public static double? Settled(Jobs.Model.PressureTest test, PressureHold hold) =>
        First(hold)?.Settled?.Value.Si
        ?? (First(hold)?.At.Value.Clock is { } first && test.Started?.Value.Clock is { } began && first > began ? (first - began).TotalSeconds : null);

    // What no reading carries by itself: how well a gauge repeats, the gas beside the clamp, the weather over the hold.
    private NitrogenEnd Doubted(Message which, NitrogenEnd end, GasBesideClamp gas, NitrogenRows rows, bool last)
    {
        var repeat = _context.Causes.Enter(RootCause.FromHalfWidth(PressureTestMessages.CauseAt(PressureTestMessages.CauseRepeatability, which), PressureTestMessages.CauseShareOfScale, Repeatability(end.Reading.Gauge)), DisplayKind.PressureDifference);
        var terms = new List<RootTerm> { 1.0 * repeat };
        var warmth = new List<RootTerm> { 1.0 * Beside(PressureTestMessages.CauseAt(PressureTestMessages.CauseGasLessClamp, which), last ? gas.AtEnd : gas.AtStart) };
        if (last)
        {
            warmth.Add(1.0 * Beside(PressureTestMessages.CauseUnseenChange, gas.OfChange));
            warmth.Add(1.0 * Beside(PressureTestMessages.CauseElsewhere, gas.Elsewhere));
            if (AtmosphereChange(rows) is > 0 and var change)
                terms.Add(1.0 * _context.Causes.Enter(RootCause.FromHalfWidth(PressureTestMessages.CauseAirChange, PressureTestMessages.CauseWeather, change), DisplayKind.PressureDifference));
        }

        return new NitrogenEnd(end.Absolute + _context.Scope.Reading(0, [.. terms]), end.Temperature + _context.Scope.Reading(0, [.. warmth]), end.Atmosphere);
    }

    private RootCause Beside(Message name, double half) =>
        _context.Causes.Enter(RootCause.FromHalfWidth(name, PressureTestMessages.CausePosition, half), DisplayKind.TemperatureDifference);

    // The mean of many rows still has the accuracy and the step of one: neighbours share both.
    private NitrogenEnd Logged(Message which, NitrogenReading mean, NitrogenRows rows)
    {
        var terms = new List<RootTerm>();
        if (Gauge?.HalfWidth(mean.Gauge, Dimension.PressureDifference) is { } half)
            terms.AddRange(Gauge.Accuracy(half, ReadingName.PressureTest));
        if (Step(rows) is > 0 and var step)
            terms.Add(1.0 * _context.Causes.Enter(RootCause.FromResolution(PressureTestMessages.CauseAt(PressureTestMessages.CauseStep, which), PressureTestMessages.CauseStepOfLog, step), DisplayKind.PressureDifference));
        var gauge = _context.Scope.Reading(mean.Gauge, [.. terms]);
        var thermometer = _context.Get<InstrumentKit>().For(ReadingName.PressureTestTemperature, Test!.With);
        var warm = thermometer?.HalfWidth(mean.Temperature, Dimension.Temperature) is { } width
            ? _context.Scope.Reading(mean.Temperature, [.. thermometer.Accuracy(width, ReadingName.PressureTestTemperature)])
            : Uncertain.Exact(mean.Temperature);
        return new NitrogenEnd(rows.AreAbsolute ? gauge + mean.Atmosphere : gauge + _context.Get<SiteAtmosphere>().Value, warm, mean.Atmosphere);
    }

    private NitrogenErrors Errors(NitrogenRows rows) => new()
    {
        Resolution = Step(rows),
        Repeatability = Repeatability(rows.Readings[0].Gauge),
        AtmosphereChange = AtmosphereChange(rows),
        GasMinusClamp = GasBesideClamp.Of(_context, Test!, Hold!, rows.Length, rows.Readings[^1].Temperature - rows.Readings[0].Temperature).Largest,
    };

    private double Step(NitrogenRows rows) => Gauge?.ResolutionFor(Dimension.PressureDifference, rows.Readings[0].Gauge) ?? rows.Step;

    private double Repeatability(double gauge) => _context.Assume(LimitIds.AssumptionGaugeRepeatability) * (Gauge?.FullScaleSi ?? gauge);

    private double AtmosphereChange(NitrogenRows rows) => rows.AreAbsolute || rows.BarometerAtBothEnds
        ? 0
        : Math.Min(_context.Assume(LimitIds.AssumptionAtmosphereChange) * rows.Length / Hour, _context.Assume(LimitIds.AssumptionAtmosphereWeather) * Math.Sqrt(3));
}

/// <summary>
/// How far the mean temperature of the gas may lie from the clamps, half-widths, K. A pipe that has rested for an hour has the temperature of its gas; what stays is where
/// the clamps sit, and the part of a change between the ends that they did not see because other parts of the circuit stand elsewhere: the less of it, the more places were read.
/// </summary>
/// <param name="AtStart">At the first reading.</param>
/// <param name="AtEnd">At the last reading.</param>
/// <param name="OfChange">Of the change between them, once.</param>
/// <param name="Elsewhere">Of the change that other parts of the circuit went through while the clamps showed none: sun on one line, a warm room, once.</param>
internal sealed record GasBesideClamp(double AtStart, double AtEnd, double OfChange, double Elsewhere)
{
    private const double Rest = 3600;

    /// <summary>The doubt of one end that stands for all of it, K.</summary>
    public double Largest => Math.Max(Math.Max(AtStart, AtEnd), Math.Max(OfChange, Elsewhere));

    /// <summary>Reads it from the assumptions in force.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="test">The test.</param>
    /// <param name="hold">Its hold.</param>
    /// <param name="length">Length of the hold, s.</param>
    /// <param name="change">Change of the temperature over the hold, K.</param>
    public static GasBesideClamp Of(CheckContext context, Jobs.Model.PressureTest test, PressureHold hold, double length, double change)
    {
        var limit = context.Limits.Require(LimitIds.AssumptionNitrogenTemperature);
        var moving = limit.Target?.Si ?? 0;
        var resting = limit.Companion("at rest") ?? moving;
        var settled = NitrogenRun.Settled(test, hold) ?? 0;
        var (share, still) = Sight(hold) switch
        {
            ClampSight.ThreePlaces => ("of change at three places", "at three places"),
            ClampSight.BothLines => ("of change on both lines", "on both lines"),
            ClampSight.Shade => ("of change in the shade", "in the shade"),
            _ => ("of change", "at one place"),
        };
        return new GasBesideClamp(
            settled >= Rest ? resting : moving, settled + length >= Rest ? resting : moving, (limit.Companion(share) ?? 0) * Math.Abs(change), limit.Companion(still) ?? 0);
    }

    // The sun warms a pipe in one place and not in another, and air is no pipe.
    private static ClampSight Sight(PressureHold hold)
    {
        if (hold.Shaded?.Value != true || hold.TemperatureTaken?.Value == TemperaturePlace.Air)
            return ClampSight.OnePlace;
        var places = Math.Min(hold.From?.Temperature.Length ?? 1, hold.To?.Temperature.Length ?? 1);
        return places >= 3 ? ClampSight.ThreePlaces
            : places == 2 || hold.TemperatureTaken?.Value == TemperaturePlace.BothLines ? ClampSight.BothLines
            : ClampSight.Shade;
    }

    private enum ClampSight
    {
        OnePlace,
        Shade,
        BothLines,
        ThreePlaces,
    }
}

/// <summary>A nitrogen hold that was logged: pressures and temperatures row by row.</summary>
internal static class NitrogenSeries
{
    private const double Window = 300;
    private const double LargestShare = 0.1;

    /// <summary>
    /// Loss over a log. Rows within the first and last five minutes (at most a tenth of the time each) are averaged; what stays doubtful
    /// (temperature, repeatability, step) is not made smaller by that, because neighbouring rows share it.
    /// </summary>
    /// <param name="times">Times, s, rising.</param>
    /// <param name="readings">One reading a row.</param>
    /// <param name="errors">What makes the readings doubtful.</param>
    /// <param name="density">Density of nitrogen, kg/m³, at a temperature (K) and an absolute pressure (Pa); null outside its range.</param>
    /// <returns>The loss; null with fewer than three rows, or readings outside the range of the density.</returns>
    /// <exception cref="ArgumentException">The lists differ in length: a fault of the caller.</exception>
    public static NitrogenSeriesResult? Analyze(
        IReadOnlyList<double> times, IReadOnlyList<NitrogenReading> readings, NitrogenErrors errors, Func<double, double, double?> density)
    {
        ArgumentNullException.ThrowIfNull(times);
        ArgumentNullException.ThrowIfNull(readings);
        if (times.Count != readings.Count)
            throw new ArgumentException("Times and readings must have the same length.", nameof(readings));
        if (times.Count < 3)
            return null;

        var window = Math.Min(Window, LargestShare * (times[^1] - times[0]));
        var start = Mean(readings, times, t => t <= times[0] + window);
        var end = Mean(readings, times, t => t >= times[^1] - window);
        if (NitrogenHold.Between(start, end, errors, density) is not { } loss)
            return null;

        var referred = new double[times.Count];
        for (var i = 0; i < referred.Length; i++)
        {
            if (NitrogenHold.Refer(readings[i].Absolute, readings[i].Temperature, start.Temperature, density) is not { } p)
                return null;
            referred[i] = p;
        }

        var middle = (times[0] + times[^1]) / 2;
        var half = Mean(readings, times, t => Math.Abs(t - middle) <= Math.Max(window / 2, NearestTo(times, middle)));
        var firstHalf = NitrogenHold.Between(start, half, errors, density)?.Loss.Value;
        var secondHalf = NitrogenHold.Between(half, end, errors, density)?.Loss.Value;
        if (firstHalf is not { } a || secondHalf is not { } b)
            return null;
        return new NitrogenSeriesResult(loss, [.. times], [.. referred], a, b);
    }

    private static double NearestTo(IReadOnlyList<double> times, double middle) => times.Min(t => Math.Abs(t - middle));

    private static NitrogenReading Mean(IReadOnlyList<NitrogenReading> readings, IReadOnlyList<double> times, Func<double, bool> inside)
    {
        var (gauge, air, kelvin, n) = (0.0, 0.0, 0.0, 0);
        for (var i = 0; i < readings.Count; i++)
        {
            if (!inside(times[i]))
                continue;
            gauge += readings[i].Gauge;
            air += readings[i].Atmosphere;
            kelvin += readings[i].Temperature;
            n++;
        }

        return new NitrogenReading(gauge / n, air / n, kelvin / n);
    }
}

/// <summary>A nitrogen hold that was logged.</summary>
/// <param name="Loss">From the mean of the first rows to the mean of the last.</param>
/// <param name="Times">Times of the rows, s.</param>
/// <param name="Referred">Absolute pressure of each row referred to the first temperature, Pa: flat for a tight system.</param>
/// <param name="FirstHalf">Loss over the first half of the time, share of the charge.</param>
/// <param name="SecondHalf">Loss over the second half, share of the charge.</param>
internal sealed record NitrogenSeriesResult(
    NitrogenLoss Loss,
    ImmutableArray<double> Times,
    ImmutableArray<double> Referred,
    double FirstHalf,
    double SecondHalf)
{
    /// <summary>True when the first half shows a loss and the second at most a quarter of it: gas that was still cooling from
    /// filling, or oil taking up nitrogen, rather than a leak.</summary>
    public bool LooksLikeSettling => FirstHalf > Loss.DecisionThreshold && SecondHalf < FirstHalf / 4;
}
