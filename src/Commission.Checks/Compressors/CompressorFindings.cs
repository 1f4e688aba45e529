using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;
using QuantityValue = Commission.Messages.QuantityValue;

namespace Commission.Checks.Compressors;

/// <summary>What the checks of the compressor have in common.</summary>
internal static class CompressorFindings
{
    /// <summary>The row a check speaks of, in cooling and in heating.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="has">Whether a row has the readings.</param>
    public static IEnumerable<ChargeRow> Rows(CheckContext context, Func<ChargeRow, bool> has)
    {
        var analysis = context.Get<ChargeAnalysis>();
        return new[] { analysis.Spoken(OperatingMode.Cooling, has), analysis.Spoken(OperatingMode.Heating, has) }.OfType<ChargeRow>();
    }

    /// <summary>
    /// Judges a number that has to be at least something and ends the finding. Below a figure of the maker or of a named pack it fails; below
    /// common practice, which says what is suspected and not what is wrong, it passes with a reservation.
    /// </summary>
    /// <param name="finding">The finding, with its number measured.</param>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="number">The number and the readings it rests on.</param>
    /// <param name="limit">The limit.</param>
    /// <param name="words">The number in words, without a full stop.</param>
    /// <param name="suspicion">What a number below common practice suggests, without a full stop.</param>
    /// <param name="next">What to do then.</param>
    public static Finding JudgeOrDoubt(
        this FindingBuilder finding, CheckContext context, JudgedNumber number, Limit limit, Message words, Message suspicion, Message next)
    {
        var state = context.State(limit);
        var (y, kind) = (number.Value.On(state), number.Kind);
        finding.Remark(limit.Remark(context.Present.Units)).RemarkUnknown(number.Readings);
        if (limit.Tier == LimitTier.CommonPractice && y.Value < state.LowerSi)
            return finding.Measure(y, kind).Decide(true, state).Reserve(suspicion).Say(CompressorMessages.FigureUsual(words, new(state.Text))).Next(next).Build();
        finding.Judge(y, kind, state);
        var said = CompressorMessages.FigureRequired(words, new(state.Text));
        return finding.Conclude(said, said, next);
    }

    /// <summary>A finding about a row: names what it rests on and says whether it may be judged.</summary>
    public static FindingBuilder Begin(CheckContext context, ICheck check, ChargeRow row, params ReadOnlySpan<CorrectedReading?> readings)
    {
        var finding = context.Finding(check, row.Mode == OperatingMode.Heating ? context.Present.Text(CompressorMessages.SubjectHeating(new(row.Time))) : row.Time);
        foreach (var reading in readings)
        {
            if (reading is not null)
                finding.Use(reading);
        }

        row.Settling.NameIn(finding);
        return finding.Use(CompressorMessages.ReadingMode, row.Written.Mode ?? context.Job.Charging?.Mode);
    }
}

/// <summary>
/// The two pressures of a compressor as near to it as they were read. In cooling the service valves stand for them; in heating the vapor valve
/// carries discharge gas, and nothing but a pressure at the inlet tells the low side.
/// </summary>
/// <param name="High">Discharge side; null when it was not read.</param>
/// <param name="Low">Suction side; null when it was not read.</param>
/// <param name="HighRemark">What to know of where the high side was read; null when it was read at the compressor.</param>
/// <param name="LowRemark">What to know of where the low side was read; null when it was read at the compressor.</param>
internal sealed record CompressorSides(CorrectedReading? High, CorrectedReading? Low, Message? HighRemark, Message? LowRemark)
{
    /// <summary>The sides of a row.</summary>
    public static CompressorSides Of(ChargeRow row)
    {
        var heating = row.Mode == OperatingMode.Heating;
        var high = row.DischargePressure ?? (heating ? row.VaporPressure : row.LiquidPressure);
        var low = row.TrueSuctionPressure ?? (heating ? null : row.VaporPressure);
        return new CompressorSides(
            high,
            low,
            high is null || row.DischargePressure is not null ? null
                : heating ? CompressorMessages.HighAtVaporValve
                : CompressorMessages.HighAtLiquidValve,
            low is null || row.TrueSuctionPressure is not null ? null : CompressorMessages.LowAtVaporValve);
    }

