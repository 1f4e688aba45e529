using System.Diagnostics;
using System.Globalization;
using System.Text;
using Commission.Jobs.Model;
using Xunit;

namespace Commission.Jobs.Tests;

/// <summary>Logs as gauges and phones write them.</summary>
public sealed class LogTests
{
    private const double Micron = 133.322387415e-3;

    private const string Frame = """
        commission: 1
        units: us
        job: {id: T, work: opened circuit, date: 2026-06-18, zone: America/Denver, site: {elevation: 100}}
        equipment: {system: split, refrigerant: R-410A}
        evacuation:
          started: "09:25"
          series: SERIES

        """;

    [Fact]
    public void Seconds_and_microns_with_a_comma() =>
        Same(Log("Elapsed (s),Vacuum (micron)\n0,900\n10,450\n20,440\n"), [0, 10, 20], [900, 450, 440]);

    [Fact]
    public void Minutes_with_a_semicolon_and_a_decimal_comma() =>
        Same(Log("Time (min);Pressure [Pa]\n0,0;120,5\n0,5;80,0\n1,0;66,7\n"), [0, 30, 60], [120.5, 80, 66.7], 1);

    [Fact]
    public void A_clock_with_tabs_and_a_heading_without_unit()
    {
        var series = Log("Time\tReading\n09:26:00\t900\n09:26:30\t450\n");
        Same(series, [0, 30], [900, 450]);
        Assert.Equal(new DateTimeOffset(2026, 6, 18, 9, 26, 0, TimeSpan.FromHours(-6)), series.Start);
    }

    [Theory]
    [InlineData("2026-06-18 09:26:00", "2026-06-18 09:26:30")]
    [InlineData("06/18/2026 9:26:00 AM", "06/18/2026 9:26:30 AM")]
    [InlineData("18.06.2026 09:26:00", "18.06.2026 09:26:30")]
    [InlineData("2026-06-18T09:26:00", "2026-06-18T09:26:30")]
    public void Dates_of_several_countries(string first, string second)
    {
        var series = Log($"Date and time;Vacuum micron\n{first};900\n{second};450\n");
        Same(series, [0, 30], [900, 450]);
        Assert.Equal(new DateTimeOffset(2026, 6, 18, 9, 26, 0, TimeSpan.FromHours(-6)), series.Start);
    }

    [Fact]
    public void Date_and_time_in_two_columns() =>
        Same(Log("Date,Time,Vacuum (micron),Battery (V)\n2026-06-18,09:26:00,900,3.1\n2026-06-18,09:26:30,450,3.1\n"), [0, 30], [900, 450]);

    [Fact]
    public void A_day_and_month_that_may_be_swapped_are_settled_by_the_date_of_the_job()
    {
        var job = Frame.Replace("2026-06-18", "2026-06-07", StringComparison.Ordinal);
        var series = Log("Time;micron\n07/06/2026 09:26;900\n07/06/2026 09:27;450\n", frame: job);
        Assert.Equal(new DateTimeOffset(2026, 6, 7, 9, 26, 0, TimeSpan.FromHours(-6)), series.Start);
    }

    [Fact]
    public void Lines_before_the_header_are_passed_over() =>
        Assert.Equal([5, 6], Log("Gauge;V-20\nFirmware;2.1\n\nElapsed s;micron\n0;900\n10;450\n").Rows);

    [Fact]
    public void Without_headings_the_rising_column_is_the_time() =>
        Same(Log("0,900\n10,450\n20,440\n", "{file: log.csv, time format: seconds}"), [0, 10, 20], [900, 450, 440]);

    // A wholesale gauge from Germany: whole numbers for the first minutes, the first decimal far below.
    [Fact]
    public void A_decimal_comma_may_show_itself_late()
    {
        var csv = new StringBuilder("Zeit s;Druck Pa\n");
        for (var i = 0; i < 200; i++)
            csv.Append(CultureInfo.InvariantCulture, $"{i};{900 - i}\n");
        var series = Log(csv + "200;66,7\n");
        Assert.Equal(66.7, series.Values[^1], 9);
        Assert.Equal(900, series.Values[0], 9);
    }

