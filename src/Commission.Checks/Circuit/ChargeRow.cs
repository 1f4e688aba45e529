using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Circuit;

/// <summary>One row of readings on the running system, corrected, with what follows from it. Everything is worked out when it is asked for.</summary>
internal sealed class ChargeRow
{
    private readonly CheckContext _context;
    private readonly ReadingPlaces? _places;
    private readonly CircuitSaturation _saturation;
    private readonly Lazy<SaturationTemperature?> _vaporDew;
    private readonly Lazy<SaturationTemperature?> _vaporBubble;
    private readonly Lazy<SaturationTemperature?> _liquidDew;
    private readonly Lazy<SaturationTemperature?> _liquidBubble;
    private readonly Lazy<CorrectedReading?> _returnWetBulb;
    private readonly Lazy<RowNumber> _superheat;
    private readonly Lazy<RowNumber> _subcooling;

    /// <summary>Makes a row.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="charging">The charging it belongs to; null for readings taken before any work.</param>
    /// <param name="written">The readings as written.</param>
    public ChargeRow(CheckContext context, Charging? charging, Reading written)
    {
        _context = context;
        Written = written;
        _places = charging?.ReadAt;
        _saturation = context.Get<CircuitSaturation>();
        Mode = written.Mode?.Value ?? charging?.Mode?.Value ?? OperatingMode.Cooling;
        Running = written.Running ?? charging?.Running;
        Speed = written.Speed ?? charging?.Speed;
        Settling = Settling.Of(context, charging, written, Mode);
        _vaporDew = new(() => VaporPressure is { } p ? _saturation.Dew(p) : null);
        _vaporBubble = new(() => VaporPressure is { } p ? _saturation.Bubble(p) : null);
        _liquidDew = new(() => LiquidPressure is { } p ? _saturation.Dew(p) : null);
        _liquidBubble = new(() => LiquidPressure is { } p ? _saturation.Bubble(p) : null);
        _returnWetBulb = new(() => WetBulbReading.Of(context, Named(ReadingsMessages.ReturnWetBulb), ReadingName.ReturnAir, written.ReturnWetBulb, written.ReturnHumidity, ReturnDryBulb));
        _superheat = new(MakeSuperheat);
        _subcooling = new(MakeSubcooling);
    }

    /// <summary>The readings as written.</summary>
    public Reading Written { get; }

    /// <summary>When, as the record prints it.</summary>
    public string Time => Written.At.Text;

    /// <summary>What the system was doing.</summary>
    public OperatingMode Mode { get; }

    /// <summary>How the compressor ran; null when the job does not say.</summary>
    public Given<RunningState>? Running { get; }

    /// <summary>The compressor's speed; null when the job does not say.</summary>
    public Given<Frequency>? Speed { get; }

    /// <summary>How long after the start or the last change of charge.</summary>
    public Settling Settling { get; }

    /// <summary>Whether anything of the refrigerant circuit was read, and not only air or current.</summary>
    public bool HasCircuitReading => Written is { VaporPressure: not null } or { LiquidPressure: not null } or { TrueSuctionPressure: not null } or { DischargePressure: not null }
        or { VaporLine: not null } or { LiquidLine: not null } or { DischargeLine: not null } or { CompressorSuctionLine: not null } or { EvaporatorOutlet: not null } or { IndoorCoilOutlet: not null };

    /// <summary>Pressure at the vapor service valve, absolute.</summary>
    public CorrectedReading? VaporPressure => Pressure(ReadingsMessages.VaporPressure, ReadingName.VaporPressure, Written.VaporPressure);

    /// <summary>Pressure at the liquid service valve, absolute.</summary>
    public CorrectedReading? LiquidPressure => Pressure(ReadingsMessages.LiquidPressure, ReadingName.LiquidPressure, Written.LiquidPressure);

    /// <summary>Pressure at the compressor's inlet, absolute.</summary>
    public CorrectedReading? TrueSuctionPressure => Pressure(ReadingsMessages.TrueSuctionPressure, ReadingName.TrueSuctionPressure, Written.TrueSuctionPressure);

