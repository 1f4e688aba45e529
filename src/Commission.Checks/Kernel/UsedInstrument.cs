using System.Collections.Frozen;
using System.Collections.Immutable;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Corrections;
using Commission.Measurement.Quantities;
using Commission.Measurement.Thermocouples;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Corrections = Commission.Measurement.Corrections;
using QuantityValue = Commission.Jobs.Model.QuantityValue;

namespace Commission.Checks.Kernel;

/// <summary>
/// An instrument of the job with the root causes it brings. Each cause is made once, so that every reading taken on the
/// instrument shares it and differences of such readings know that it cancels.
/// </summary>
internal sealed class UsedInstrument
{
    private readonly CheckContext _context;
    private readonly Dictionary<(SensorPlace? Place, bool IsCommon, bool IsHumidity), RootCause> _accuracyCauses = [];
    private readonly Lazy<RootCause> _repeatabilityCause;
    private readonly Lazy<RootCause> _zeroCause;
    private readonly Lazy<RootCause> _bathCause;
    private readonly Lazy<PointToPointCheck?> _points;
    private readonly Lazy<Corrections.IcePointCheck?> _icePoint;
    private readonly Lazy<ClampCoupling> _coupling;
    private readonly Lazy<RootCause?> _failedIcePoint;
    private readonly Lazy<(double Offset, double Slope)> _failedPoint;
    private readonly Lazy<RootCause> _failedPointCause;

    internal UsedInstrument(Instrument described, CheckContext context)
    {
        _context = context;
        Described = described;
        _repeatabilityCause = new(() => context.Causes.Enter(
            RootCause.FromHalfWidth(KernelMessages.Repeatability(new(Id)), KernelMessages.RepeatabilitySource, context.Assume(LimitIds.AssumptionGaugeRepeatability) * (FullScaleSi ?? 0)),
            DisplayKind.PressureDifference));
        _zeroCause = new(() => context.Causes.Enter(RootCause.FromResolution(KernelMessages.ReadingOfCheck(new(Id)), CorrectionsMessages.SmallestStep, ResolutionAt(Dimension == Dimension.TemperatureDifference ? ConversionFactors.CelsiusZero : 0) ?? 0), StepKind));
        _bathCause = new(() => context.Causes.Enter(
            RootCause.FromHalfWidth(CorrectionsMessages.IceBath(new(Id)), KernelMessages.GoodIceBath, context.Assume(LimitIds.AssumptionIceBath)), DisplayKind.TemperatureDifference));
        _points = new(() => described.Checks is { } checks && (checks.Zero ?? (object?)checks.KnownPressure) is not null ? Points(checks) : null);
        _icePoint = new(() => described.Checks?.IcePoint is { } ice
            ? new Corrections.IcePointCheck(Id, (ice.Adjusted ?? ice.Read).Value.Si, ResolutionAt((ice.Adjusted ?? ice.Read).Value.Si), SlopeFromIce, ThermocoupleClass is not null)
            : null);
        _failedIcePoint = new(() => described.Checks?.IcePoint is { } bath && Math.Abs((bath.Adjusted ?? bath.Read).Value.Si - ConversionFactors.CelsiusZero) is var off
            && context.Limits.Find(LimitIds.InstrumentsIcePointReplace)?.Upper is { } most && off > most.Si
                ? RootCause.FromHalfWidth(KernelMessages.FailedIcePoint(new(Id)), KernelMessages.StaysAsDoubt, off) : null);
        _failedPoint = new(FailedPoint);
        _failedPointCause = new(() => RootCause.FromHalfWidth(KernelMessages.FailedCheck(new(Id)), KernelMessages.StaysAsDoubt, 1, kind: CauseKind.Accuracy));
        _coupling = new(() => new ClampCoupling(
            Id, 0, context.Assume(Insulated ? LimitIds.AssumptionClampInsulated : LimitIds.AssumptionClampBare), Insulated ? KernelMessages.InsulatedClamp : KernelMessages.BareClamp));
    }

    /// <summary>The instrument as the job describes it.</summary>
    public Instrument Described { get; }

    /// <summary>Its name in the job.</summary>
    public string Id => Described.Id.Value;

