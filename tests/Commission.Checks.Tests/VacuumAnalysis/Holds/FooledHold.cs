using System.Globalization;
using Commission.Checks.Tests.Coverage;

namespace Commission.Checks.Tests.VacuumAnalysis.Holds;

/// <summary>A hold that fools, or a crew that wants to: what happened, and what a careful technician may and may not say of its log.</summary>
/// <param name="Hold">The hold.</param>
/// <param name="May">What a careful technician may say.</param>
/// <param name="Never">What he may not.</param>
internal sealed record FooledHold(SimulatedHold Hold, string May, params HoldClaim[] Never)
{
    /// <summary>The inflow that a bound has to hold: the largest that lasted for a tenth of the hold, Pa/s.</summary>
    public double Inflow { get; init; }

    /// <summary>When isolation is written, s from the true one.</summary>
    public double WrittenAt { get; init; }

    /// <summary>Whether isolation is written at all.</summary>
    public bool IsWritten { get; init; } = true;

    /// <summary>When the end is written, s from isolation; the end of the hold by default.</summary>
    public double? WrittenEnd { get; init; }

    /// <summary>Further events of the job, in flow style.</summary>
    public string Events { get; init; } = "";

    /// <summary>Further keys of the evacuation, a line each.</summary>
    public string Evacuation { get; init; } = "";

    /// <summary>What the job says.</summary>
    /// <param name="draws">The noise.</param>
    public HoldTold Told(Draws draws)
    {
        var rows = Hold.Rows(draws);
        return HoldTold.Of(Yaml(), ("log.csv", Hold.Csv(rows)));
    }

    /// <summary>The job file.</summary>
    public string Yaml()
    {
        var step = Hold.Gauge.StepMicrons(Hold.Level / SimulatedGauge.Micron);
        return string.Create(CultureInfo.InvariantCulture, $$$"""
            commission: 1
            units: us
            job: {id: F-1, work: new installation, date: 2026-07-14, site: {name: 12 Reed Close, elevation: 0 m}}
            equipment: {system: split, compressor: fixed, refrigerant: R-410A, metering: TXV, piping: {liquid: {od: 3/8 in, length: 30 ft}, vapor: {od: 3/4 in, length: 30 ft} } }
            instruments:
              - {id: vacuum, kind: vacuum gauge, sensor: thermal, accuracy: 10 % of reading, resolution: {{{step}}} micron, full scale: {{{Hold.Gauge.FullScale}}} micron, reads: [evacuation]}
            evacuation:
              section: line set and indoor
              gauge: at the system
              isolated at: valve on the service port
              ambient: 75 °F
              coldest part: 72 °F
              started: "09:00"
              series: {file: log.csv}
              events:
            {{{Events}}}{{{(IsWritten ? $"    - {{at: {Minutes(WrittenAt)}, what: isolated}}\n" : "")}}}    - {at: {{{Minutes(WrittenEnd ?? Hold.Length)}}}, what: end}
            {{{Evacuation}}}
            """);
    }

    /// <summary>A time since isolation as the job writes it.</summary>
    public string Minutes(double time) => string.Create(CultureInfo.InvariantCulture, $"{(Hold.PumpDown + time) / 60:0.##} min");
}

/// <summary>A kind of fooled hold.</summary>
/// <param name="Name">In a few words.</param>
/// <param name="Draw">Draws one.</param>
internal sealed record FooledKind(string Name, Func<Draws, FooledHold> Draw)
{
    private const int Seed = 20261134;
    private const int Most = 10;

    /// <summary>The number of its first hold: of its name, so that a new kind leaves the numbers of the others (FNV-1a, folded).</summary>
    public int Number { get; } = Most * (int)(Name.Aggregate(2166136261u, (hash, c) => unchecked((hash ^ c) * 16777619u)) % 100_000);

    /// <summary>The first holds of the kind with what is said of them.</summary>
    /// <param name="count">How many, ten at most.</param>
    public IEnumerable<FooledOutcome> Run(int count) => Enumerable.Range(Number, count).Select(number =>
    {
        var fooled = Draw(HoldDraws.Of(Seed, number));
        var told = fooled.Told(HoldDraws.Of(Seed + 1, number));
        return new FooledOutcome(number, fooled, told, [.. fooled.Never.Where(c => told.Makes(c, fooled.Inflow, fooled.Hold.Pressure(fooled.Hold.Length)))]);
    });
}

/// <summary>A fooled hold with what was said of it.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Fooled">The hold.</param>
/// <param name="Told">What was said.</param>
/// <param name="Wrong">The claims that may not be made and were.</param>
internal sealed record FooledOutcome(int Number, FooledHold Fooled, HoldTold Told, HoldClaim[] Wrong);
