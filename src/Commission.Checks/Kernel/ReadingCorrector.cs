using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Corrections;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;
using Commission.Source;

namespace Commission.Checks.Kernel;

/// <summary>
/// Turns what was written down into what is judged: removes zero offsets and ice-point residuals, applies a point-to-point
/// correction where its reference carries an uncertainty, takes off the bias of a pipe clamp, makes gauge pressures
/// absolute, and attaches the root causes that stay (JCGM 100, 4.3 and 5). Each correction is a step of the trace.
/// </summary>
internal sealed class ReadingCorrector
{
    private readonly CheckContext _context;
    private readonly Dictionary<(SourceLocation Place, ReadingName Name, bool HasAmbient), CorrectedReading> _done = [];

    internal ReadingCorrector(CheckContext context) => _context = context;

    /// <summary>A refrigerant or nitrogen pressure, corrected and made absolute.</summary>
    /// <param name="name">What was read, with its time.</param>
    /// <param name="reading">Which reading it is, to find the instrument.</param>
    /// <param name="given">The reading.</param>
    /// <param name="with">Instruments the phase names.</param>
    public CorrectedReading Pressure(string name, ReadingName reading, Given<StatedPressure> given, ImmutableArray<Given<string>> with = default)
    {
        ArgumentNullException.ThrowIfNull(given);
        return Once(given.At, reading, false, () => CorrectPressure(name, reading, given, with));
    }

    /// <summary>A temperature. A pipe clamp's bias toward ambient is taken off when the ambient temperature is known.</summary>
    /// <param name="name">What was read, with its time.</param>
    /// <param name="place">Which reading it is, to find the instrument, and which sensor of it.</param>
    /// <param name="given">The reading.</param>
    /// <param name="ambient">Air around the clamp; null when it is not known.</param>
    /// <param name="with">Instruments the phase names.</param>
    public CorrectedReading Temperature(string name, SensorPlace place, Given<Temperature> given, CorrectedReading? ambient = null, ImmutableArray<Given<string>> with = default)
    {
        ArgumentNullException.ThrowIfNull(given);
        return Once(given.At, place.Reading, ambient is not null, () => CorrectTemperature(name, place, given, ambient, with));
    }

    /// <summary>Any other quantity: its accuracy and resolution, no correction.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="name">What was read.</param>
    /// <param name="reading">Which reading it is.</param>
    /// <param name="given">The reading.</param>
    /// <param name="kind">How it is displayed, for the budget.</param>
    /// <param name="with">Instruments the phase names.</param>
    public CorrectedReading Plain<T>(string name, ReadingName reading, Given<T> given, DisplayKind kind, ImmutableArray<Given<string>> with = default)
        where T : struct, IQuantity<T>
    {
        ArgumentNullException.ThrowIfNull(given);
        return Once(given.At, reading, false, () =>
        {
            var instrument = _context.Get<InstrumentKit>().For(reading, with);
            var (terms, accuracyKnown) = Terms(name, given.Value.Si, given.Stated, given.Step, new(instrument, reading, T.Dimension), kind);
            return new CorrectedReading
            {
                Name = name,
                Value = _context.Scope.Reading(given.Value.Si, [.. terms]),
                AfterZero = given.Value.Si,
                Uses = [given.Use(name, instrument?.Id)],
                Instrument = instrument?.Id,
                AccuracyKnown = accuracyKnown,
            };
        });
    }

    private CorrectedReading Once(SourceLocation at, ReadingName reading, bool hasAmbient, Func<CorrectedReading> correct)
    {
        if (_done.TryGetValue((at, reading, hasAmbient), out var known))
            return known;
        known = correct();
        _done.Add((at, reading, hasAmbient), known);
        return known;
    }

