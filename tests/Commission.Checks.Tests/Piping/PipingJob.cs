using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Piping;

/// <summary>Small invented jobs around lines.</summary>
internal static class PipingJob
{
    /// <summary>Readings of a circuit of R-134a near the textbook's ideal cycle between 0.14 and 0.8 MPa: 2 K of superheat, 1 K of subcooling.</summary>
    public const string Textbook = "vapor pressure: 1.40 bar(a), liquid pressure: 8.00 bar(a), vapor line: -16.8 °C, liquid line: 30.3 °C";

    /// <summary>Findings of a check.</summary>
    /// <param name="check">Id of the check.</param>
    /// <param name="equipment">Further equipment keys, one line.</param>
    /// <param name="checks">The piping checks, one line; nothing for none.</param>
    /// <param name="limits">The maker's limits, one line; nothing for none.</param>
    /// <param name="reading">Readings of one row half an hour after the start; nothing for none.</param>
    /// <param name="system">The kind of system.</param>
    /// <param name="refrigerant">The refrigerant.</param>
    /// <param name="units">Units of the job.</param>
    /// <param name="charging">Further keys of the charging.</param>
    public static IReadOnlyList<Finding> All(
        string check, string equipment = "", string checks = "", string limits = "", string reading = "", string system = "split", string refrigerant = "R-134a", string units = "si", string charging = "running: full") =>
        JobText.Evaluate(Yaml(equipment, checks, limits, reading, system, refrigerant, units, charging), check);

    /// <summary>The job file.</summary>
    /// <inheritdoc cref="All"/>
    public static string Yaml(
        string equipment = "", string checks = "", string limits = "", string reading = "", string system = "split", string refrigerant = "R-134a", string units = "si", string charging = "running: full") => $$$"""
        commission: 1
        units: {{{units}}}
        job: {id: PI-1, work: seasonal check, date: 2026-07-02, site: {name: "Fen Row 7", station pressure: 101.325 kPa +/- 0.02}}
        equipment: {system: {{{system}}}, metering: TXV, refrigerant: {{{refrigerant}}}{{{(equipment.Length == 0 ? "" : ", " + equipment)}}}}
        {{{(limits.Length == 0 ? "" : $"limits: {limits}")}}}
        instruments:
          - {id: gauges, kind: pressure gauge, accuracy: 0.01 bar, resolution: 0.01 bar, calibrated: 2026-01-10, reads: [vapor pressure, liquid pressure]}
          - {id: probe, kind: thermometer, accuracy: 0.2 K, resolution: 0.1 K, calibrated: 2026-01-10, reads: [vapor line, liquid line]}
          - {id: wrench, kind: torque wrench, accuracy: 4 % of reading, calibrated: 2026-01-10, reads: [torque]}
        {{{(reading.Length == 0 ? "" : $"charging: {{compressor started: \"10:00\", {charging}, readings: [{{at: \"10:30\", {reading}}}]}}")}}}
        {{{(checks.Length == 0 ? "" : $"piping checks: {checks}")}}}
        """;

    /// <summary>The only finding of a check.</summary>
    /// <inheritdoc cref="All"/>
    public static Finding One(
        string check, string equipment = "", string checks = "", string limits = "", string reading = "", string system = "split", string refrigerant = "R-134a", string units = "si", string charging = "running: full") =>
        Assert.Single(All(check, equipment, checks, limits, reading, system, refrigerant, units, charging));
}
