using System.Globalization;
using System.Text.RegularExpressions;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Air;

/// <summary>
/// Whatever moves a finding is named in it: every number of a full job is changed in turn, and a finding of air, compressor, electrical or piping
/// that comes out otherwise has to name that number's place among its readings.
/// </summary>
public sealed partial class NamedReadingsTests
{
    private const string Job = """
        commission: 1
        units: us
        job:
          id: AIR-9
          work: new installation
          date: 2026-07-02
          site: {name: "Fen Row 7", elevation: 1200 ft}
        equipment:
          system: split
          compressor: two-stage
          refrigerant: R-410A
          metering: TXV
          capacity: 36 kBtu/h
          minimum capacity: 24 kBtu/h
          accessories: [crankcase heater]
          nameplate: {voltage: 208 to 230 V, compressor RLA: 16.7 A, compressor MCC: 24.1 A, MCA: 22.0 A, MOP: 35 A, rated current: 15.5 A, fan FLA: 1.4 A, max static: 0.50 inwc, frequency: 60 Hz}
          piping: {liquid: {od: 3/8 in, length: 62 ft, rise: 9 ft, elbows: 6}, vapor: {od: 3/4 in, length: 62 ft, rise: -9 ft, traps: 1}}
        limits:
          airflow: {minimum: 1050 cfm, maximum: 1350 cfm, from: p. 8}
          discharge superheat: {minimum: 25 °F, from: p. 9}
          longest run: {maximum: 80 ft, from: p. 5}
          long line accessories: [crankcase heater]
          flare torque: [{od: 1/2 in, minimum: 36.5 lbf·ft, maximum: 45.2 lbf·ft, from: p. 13}]
        instruments:
          - {id: low, kind: pressure gauge, accuracy: 0.5 psi, reads: [vapor pressure, true suction pressure], checks: {zero: 0.2 psig}}
          - {id: high, kind: pressure gauge, accuracy: 1.5 psi, reads: [liquid pressure, discharge pressure], checks: {zero: -0.3 psig, known pressure: {applied: 300.0 psig +/- 0.6, read: 301.1 psig}}}
          - {id: clamp, kind: pipe clamp, sensor: thermocouple K class 2, resolution: 0.1 °F, insulated: yes, reads: [vapor line, liquid line, discharge line, compressor suction line, sump], checks: {ice point: {read: 32.3 °F}}}
          - {id: air probe, kind: psychrometer, accuracy: 0.5 °F, resolution: 0.1 °F, reads: [outdoor air, return air, supply air]}
          - {id: manometer, kind: manometer, accuracy: 0.01 inwc, reads: [static pressure]}
          - {id: meter, kind: clamp meter, accuracy: 1.5 % of reading, reads: [electrical]}
          - {id: hood, kind: flow hood, accuracy: 3 % of reading, reads: [airflow]}
          - {id: wrench, kind: torque wrench, accuracy: 4 % of reading, reads: [torque]}
        charging:
          unit arrived: charged
          crankcase heater on since: "2026-07-01 16:00"
          compressor started: "10:00"
          running: high stage
          read at: {discharge line: 5 in}
          readings:
            - {at: "10:30", vapor pressure: 121.1, liquid pressure: 343.3, true suction pressure: 118.2, discharge pressure: 352.4, vapor line: 54.4, liquid line: 94.5, compressor suction line: 58.6, discharge line: 168.7, sump: 92.8, outdoor dry bulb: 91.9, return dry bulb: 76.2, return wet bulb: 63.4, supply dry bulb: 57.6, supply wet bulb: 55.7, power: 2450 W}
            - {at: "10:45", vapor pressure: 120.2, liquid pressure: 342.4, true suction pressure: 117.3, discharge pressure: 351.5, vapor line: 54.1, liquid line: 94.2, compressor suction line: 58.3, discharge line: 167.8, sump: 93.9, outdoor dry bulb: 91.8, return dry bulb: 75.9, return wet bulb: 63.1, supply dry bulb: 56.8, supply wet bulb: 54.9, power: 2440 W}
        air:
          filter: clean
          static: {return: -0.21 inwc, supply: 0.43 inwc, return tap: after filter, supply tap: before coil, includes coil: no, includes filter: yes}
          filter drop: 0.11 inwc
          coil drop: 0.24 inwc
          wet coil: yes
          fan table: {from: p. 8, points: [{static: 0.2 inwc, airflow: 1310 cfm}, {static: 0.4 inwc, airflow: 1215 cfm}, {static: 0.6 inwc, airflow: 1060 cfm}]}
          airflow: {method: hood, hood: [410 cfm, 395 cfm, 371 cfm]}
          design airflow: 1205 cfm
          blower power: 475 W
        electrical:
          supply: {breaker: 30 A, ampacity: 31 A, protective earth: 0.3 ohm, terminal torque: 20.5 lbf·in}
          line to line: [236 V, 238 V, 241 V]
          compressor: [14.9 A, 15.2 A, 14.6 A]
          outdoor fan: 1.1 A
          total: 17.3 A
          run capacitor: {label: 45 uF, read: 44.1 uF}
          voltage drop at start: {before: 239 V, lowest: 222 V}
          insulation: {read: 61 Mohm, test voltage: 500 V, leads off: yes}
          control voltage: 26.2 V
        piping checks:
          flares: [{place: indoor, od: 3/8 in, torque: 28 lbf·ft, with: wrench}, {place: outdoor, od: 1/2 in, torque: 40 lbf·ft}]
          riser traps: 2
          supports every: 5.5 ft
        """;