    private CorrectedReading CorrectPressure(string name, ReadingName reading, Given<StatedPressure> given, ImmutableArray<Given<string>> with)
    {
        var present = _context.Present;
        var instrument = _context.Get<InstrumentKit>().For(reading, with);
        var uses = ImmutableArray.CreateBuilder<ReadingUse>();
        uses.Add(given.Use(name, instrument?.Id));
        var steps = ImmutableArray.CreateBuilder<TraceStep>();
        var shown = given.Value.Pascals;

        // Only what counts from the atmosphere has a zero that can be read with the hose open, and points checked from it.
        var checks = given.Value.Reference == PressureReference.Gauge ? instrument?.PointCheck : null;
        var checkedGauge = checks is not null && given.Stated is null ? instrument : null;
        var (terms, accuracyKnown) = checkedGauge is not null && (checkedGauge.HalfWidth(shown) is not null || checkedGauge.IsTiedDownAt(shown))
            ? (CheckedTerms(name, checkedGauge, given, reading), true)
            : Terms(name, shown, given.Stated, given.Step, new(instrument, reading, Dimension.Pressure), DisplayKind.PressureDifference);
        if (checkedGauge?.FailedPointAt(shown) is { } deviation)
            terms.Add(deviation);
        var value = _context.Scope.Reading(shown, [.. terms]);
        var afterZero = shown;
        if (checks is not null)
        {
            var corrected = checks.Correct(_context.Scope, value, new CorrectionPrinter(si => present.InMessage(si, DisplayKind.Pressure), si => present.InMessage(si, DisplayKind.PressureDifference)));
            value = corrected.Value;
            afterZero = corrected.Steps.FirstOrDefault(s => s.Kind == CorrectionKind.Zero)?.After ?? shown;
            EnterUnits(value, DisplayKind.PressureDifference);
            Explain(name, instrument!.Id, corrected, steps, DisplayKind.Pressure);
            UseChecks(instrument, uses);
        }

        if (given.Value.Reference != PressureReference.Absolute)
        {
            var atmosphere = _context.Get<SiteAtmosphere>();
            var gauge = value;
            var below = given.Value.Reference == PressureReference.BelowAtmosphere;
            value = below ? atmosphere.Value - gauge : gauge + atmosphere.Value;
            afterZero = below ? atmosphere.Value.Value - afterZero : afterZero + atmosphere.Value.Value;
            uses.AddRange(atmosphere.Uses);
            steps.Add(atmosphere.Step);
            steps.Add(new TraceStep(
                "p_abs", present.Text(KernelMessages.AbsoluteReading(new(name))), below ? present.Text(KernelMessages.DepthBelow) : "p + p_atm",
                present.Text(KernelMessages.AtAtmosphere(present.InMessage(gauge.Value, below ? DisplayKind.PressureDifference : DisplayKind.Pressure), present.Value(atmosphere.Value.Value, DisplayKind.AbsolutePressure, 2))),
                present.Text(value, DisplayKind.AbsolutePressure), ""));
        }

        return Made(name, value, afterZero, uses, steps, instrument, accuracyKnown);
    }

    private CorrectedReading CorrectTemperature(string name, SensorPlace place, Given<Temperature> given, CorrectedReading? ambient, ImmutableArray<Given<string>> with)
    {
        var present = _context.Present;
        var print = new CorrectionPrinter(si => present.InMessage(si, DisplayKind.Temperature), si => present.Value(si, DisplayKind.TemperatureDifference, 2));
        var instrument = _context.Get<InstrumentKit>().For(place.Reading, with);
        var uses = ImmutableArray.CreateBuilder<ReadingUse>();
        uses.Add(given.Use(name, instrument?.Id));
        var steps = ImmutableArray.CreateBuilder<TraceStep>();

        // An ice point tells the common part near 0 °C. What its place adds stays, and the further from ice, the more of the rest comes back.
        var iced = instrument?.IcePoint is not null && given.Stated is null;
        var (terms, accuracyKnown) = iced
            ? (ResolutionOf(name, instrument!.ResolutionAt(given.Value.Si) ?? given.Step, DisplayKind.TemperatureDifference).ToList(), instrument.AccuracyKnown)
            : Terms(name, given.Value.Si, given.Stated, given.Step, new(instrument, place, Dimension.Temperature), DisplayKind.TemperatureDifference);
        if (iced && instrument!.HalfWidth(ConversionFactors.CelsiusZero) is { } half)
            terms.AddRange(instrument.Accuracy(Math.Min(half, _context.Assume(LimitIds.AssumptionIcePointPlace)), place, 0));
        if (iced && instrument!.FailedIcePoint is { } deviation)
            terms.Add(1.0 * _context.Causes.Enter(deviation, DisplayKind.TemperatureDifference));
        var value = _context.Scope.Reading(given.Value.Si, [.. terms]);
        if (instrument?.IcePoint is { } ice)
        {
            var corrected = ice.Correct(_context.Scope, value, print, _context.Assume(LimitIds.AssumptionThermocoupleWarming));
            value = corrected.Value;
            EnterUnits(value, DisplayKind.TemperatureDifference);
            Explain(name, instrument.Id, corrected, steps, DisplayKind.Temperature);
            var shown = instrument.Described.Checks!.IcePoint!.Adjusted ?? instrument.Described.Checks.IcePoint.Read;
            uses.Add(shown.Use(present.Text(KernelMessages.IcePointReading(new(instrument.Id))), instrument.Id));
        }

        var afterZero = value.Value;
        if (ambient is not null && instrument?.Described.Kind.Value == InstrumentKind.PipeClamp && given.Stated is null)
        {
            var corrected = instrument.Coupling.Correct(_context.Scope, value, ambient.Value, print);
            value = corrected.Value;
            EnterUnits(value, DisplayKind.TemperatureDifference);
            Explain(name, instrument.Id, corrected, steps, DisplayKind.Temperature);
            uses.AddRange(ambient.Uses);
            if (instrument.Described.Insulated is { } insulated)
                uses.Add(insulated.Use(present.Text(KernelMessages.Insulated(new(instrument.Id))), instrument.Id));
        }

        return Made(name, value, afterZero, uses, steps, instrument, accuracyKnown);
    }