    /// <summary>Pressure at the compressor's outlet, absolute.</summary>
    public CorrectedReading? DischargePressure => Pressure(ReadingsMessages.DischargePressure, ReadingName.DischargePressure, Written.DischargePressure);

    /// <summary>Vapor line at the service valve.</summary>
    public CorrectedReading? VaporLine => Clamped(ReadingsMessages.VaporLine, ReadingName.VaporLine, Written.VaporLine, indoors: _places?.VaporLine?.Value == VaporLinePlace.EvaporatorOutlet);

    /// <summary>Liquid line at the service valve.</summary>
    public CorrectedReading? LiquidLine => Clamped(ReadingsMessages.LiquidLine, ReadingName.LiquidLine, Written.LiquidLine, indoors: _places?.LiquidLine?.Value == LiquidLinePlace.MeteringDevice);

    /// <summary>Liquid line after the drier.</summary>
    public CorrectedReading? LiquidAfterDrier => Clamped(ReadingsMessages.LiquidAfterTheDrier, ReadingName.LiquidAfterDrier, Written.LiquidAfterDrier);

    public CorrectedReading? DischargeLine => Clamped(ReadingsMessages.DischargeLine, ReadingName.DischargeLine, Written.DischargeLine);

    /// <summary>Suction line at the compressor.</summary>
    public CorrectedReading? CompressorSuctionLine => Clamped(ReadingsMessages.SuctionLineAtTheCompressor, ReadingName.CompressorSuctionLine, Written.CompressorSuctionLine);

    /// <summary>Vapor line at the evaporator.</summary>
    public CorrectedReading? EvaporatorOutlet => Clamped(ReadingsMessages.EvaporatorOutlet, ReadingName.EvaporatorOutlet, Written.EvaporatorOutlet, indoors: true);

    /// <summary>Liquid leaving the indoor coil in heating.</summary>
    public CorrectedReading? IndoorCoilOutlet => Clamped(ReadingsMessages.IndoorCoilOutlet, ReadingName.IndoorCoilOutlet, Written.IndoorCoilOutlet, indoors: true);

    /// <summary>Outdoor air, dry bulb.</summary>
    public CorrectedReading? OutdoorDryBulb => Air(ReadingsMessages.OutdoorDryBulb, ReadingName.OutdoorAir, Written.OutdoorDryBulb);

    /// <summary>Outdoor air, wet bulb.</summary>
    public CorrectedReading? OutdoorWetBulb => Air(ReadingsMessages.OutdoorWetBulb, new(ReadingName.OutdoorAir, IsWet: true), Written.OutdoorWetBulb);

    /// <summary>Return air, dry bulb.</summary>
    public CorrectedReading? ReturnDryBulb => Air(ReadingsMessages.ReturnDryBulb, ReadingName.ReturnAir, Written.ReturnDryBulb);

    /// <summary>Return air, wet bulb; from the humidity where that was read instead.</summary>
    public CorrectedReading? ReturnWetBulb => _returnWetBulb.Value;

    /// <summary>Supply air, dry bulb.</summary>
    public CorrectedReading? SupplyDryBulb => Air(ReadingsMessages.SupplyDryBulb, ReadingName.SupplyAir, Written.SupplyDryBulb);

    /// <summary>Air in the cold room.</summary>
    public CorrectedReading? BoxTemperature => Air(ReadingsMessages.BoxTemperature, ReadingName.BoxTemperature, Written.BoxTemperature);

    /// <summary>Air onto the evaporator: the cold room's, else the return air's dry bulb.</summary>
    public CorrectedReading? EvaporatorAir => BoxTemperature ?? ReturnDryBulb;

    /// <summary>Dew point at the vapor pressure; null without a vapor pressure.</summary>
    public SaturationTemperature? VaporDew => _vaporDew.Value;