    // 1,234 alone says either; a later row decides for both.
    [Theory]
    [InlineData("s;Pa\n0;1,234\n10;66,7\n", 1.234)]
    [InlineData("s;Pa\n0;1,234\n10;0,450\n", 1.234)]
    [InlineData("s;Pa\n0;1,234\n10;1.234,5\n", 1.234)]
    [InlineData("s;Pa\n0;1,234\n10;66.7\n", 1234)]
    [InlineData("s;Pa\n0;1,234\n10;1,066.7\n", 1234)]
    [InlineData("s,Pa\n0,\"1,234\"\n10,900\n", 1234)]
    [InlineData("s,Pa\n0,\"66,7\"\n10,\"66,5\"\n", 66.7)]
    public void The_decimal_mark_is_decided_from_all_rows(string csv, double first) =>
        Assert.Equal(first, Log(csv).Values[0], 9);

    [Theory]
    [InlineData("Time;micron\n2:15:00 PM;900\n2:15:30 PM;450\n", "14:15", 30)]
    [InlineData("Time;micron\n11:59:30 a.m.;900\n12:00:30 p.m.;450\n", "11:59:30", 60)]
    [InlineData("Time;micron\n12:00:10 AM;900\n12:00:40 AM;450\n", "00:00:10", 30)]
    [InlineData("Time;micron\n11:59:30 PM;900\n12:00:30 AM;450\n", "23:59:30", 60)]
    [InlineData("Time;micron\n6/18/2026 2:15:00PM;900\n6/18/2026 2:15:30PM;450\n", "14:15", 30)]
    public void A_clock_of_twelve_hours(string csv, string start, double second)
    {
        var series = Log(csv);
        Assert.Equal(TimeOnly.Parse(start, CultureInfo.InvariantCulture), TimeOnly.FromTimeSpan(series.Start!.Value.TimeOfDay));
        Assert.Equal(second, series.Times[1]);
    }

    [Fact]
    public void Above_range_and_gaps_are_told_apart()
    {
        var series = Log("s,micron\n0,OL\n1,----\n2,>25000\n3,25000\n4,\n5,900\n", "{file: log.csv, over range: 25000}");
        Assert.Equal([true, true, true, true, false, false], series.OverRange);
        Assert.Equal([true, true, true, true, true, false], series.Values.Select(double.IsNaN));
    }

    [Fact]
    public void A_log_over_midnight_runs_on()
    {
        var series = Log("Time,micron\n23:59:50,900\n00:00:10,450\n", frame: Frame.Replace("09:25", "23:40", StringComparison.Ordinal));
        Same(series, [0, 20], [900, 450]);
    }

    [Fact]
    public void A_log_begun_after_midnight_belongs_to_the_next_day()
    {
        var series = Log("Time,micron\n00:10:00,900\n00:10:10,450\n", frame: Frame.Replace("09:25", "23:40", StringComparison.Ordinal));
        Assert.Equal(new DateTimeOffset(2026, 6, 19, 0, 10, 0, TimeSpan.FromHours(-6)), series.Start);
    }

    [Fact]
    public void The_stated_layout_wins() =>
        Same(Log("A;B;C\n1;5;900\n2;6;450\n", "{file: log.csv, time column: B, value column: C, unit: mTorr, time format: minutes, delimiter: semicolon}"), [300, 360], [900 * (101325 / 760e3), 450 * (101325 / 760e3)], 1);

    [Fact]
    public void Quoted_cells_and_thousands_in_a_point_log() =>
        Same(Log("\"Elapsed, s\",\"Vacuum (micron)\"\n\"0\",\"1,200\"\n\"10\",\"450\"\n"), [0, 10], [1200, 450]);

