using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Circuit;

/// <summary>
/// The readings on the running system, row by row, and how this system is charged at all. Of the rows that have settled, the last one
/// with the readings a check needs is judged: it shows the charge that was left. Earlier ones are drawn and listed.
/// </summary>
internal sealed class ChargeAnalysis : IAnalysis<ChargeAnalysis>
{
    private readonly CheckContext _context;

    private ChargeAnalysis(CheckContext context)
    {
        _context = context;
        Charging = context.Job.Charging;
        Rows = Charging is { } charging ? [.. charging.Readings.Select(r => new ChargeRow(context, charging, r))] : [];
        AsFound = context.Job.AsFound is { } found ? [.. found.Readings.Select(r => new ChargeRow(context, null, r))] : [];
        ByWeightOnly = WeightOnly(context.Job);
    }

    /// <summary>The charging; null when the job has none.</summary>
    public Charging? Charging { get; }

    /// <summary>The rows in the order of the job file.</summary>
    public ImmutableArray<ChargeRow> Rows { get; }

    /// <summary>Rows taken before any work.</summary>
    public ImmutableArray<ChargeRow> AsFound { get; }

    /// <summary>Why this system is charged by weight alone, as a sentence without a full stop; null when readings say something of its charge.</summary>
    public Message? ByWeightOnly { get; }

    /// <summary>The metering device; null when the job does not say.</summary>
    public MeteringKind? Metering => _context.Job.Equipment.Metering?.Kind.Value;

    /// <summary>Whether the metering device has no valve: superheat is the criterion.</summary>
    public bool HasFixedMetering => Metering is MeteringKind.FixedOrifice or MeteringKind.Capillary;

    /// <summary>Whether a valve holds the superheat: subcooling is the criterion.</summary>
    public bool HasValve => Metering is MeteringKind.TXV or MeteringKind.EEV;

    /// <summary>Whether the circuit has a receiver, which hides its charge from the subcooling.</summary>
    public bool HasReceiver => _context.Job.Equipment.Receiver?.Value ?? false;

    /// <summary>Whether the circuit is for refrigeration or drying and not for comfort.</summary>
    public bool IsRefrigeration => _context.Job.Equipment.System.Value == SystemKind.Refrigeration
        || _context.Job.Equipment.Application?.Value is Application.HighTemperature or Application.MediumTemperature or Application.LowTemperature or Application.Ice or Application.Drying;

    /// <summary>Whether water flows over the coil indoors, where other systems have air: nothing of air is asked of it.</summary>
    public bool HasWaterSide => _context.Job.Equipment.System.Value is SystemKind.Chiller or SystemKind.AirToWaterHeatPump;

    /// <summary>Whether evaporator and condenser stand in one stream of air, which leaves warmer than it came.</summary>
    public bool DriesAir => _context.Job.Equipment.Application?.Value == Application.Drying;

    /// <summary>Whether a factory-sealed unit in one housing was left sealed: nobody put a gauge on it, and nobody weighed anything in or out.</summary>
    public bool IsLeftSealed => _context.Job.Equipment.ComesWhole()
        && Charging is { Scale.IsEmpty: true, Added: null, Removed: null, Events.IsEmpty: true }
        && Rows.All(r => r.Written is { VaporPressure: null, LiquidPressure: null, TrueSuctionPressure: null, DischargePressure: null });

    /// <inheritdoc/>
    public static ChargeAnalysis Create(CheckContext context) => new(context);

    /// <summary>The row a check judges: the last settled one that has what it needs.</summary>
    /// <param name="mode">Cooling or heating.</param>
    /// <param name="has">Whether a row has the readings.</param>
    /// <returns>The row; null when none has settled.</returns>
    public ChargeRow? Judged(OperatingMode mode, Func<ChargeRow, bool> has) =>
        Rows.LastOrDefault(r => r.Mode == mode && r.Settling.Block is null && has(r));

    /// <summary>The last row that has what a check needs, settled or not.</summary>
    /// <param name="mode">Cooling or heating.</param>
    /// <param name="has">Whether a row has the readings.</param>
    public ChargeRow? Last(OperatingMode mode, Func<ChargeRow, bool> has) => Rows.LastOrDefault(r => r.Mode == mode && has(r));

    /// <summary>The row a check speaks of: the judged one, else the last that has the readings, which then cannot be judged.</summary>
    /// <param name="mode">Cooling or heating.</param>
    /// <param name="has">Whether a row has the readings.</param>
    public ChargeRow? Spoken(OperatingMode mode, Func<ChargeRow, bool> has) => Judged(mode, has) ?? Last(mode, has);

