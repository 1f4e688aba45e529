using System.Collections.Immutable;
using Commission.Checks.AirReadings;
using Commission.Checks.Charge;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;
using static Commission.Messages.DiagnosisMessages;

namespace Commission.Checks.Inference;

/// <summary>What a settled row of readings says of the circuit: numbers against what they should be, and things seen.</summary>
internal sealed class RowEvidence
{
    private const double Kelvin0 = 273.15;
    private const double Warmed = 2.8;
    private const double UsualRoom = 24.3 + Kelvin0;

    private readonly CheckContext _context;
    private readonly ChargeAnalysis _charge;
    private readonly ChargeRow _row;
    private readonly List<Deviation> _deviations = [];
    private readonly List<Seen> _seen = [];

    private RowEvidence(CheckContext context, ChargeRow row)
    {
        _context = context;
        _charge = context.Get<ChargeAnalysis>();
        _row = row;
        if (row.Mode == OperatingMode.Heating)
        {
            Heating();
        }
        else if (_charge.ByWeightOnly is null)
        {
            Superheat();
            Subcooling();
            Splits();
        }

        AirSplit();
        Ratio();
        Current();
        Discharge();
        if (row.DrierDrop.Value is { } drop)
            Add("drier", drop, 0.3, ExpectedDrier, DisplayKind.TemperatureDifference);
        Airflow();
        if (row.Mode == OperatingMode.Cooling)
            ReturnAir();
        ThingsSeen();
    }

    /// <summary>The numbers.</summary>
    public IReadOnlyList<Deviation> Deviations => _deviations;

    /// <summary>The things seen.</summary>
    public IReadOnlyList<Seen> Seen => _seen;

    /// <summary>Readings and steps behind the numbers.</summary>
    public List<RowNumber> Numbers { get; } = [];

    /// <summary>Gathers it.</summary>
    public static RowEvidence Of(CheckContext context, ChargeRow row) => new(context, row);

    private void Superheat()
    {
        if (_charge.IsRefrigeration && _row.EvaporatorSuperheat.Value is { } bulb)
        {
            Numbers.Add(_row.EvaporatorSuperheat);
            var range = _context.Limits.Find(LimitIds.ChargeEvaporatorSuperheatRange);
            Add("superheat", bulb, Middle(range) ?? 4, range is null ? ExpectedUnknown : ExpectedAtEvaporator(new TextValue(_context.State(range).Text), new TextValue(_context.State(range).Whose)), DisplayKind.TemperatureDifference, usual: range is null ? 0 : Half(range));
            return;
        }

        if (_row.Superheat.Value is not { } value)
            return;
        Numbers.Add(_row.Superheat);
        if (_charge.HasFixedMetering)
        {
            var target = ChargeTarget.Superheat(_context, _row);
            if (target.Limit is { } limit && Middle(limit) is { } middle)
                Add("superheat", value, middle, Words(limit), DisplayKind.TemperatureDifference, target.Target, tolerance: Half(limit));
        }
        else if (_context.Limits.Find(LimitIds.ChargeSuperheat) is { } maker && Middle(maker) is { } held)
        {
            Add("superheat", value, held, Words(maker), DisplayKind.TemperatureDifference, usual: Half(maker));
        }
        else
        {
            var usual = _context.Limits.Require(LimitIds.ChargeDiagnosisSuperheat);
            Add("superheat", value, Middle(usual)!.Value, Words(usual), DisplayKind.TemperatureDifference, usual: Half(usual));
        }
    }

    private void Subcooling()
    {
        if (_charge.HasReceiver || _row.Subcooling.Value is not { } value)
            return;
        Numbers.Add(_row.Subcooling);
        var target = ChargeTarget.Subcooling(_context, _row);
        if (target.Limit is { } limit && Middle(limit) is { } middle)
        {
            Add("subcooling", value, middle, Words(limit), DisplayKind.TemperatureDifference, target.Target, tolerance: Half(limit));
            return;
        }

        var usual = _context.Limits.Require(LimitIds.ChargeDiagnosisSubcooling);
        Add("subcooling", value, Middle(usual)!.Value, Words(usual), DisplayKind.TemperatureDifference, spread: Half(usual));
    }

    private void Splits()
    {
        if (_row.CondensingOverAmbient.Value is { } condenser && !(_charge.HasReceiver && _context.Job.Equipment.HeadPressureControl is { Value: not HeadPressureControl.None }))
        {
            Numbers.Add(_row.CondensingOverAmbient);
            Usual("condenser split", condenser, LimitIds.ChargeCondensingOverAmbientRange, 11);
        }

        if (_row.EvaporatorDifference.Value is { } evaporator)
        {
            Numbers.Add(_row.EvaporatorDifference);
            if (_charge.IsRefrigeration)
                Usual("evaporator split", evaporator, LimitIds.ChargeEvaporatorDifferenceRange, 7);
            else
                Add("evaporator split", evaporator, ExpectedEvaporatorSplit(), ExpectedFullAirflow(_context.Present.Band(ExpectedEvaporatorSplit(), CauseTable.Instance.Readings["evaporator split"].Step, DisplayKind.TemperatureDifference)), DisplayKind.TemperatureDifference);
        }

    }