    [Fact]
    public void Latin_and_sixteen_bit_text_are_read()
    {
        Same(Log(Encoding.Latin1.GetBytes("Elapsed (s),Vacuum (µm Hg)\n0,900\n10,450\n")), [0, 10], [900, 450]);
        Same(Log([0xFF, 0xFE, .. Encoding.Unicode.GetBytes("Elapsed (s),Vacuum (micron)\r\n0,900\r\n10,450\r\n")]), [0, 10], [900, 450]);
    }

    [Fact]
    public void The_step_of_a_log_is_the_smallest_change_it_shows()
    {
        Assert.Equal(5 * Micron, Log("s,micron\n0,905\n1,900\n2,890\n3,890\n").Step, 9);
        Assert.Equal(1 * Micron, Log("s,micron\n0,900\n1,900\n").Step, 9);
    }

    [Theory]
    [InlineData("Time;Vacuum (micron)\n0;900\n10;450\n", "job.yaml:7:11: The times of \"log.csv\" under \"Time\" may be seconds or minutes. State time format: seconds or time format: minutes beside the file.")]
    [InlineData("s,micron\n0,900\n10,45o\n", "log.csv:3: Row 3, column \"micron\", holds \"45o\", which is not a number. Correct it; OL or ---- marks a reading above the gauge's range, an empty cell a gap.")]
    [InlineData("s,micron\n0,900\nten,450\n", "log.csv:3: Row 3, column \"s\", holds \"ten\", which is not a time like those above. Correct it, or delete the row.")]
    [InlineData("s,micron\n0,900\n20,450\n10,440\n", "log.csv:4: Row 4, column \"s\", goes back from 20 to 10. Sort the rows by time, or cut the log in two.")]
    [InlineData("s,micron\n0,900\n10\n20,440\n", "log.csv:3: Row 3 has 1 cells, and the reading stands in cell 2. Delete the row, or complete it.")]
    [InlineData("", "job.yaml:7:11: \"log.csv\" is empty. Check that the log was saved.")]
    [InlineData("s,micron\n0,900\n", "job.yaml:7:11: \"log.csv\" holds fewer than two readings. Check that the whole log was saved.")]
    [InlineData("only words here\nand here\n", "job.yaml:7:11: \"log.csv\" holds no rows with a time and a reading. Name the columns with time column and value column, or the delimiter, if the log has another layout.")]
    [InlineData("s;a;b\n0;900;1\n10;450;2\n", "job.yaml:7:11: \"log.csv\" has the columns s, a or b; more than one may be the reading. State value column beside the file.")]
    [InlineData("s;micron\n0;66,7\n10;66.5\n", "job.yaml:7:11: \"log.csv\" has a decimal comma, \"66,7\" in row 2, and a decimal point, \"66.5\" in row 3. State decimal: comma or decimal: point beside the file.")]
    [InlineData("s;micron\n0;1,234\n10;1,200\n", "job.yaml:7:11: \"1,234\" in row 2 of \"log.csv\" may be a decimal comma or a thousands mark. State decimal: comma or decimal: point beside the file.")]
    [InlineData("Time;micron\n07/08/2026 09:26;900\n07/08/2026 09:27;450\n", "job.yaml:7:11: \"07/08/2026 09:26\" in \"log.csv\" may be the day before the month or after it, and neither is the job's date. Write dates as 2026-06-18, or state time format.")]
    public void Faults_name_the_row_and_the_column(string csv, string expected) =>
        Assert.Equal([expected], Problems(csv, "log.csv"));

    [Theory]
    [InlineData("{file: log.csv, value column: Vacum}", "job.yaml:7:41: \"log.csv\" has no column \"Vacum\". Did you mean \"Vacuum\"?")]
    [InlineData("{file: log.csv, unit: psig}", "job.yaml:7:33: \"psig\" is not a unit for this: a vacuum level. Write micron, mTorr, Torr, Pa, mbar or hPa.")]
    [InlineData("{file: log.csv, unit: mikron}", "job.yaml:7:33: \"mikron\" is not a unit. Did you mean micron?")]
    public void What_is_stated_must_fit_the_log(string series, string expected) =>
        Assert.Equal([expected], Problems("s,Vacuum\n0,900\n10,450\n", series));

