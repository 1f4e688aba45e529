using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Circuit;

/// <summary>What the checks of a charge have in common when they put a finding together.</summary>
internal static class ChargeFindings
{
    /// <summary>Names the readings of a number and adds how it came about.</summary>
    public static FindingBuilder Use(this FindingBuilder finding, RowNumber number)
    {
        foreach (var reading in number.Readings)
            finding.Use(reading);
        return finding.Add(number.Steps);
    }

    /// <summary>Names readings without their corrections as steps, because they decide whether and not how much.</summary>
    public static FindingBuilder Name(this FindingBuilder finding, IEnumerable<CorrectedReading> readings)
    {
        foreach (var use in readings.SelectMany(r => r.Uses))
            finding.Use(use);
        return finding;
    }

    /// <summary>Adds steps of the trace.</summary>
    public static FindingBuilder Add(this FindingBuilder finding, IEnumerable<TraceStep> steps)
    {
        foreach (var step in steps)
            finding.Step(step);
        return finding;
    }

    /// <summary>
    /// Judges a number and ends the finding. Where U is wider than the tolerance there is no verdict; a pass is conditional for whatever
    /// the gates found not shown, and for an accuracy nobody states.
    /// </summary>
    /// <param name="finding">The finding.</param>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="number">The number and the readings it rests on.</param>
    /// <param name="limit">The limit.</param>
    /// <param name="gates">What the judgement rests on besides.</param>
    /// <param name="sentence">The sentence.</param>
    /// <param name="next">What to do when it does not pass.</param>
    public static Finding JudgeCharge(
        this FindingBuilder finding, CheckContext context, JudgedNumber number, LimitStatement limit, ChargeGates gates, Message sentence, Message next)
    {
        var (y, kind, readings) = number;
        if (TooCoarse(context, number.Target is { } moving ? y - moving : y, kind, limit) is { } coarse)
            return finding.Measure(y, kind).Show(limit).CannotDecide(coarse, number.WhenTooCoarse ?? CircuitMessages.FinerInstrumentsNext(y.Budget[0].Cause.Name));
        finding.Judge(y, kind, limit, number.Target).Say(sentence);
        gates.ReserveIn(finding);
        if (Unknown(readings) is { } unknown)
            finding.Reserve(unknown);
        if (!finding.Passes)
            finding.Next(next);
        return finding.Build();
    }

    /// <summary>Readings whose accuracy nobody states, as a reservation: their U is too small.</summary>
    /// <returns>The reservation, without a full stop; null when all are known.</returns>
    public static Message? Unknown(IEnumerable<CorrectedReading> readings)
    {
        var names = readings.Where(r => !r.AccuracyKnown).Select(r => r.Name).Distinct(StringComparer.Ordinal).ToImmutableArray();
        return names.IsEmpty ? null : CircuitMessages.AccuracyNotWritten(new([.. names.Select(n => new TextValue(n))]));
    }

    private static Message? TooCoarse(CheckContext context, Uncertain y, DisplayKind kind, LimitStatement limit)
    {
        if (limit is not { LowerSi: { } lower, UpperSi: { } upper } || y.StandardUncertainty == 0)
            return null;
        var least = context.Limits.Find(LimitIds.InstrumentsAdequacyWeak)?.Lower?.Si ?? 1;
        var half = (upper - lower) / 2;
        return half < least * y.Expanded
            ? CircuitMessages.TooCoarse(new(context.Present.Measured(y, kind).ExpandedText!), context.Present.InMessage(half, kind))
            : null;
    }
}

/// <summary>A number that is held against a limit.</summary>
/// <param name="Value">The number, SI.</param>
/// <param name="Kind">How it is printed.</param>
/// <param name="Readings">The readings it rests on.</param>
internal readonly record struct JudgedNumber(Uncertain Value, DisplayKind Kind, IEnumerable<CorrectedReading> Readings)
{
    /// <summary>The target where it moves with readings of its own.</summary>
    public Uncertain? Target { get; init; }

    /// <summary>What would make the doubt smaller, where it is no finer instrument.</summary>
    public Message? WhenTooCoarse { get; init; }
}