    /// <summary>Whether a pipe clamp is insulated.</summary>
    public bool Insulated => Described.Insulated?.Value ?? false;

    /// <summary>The step of the indication at a reading of the instrument's own dimension; null when the job does not say.</summary>
    /// <param name="readingSi">The reading, SI as the instrument shows it.</param>
    public Given<QuantityValue>? ResolutionGiven(double readingSi) => Step(Described.Resolution, readingSi);

    /// <summary>The same in SI.</summary>
    /// <param name="readingSi">The reading, SI as the instrument shows it.</param>
    public double? ResolutionAt(double readingSi) => ResolutionGiven(readingSi)?.Value.Si;

    /// <summary>Full scale as an SI difference from zero; null when the job does not say.</summary>
    public double? FullScaleSi => Described.FullScale?.Value.Si;

    /// <summary>Whether something is known of its accuracy: a statement or a sensor class.</summary>
    public bool AccuracyKnown => Statement is not null || SensorTolerance(ConversionFactors.CelsiusZero) is not null;

    /// <summary>Standard uncertainty of a maker's statement whose half-width is one.</summary>
    public double UncertaintyOfAccuracy => AccuracyCause(null, isCommon: true, KernelMessages.PartOfAccuracyPart.Whole).StandardUncertainty;

    /// <summary>
    /// The maker's accuracy at a reading as causes: a part that all readings of the sensor share, and a part of the place that is read, the same each time it
    /// is read (slope, linearity, hysteresis, where the sensor sits). No statement says how much is which; the assumption in force splits the variance.
    /// </summary>
    /// <param name="half">Half the width of the bound at the reading, SI.</param>
    /// <param name="place">What is read.</param>
    /// <param name="common">Half the width of what is still unknown of the common part, SI; the whole bound where nothing was checked.</param>
    public IEnumerable<RootTerm> Accuracy(double half, SensorPlace place, double common) => Accuracy(half, place, common, isHumidity: false);

    /// <summary>The same where nothing of the instrument was checked.</summary>
    /// <param name="half">Half the width of the bound at the reading, SI.</param>
    /// <param name="place">What is read.</param>
    public IEnumerable<RootTerm> Accuracy(double half, SensorPlace place) => Accuracy(half, place, half);

    /// <summary>The accuracy of a relative humidity as causes, split as that of a temperature is; null when nothing is known of it. A psychrometer's accuracy is that of its temperatures, its humidity has a statement of its own.</summary>
    /// <param name="humidity">The reading, 0…1.</param>
    /// <param name="place">Where it is read.</param>
    public IEnumerable<RootTerm>? HumidityAccuracy(double humidity, ReadingName place)
    {
        var percent = _context.Present.Units[DisplayKind.Percentage].Unit;
        return HumidityStatement?.HalfWidthAt(humidity / percent.Factor, percent, 1) is { } half ? Accuracy(half, place, half, isHumidity: true) : null;
    }

    /// <summary>Whether a cause is a part of this instrument's accuracy.</summary>
    /// <param name="cause">The cause.</param>
    public bool Brings(RootCause? cause) => cause is not null && _accuracyCauses.ContainsValue(cause);

    /// <summary>The cause behind the reading of a field check: one step of the indication.</summary>
    public RootCause ZeroCause => _zeroCause.Value;

    /// <summary>The cause that stays after a point-to-point correction.</summary>
    public RootCause RepeatabilityCause => _repeatabilityCause.Value;

    /// <summary>The cause behind the ice bath.</summary>
    public RootCause BathCause => _bathCause.Value;

    /// <summary>What it reads.</summary>
    public Dimension Dimension => Described.Kind.Value switch
    {
        InstrumentKind.PressureGauge => Dimension.PressureDifference,
        InstrumentKind.VacuumGauge => Dimension.VacuumLevel,
        InstrumentKind.Barometer => Dimension.AtmosphericPressure,
        InstrumentKind.PipeClamp or InstrumentKind.Thermometer or InstrumentKind.Psychrometer => Dimension.TemperatureDifference,
        InstrumentKind.Hygrometer => Dimension.Ratio,
        InstrumentKind.Scale => Dimension.Mass,
        InstrumentKind.ClampMeter => Dimension.ElectricCurrent,
        InstrumentKind.Multimeter => Dimension.Voltage,
        InstrumentKind.CapacitanceMeter => Dimension.Capacitance,
        InstrumentKind.InsulationTester => Dimension.Resistance,
        InstrumentKind.Manometer => Dimension.PressureDifference,
        InstrumentKind.Anemometer => Dimension.Velocity,
        InstrumentKind.FlowHood => Dimension.VolumeFlow,
        InstrumentKind.TorqueWrench => Dimension.Torque,
        InstrumentKind.Stopwatch => Dimension.Duration,
        _ => Dimension.Ratio,
    };

