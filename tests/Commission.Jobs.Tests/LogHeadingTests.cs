using System.Globalization;
using System.Text.RegularExpressions;
using Commission.Jobs.Model;
using Xunit;

namespace Commission.Jobs.Tests;

/// <summary>
/// The table Data/log-headings.txt: what loggers, spreadsheets and people write above a column. Each heading is read as what it means, or
/// refused by its name; none is read as something else.
/// </summary>
public sealed partial class LogHeadingTests(ITestOutputHelper output)
{
    private const string Frame = """
        commission: 1
        units: UNITS
        job: {id: T, work: opened circuit, date: 2026-06-18, zone: America/Denver, site: {elevation: 100 m}}
        equipment: {system: split, refrigerant: R-410A}

        """;

    // SI in one of each: NIST SP 811 (2008), appendix B. A micron is a micron of mercury, a Torr 1/760 atm.
    private static readonly Dictionary<string, Func<double, double>> Units = new(StringComparer.Ordinal)
    {
        ["micron"] = v => v * 0.133322387,
        ["mTorr"] = v => v * 0.133322368,
        ["Torr"] = v => v * 133.322368,
        ["mmHg abs"] = v => v * 133.322387,
        ["inHg abs"] = v => v * 3386.389,
        ["Pa"] = v => v,
        ["hPa"] = v => v * 100,
        ["mbar"] = v => v * 100,
        ["kPa abs"] = v => v * 1000,
        ["kPa gauge"] = v => v * 1000,
        ["MPa gauge"] = v => v * 1e6,
        ["bar abs"] = v => v * 1e5,
        ["bar gauge"] = v => v * 1e5,
        ["psi abs"] = v => v * 6894.757,
        ["psi gauge"] = v => v * 6894.757,
        ["°F"] = v => (v + 459.67) / 1.8,
        ["°C"] = v => v + 273.15,
        ["K"] = v => v,
        ["W"] = v => v,
        ["kW"] = v => v * 1000,
    };

    public static TheoryData<string> Rows() => new(Reading.Data("log-headings.txt").Split('\n').Where(l => l.Length > 0 && l[0] != '#'));

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_heading_is_read_as_what_it_means_or_refused_by_its_name(string row) => Assert.Equal("", Verdict(row));