    private void AirSplit()
    {
        if (_row is not { ReturnDryBulb: { } entering, SupplyDryBulb: { } leaving } || _charge.IsRefrigeration)
            return;
        if (_row.Mode == OperatingMode.Heating)
        {
            var rise = leaving.Value - entering.Value;
            if (_context.Limits.Find(LimitIds.AirHeatRise) is { } maker && Middle(maker) is { } usual)
                Add("air split", rise, usual, Words(maker), DisplayKind.TemperatureDifference, spread: Half(maker));
            return;
        }

        var split = entering.Value - leaving.Value;
        var target = SplitTarget.Of(_context, _row);
        if (_charge.ByWeightOnly is null && target.Limit is { } limit && Middle(limit) is { } middle)
            Add("air split", split, middle, Words(limit), DisplayKind.TemperatureDifference, target.Target, tolerance: Half(limit));
        else
            Add("air split", split, 10.5, ExpectedAbout(Kelvin(10.5)), DisplayKind.TemperatureDifference, spread: 4);
    }

    // In heating the indoor coil condenses: its outlet shows the subcooling, the compressor's inlet the superheat (common practice for the figures).
    private void Heating()
    {
        if (_row.CompressorSuperheat is { Value: { } superheat } number && _row.TrueSuctionPressure is not null)
        {
            Numbers.Add(number);
            Add("superheat", superheat, 7, ExpectedAtCompressor(Kelvin(7)), DisplayKind.TemperatureDifference, spread: 3);
        }

        if (_row is { IndoorCoilOutlet: { } outlet, LiquidBubble.Value: { } bubble })
            Add("subcooling", bubble - outlet.Value, 7, ExpectedAtIndoorCoil(Kelvin(7)), DisplayKind.TemperatureDifference, spread: 3);
        if (_row is { VaporDew.Value: { } condensing, ReturnDryBulb: { } room })
            Add("condenser split", condensing - room.Value, 20, ExpectedOverRoom(Kelvin(20)), DisplayKind.TemperatureDifference, spread: 4);
    }

    // Where the condenser split is not known, a compressor that pumps badly shows in its ratio.
    private void Ratio()
    {
        if (_deviations.Exists(d => d.Scale.Id == "condenser split") || _row is not { VaporPressure: { } low, LiquidPressure: { } high } || LikelyRatio.Of(_context, _row) is not { } likely)
            return;
        var ratio = high.Value / low.Value;
        var scale = CauseTable.Instance.Readings["ratio"];
        _deviations.Add(new Deviation(
            scale, scale.Steps(Math.Log(ratio.Value / likely)), 0.3, Value(ratio, DisplayKind.Number), ExpectedConditions(_context.Present.InMessage(likely, DisplayKind.Number))));
    }

    // Comfort cooling evaporates near 45 °F with 80/67 °F indoors and 95 °F outdoors; a wetter coil boils higher by half a kelvin a kelvin of wet
    // bulb, warmer weather raises it a little (common practice; slopes of makers' performance tables, from memory).
    private double ExpectedEvaporatorSplit()
    {
        var dry = _row.EvaporatorAir!.Value.Value - Kelvin0;
        var wet = _row.ReturnWetBulb is { } read ? read.Value.Value - Kelvin0 : dry - 7.5;
        var outdoor = _row.OutdoorDryBulb is { } air ? air.Value.Value - Kelvin0 : 35;
        return dry - (7.2 + (0.5 * (wet - 19.4)) + (0.1 * (outdoor - 35)));
    }

    private void Current()
    {
        if (_row.Written.CompressorCurrent is not { } read || _context.Job.Equipment.Nameplate?.CompressorRLA is not { } rated || _row.Mode == OperatingMode.Heating)
            return;
        var share = read.Value.Si / rated.Value.Si;
        // A compressor of a cold room draws more after every defrost: there only too little says something.
        if (_charge.IsRefrigeration && share > 0.68)
            return;
        var likely = _charge.IsRefrigeration ? 0.68 : LikelyCurrent.At(_row.OutdoorDryBulb?.Value.Value);
        var scale = CauseTable.Instance.Readings["current"];
        _deviations.Add(new Deviation(
            scale, (share - likely) / scale.Step, 0.2, ValueOfRated(new TextValue(read.Text), Percent(share), new TextValue(rated.Text)), ExpectedFullLoadWeather(Percent(likely))));
    }