    /// <summary>Whether the accuracy statement already holds the digits of the indication.</summary>
    public bool DigitsIncluded => Statement?.IncludesDigits ?? false;

    // Two probes of one meter are two sensors, and so are the two bulbs of one probe: what is said of each does not cancel between them.
    private bool IsOfItsOwn(SensorPlace place) =>
        place.IsWet || (place.Reading is ReadingName.OutdoorAir or ReadingName.ReturnAir or ReadingName.SupplyAir or ReadingName.BoxTemperature && Described.Probes?.Value != 1);

    private IEnumerable<RootTerm> Accuracy(double half, SensorPlace place, double common, bool isHumidity)
    {
        if (IsOfItsOwn(place) && common.Equals(half))
            return [half * Cause(place, isCommon: false, isHumidity)];
        var share = _context.Assume(LimitIds.AssumptionAccuracyCommon);
        var own = half * Math.Sqrt(1 - share) * Cause(place, isCommon: false, isHumidity);
        return common > 0 ? [common * Math.Sqrt(share) * Cause(IsOfItsOwn(place) ? place : null, isCommon: true, isHumidity), own] : [own];
    }

    private RootCause Cause(SensorPlace? place, bool isCommon, bool isHumidity)
    {
        if (!_accuracyCauses.TryGetValue((place, isCommon, isHumidity), out var cause))
        {
            cause = AccuracyCause(place, isCommon, place is not { } at ? KernelMessages.PartOfAccuracyPart.AllReadings
                : isCommon ? KernelMessages.PartOfAccuracyPart.ReadingsOfSensor
                : IsOfItsOwn(at) ? KernelMessages.PartOfAccuracyPart.Whole : KernelMessages.PartOfAccuracyPart.Place, isHumidity);
            _accuracyCauses.Add((place, isCommon, isHumidity), cause);
        }

        return cause;
    }

    private RootCause AccuracyCause(SensorPlace? place, bool isCommon, KernelMessages.PartOfAccuracyPart part, bool isHumidity = false)
    {
        var name = place is not { } at ? KernelMessages.AccuracyCommon(new(Id), isHumidity ? KernelMessages.AccuracyCommonQuantity.Humidity : KernelMessages.AccuracyCommonQuantity.Accuracy)
            : isCommon ? KernelMessages.AccuracyOfSensor(new(Id), at.Words, isHumidity ? KernelMessages.AccuracyOfSensorQuantity.Humidity : KernelMessages.AccuracyOfSensorQuantity.Accuracy)
            : KernelMessages.AccuracyAtPlace(new(Id), at.Words, isHumidity ? KernelMessages.AccuracyAtPlaceQuantity.Humidity : KernelMessages.AccuracyAtPlaceQuantity.Accuracy);
        if ((isHumidity ? HumidityStatement : Statement) is { } s)
            return s.ToRootCause(name, KernelMessages.PartOfAccuracy(KernelMessages.MakersStatement(s.Words), part));
        var source = Described.Sensor is { } sensor ? KernelMessages.ToleranceAsNew(SchemaWords.Of(sensor.Value)) : KernelMessages.NoAccuracyStated;
        return RootCause.FromHalfWidth(name, KernelMessages.PartOfAccuracy(source, part), 1, kind: CauseKind.Accuracy);
    }

    private AccuracyStatement? HumidityStatement => (Described.HumidityAccuracy ?? (Described.Kind.Value == InstrumentKind.Hygrometer ? Described.Accuracy : null))?.Value;

    private AccuracyStatement? Statement => Described.Accuracy?.Value;

