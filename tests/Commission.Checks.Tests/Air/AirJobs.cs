using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Air;

/// <summary>Small invented jobs around the air side.</summary>
internal static class AirJobs
{
    /// <summary>Findings of a check over an air part and readings of a system in cooling that has settled.</summary>
    /// <param name="check">Id of the check.</param>
    /// <param name="air">The air part, one line; nothing for none.</param>
    /// <param name="readings">The readings, one line each without their time; they follow at 10:30, 10:45 and so on.</param>
    /// <param name="equipment">Further equipment keys, one line.</param>
    /// <param name="limits">The maker's limits and packs, one line.</param>
    /// <param name="site">What the site says of its air.</param>
    /// <param name="units">Units of the job.</param>
    /// <param name="charging">Further keys of the charging, one line.</param>
    public static IReadOnlyList<Finding> All(
        string check, string air = "", string[]? readings = null, string equipment = "capacity: 3 ton", string limits = "", string site = "station pressure: 14.696 psia +/- 0.005", string units = "us", string charging = "running: full") =>
        JobText.Evaluate(Yaml(air, readings, equipment, limits, site, units, charging), check);

    /// <summary>The only finding of a check.</summary>
    /// <inheritdoc cref="All"/>
    public static Finding One(
        string check, string air = "", string[]? readings = null, string equipment = "capacity: 3 ton", string limits = "", string site = "station pressure: 14.696 psia +/- 0.005", string units = "us", string charging = "running: full") =>
        Assert.Single(All(check, air, readings, equipment, limits, site, units, charging));

    /// <summary>The job file.</summary>
    /// <inheritdoc cref="All"/>
    public static string Yaml(
        string air = "", string[]? readings = null, string equipment = "capacity: 3 ton", string limits = "", string site = "station pressure: 14.696 psia +/- 0.005", string units = "us", string charging = "running: full")
    {
        var rows = (readings ?? []).Select((r, i) => $"    - {{at: \"{10 + ((30 + (15 * i)) / 60):00}:{(30 + (15 * i)) % 60:00}\", {r}}}");
        var part = readings is null ? "" : $"charging:{Environment.NewLine}  compressor started: \"10:00\"{Environment.NewLine}{string.Concat(charging.Split(", ").Where(c => c.Length > 0).Select(c => $"  {c}{Environment.NewLine}"))}  readings:{Environment.NewLine}{string.Join(Environment.NewLine, rows)}";
        return $$$"""
            commission: 1
            units: {{{units}}}
            job: {id: AIR-1, work: seasonal check, date: 2026-07-02, site: {name: "Fen Row 7", {{{site}}}}}
            equipment: {system: split, compressor: fixed, metering: TXV, refrigerant: R-410A, {{{equipment}}}}
            {{{(limits.Length == 0 ? "" : $"limits: {limits}")}}}
            instruments:
              - {id: manometer, kind: manometer, accuracy: 0.01 inwc, resolution: 0.01 inwc, calibrated: 2026-01-10, reads: [static pressure]}
              - {id: air probe, kind: psychrometer, accuracy: 0.5 °F, resolution: 0.1 °F, calibrated: 2026-01-10, reads: [return air, supply air, outdoor air]}
              - {id: meter, kind: clamp meter, accuracy: 1.5 % of reading, calibrated: 2026-01-10, reads: [electrical]}
              - {id: hood, kind: flow hood, accuracy: 3 % of reading, calibrated: 2026-01-10, reads: [airflow]}
              - {id: vane, kind: anemometer, accuracy: 2 % of reading, calibrated: 2026-01-10, reads: [air velocity]}
            {{{part}}}
            {{{(air.Length == 0 ? "" : $"air: {air}")}}}
            """;
    }
}
