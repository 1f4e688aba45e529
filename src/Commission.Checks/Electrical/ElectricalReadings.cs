using System.Collections.Immutable;
using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;

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
            [.. electrical.LineToLine.Select((v, i) => context.Readings.Plain(Name("line to line", i, electrical.LineToLine.Length), ReadingName.Voltage, v, DisplayKind.Voltage, electrical.With))],
            [.. electrical.Compressor.Select((a, i) => context.Readings.Plain(Name("compressor current", i, electrical.Compressor.Length), ReadingName.Current, a, DisplayKind.Current, electrical.With))]);
    }

    private static string Name(string what, int index, int count) => count == 1 ? what : $"{what} {index + 1}";
}