    private static readonly string[] Phases = [Checks.Kernel.Phases.Air, Checks.Kernel.Phases.Compressor, Checks.Kernel.Phases.Electrical, Checks.Kernel.Phases.Piping];

    [Fact]
    public void Every_number_that_moves_a_finding_is_named_in_it()
    {
        var before = Findings(Job);
        Assert.True(before.Count > 45, before.Count.ToString(CultureInfo.InvariantCulture));
        var moved = new HashSet<string>(StringComparer.Ordinal);
        var unnamed = new List<string>();
        foreach (var number in Numbers())
        {
            var after = Findings(string.Concat(Job.AsSpan(0, number.Index), Next(number.Value), Job.AsSpan(number.Index + number.Length)));
            foreach (var (key, finding) in before)
            {
                if (after.TryGetValue(key, out var other) && Same(finding, other))
                    continue;
                moved.Add(key);
                if (!Names(finding, number.Index, number.Length))
                    unnamed.Add($"{key}: {Job[number.Index..Math.Min(Job.Length, number.Index + 30)].ReplaceLineEndings(" ")} (line {Line(number.Index)})");
            }
        }

        Assert.Empty(unnamed);
        Assert.True(moved.Count > 40, moved.Count.ToString(CultureInfo.InvariantCulture));
    }

    // Numbers of the job's facts and readings: not the maker's limits, which a finding shows as such, nor those of instruments, which it names by their id.
    private static IEnumerable<Match> Numbers()
    {
        var limits = Job.IndexOf("limits:", StringComparison.Ordinal);
        var charging = Job.IndexOf("charging:", StringComparison.Ordinal);
        var equipment = Job.IndexOf("equipment:", StringComparison.Ordinal);
        return Number().Matches(Job).Where(m => m.Index > equipment && (m.Index < limits || m.Index > charging));
    }

    private static string Next(string number)
    {
        var point = number.IndexOf('.', StringComparison.Ordinal);
        var decimals = point < 0 ? 0 : number.Length - point - 1;
        return (decimal.Parse(number, CultureInfo.InvariantCulture) + (decimal)Math.Pow(10, -decimals)).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    private static Dictionary<string, Finding> Findings(string yaml)
    {
        var context = JobText.Context(yaml);
        return CheckCatalogue.All.Where(c => Phases.Contains(c.Phase)).SelectMany(c => c.Evaluate(context)).ToDictionary(f => $"{f.Check} [{f.Subject}]", StringComparer.Ordinal);
    }

    private static bool Same(Finding a, Finding b) => a.Verdict == b.Verdict && a.Statement == b.Statement && a.Measured?.Value.Si == b.Measured?.Value.Si && a.Measured?.ExpandedSi == b.Measured?.ExpandedSi
        && a.Limits.Select(l => (l.Text, l.LowerSi, l.UpperSi)).SequenceEqual(b.Limits.Select(l => (l.Text, l.LowerSi, l.UpperSi)));

    // A named value begins at or before the number and ends behind it on the same line.
    private static bool Names(Finding finding, int index, int length)
    {
        var line = Line(index);
        var column = index - (Job.LastIndexOf('\n', Math.Max(0, index - 1)) + 1) + 1;
        return finding.Readings.Any(r => r.At.Line == line && r.At.Column <= column && column + length <= r.At.Column + 24);
    }

    private static int Line(int index) => Job.AsSpan(0, index).Count('\n') + 1;

    // A number as a value of its own: after a colon, a bracket or a comma; the second of "208 to 230 V" goes with the first.
    [GeneratedRegex(@"(?<=[:\[,] )-?\d+(\.\d+)?(?= |,|\]|\}|$)(?!/)|(?<=\[)-?\d+(\.\d+)?(?= )", RegexOptions.Multiline | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Number();
}