    private DisplayKind StepKind => Dimension switch
    {
        Dimension.TemperatureDifference => DisplayKind.TemperatureDifference,
        Dimension.Mass => DisplayKind.Mass,
        _ => DisplayKind.PressureDifference,
    };

    /// <summary>One step of the indication for a reading of this dimension; null when the step written with the instrument is of another one, as a clamp meter's amperes are for its volts.</summary>
    /// <param name="dimension">What was read.</param>
    /// <param name="readingSi">The reading, SI as the instrument shows it: a display of several ranges has a step for each.</param>
    public double? ResolutionFor(Dimension dimension, double readingSi) =>
        Step([.. Described.Resolution.Where(s => SameScale(s.Step.Value.Dimension, dimension))], readingSi)?.Value.Si;

    /// <summary>Half the width of the accuracy bound at a reading of the instrument's own dimension, as an SI difference; null when it is not known.</summary>
    /// <param name="readingSi">The reading, SI as the instrument shows it (a gauge pressure above the atmosphere).</param>
    public double? HalfWidth(double readingSi) => HalfWidth(readingSi, Dimension);

    /// <summary>The same for a reading of any dimension: a share of the reading holds for all an instrument reads, an amount only for its own dimension.</summary>
    /// <param name="readingSi">The reading, SI as the instrument shows it.</param>
    /// <param name="dimension">What was read.</param>
    public double? HalfWidth(double readingSi, Dimension dimension)
    {
        if (!SameScale(dimension, Dimension))
        {
            return Statement is { } share && share.HalfWidthAt(0, _context.Present.Units[StepKindOf(Dimension)].Unit, FullScaleSi, ResolutionAt(0)) == 0 && share.HalfWidthAt(1, _context.Present.Units[StepKindOf(Dimension)].Unit) is { } one
                ? one / _context.Present.Units[StepKindOf(Dimension)].Unit.Factor * Math.Abs(readingSi)
                : null;
        }

        if (Statement is { } s)
        {
            var unit = _context.Present.Units[StepKindOf(Dimension)].Unit;
            // A share of the reading is a share of the number shown; every unit here but temperature starts at zero.
            return s.HalfWidthAt(readingSi / unit.Factor, unit, FullScaleSi, ResolutionAt(readingSi));
        }

        return SensorTolerance(readingSi);
    }

    /// <summary>Whether it can read this kind of thing at all; a <c>with</c> of a phase may name several instruments.</summary>
    /// <param name="reading">What is read.</param>
    public bool CanRead(ReadingName reading) => reading switch
    {
        ReadingName.VaporPressure or ReadingName.LiquidPressure or ReadingName.TrueSuctionPressure or ReadingName.DischargePressure or ReadingName.PressureTest or ReadingName.Recovery or ReadingName.WaterPressure
            => Described.Kind.Value == InstrumentKind.PressureGauge,
        ReadingName.Evacuation => Described.Kind.Value == InstrumentKind.VacuumGauge,
        ReadingName.Charge => Described.Kind.Value == InstrumentKind.Scale,
        ReadingName.StationPressure => Described.Kind.Value == InstrumentKind.Barometer,
        ReadingName.LeakSearch => Described.Kind.Value == InstrumentKind.LeakDetector,
        ReadingName.Torque => Described.Kind.Value == InstrumentKind.TorqueWrench,
        ReadingName.VaporLine or ReadingName.LiquidLine or ReadingName.DischargeLine or ReadingName.CompressorSuctionLine or ReadingName.LiquidAfterDrier or ReadingName.EvaporatorOutlet or ReadingName.IndoorCoilOutlet or ReadingName.Sump or ReadingName.PressureTestTemperature or ReadingName.WaterTemperature
            => Described.Kind.Value is InstrumentKind.PipeClamp or InstrumentKind.Thermometer,
        ReadingName.OutdoorAir or ReadingName.ReturnAir or ReadingName.SupplyAir or ReadingName.BoxTemperature
            => Described.Kind.Value is InstrumentKind.Psychrometer or InstrumentKind.Thermometer or InstrumentKind.Hygrometer,
        _ => true,
    };

    /// <summary>Zero and known-pressure checks as a correction; null when neither was made.</summary>
    internal PointToPointCheck? PointCheck => _points.Value;

