using System.Collections.Immutable;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>The electrical readings of a job, corrected once for all the checks that use them.</summary>
internal sealed class ElectricalReadings : IAnalysis<ElectricalReadings>
{
    private ElectricalReadings(ImmutableArray<CorrectedReading> voltages, ImmutableArray<CorrectedReading> currents)
    {
        LineToLine = voltages;
        Compressor = currents;
    }

    /// <summary>Voltages between lines, V.</summary>
    public ImmutableArray<CorrectedReading> LineToLine { get; }

    /// <summary>Compressor currents, one a phase, A.</summary>
    public ImmutableArray<CorrectedReading> Compressor { get; }

    /// <inheritdoc/>
    public static ElectricalReadings Create(CheckContext context)
    {
        if (context.Job.Electrical is not { } electrical)
            return new ElectricalReadings([], []);
        return new ElectricalReadings(
            [.. electrical.LineToLine.Select((v, i) => context.Readings.Plain(Name(context, ElectricalMessages.ReadingLineToLine, i, electrical.LineToLine.Length), ReadingName.Voltage, v, DisplayKind.Voltage, electrical.With))],
            [.. electrical.Compressor.Select((a, i) => context.Readings.Plain(Name(context, ReadingsMessages.CompressorCurrent, i, electrical.Compressor.Length), ReadingName.Current, a, DisplayKind.Current, electrical.With))]);
    }

    private static string Name(CheckContext context, Message what, int index, int count) => context.Present.Text(count == 1 ? what : ElectricalMessages.ReadingNumbered(what, index + 1));
}

/// <summary>Judges the unbalance of three phases, voltages or currents, by one limit.</summary>
internal static class Unbalance
{
    /// <summary>Judges it.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="check">The check that speaks.</param>
    /// <param name="readings">The three readings.</param>
    /// <param name="limitId">Id of the limit.</param>
    /// <param name="what">Voltages or currents.</param>
    /// <param name="next">What to do when it is too much.</param>
    /// <param name="more">What the check adds to a judged finding, from the unbalance; null for nothing.</param>
    public static Finding Judge(
        CheckContext context, ICheck check, ImmutableArray<CorrectedReading> readings, string limitId, Message what, Message next, Action<FindingBuilder, double>? more = null)
    {
        var finding = context.Finding(check);
        foreach (var reading in readings)
            finding.Use(reading);
        var mean = readings.Average(r => r.Value.Value);
        if (!(mean > 0))
            return finding.NotEvaluated(ElectricalMessages.UnbalanceZero(what), ElectricalMessages.UnbalanceZeroNext);
        var unbalance = Uncertain.Apply(x => PhaseUnbalance.Of(x), [.. readings.Select(r => r.Value)]);
        finding.Step(
            "u", ElectricalMessages.UnbalanceName(what), PhaseUnbalance.Formula,
            string.Join(", ", readings.Select(r => r.Uses[0].Text)), context.Present.Text(unbalance, DisplayKind.Percentage), PhaseUnbalance.Source);
        var limit = context.Limits.Require(limitId);
        var state = context.State(limit);
        finding.Judge(unbalance.On(state), DisplayKind.Percentage, state).Remark(limit.Remark(context.Present.Units));
        var found = context.Present.InMessage(unbalance.Value, DisplayKind.Percentage);
        finding.Say(finding.Passes ? ElectricalMessages.UnbalanceWithin(what, found) : ElectricalMessages.UnbalanceBeyond(what, found, new TextValue(state.Text)));
        if (!finding.Passes)
            finding.Next(next);
        more?.Invoke(finding, unbalance.Value);
        return finding.Build();
    }
}
