using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Compressors;

/// <summary>Small invented jobs around a running compressor at sea level, its pressures read on gauges without offset and its lines on thermometers.</summary>
internal static class CompressorJob
{
    /// <summary>Findings of a check over one row of readings at 10:30, half an hour after the start.</summary>
    /// <param name="check">Id of the check.</param>
    /// <param name="reading">The readings, one line without the time.</param>
    /// <param name="compressor">The compressor.</param>
    /// <param name="limits">The maker's limits, one line.</param>
    /// <param name="charging">Further keys of the charging, one line.</param>
    /// <param name="refrigerant">The refrigerant.</param>
    /// <param name="started">When the compressor was started.</param>
    public static IReadOnlyList<Finding> All(
        string check, string reading, string compressor = "fixed", string limits = "", string charging = "running: full", string refrigerant = "R-410A", string started = "10:00") =>
        JobText.Evaluate(Yaml(reading, compressor, limits, charging, refrigerant, started), check);

    /// <summary>The job file.</summary>
    /// <inheritdoc cref="All"/>
    public static string Yaml(
        string reading, string compressor = "fixed", string limits = "", string charging = "running: full", string refrigerant = "R-410A", string started = "10:00") => $$$"""
        commission: 1
        units: us
        job: {id: CO-1, work: seasonal check, date: 2026-07-02, site: {name: "Fen Row 7", station pressure: 14.696 psia +/- 0.005}}
        equipment: {system: heat pump, compressor: {{{compressor}}}, metering: TXV, refrigerant: {{{refrigerant}}}}
        {{{(limits.Length == 0 ? "" : $"limits: {limits}")}}}
        instruments:
          - {id: low, kind: pressure gauge, accuracy: 0.5 psi, resolution: 0.01 psi, calibrated: 2026-01-10, reads: [vapor pressure, true suction pressure]}
          - {id: high, kind: pressure gauge, accuracy: 1 psi, resolution: 0.01 psi, calibrated: 2026-01-10, reads: [liquid pressure, discharge pressure]}
          - {id: probe, kind: thermometer, accuracy: 0.5 °F, resolution: 0.1 °F, calibrated: 2026-01-10, reads: [vapor line, liquid line, discharge line, compressor suction line, sump]}
        charging: {compressor started: "{{{started}}}", {{{charging}}}, readings: [{at: "10:30", {{{reading}}}}]}
        """;

    /// <summary>The only finding of a check.</summary>
    /// <inheritdoc cref="All"/>
    public static Finding One(
        string check, string reading, string compressor = "fixed", string limits = "", string charging = "running: full", string refrigerant = "R-410A", string started = "10:00") =>
        Assert.Single(All(check, reading, compressor, limits, charging, refrigerant, started));
}
