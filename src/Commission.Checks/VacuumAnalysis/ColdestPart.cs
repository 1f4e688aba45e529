using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>The temperature of the coldest part of a circuit under vacuum: from a log of it, else as written at isolation and at the end of the hold.</summary>
internal sealed class ColdestPart
{
    private readonly Jobs.Model.Evacuation _evacuation;

    /// <param name="evacuation">The evacuation.</param>
    /// <param name="clock">Its clock.</param>
    public ColdestPart(Jobs.Model.Evacuation evacuation, EvacuationClock clock)
    {
        _evacuation = evacuation;
        if (evacuation.TemperatureSeries?.Data is not { } log)
            return;
        var offset = clock.Offset(log.Start);
        var rows = Enumerable.Range(0, log.Times.Length).Where(i => double.IsFinite(log.Values[i])).ToArray();
        if (rows.Length > 0)
            Log = Polyline.Through([.. rows.Select(i => log.Times[i] + offset)], [.. rows.Select(i => log.Values[i])]);
    }

    /// <summary>Temperature at a time, s → K, on straight lines between the rows of the log and level beyond them; null without a log.</summary>
    public Func<double, double>? Log { get; }

    /// <summary>The last that is written; null when none is.</summary>
    public Given<Temperature>? Last => _evacuation.ColdestPartAtEnd ?? _evacuation.ColdestPart;

    /// <summary>By how much it is warmer at a time than at isolation, s → K; null when it is not known.</summary>
    /// <param name="isolation">Isolation, s.</param>
    /// <param name="end">End of the hold, s.</param>
    public Func<double, double>? Warming(double isolation, double end) => Log is { } log ? time => log(time) - log(isolation)
        : _evacuation is { ColdestPart: { } cold, ColdestPartAtEnd: { } later } && end > isolation ? time => (later.Value.Si - cold.Value.Si) * (time - isolation) / (end - isolation)
        : null;

    /// <summary>Names what is known of it in a finding.</summary>
    public FindingBuilder NameIn(FindingBuilder finding) => finding.Use(VacuumHoldMessages.ReadingColdest, _evacuation.ColdestPart).Use(VacuumHoldMessages.ReadingColdestAtEnd, _evacuation.ColdestPartAtEnd)
        .Use(VacuumHoldMessages.ReadingTemperatureLog, _evacuation.TemperatureSeries?.File);
}