    // Corrections make causes of their own; budgets print them in the unit of the reading, shares of a distance in per cent.
    private void EnterUnits(Uncertain value, DisplayKind kind)
    {
        foreach (var cause in value.Budget.Select(line => line.Cause).Where(c => _context.Causes.KindOf(c) is null))
        {
            if (cause.Kind == CauseKind.Accuracy)
                continue;
            _context.Causes.Enter(cause, cause.Kind switch
            {
                CauseKind.ShareOfDistance => DisplayKind.Percentage,
                CauseKind.ColdJunction => DisplayKind.Number,
                _ => kind,
            });
        }
    }

    private static CorrectedReading Made(
        string name, Uncertain value, double afterZero, ImmutableArray<ReadingUse>.Builder uses, ImmutableArray<TraceStep>.Builder steps, UsedInstrument? instrument, bool accuracyKnown) => new()
        {
            Name = name,
            Value = value,
            AfterZero = afterZero,
            Uses = uses.ToImmutable(),
            Steps = steps.ToImmutable(),
            Instrument = instrument?.Id,
            AccuracyKnown = accuracyKnown,
        };

    private void Explain(string name, string instrument, Corrected corrected, ImmutableArray<TraceStep>.Builder steps, DisplayKind kind)
    {
        var present = _context.Present;
        foreach (var step in corrected.Steps)
        {
            var (words, formula, source) = step.Kind switch
            {
                CorrectionKind.Zero => (KernelMessages.ZeroSymbol, KernelMessages.ZeroFormula, KernelMessages.ZeroSource),
                CorrectionKind.KnownPoints => (KernelMessages.KnownPointsSymbol, KernelMessages.KnownPointsFormula, step.Applied ? KernelMessages.KnownPointsSource : KernelMessages.ReportedNotCorrected),
                CorrectionKind.IcePoint => (KernelMessages.IcePointSymbol, KernelMessages.IcePointFormula, KernelMessages.IcePointSource),
                _ => (KernelMessages.ClampSymbol, KernelMessages.ClampFormula, KernelMessages.ClampSource),
            };
            steps.Add(new TraceStep(present.Text(words), present.Text(KernelMessages.CorrectionOf(new(name), words, new(instrument))), present.Text(formula), present.Text(step.Text), present.Text(step.After, kind), present.Text(source)) { Correction = step.Kind, Instrument = instrument });
        }
    }