    /// <summary>The ice point as a correction; null when none was made.</summary>
    internal Corrections.IcePointCheck? IcePoint => _icePoint.Value;

    /// <summary>The contact of a pipe clamp.</summary>
    internal ClampCoupling Coupling => _coupling.Value;

    /// <summary>Whether a known pressure whose reference states its uncertainty ties the gauge down near this reading: with a zero the slope between them, alone the place itself.</summary>
    /// <param name="gaugePascals">The reading less its zero.</param>
    internal bool IsTiedDownAt(double gaugePascals) =>
        Described.Checks?.KnownPressure is { Applied: { Stated: not null, Value.Si: > 0 and var applied } }
        && (Described.Checks.Zero is not null
            ? gaugePascals <= applied * (1 + PointToPointCheck.Reach) && gaugePascals >= 0
            : Math.Abs(gaugePascals - applied) <= applied * _context.Assume(LimitIds.AssumptionKnownPressureReach));

    /// <summary>The deviation of an ice point beyond what may be corrected, as doubt of every reading; null when it was good, or put right by adjusting.</summary>
    internal RootCause? FailedIcePoint => _failedIcePoint.Value;

    /// <summary>What the gauge shows with its hose open to air, after any adjusting; null when it was not tried.</summary>
    internal Given<QuantityValue>? Zero => Described.Checks?.Zero is { } zero ? zero.Adjusted ?? zero.Read : null;

    /// <summary>How far the gauge is off at its known pressure after its zero is taken off, Pa; null when it was not tried, or at no pressure.</summary>
    internal double? KnownPressureError => Described.Checks?.KnownPressure is { Applied.Value.Si: > 0 and var applied } known ? (known.Adjusted ?? known.Read).Value.Si - (Zero?.Value.Si ?? 0) - applied : null;

    /// <summary>Whether its zero or its known pressure was off by more than may be corrected, so that all of it stays as doubt.</summary>
    internal bool IsPointFailed => _failedPoint.Value is not (0, 0);

    /// <summary>The deviation of a zero or a known pressure beyond what may be corrected, as doubt of a reading: of the zero all of it, of the known pressure in proportion; null when both were good.</summary>
    /// <param name="gaugePascals">The reading.</param>
    internal RootTerm? FailedPointAt(double gaugePascals) =>
        IsPointFailed ? Math.Max(_failedPoint.Value.Offset, _failedPoint.Value.Slope * Math.Abs(gaugePascals)) * _failedPointCause.Value : default(RootTerm?);

    private (double Offset, double Slope) FailedPoint()
    {
        var zero = Math.Abs(Zero?.Value.Si ?? 0);
        var slope = KnownPressureError is { } error ? Math.Abs(error) / Described.Checks!.KnownPressure!.Applied.Value.Si : 0;
        return (FullScaleSi is { } scale && _context.Limits.Find(LimitIds.InstrumentsZeroPressure)?.Upper is { } most && zero > most.Si * scale ? zero : 0,
            _context.Limits.Find(LimitIds.InstrumentsKnownPressure)?.Upper is { } share && slope > share.Si ? slope : 0);
    }

    // Per kelvin of distance: the class of a thermocouple says it, another sensor gets its accuracy back over a distance.
    private double? SlopeFromIce => ThermocoupleClass is { } wire ? TypeKTolerance.Slope(wire)
        : HalfWidth(ConversionFactors.CelsiusZero) is { } half ? half / _context.Assume(LimitIds.AssumptionIcePointDistance) : null;

    /// <summary>Class of a thermocouple; null for another sensor.</summary>
    internal ToleranceClass? ThermocoupleClass => Described.Sensor?.Value switch
    {
        SensorKind.ThermocoupleKClass1 or SensorKind.ThermocoupleTClass1 => ToleranceClass.Iec1,
        SensorKind.ThermocoupleKClass2 or SensorKind.ThermocoupleTClass2 => ToleranceClass.Iec2,
        SensorKind.ThermocoupleKSpecial => ToleranceClass.AstmSpecial,
        SensorKind.ThermocoupleKStandard => ToleranceClass.AstmStandard,
        _ => null,
    };