    /// <summary>Bubble point at the vapor pressure.</summary>
    public SaturationTemperature? VaporBubble => _vaporBubble.Value;

    /// <summary>Dew point at the liquid pressure.</summary>
    public SaturationTemperature? LiquidDew => _liquidDew.Value;

    /// <summary>Bubble point at the liquid pressure; null without a liquid pressure.</summary>
    public SaturationTemperature? LiquidBubble => _liquidBubble.Value;

    /// <summary>Superheat at the vapor service valve, in cooling.</summary>
    public RowNumber Superheat => _superheat.Value;

    /// <summary>Subcooling at the liquid service valve, in cooling.</summary>
    public RowNumber Subcooling => _subcooling.Value;

    /// <summary>Superheat at the evaporator's outlet.</summary>
    public RowNumber EvaporatorSuperheat => Superheated("SH_evap", CircuitMessages.SuperheatAtEvaporator, EvaporatorOutlet, VaporPressure, VaporDew);

    /// <summary>Superheat at the compressor's inlet.</summary>
    public RowNumber CompressorSuperheat => TrueSuctionPressure is { } p
        ? Superheated("SH_comp", CircuitMessages.SuperheatAtCompressor, CompressorSuctionLine, p, _saturation.Dew(p))
        : Superheated("SH_comp", CircuitMessages.SuperheatAtCompressor, CompressorSuctionLine, VaporPressure, VaporDew);

    /// <summary>Liquid line over outdoor air.</summary>
    public RowNumber Approach => Difference(new("ΔT_approach", CircuitMessages.Approach, "T_liquid − T_outdoor"), LiquidLine, OutdoorDryBulb, ReadingsMessages.LiquidLine, ReadingsMessages.OutdoorDryBulb);

    /// <summary>Temperature drop across the drier.</summary>
    public RowNumber DrierDrop => MakeDrierDrop();

    /// <summary>Mid-point condensing temperature over outdoor air.</summary>
    public RowNumber CondensingOverAmbient => AgainstAir(new("ΔT_cond", CircuitMessages.CondenserSplit, "T_cond,mid − T_outdoor"), LiquidPressure, Middle(LiquidDew, LiquidBubble), OutdoorDryBulb, ReadingsMessages.LiquidPressure, ReadingsMessages.OutdoorDryBulb, 1);

    /// <summary>Air onto the evaporator over the mid-point evaporating temperature; over its dew point in refrigeration, as EN 328 rates air coolers (DT1, from memory).</summary>
    public RowNumber EvaporatorDifference => AgainstAir(new("ΔT_evap", CircuitMessages.EvaporatorSplit, IsRefrigeration ? "T_air − T_dew(p_vapor)" : "T_air − T_evap,mid"), VaporPressure, IsRefrigeration ? VaporDew : Middle(VaporDew, VaporBubble), EvaporatorAir, ReadingsMessages.VaporPressure, CircuitMessages.ReturnOrBox, -1);

    private bool IsRefrigeration => _context.Get<ChargeAnalysis>().IsRefrigeration;

    /// <summary>The same row from the job's own words: "11:35".</summary>
    public override string ToString() => Time;

    private string Named(Message reading) => _context.Present.Text(ReadingsMessages.AtTime(reading, new(Time)));

    private CorrectedReading? Pressure(Message name, ReadingName reading, Given<StatedPressure>? given) =>
        given is null ? null : _context.Readings.Pressure(Named(name), reading, given);

    private CorrectedReading? Air(Message name, SensorPlace place, Given<Temperature>? given) =>
        given is null ? null : _context.Readings.Temperature(Named(name), place, given);

    // A clamp reads toward the air around it: the room's indoors, the outdoor air elsewhere.
    private CorrectedReading? Clamped(Message name, ReadingName reading, Given<Temperature>? given, bool indoors = false) =>
        given is null ? null : _context.Readings.Temperature(Named(name), reading, given, indoors ? EvaporatorAir : OutdoorDryBulb);