    private void Discharge()
    {
        if (_row is not { DischargeLine: { } line, LiquidDew.Value: { } condensing } || _charge.IsRefrigeration || _row.Mode == OperatingMode.Heating)
            return;
        Add("discharge", line.Value - condensing, 28, ExpectedFullLoad(Kelvin(28)), DisplayKind.TemperatureDifference, spread: 5);
    }

    private void Airflow()
    {
        if (_context.Get<AirflowRoutes>().Chosen is not { Value: { } flow } || _context.Job.Equipment.Capacity is not { } capacity || _charge.IsRefrigeration)
            return;
        // 400 cfm/ton, the rating point of comfort cooling (common practice); 350 is as right in a wet climate.
        const double Nominal = 5.37e-5;
        var per = flow / capacity.Value.Si;
        var scale = CauseTable.Instance.Readings["airflow"];
        var away = per.Value / Nominal - 1;
        _deviations.Add(new Deviation(
            scale, away / scale.Step, per.StandardUncertainty / Nominal / scale.Step, Value(per, DisplayKind.FlowPerCapacity), ExpectedAbout(_context.Present.InMessage(Nominal, DisplayKind.FlowPerCapacity))));
    }

    // The load is in the wet bulb where that was read, else in the dry bulb.
    private void ReturnAir()
    {
        if (_charge.IsRefrigeration)
        {
            if (_row.BoxTemperature is { } box && _context.Job.Equipment.BoxTemperature is { } kept)
                Add("return air", box.Value, kept.Value.Si, ExpectedBox(new TextValue(kept.Text)), DisplayKind.Temperature);
            return;
        }

        if (_row.ReturnDryBulb is { } dry)
            Add("return air", dry.Value, UsualRoom, ExpectedAbout(_context.Present.Value(UsualRoom, DisplayKind.Temperature, 0)), DisplayKind.Temperature);
    }

    private void ThingsSeen()
    {
        var job = _context.Job;
        if ((_row.Written.SightGlass ?? job.Charging?.SightGlass) is { Value: not SightGlass.None } glass)
            _seen.Add(new Seen("sight glass", MemberWords.Of(glass.Value.ToString())));
        if (_row.Written.Frost is { } frost)
            _seen.Add(new Seen("frost", MemberWords.Of(frost.Value.ToString())));
        if (StandingTest() is { } tested)
            _seen.Add(new Seen("standing test", tested));
        if (job.Air is { } air)
        {
            Cleanliness?[] path = [air.Filter?.Value, air.Coil?.Value];
            if (path.Contains(Cleanliness.Dirty))
                _seen.Add(new Seen("indoor air path", "dirty"));
            else if (path.All(c => c is Cleanliness.Clean or Cleanliness.New or Cleanliness.None))
                _seen.Add(new Seen("indoor air path", "clean"));
            if (_context.Get<StaticReading>().External is { } external && _context.Limits.Find(LimitIds.AirStaticExternalMaximum)?.Upper is { } most)
                _seen.Add(new Seen("static pressure", external.Value > 1.5 * most.Si ? "far too high" : "within"));
            if (air.OutsideAir is { } outside && (outside.Economizer ?? outside.DamperTest) is not null)
                _seen.Add(new Seen("outside damper", outside is { Economizer.Value: TestResult.Failed } or { DamperTest.Value: TestResult.Failed } ? "stuck" : "works"));
            if (air.OutdoorCoil is { } coil)
                _seen.Add(new Seen("outdoor coil", coil.Value == Cleanliness.Dirty ? "dirty" : "clean"));
        }

        if (EquipmentMatch.Of(_context).Fits is { } fits && job.Equipment.Metering is { Size: { } size, PlateSize: { } plate })
            _seen.Add(new Seen("orifice", fits ? "of the plate" : size.Value.Si > plate.Value.Si ? "larger" : "smaller"));

        // Gas that leaves the valve warmer than it came was warmed by hot gas passing (3 °F: common practice, no source).
        if (_row.Written.ReversingValve is { } valve)
            _seen.Add(new Seen("reversing valve", valve.SuctionOut.Value.Si - valve.SuctionIn.Value.Si > Warmed ? "passing" : "tight"));
        else if (job.Equipment.System.Value == SystemKind.HeatPump && _row is { Mode: OperatingMode.Cooling, CompressorSuctionLine: { } inlet, VaporLine: { } vapor })
            _seen.Add(new Seen("reversing valve", inlet.Value.Value - vapor.Value.Value > Warmed ? "passing" : "tight"));
    }

    private string? StandingTest()
    {
        if (_context.Job.Charging?.StandingTest is null)
            return null;
        var finding = new NonCondensablesCheck().Evaluate(_context).Single();
        return finding.Verdict switch
        {
            Measurement.Decisions.Verdict.Pass or Measurement.Decisions.Verdict.PassWithinUncertainty or Measurement.Decisions.Verdict.Conditional => "clean",
            Measurement.Decisions.Verdict.Fail => "foreign gas",
            _ => null,
        };
    }

