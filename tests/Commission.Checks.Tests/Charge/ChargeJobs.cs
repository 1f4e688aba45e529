namespace Commission.Checks.Tests.Charge;

/// <summary>Jobs of the charge tests. Makers, people and places are invented.</summary>
internal static class ChargeJobs
{
    /// <summary>
    /// Tarn Lane: a split with an expansion valve at 5280 ft, charged by subcooling. Readings and instruments of the design's own scenario;
    /// the air side is complete, so that nothing is reserved.
    /// </summary>
    public const string TarnLane = """
        commission: 1
        units: us
        job:
          id: TL-2026-061
          work: new installation
          date: 2026-06-18
          zone: America/Denver
          site: {name: "Tarn Lane flats, unit 14", elevation: 5280 ft}
        equipment:
          system: split
          compressor: fixed
          refrigerant: R-454B
          metering: TXV
          capacity: 3 ton
          nameplate: {factory charge: 6 lb 8 oz}
          piping:
            liquid: {od: 3/8 in, length: 42 ft, rise: 9 ft}
            vapor: {od: 3/4 in, length: 42 ft}
            covered by factory charge: 15 ft
        limits:
          subcooling: {target: 9 °F, tolerance: 3 °F, from: "unit plate"}
        instruments:
          - {id: low, kind: pressure gauge, accuracy: 0.5 % of full scale, full scale: 500 psig, resolution: 0.1 psi, calibrated: 2026-02-11, reads: [vapor pressure], checks: {zero: 0.2 psig}}
          - {id: high, kind: pressure gauge, accuracy: 0.5 % of full scale, full scale: 800 psig, resolution: 0.1 psi, calibrated: 2026-02-11, reads: [liquid pressure], checks: {zero: -0.3 psig, known pressure: {applied: 300.0 psig +/- 0.6, read: 301.1 psig}}}
          - {id: vapor clamp, kind: pipe clamp, sensor: thermocouple K class 2, resolution: 0.1 °F, insulated: yes, reads: [vapor line], checks: {ice point: {read: 33.4 °F, adjusted: 32.1 °F}}}
          - {id: liquid clamp, kind: pipe clamp, sensor: thermocouple K class 2, resolution: 0.1 °F, insulated: yes, reads: [liquid line], checks: {ice point: {read: 31.2 °F, adjusted: 32.0 °F}}}
          - {id: air probe, kind: psychrometer, accuracy: 0.9 °F, resolution: 0.1 °F, calibrated: 2026-03-02, reads: [outdoor air, return air, supply air]}
          - {id: scale, kind: scale, accuracy: 0.5 oz, resolution: 0.1 oz, calibrated: 2026-02-11, reads: [charge]}
        charging:
          unit arrived: charged
          as: liquid
          scale: {before: 24.86 lb, after: 23.84 lb}
          line adjustment: {figure: 0.60 oz/ft, from: "maker's manual, p. 12"}
          method: subcooling
          compressor started: "11:00"
          running: full
          readings:
            - {at: "11:20", vapor pressure: 119.8, liquid pressure: 341.5, vapor line: 57.9, liquid line: 97.4, outdoor dry bulb: 91.5, return dry bulb: 76.2, return wet bulb: 63.4, supply dry bulb: 56.9}
            - {at: "11:35", vapor pressure: 118.9, liquid pressure: 340.8, vapor line: 57.2, liquid line: 97.0, outdoor dry bulb: 91.7, return dry bulb: 76.0, return wet bulb: 63.2, supply dry bulb: 56.6}
        air: {filter: clean, coil: clean, panels on: yes, blower at cooling speed: yes}
        """;

    /// <summary>
    /// Fen Row: a split with a fixed orifice at sea level. R-410A at 118.35 psig has its dew point at 40.0 °F and at 341.88 psig its bubble
    /// point at 105.0 °F (equation of state, table in psig of a general handbook calculation); the lines are read with thermometers, so no
    /// clamp bias moves the numbers. 95 °F outdoors and 67 °F return wet bulb make a target of 12.0 °F (table RA3.2-2, from memory).
    /// </summary>
    public const string FenRow = """
        commission: 1
        units: us
        job: {id: FR-2026-007, work: seasonal check, date: 2026-07-02, site: {name: "Fen Row 7", station pressure: 14.696 psia +/- 0.005}}
        equipment: {system: split, compressor: fixed, refrigerant: R-410A, metering: fixed orifice, capacity: 3 ton}
        instruments:
          - {id: low, kind: pressure gauge, accuracy: 0.5 psi, resolution: 0.01 psi, reads: [vapor pressure]}
          - {id: high, kind: pressure gauge, accuracy: 1 psi, resolution: 0.01 psi, reads: [liquid pressure]}
          - {id: line probe, kind: thermometer, accuracy: 0.5 °F, resolution: 0.1 °F, reads: [vapor line, liquid line, liquid after drier]}
          - {id: air probe, kind: psychrometer, accuracy: 0.5 °F, resolution: 0.1 °F, reads: [outdoor air, return air, supply air]}
        charging:
          compressor started: "10:00"
          running: full
          readings:
            - {at: "10:30", vapor pressure: 118.35, liquid pressure: 341.88, vapor line: 52.0, liquid line: 95.0, outdoor dry bulb: 95.0, return dry bulb: 80.0, return wet bulb: 67.0, supply dry bulb: 61.8}
        air: {filter: clean, coil: clean, panels on: yes, blower at cooling speed: yes}
        """;

    /// <summary>The job with something written otherwise.</summary>
    /// <param name="yaml">The job.</param>
    /// <param name="from">What is written; it stands there once.</param>
    /// <param name="to">What is written instead.</param>
    public static string With(this string yaml, string from, string to)
    {
        var at = yaml.IndexOf(from, StringComparison.Ordinal);
        return at >= 0 && yaml.IndexOf(from, at + 1, StringComparison.Ordinal) < 0
            ? string.Concat(yaml.AsSpan(0, at), to, yaml.AsSpan(at + from.Length))
            : throw new ArgumentException($"\"{from}\" does not stand in the job exactly once.", nameof(from));
    }
}