    private PointToPointCheck Points(InstrumentChecks checks)
    {
        var zero = Zero is { } z ? new Corrections.ZeroCheck(Id, z.Value.Si, ResolutionAt(z.Value.Si)) : null;
        var known = checks.KnownPressure is { } k
            ? [new KnownPoint(k.Applied.Value.Si, (k.Adjusted ?? k.Read).Value.Si, k.Applied.Stated is { } u ? u.HalfWidthSi / u.CoverageFactor : null, k.Reference?.Value ?? _context.Present.Text(KernelMessages.KnownPressure))]
            : Array.Empty<KnownPoint>();
        return new PointToPointCheck(Id, zero, known, ResolutionAt(known.Length == 0 ? 0 : known[0].Read), _context.Assume(LimitIds.AssumptionKnownPressureReach));
    }

    // Each step holds up to where it says, or to where the next begins; beyond the last the display does not become finer.
    private static Given<QuantityValue>? Step(ImmutableArray<ResolutionStep> steps, double readingSi)
    {
        for (var i = 0; i < steps.Length - 1; i++)
        {
            if ((steps[i].UpTo ?? steps[i + 1].Above) is { } end && readingSi <= end.Value.Si)
                return steps[i].Step;
        }

        return steps.IsEmpty ? null : steps[^1].Step;
    }

    // IEC 60584-1 classes 1 and 2, ASTM E230 special and standard, IEC 60751 classes A and B; temperatures in K, tolerance in K.
    private double? SensorTolerance(double kelvin)
    {
        var t = Math.Abs(kelvin - ConversionFactors.CelsiusZero);
        return Described.Sensor?.Value switch
        {
            SensorKind.ThermocoupleKClass1 => Math.Max(1.5, 0.004 * t),
            SensorKind.ThermocoupleKClass2 => Math.Max(2.5, 0.0075 * t),
            SensorKind.ThermocoupleKSpecial => Math.Max(1.1, 0.004 * t),
            SensorKind.ThermocoupleKStandard => Math.Max(2.2, 0.0075 * t),
            SensorKind.ThermocoupleTClass1 => Math.Max(0.5, 0.004 * t),
            SensorKind.ThermocoupleTClass2 => Math.Max(1.0, 0.0075 * t),
            SensorKind.RTDClassA => 0.15 + (0.002 * t),
            SensorKind.RTDClassB => 0.3 + (0.005 * t),
            _ => null,
        };
    }

    // Gauge and absolute pressures share a step, and so do temperatures and their differences.
    private static bool SameScale(Dimension a, Dimension b) => Scale(a) == Scale(b);

    private static Dimension Scale(Dimension dimension) => dimension switch
    {
        Dimension.Pressure or Dimension.VacuumLevel or Dimension.AtmosphericPressure => Dimension.PressureDifference,
        Dimension.Temperature => Dimension.TemperatureDifference,
        _ => dimension,
    };

    private static DisplayKind StepKindOf(Dimension dimension) => dimension switch
    {
        Dimension.TemperatureDifference => DisplayKind.TemperatureDifference,
        Dimension.Mass => DisplayKind.Mass,
        Dimension.ElectricCurrent => DisplayKind.Current,
        Dimension.Voltage => DisplayKind.Voltage,
        Dimension.Capacitance => DisplayKind.Capacitance,
        Dimension.Resistance => DisplayKind.Resistance,
        Dimension.Velocity => DisplayKind.Velocity,
        Dimension.VolumeFlow => DisplayKind.AirFlow,
        Dimension.Torque => DisplayKind.Torque,
        Dimension.Duration => DisplayKind.Duration,
        Dimension.VacuumLevel => DisplayKind.Vacuum,
        Dimension.AtmosphericPressure => DisplayKind.AtmosphericPressure,
        Dimension.Ratio => DisplayKind.Percentage,
        _ => DisplayKind.PressureDifference,
    };
}

/// <summary>Which instrument read what, by the <c>reads</c> of each instrument and the <c>with</c> of a phase.</summary>
internal sealed class InstrumentKit : IAnalysis<InstrumentKit>
{
    private readonly FrozenDictionary<string, UsedInstrument> _byId;
    private readonly Dictionary<ReadingName, UsedInstrument> _byReading = [];