    private void Usual(string id, Uncertain value, string limit, double otherwise)
    {
        var range = _context.Limits.Find(limit);
        Add(id, value, Middle(range) ?? otherwise, Words(range), DisplayKind.TemperatureDifference, usual: range is null ? 0 : Half(range));
    }

    // The doubt of a band is its half width as a rectangle; that of a target is its own.
    private void Add(string id, Uncertain value, double expected, Message words, DisplayKind kind, Uncertain? target = null, double spread = 0, double? tolerance = null, double usual = 0)
    {
        var scale = CauseTable.Instance.Readings[id];
        var difference = target is null ? value - Uncertain.Exact(expected) : value - target;
        var doubt = Math.Sqrt((difference.StandardUncertainty * difference.StandardUncertainty) + (spread * spread / 3)) / scale.Step;
        _deviations.Add(new Deviation(scale, scale.Steps(difference.Value), doubt, Value(value, kind), words)
        {
            IsInside = Math.Abs(difference.Value) <= Math.Max(usual, Math.Max(spread, tolerance ?? 0)),
            Scatter = tolerance is { } half ? Math.Min(scale.Scatter, 0.55 * half / scale.Step) : scale.Scatter,
        });
    }

    private static double? Middle(Limit? limit) => limit switch
    {
        null => null,
        { Target: { } target } => target.Si,
        { Lower: { } low, Upper: { } high } => (low.Si + high.Si) / 2,
        _ => null,
    };

    private static double? Middle(LimitStatement limit) => limit.TargetSi ?? (limit is { LowerSi: { } low, UpperSi: { } high } ? (low + high) / 2 : null);

    private static double? Half(LimitStatement limit) => limit is { LowerSi: { } low, UpperSi: { } high } ? (high - low) / 2 : null;

    private static double Half(Limit limit) => limit is { Lower: { } low, Upper: { } high } ? (high.Si - low.Si) / 2 : 0;

    private Message Words(Limit? limit) => limit is null ? ExpectedUnknown : Words(_context.State(limit));

    private static Message Words(LimitStatement limit) => ExpectedLimit(new TextValue(limit.Text), RecordWords.Whose(limit));

    private Message Value(Uncertain value, DisplayKind kind) => DiagnosisMessages.Value(_context.Present.InMessage(value, kind));

    private QuantityValue Kelvin(double difference) => _context.Present.Value(difference, DisplayKind.TemperatureDifference, 0);

    private QuantityValue Percent(double share) => _context.Present.Value(share, DisplayKind.Percentage, 0);
}

/// <summary>Readings of one row that cannot be right together, beyond their uncertainty: heat flows from warm to cold, and two phases share one temperature.</summary>
internal static class Contradiction
{
    // A clamp in the sun, a sensor at the edge of a stream: so much is a reading's own affair, no contradiction (common practice, no source).
    private const double Allowance = 1.5;

    /// <summary>The first contradiction, without a full stop; null when the readings fit together.</summary>
    public static Message? In(CheckContext context, ChargeAnalysis charge, ChargeRow row)
    {
        if (row.Mode != OperatingMode.Cooling || row.Settling.Block is not null)
            return null;
        return Cold(context, ContradictionWhat.OutdoorOverCondensing, row.LiquidDew?.Value, row.OutdoorDryBulb?.Value)
            ?? Cold(context, ContradictionWhat.LiquidOverCondensing, row.LiquidDew?.Value, row.LiquidLine?.Value)
            ?? Cold(context, ContradictionWhat.VaporUnderBoiling, row.VaporLine?.Value, row.VaporBubble?.Value)
            ?? Cold(context, ContradictionWhat.SupplyUnderBoiling, row.SupplyDryBulb?.Value, row.VaporBubble?.Value)
            ?? (charge.DriesAir ? null : Cold(context, ContradictionWhat.SupplyOverReturn, row.ReturnDryBulb?.Value, row.SupplyDryBulb?.Value))
            ?? (charge.IsRefrigeration ? null : Cold(context, ContradictionWhat.LiquidUnderOutdoor, row.LiquidLine?.Value, row.OutdoorDryBulb?.Value));
    }

    private static Message? Cold(CheckContext context, ContradictionWhat what, Uncertain? warmer, Uncertain? colder)
    {
        if (warmer is null || colder is null)
            return null;
        var wrong = colder - warmer;
        return wrong.Value > wrong.Expanded + Allowance ? DiagnosisMessages.Contradiction(what, context.Present.InMessage(wrong, DisplayKind.TemperatureDifference)) : null;
    }
}