    /// <summary>Whether a row has what tells the high side.</summary>
    public static bool HasHigh(ChargeRow row) => row.Written.DischargePressure is not null || (row.Mode == OperatingMode.Heating ? row.Written.VaporPressure is not null : row.Written.LiquidPressure is not null);

    /// <summary>Whether a row has what tells the low side.</summary>
    public static bool HasLow(ChargeRow row) => row.Written.TrueSuctionPressure is not null || (row.Mode != OperatingMode.Heating && row.Written.VaporPressure is not null);
}

/// <summary>How far a part of the compressor is above the dew point at one of its pressures.</summary>
/// <param name="Row">The row.</param>
/// <param name="Part">Temperature of the part.</param>
/// <param name="Side">The pressure.</param>
/// <param name="SideRemark">What to know of where the pressure was read; null for nothing.</param>
internal sealed record AboveDew(ChargeRow Row, CorrectedReading Part, CorrectedReading Side, Message? SideRemark)
{
    /// <summary>Id of the limit.</summary>
    public required string Limit { get; init; }

    /// <summary>Symbol and name of the difference, and the symbol of the part's temperature.</summary>
    public required (string Difference, Message Name, string Part) Symbol { get; init; }

    /// <summary>What to do where the pressure has no dew point.</summary>
    public required Message NoDew { get; init; }

    /// <summary>The number in words where it is not judged, without a full stop.</summary>
    public required Func<QuantityValue, Message> Read { get; init; }

    /// <summary>The number in words where it is judged, without a full stop.</summary>
    public required Func<QuantityValue, Message> Judged { get; init; }

    /// <summary>What too small a number makes one suspect.</summary>
    public required Message Suspicion { get; init; }

    /// <summary>What to do then.</summary>
    public required Message Next { get; init; }

    /// <summary>The finding.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="finding">The finding, begun.</param>
    public Finding Judge(CheckContext context, FindingBuilder finding)
    {
        var present = context.Present;
        var saturation = context.Get<CircuitSaturation>();
        var dew = saturation.Dew(Side);
        if (dew.Value is not { } point)
            return finding.NotEvaluated(dew.WhyNot!, NoDew);
        var superheat = Part.Value - point;
        var shown = present.InMessage(superheat, DisplayKind.TemperatureDifference);
        finding.Step("T_dew", CompressorMessages.StepDew(new(Side.Name)), CompressorMessages.StepDewCurve, present.Text(Side.Value.Value, DisplayKind.AbsolutePressure), present.Text(point, DisplayKind.Temperature), saturation.Source)
            .Step(Symbol.Difference, Symbol.Name, $"{Symbol.Part} − T_dew", $"{present.Text(Part.Value.Value, DisplayKind.Temperature)} − {present.Text(point.Value, DisplayKind.Temperature)}", present.Text(superheat, DisplayKind.TemperatureDifference), CompressorMessages.StepDefinition)
            .Measure(superheat, DisplayKind.TemperatureDifference);
        if (Row.Settling.Block is { } early)
            return finding.Say(CompressorMessages.FigureNotJudged(Read(shown), early)).NotEvaluated(early, Row.Settling.Todo!);
        if (context.Limits.Find(Limit) is not { } limit || (limit.Lower is null && limit.Upper is null))
            return finding.Information(CompressorMessages.FigureOnly(Read(shown)), CompressorMessages.RatioNoLimit);
        return finding.Remark(SideRemark).JudgeOrDoubt(context, new(superheat, DisplayKind.TemperatureDifference, [Part, Side]), limit, Judged(shown), Suspicion, Next);
    }
}