    private RowNumber MakeSuperheat() => Mode == OperatingMode.Heating
        ? RowNumber.None(CircuitMessages.HeatingVaporLine)
        : Superheated("SH", CircuitMessages.Superheat, VaporLine, VaporPressure, VaporDew);

    private RowNumber Superheated(string symbol, Message name, CorrectedReading? line, CorrectedReading? pressure, SaturationTemperature? dew)
    {
        if (line is null || pressure is null || dew is null)
            return RowNumber.None(Missing((line, CircuitMessages.LineTemperatureFor(name)), (pressure, ReadingsMessages.VaporPressure)));
        if (dew.Value is null)
            return RowNumber.None(dew.WhyNot!, pressure, line);
        var value = line.Value - dew.Value;
        var before = line.AfterZero - dew.AfterZero;
        return RowNumber.Of(value, before, [pressure, line],
        [
            SaturationStep("T_dew", CircuitMessages.DewAt(new(pressure.Name)), pressure, dew),
            .. BothStages(new(symbol, name, "T_line − T_dew"), line.AfterZero, dew.AfterZero, line.Value.Value, dew.Value.Value, before, value),
        ]);
    }

    private RowNumber MakeDrierDrop() => _places?.LiquidLine?.Value is LiquidLinePlace.MeteringDevice or LiquidLinePlace.AfterDrier
        ? RowNumber.None(CircuitMessages.LiquidReadBehindDrier)
        : Difference(new("ΔT_drier", CircuitMessages.DrierDrop, "T_liquid − T_after drier"), LiquidLine, LiquidAfterDrier, ReadingsMessages.LiquidLine, ReadingsMessages.LiquidAfterTheDrier);

    private RowNumber MakeSubcooling()
    {
        if (Mode == OperatingMode.Heating)
            return RowNumber.None(CircuitMessages.HeatingLiquidValve);
        if (LiquidLine is not { } line || LiquidPressure is not { } pressure || LiquidBubble is not { } bubble)
            return RowNumber.None(Missing((LiquidPressure, ReadingsMessages.LiquidPressure), (LiquidLine, ReadingsMessages.LiquidLine)));
        if (bubble.Value is null)
            return RowNumber.None(bubble.WhyNot!, pressure, line);
        var value = bubble.Value - line.Value;
        var before = bubble.AfterZero - line.AfterZero;
        return RowNumber.Of(value, before, [pressure, line],
        [
            SaturationStep("T_bubble", CircuitMessages.BubbleAt(new(pressure.Name)), pressure, bubble),
            .. BothStages(new("SC", CircuitMessages.Subcooling, "T_bubble − T_line"), bubble.AfterZero, line.AfterZero, bubble.Value.Value, line.Value.Value, before, value),
        ]);
    }

    // A number as a trace prints it.
    private readonly record struct Defined(string Symbol, Message Name, string Formula);

    private RowNumber Difference(Defined number, CorrectedReading? first, CorrectedReading? second, Message firstWords, Message secondWords)
    {
        if (first is null || second is null)
            return RowNumber.None(Missing((first, firstWords), (second, secondWords)));
        var value = first.Value - second.Value;
        var before = first.AfterZero - second.AfterZero;
        return RowNumber.Of(value, before, [first, second],
            [.. BothStages(number, first.AfterZero, second.AfterZero, first.Value.Value, second.Value.Value, before, value)]);
    }