    private InstrumentKit(IEnumerable<UsedInstrument> instruments)
    {
        All = [.. instruments];
        _byId = All.ToFrozenDictionary(i => i.Id, StringComparer.Ordinal);
        foreach (var instrument in All)
        {
            foreach (var reading in instrument.Described.Reads)
                _byReading.TryAdd(reading.Value, instrument);
        }
    }

    /// <summary>The instruments in the order of the job file.</summary>
    public ImmutableArray<UsedInstrument> All { get; }

    /// <inheritdoc/>
    public static InstrumentKit Create(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return new InstrumentKit(context.Job.Instruments.DistinctBy(i => i.Id.Value).Select(i => new UsedInstrument(i, context)));
    }

    /// <summary>The first described instrument of those a reading was made with.</summary>
    /// <param name="with">Their ids as written.</param>
    /// <returns>The instrument; null when none is named or described.</returns>
    public UsedInstrument? FirstOf(ImmutableArray<Given<string>> with) => with.IsDefaultOrEmpty ? null : with.Select(w => Find(w.Value)).FirstOrDefault(i => i is not null);

    /// <summary>The instrument of a name.</summary>
    /// <param name="id">Its id in the job.</param>
    public UsedInstrument? Find(string id) => _byId.GetValueOrDefault(id);

    /// <summary>The instrument a reading was taken on: the phase's <c>with</c>, else the one whose <c>reads</c> names it.</summary>
    /// <param name="reading">What was read.</param>
    /// <param name="with">The instruments the phase names; the first that exists is taken.</param>
    public UsedInstrument? For(ReadingName reading, ImmutableArray<Given<string>> with)
    {
        if (!with.IsDefaultOrEmpty)
        {
            foreach (var named in with)
            {
                if (_byId.TryGetValue(named.Value, out var chosen) && chosen.CanRead(reading))
                    return chosen;
            }
        }

        if (_byReading.TryGetValue(reading, out var known))
            return known;
        return Wider(reading) is { } wider ? _byReading.GetValueOrDefault(wider) : null;
    }

    /// <summary>
    /// The instruments that are all said to read something, where no <c>with</c> decides between them and their accuracy differs; empty where there is nothing to
    /// ask. The first is the one that <see cref="For"/> takes.
    /// </summary>
    /// <param name="reading">What is read.</param>
    /// <param name="with">The instruments the phase names.</param>
    public ImmutableArray<UsedInstrument> Rivals(ReadingName reading, ImmutableArray<Given<string>> with)
    {
        if (!with.IsDefaultOrEmpty && with.Any(named => _byId.TryGetValue(named.Value, out var chosen) && chosen.CanRead(reading)))
            return [];
        var rivals = All.Where(i => i.Described.Reads.Any(r => r.Value == reading)).ToImmutableArray();
        return rivals.Select(r => r.Described.Accuracy?.Text).Distinct(StringComparer.Ordinal).Count() > 1 ? rivals : [];
    }

    private static ReadingName? Wider(ReadingName reading) => reading switch
    {
        ReadingName.Voltage or ReadingName.Current or ReadingName.Capacitance or ReadingName.PhaseRotation => ReadingName.Electrical,
        ReadingName.TrueSuctionPressure => ReadingName.VaporPressure,
        ReadingName.DischargePressure => ReadingName.LiquidPressure,
        _ => null,
    };
}

/// <summary>What a sensor is put to: the accuracy of one instrument is not the same error at two places.</summary>
/// <param name="Reading">What is read.</param>
/// <param name="IsWet">The wet bulb, or the humidity, beside a dry bulb.</param>
/// <param name="Part">Which of several alike, such as water in and out; zero when there is one.</param>
internal readonly record struct SensorPlace(ReadingName Reading, bool IsWet = false, int Part = 0)
{
    /// <summary>The place as a budget names it.</summary>
    public Message Words
    {
        get
        {
            var words = IsWet ? KernelMessages.WetPlace(SchemaWords.Of(Reading)) : SchemaWords.Of(Reading);
            return Part > 0 ? KernelMessages.NumberedPlace(words, Part) : words;
        }
    }

    /// <summary>A reading that is one place.</summary>
    public static implicit operator SensorPlace(ReadingName reading) => new(reading);
}