    private void UseChecks(UsedInstrument instrument, ImmutableArray<ReadingUse>.Builder uses)
    {
        if (instrument.Zero is { } zero)
            uses.Add(zero.Use(_context.Present.Text(KernelMessages.OpenToAir(new(instrument.Id))), instrument.Id));

        if (instrument.Described.Checks?.KnownPressure is { } known)
        {
            var shown = known.Adjusted ?? known.Read;
            uses.Add(known.Applied.Use(_context.Present.Text(KernelMessages.KnownPressureApplied(new(instrument.Id))), instrument.Id));
            uses.Add(shown.Use(_context.Present.Text(KernelMessages.KnownPressureRead(new(instrument.Id))), instrument.Id));
        }
    }

    // A zero takes out the offset that all readings share and leaves what grows with the pressure; a known pressure takes out that, too. What belongs to the place stays.
    private List<RootTerm> CheckedTerms(string name, UsedInstrument gauge, Given<StatedPressure> given, ReadingName reading)
    {
        var shown = given.Value.Pascals;
        var tied = gauge.IsTiedDownAt(shown);
        var step = gauge.ResolutionAt(shown) ?? given.Step;
        var half = WithoutRounding(gauge, gauge.HalfWidth(shown) ?? 0, step);
        var common = tied ? 0 : gauge.Described.Checks?.Zero is not null ? half - Math.Min(half, WithoutRounding(gauge, gauge.HalfWidth(0) ?? 0, step)) : half;
        List<RootTerm> terms = half > 0 ? [.. gauge.Accuracy(half, reading, common)] : [];
        if (tied)
            terms.Add(1.0 * gauge.RepeatabilityCause);
        terms.AddRange(ResolutionOf(name, step, DisplayKind.PressureDifference));
        return terms;
    }

    private (List<RootTerm> Terms, bool Known) Terms(string name, double readingSi, Stated? stated, double? writtenStep, ReadWith read, DisplayKind kind)
    {
        var (instrument, place, dimension) = read;
        if (stated is not null)
        {
            var cause = Written.AsStated(name, stated);
            return ([1.0 * _context.Causes.Enter(cause, kind)], true);
        }

        var terms = new List<RootTerm>();
        var accuracyKnown = false;
        var step = instrument?.ResolutionFor(dimension, readingSi) ?? writtenStep;
        if (instrument?.HalfWidth(readingSi, dimension) is { } half)
        {
            terms.AddRange(instrument.Accuracy(WithoutRounding(instrument, half, step), place));
            accuracyKnown = true;
        }

        terms.AddRange(ResolutionOf(name, step, kind));
        return (terms, accuracyKnown);
    }

    // Digits in a statement of accuracy hold the rounding of the indication, which each reading has for itself: what readings share is the rest.
    private static double WithoutRounding(UsedInstrument instrument, double half, double? step) => instrument.DigitsIncluded ? Math.Max(half - 0.5 * (step ?? 0), 0) : half;

    private readonly record struct ReadWith(UsedInstrument? Instrument, SensorPlace Place, Dimension Dimension);

    private IEnumerable<RootTerm> ResolutionOf(string name, double? step, DisplayKind kind) => step is { } d and > 0
        ? [1.0 * _context.Causes.Enter(RootCause.FromResolution(KernelMessages.Resolution(new(name)), CorrectionsMessages.SmallestStep, d), kind)]
        : [];
}

/// <summary>
/// A reading after its corrections, with the root causes that make it doubtful. Pressures are absolute, in Pa; everything
/// else is in its SI unit.
/// </summary>
internal sealed record CorrectedReading
{
    /// <summary>What was read, with its time where it has one: <c>vapor line, 11:35</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The value after every correction.</summary>
    public required Uncertain Value { get; init; }

    /// <summary>The value after zero offset or ice-point residual alone, in the same unit as <see cref="Value"/>.</summary>
    public required double AfterZero { get; init; }

    /// <summary>The reading and whatever else of the job it rests on: field checks, the barometer, the ambient temperature.</summary>
    public required ImmutableArray<ReadingUse> Uses { get; init; }

    /// <summary>The corrections, as steps of a trace; empty when none was made.</summary>
    public ImmutableArray<TraceStep> Steps { get; init; } = [];

    /// <summary>The instrument; null when the job names none for this reading.</summary>
    public string? Instrument { get; init; }

    /// <summary>Whether the instrument's accuracy is known, from its statement, its class or the reading itself.</summary>
    public required bool AccuracyKnown { get; init; }
}