    private RowNumber AgainstAir(
        Defined number, CorrectedReading? pressure, SaturationTemperature? middle, CorrectedReading? air, Message pressureWords, Message airWords, int sign)
    {
        if (pressure is null || middle is null || air is null)
            return RowNumber.None(Missing((pressure, pressureWords), (air, airWords)));
        if (middle.Value is null)
            return RowNumber.None(middle.WhyNot!, pressure, air);
        var value = sign * (middle.Value - air.Value);
        var before = sign * (middle.AfterZero - air.AfterZero);
        var (hot, cold) = sign > 0 ? (middle.AfterZero, air.AfterZero) : (air.AfterZero, middle.AfterZero);
        var (hotAfter, coldAfter) = sign > 0 ? (middle.Value.Value, air.Value.Value) : (air.Value.Value, middle.Value.Value);
        return RowNumber.Of(value, before, [pressure, air],
        [
            SaturationStep("T_mid", !_saturation.IsBlend ? CircuitMessages.SaturationAt(new(pressure.Name)) : sign < 0 && IsRefrigeration ? CircuitMessages.DewAt(new(pressure.Name)) : CircuitMessages.MiddleAt(new(pressure.Name)), pressure, middle),
            .. BothStages(number, hot, cold, hotAfter, coldAfter, before, value),
        ]);
    }

    /// <summary>What a change of the pressure by all of itself would change in the saturation temperature, K: p·dT/dp; zero without one.</summary>
    /// <param name="ofVapor">Of the vapor pressure's dew point, else of the liquid pressure's bubble point.</param>
    public double PerShareOfPressure(bool ofVapor) => ofVapor
        ? (VaporPressure?.Value.Value ?? 0) * (VaporDew?.Slope ?? 0)
        : (LiquidPressure?.Value.Value ?? 0) * (LiquidBubble?.Slope ?? 0);

    private static SaturationTemperature? Middle(SaturationTemperature? dew, SaturationTemperature? bubble) =>
        dew is null || bubble is null ? null : SaturationTemperature.Middle(dew, bubble);

    private TraceStep SaturationStep(string symbol, Message name, CorrectedReading pressure, SaturationTemperature temperature)
    {
        var present = _context.Present;
        var perPressure = temperature.Slope * present.Units[DisplayKind.PressureDifference].Unit.Factor / present.Units[DisplayKind.TemperatureDifference].Unit.Factor;
        return new TraceStep(
            symbol,
            present.Text(name),
            $"{symbol}(p_abs)",
            present.Text(CircuitMessages.SaturationValues(
                present.Value(pressure.Value.Value, DisplayKind.AbsolutePressure, 2),
                new(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{perPressure:0.000} {present.Unit(DisplayKind.TemperatureDifference)}")),
                new(present.Unit(DisplayKind.PressureDifference)))),
            present.Text(temperature.Value!, DisplayKind.Temperature),
            _saturation.Source);
    }

    private IEnumerable<TraceStep> BothStages(
        Defined number, double firstBefore, double secondBefore, double first, double second, double before, Uncertain value)
    {
        var present = _context.Present;
        string Two(double kelvin) => present.Text(kelvin, DisplayKind.Temperature, 2);
        if (double.IsFinite(before))
        {
            yield return new TraceStep(
                number.Symbol + "₀", present.Text(CircuitMessages.ZeroCorrected(number.Name)), number.Formula, $"{Two(firstBefore)} − {Two(secondBefore)}", present.Text(before, DisplayKind.TemperatureDifference, 2), present.Text(CircuitMessages.Definition));
        }

        yield return new TraceStep(number.Symbol, present.Text(CircuitMessages.FullyCorrected(number.Name)), number.Formula, $"{Two(first)} − {Two(second)}", present.Text(value, DisplayKind.TemperatureDifference), present.Text(CircuitMessages.Definition));
    }

    private static Message Missing(params (CorrectedReading? Reading, Message Words)[] needed)
    {
        var missing = needed.Where(n => n.Reading is null).Select(n => n.Words).ToList();
        return CircuitMessages.NotRead(new([.. missing]), missing.Count);
    }
}

/// <summary>Whether a reading may be judged, by the time since the start and since the last change of charge.</summary>
internal enum RowStanding
{
    /// <summary>Long enough after both.</summary>
    Settled,

    /// <summary>Too soon after the start or after the last change of charge.</summary>
    TooEarly,

    /// <summary>Refrigerant was added or removed after it: it does not show the charge that was left.</summary>
    BeforeChange,

    /// <summary>Neither the start nor a change of charge has a time.</summary>
    NotKnown,
}