    private static Message? WeightOnly(Job job)
    {
        var limits = job.Limits;
        if (limits?.ChargeBy is { Value: ChargeMethod.Weight })
            return CircuitMessages.MakerChargesByWeight;
        return job.Equipment.System.Value switch
        {
            SystemKind.MultiSplit => CircuitMessages.MultiSplitByWeight,
            SystemKind.VRF => CircuitMessages.VrfByWeight,
            SystemKind.DuctlessSplit when !MakerReads(limits) => CircuitMessages.DuctlessByWeight,
            _ => null,
        };
    }

    private static bool MakerReads(MakerLimits? limits) => limits is not null
        && (limits.ChargeBy is not null || limits.Superheat is not null || limits.Subcooling is not null
            || limits.Charts.Any(c => c.For.Value is ChartQuantity.Superheat or ChartQuantity.Subcooling));
}

/// <summary>The way of a check that judges one temperature difference of a settled row by one limit.</summary>
internal static class RowDifference
{
    /// <summary>Judges it.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="check">The check that speaks.</param>
    /// <param name="row">The row.</param>
    /// <param name="number">The difference.</param>
    /// <param name="limit">The limit; null when nobody sets one, and then the number is information.</param>
    /// <param name="gates">What the judgement rests on besides.</param>
    /// <param name="said">What is said of it.</param>
    public static Finding Judge(
        CheckContext context, ICheck check, ChargeRow row, RowNumber number, Limit? limit, ChargeGates gates, DifferenceWords said)
    {
        var finding = context.Finding(check, said.Subject ?? row.Time).Use(number);
        if (number.Value is not { } value)
            return finding.NotEvaluated(number.WhyNot!, ChargeMessages.DifferenceNoneNext);
        finding.Measure(value, DisplayKind.TemperatureDifference);
        gates.NameIn(finding);
        var (was, time) = (context.Present.InMessage(value, DisplayKind.TemperatureDifference), new TextValue(row.Time));
        if (limit is null || (limit.Lower is null && limit.Upper is null))
            return finding.Information(ChargeMessages.DifferenceWas(said.Name, was, time), said.Unlimited ?? ChargeMessages.DifferenceNoLimit);
        if (gates.Blocked is var (why, todo))
            return finding.Say(ChargeMessages.DifferenceNotJudged(said.Name, was, time, why)).NotEvaluated(why, todo);
        var state = context.State(limit);
        return finding.Remark(limit.Remark(context.Present.Units)).JudgeCharge(
            context, new(value, DisplayKind.TemperatureDifference, number.Readings), state, gates,
            ChargeMessages.DifferenceAsked(said.Name, was, time, new TextValue(state.Text)),
            value.Value > (state.UpperSi ?? double.PositiveInfinity) ? said.WhenHigh : said.WhenLow);
    }
}

/// <summary>What is said of a temperature difference that is judged.</summary>
/// <param name="Name">The difference, at the start of a sentence.</param>
/// <param name="WhenHigh">What to do when it is too high.</param>
/// <param name="WhenLow">What to do when it is too low.</param>
/// <param name="Subject">What the finding is about; null takes the time of the row.</param>
/// <param name="Unlimited">Why nobody sets a limit, where that is known.</param>
internal sealed record DifferenceWords(Message Name, Message WhenHigh, Message WhenLow, string? Subject = null, Message? Unlimited = null);

/// <summary>A number worked out from one row of readings, at both stages of correction, or why there is none.</summary>
internal sealed record RowNumber
{
    private RowNumber()
    {
    }

    /// <summary>After every correction, SI; null when there is none.</summary>
    public Uncertain? Value { get; private init; }

    /// <summary>After zero offsets and ice-point residuals alone, SI; not a number when that does not exist.</summary>
    public double AfterZero { get; private init; } = double.NaN;

    /// <summary>Why there is none; null when there is one.</summary>
    public Message? WhyNot { get; private init; }

    /// <summary>The readings it rests on.</summary>
    public ImmutableArray<CorrectedReading> Readings { get; private init; } = [];

    /// <summary>How it came about, after the corrections of the readings.</summary>
    public ImmutableArray<TraceStep> Steps { get; private init; } = [];

    /// <summary>A number.</summary>
    /// <param name="value">After every correction.</param>
    /// <param name="afterZero">After zero and residual alone.</param>
    /// <param name="readings">What it rests on.</param>
    /// <param name="steps">How it came about.</param>
    public static RowNumber Of(Uncertain value, double afterZero, ImmutableArray<CorrectedReading> readings, ImmutableArray<TraceStep> steps) =>
        new() { Value = value, AfterZero = afterZero, Readings = readings, Steps = steps };

    /// <summary>None.</summary>
    /// <param name="why">Why, without a full stop.</param>
    /// <param name="readings">What was read all the same.</param>
    public static RowNumber None(Message why, params ImmutableArray<CorrectedReading> readings) => new() { WhyNot = why, Readings = readings };
}