    [Fact]
    public void Without_units_a_heading_must_say_the_unit()
    {
        var frame = Frame.Replace("units: us\n", "", StringComparison.Ordinal).Replace("elevation: 100", "elevation: 100 m", StringComparison.Ordinal);
        Assert.Equal(["job.yaml:6:11: The heading \"Vacuum\" of \"log.csv\" does not say the unit. State unit beside the file, such as micron, mTorr, Torr, Pa, mbar or hPa."],
            Problems("s,Vacuum\n0,900\n10,450\n", "log.csv", frame));
    }

    [Fact]
    public void A_broken_log_gives_ten_rows_and_a_count()
    {
        var csv = "s,micron\n0,900\n10,450\n" + string.Concat(Enumerable.Range(2, 40).Select(i => i.ToString(CultureInfo.InvariantCulture) + "0,x\n"));
        var problems = Problems(csv, "log.csv");
        Assert.Equal(11, problems.Length);
        Assert.Equal("job.yaml:7:11: 30 more rows of \"log.csv\" cannot be read. If most rows are like that, state the layout: value column, time column, delimiter, decimal.", problems[0]);
    }

    [Fact]
    public void A_log_of_another_place_is_refused() =>
        Assert.Equal(["job.yaml:7:11: \"../log.csv\" leaves the job's folder. Put the file beside the job file, or in a folder below it."], Problems("s,micron\n0,900\n10,450\n", "../log.csv"));

    [Fact]
    public void A_pressure_log_of_the_nitrogen_is_read_as_gauge_pressure()
    {
        var yaml = Frame[..Frame.IndexOf("evacuation:", StringComparison.Ordinal)] + "pressure test: {gas: dry nitrogen, tightness: {series: n2.csv}}\n";
        var (reading, problems) = Reading.Of(yaml, new MemoryFolder().With("n2.csv", "Time (min),Pressure (psig)\n0,440.0\n65,445.8\n"));
        Assert.Empty(problems);
        Assert.Equal(445.8 * 6894.757293168361, reading.Job!.PressureTest!.Tightness!.Series!.Data!.Values[1], 6);
    }

    [Fact]
    public void A_hundred_thousand_rows_are_read_quickly()
    {
        var csv = new StringBuilder("Elapsed (s),Vacuum (micron)\n");
        for (var i = 0; i < 100_000; i++)
            csv.Append(CultureInfo.InvariantCulture, $"{i},{500 + (i % 7)}\n");
        Log("s,micron\n0,900\n10,450\n");
        var clock = Stopwatch.StartNew();
        Assert.Equal(100_000, Log(csv.ToString()).Times.Length);
        Assert.True(clock.ElapsedMilliseconds < 20_000, $"{clock.ElapsedMilliseconds} ms");
    }

    private static ReadSeries Log(string csv, string series = "log.csv", string frame = Frame) => Log(Encoding.UTF8.GetBytes(csv), series, frame);

    private static ReadSeries Log(byte[] csv, string series = "log.csv", string frame = Frame)
    {
        var (reading, problems) = Reading.Of(frame.Replace("SERIES", series, StringComparison.Ordinal), new MemoryFolder { ["log.csv"] = csv });
        Assert.Equal("", string.Join('\n', problems));
        return reading.Job!.Evacuation!.Series!.Data!;
    }

    private static string[] Problems(string csv, string series, string frame = Frame) =>
        Reading.Of(frame.Replace("SERIES", series, StringComparison.Ordinal), new MemoryFolder().With("log.csv", csv)).Problems;

    private static void Same(ReadSeries series, double[] seconds, double[] values, double unit = Micron)
    {
        Assert.Equal(seconds, series.Times);
        Assert.Equal(values.Length, series.Values.Length);
        for (var i = 0; i < values.Length; i++)
            Assert.Equal(values[i] * unit, series.Values[i], 6);
    }
}