    [Fact]
    public void The_table_holds_spellings_of_time_unit_and_quantity_in_hundreds()
    {
        var rows = Rows().Select(r => r.Data).ToArray();
        Assert.Equal(rows.Length, rows.Distinct(StringComparer.Ordinal).Count());
        Assert.True(rows.Length >= 200);
        var verdicts = rows.GroupBy(Verdict).Where(g => g.Key.Length > 0).ToArray();
        foreach (var verdict in verdicts.OrderBy(v => v.Key, StringComparer.Ordinal))
        {
            foreach (var row in verdict)
                output.WriteLine($"{verdict.Key}: {row}");
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{rows.Length} rows: {verdicts.Where(v => v.Key.StartsWith("misread", StringComparison.Ordinal)).Sum(v => v.Count())} misread, {verdicts.Where(v => !v.Key.StartsWith("misread", StringComparison.Ordinal)).Sum(v => v.Count())} refused though they say what they are, or without their name"));
    }

    // Nothing when the row is right; else whether it was misread, or only refused.
    private static string Verdict(string row)
    {
        var cells = row.Split(" | ");
        var words = cells[0].Split(' ', 3);
        if (words[0] != "log")
        {
            var lines = cells[2].Split(" & ");
            return words[0] == "time"
                ? Verdict("vacuum", "si", "log.csv", [Quoted(cells[1]) + ";Vacuum (micron)", $"{lines[0]};900", $"{lines[1]};450"], cells[3].StartsWith("refused", StringComparison.Ordinal) ? cells[3] : cells[3] + "; micron", 900)
                : Verdict(words[0], words[1], "log.csv", ["Elapsed (s);" + Quoted(cells[1]), $"0;{lines[0]}", $"10;{lines[1]}"], cells[3].StartsWith("refused", StringComparison.Ordinal) ? cells[3] : "10; " + cells[3], Number(lines[0]));
        }

        var tail = words[2].Split(' ', 2);
        string[] log = [.. cells[1].Split(" & "), .. cells[2].Split(" & ")];
        return Verdict(words[1], tail[0], tail.Length > 1 ? "{file: log.csv, " + tail[1][1..] : "log.csv", log, cells[3], tail[0].Length == 0 ? 0 : First(log, words[1]));
    }

    private static string Quoted(string heading) => heading.Contains('"', StringComparison.Ordinal) ? "\"" + heading.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : heading;

    // The first reading of a whole log: the rows of the table have their likely magnitude.
    private static double First(string[] rows, string asked) => rows.SelectMany(r => r.Split(';')).Select(c => double.TryParse(c, CultureInfo.InvariantCulture, out var v) ? v : double.NaN)
        .First(v => asked switch { "vacuum" => v is >= 90, "pressure" => v is > 100, _ => v is 21 });

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Verdict(string asked, string units, string series, string[] log, string means, double first)
    {
        var (data, problems) = Read(asked, units, series, string.Join('\n', log) + "\n");
        if (means.StartsWith("refused", StringComparison.Ordinal))
        {
            if (data is not null)
                return "misread (should be refused)";
            return problems.Any(p => p.Contains(means["refused".Length..].Trim(), StringComparison.Ordinal)) && problems.All(Placed) ? "" : "refused without its name";
        }

        if (data is null)
            return "refused though clear";
        var (time, value) = (means.Split("; ")[0], means.Split("; ")[1]);
        var clock = time.Split(" from ");
        if (data.Times[1] - data.Times[0] is var step && Math.Abs(step - Number(clock[0])) > 1e-6)
            return $"misread (step {step.ToString(CultureInfo.InvariantCulture)})";
        if (clock.Length > 1 && data.Start != new DateTimeOffset(2026, 6, 18, 0, 0, 0, TimeSpan.FromHours(-6)).Add(TimeSpan.Parse(clock[1] + (clock[1].Contains('.', StringComparison.Ordinal) ? "" : ".0"), CultureInfo.InvariantCulture)))
            return "misread (start)";
        var guessed = value.StartsWith("by units ", StringComparison.Ordinal);
        var unit = guessed ? value["by units ".Length..] : value;
        if (Math.Abs(data.Values[0] - Units[unit](first)) > 1e-6 * Math.Abs(data.Values[0]))
            return "misread (unit)";
        if (guessed != data.UnitIsGuessed)
            return guessed ? "misread (untold)" : "misread (told as a guess)";
        var absolute = Commission.Measurement.Units.UnitTable.Find(data.Unit, Commission.Measurement.Quantities.Dimension.Pressure)?.Reference == Commission.Measurement.Quantities.PressureReference.Absolute;
        return asked == "pressure" && absolute != unit.EndsWith("abs", StringComparison.Ordinal) ? "misread (reference)" : "";
    }

    private static (ReadSeries? Data, string[] Problems) Read(string asked, string units, string series, string csv)
    {
        var part = asked switch
        {
            "vacuum" => "evacuation: {started: \"08:00\", series: SERIES}\n",
            "pressure" => "pressure test: {gas: dry nitrogen, tightness: {series: SERIES}}\n",
            "temperature" => "charging: {compressor started: \"08:00\", logs: {vapor line: SERIES}}\n",
            _ => "charging: {compressor started: \"08:00\", logs: {power: SERIES}}\n",
        };
        var yaml = Frame.Replace("UNITS", units, StringComparison.Ordinal) + part.Replace("SERIES", series, StringComparison.Ordinal);
        var (reading, problems) = Reading.Of(yaml, new MemoryFolder().With("log.csv", csv));
        var log = asked switch
        {
            "vacuum" => reading.Job?.Evacuation?.Series,
            "pressure" => reading.Job?.PressureTest?.Tightness?.Series,
            "temperature" => reading.Job?.Charging?.Logs?.VaporLine,
            _ => reading.Job?.Charging?.Logs?.Power,
        };
        return (log?.Data, problems);
    }

    private static bool Placed(string problem) => Place().IsMatch(problem);

    [GeneratedRegex(@"^(job\.yaml|log\.csv):[0-9]+(:[0-9]+)?: ", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Place();
}
