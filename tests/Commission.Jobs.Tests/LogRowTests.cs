using System.Globalization;
using System.Text;
using Commission.Jobs.Model;
using Xunit;

namespace Commission.Jobs.Tests;

/// <summary>What is wrong in the rows of a log is told by row; a long log is read without holding it twice.</summary>
public sealed class LogRowTests
{
    private const string Frame = """
        commission: 1
        units: us
        job: {id: T, work: opened circuit, date: 2026-06-18, zone: America/Denver, site: {elevation: 100}}
        equipment: {system: split, refrigerant: R-410A}
        evacuation:
          started: "09:25"
          series: SERIES

        """;

    // RFC 4180 (2005), 2: a quoted cell may hold line breaks and delimiters; a reading never does.
    [Theory]
    [InlineData("s,micron\n0,900\n10,-5\n20,440\n", "log.csv:3: Row 3, column \"micron\", holds \"-5\", which no such instrument shows. Correct it, or state the unit of the column.")]
    [InlineData("s,micron\n0,900\n20,357,5\n30,440\n", "log.csv:3: Row 3 has 3 cells, and 2 have a heading. Where commas divide the cells, a decimal comma makes two of one: write points, or delete what is too much.")]
    [InlineData("s;micron\n0;900\n20;357;5\n30;440\n", "log.csv:3: Row 3 has 3 cells, and 2 have a heading. Delete what is too much, or give it a heading.")]
    [InlineData("s,micron\n0,900\n10,\"450\n20,440\n30,430\n", "log.csv:3: A quote in row 3 opens a cell that ends in row 5: the rows between are lost. Delete the stray \", or write the cell in one line.")]
    [InlineData("s,micron\n0,900\n10,45\"0\n20,44\"0\n30,430\n", "log.csv:3: A quote in row 3 opens a cell that ends in row 4: the rows between are lost. Delete the stray \", or write the cell in one line.")]
    [InlineData("Gauge,5\" pipe\ns,micron\n0,900\n10,450\n20,\"440\n30,430\n", "log.csv:1: A quote in row 1 opens a cell that ends in row 5: the rows between are lost. Delete the stray \", or write the cell in one line.")]
    public void A_row_that_is_no_reading_is_told_by_its_number(string csv, string expected) => Assert.Equal([expected], Problems(csv));

    [Fact]
    public void Empty_cells_at_the_end_and_a_break_inside_a_heading_take_nothing_away()
    {
        Assert.Equal([0, 10], Log("s,micron\n0,900,,\n10,450,\n").Times);
        Assert.Equal([3, 4], Log("s,\"Vacuum\n(micron)\"\n0,900\n10,450\n").Rows);
    }

    [Fact]
    public void A_unit_that_only_the_job_says_is_refused_where_one_reading_speaks_against_it()
    {
        Assert.True(Log("s,Vacuum\n0,900\n10,450\n").UnitIsGuessed);
        Assert.Equal(["job.yaml:7:11: The heading \"Vacuum\" of \"log.csv\" does not say the unit, and 0.45 micron in row 4 cannot be. State unit beside the file, the one that the gauge was set to."],
            Problems("s,Vacuum\n0,900\n5,700\n10,0.45\n"));
    }

    [Theory]
    [InlineData("s,vacuum (inHg)\n0,28.5\n10,29.5\n", "log.csv", "job.yaml:7:11: The heading \"vacuum (inHg)\" of \"log.csv\" says inHg and not whether that is gauge or absolute. State unit beside the file, such as inHg abs, if it counts from nothing; a depth below the atmosphere is no vacuum level.")]
    [InlineData("s,vacuum_foo\n0,900\n10,450\n", "log.csv", "job.yaml:7:11: The heading \"vacuum_foo\" of \"log.csv\" does not say a unit that is understood. State unit beside the file, such as micron, mTorr, Torr, Pa, mbar or hPa.")]
    [InlineData("s,battery_V\n0,900\n10,450\n", "log.csv", "job.yaml:7:11: The column \"battery_V\" of \"log.csv\" holds something else. Looked for: a vacuum level. State value column beside the file, the heading of the column that does.")]
    [InlineData("s,humidity,micron\n0,45,900\n10,45,450\n", "{file: log.csv, value column: humidity}", "job.yaml:7:41: The column \"humidity\" of \"log.csv\" holds something else. Looked for: a vacuum level. State value column beside the file, the heading of the column that does.")]
    [InlineData("s,Vacuum (micron)\n0,900\n10,450\n", "{file: log.csv, unit: Pa}", "job.yaml:7:33: The heading \"Vacuum (micron)\" of \"log.csv\" says micron, and the job Pa. Correct the unit, or leave it out where the heading is right.")]
    [InlineData("t (foo),micron\n0,900\n10,450\n", "log.csv", "job.yaml:7:11: The unit of the times of \"log.csv\" under \"t (foo)\" is not understood. State time format: seconds or time format: minutes beside the file.")]
    [InlineData("elapsed,micron\n0:00,900\n0:10,450\n", "log.csv", "job.yaml:7:11: \"0:00\" in \"log.csv\" under \"elapsed\" may be hours and minutes or minutes and seconds. Head the column elapsed (h:min) or elapsed (min:s), or write h:mm:ss.")]
    [InlineData("Time (CEST),micron\n09:26:00,900\n09:27:00,450\n", "log.csv", "job.yaml:7:11: The heading \"Time (CEST)\" of \"log.csv\" names the zone CEST, which is not one zone everywhere. Write the distance from UTC in its place, such as UTC-06:00, or nothing where it is the job's own zone.")]
    public void What_is_refused_says_where_and_what_to_write(string csv, string series, string expected) => Assert.Equal([expected], Problems(csv, series));

    [Fact]
    public void A_log_of_a_million_rows_is_thinned_evenly_and_keeps_its_last_row()
    {
        const int rows = 600_000;
        var csv = new StringBuilder("s,micron\n");
        for (var i = 0; i < rows; i++)
            csv.Append(CultureInfo.InvariantCulture, $"{i},{500 + (i % 7)}\n");
        var text = csv.ToString();
        Log("s,micron\n0,900\n10,450\n");
        var before = GC.GetAllocatedBytesForCurrentThread();
        var log = Log(text);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;

        Assert.Equal(4, log.Every);
        Assert.Equal([0, 4, 8], log.Times.Take(3));
        Assert.Equal(rows - 1, log.Times[^1]);
        Assert.Equal(rows + 1, log.Rows[^1]);
        Assert.Equal((rows / 4) + 1, log.Times.Length);
        Assert.Equal(log.Times.Length, log.Values.Length);
        Assert.All(log.Times.Zip(log.Values), r => Assert.Equal((500 + (r.First % 7)) * 0.133322387, r.Second, 5));
        Assert.Equal(0.133322387, log.Step, 6);

        // The bytes once, and what is kept of the rows; a text of them alone takes twice the bytes.
        var bytes = Encoding.UTF8.GetByteCount(text);
        Assert.True(allocated - bytes < 3 * bytes, $"{allocated / 1e6:0.0} MB for {bytes / 1e6:0.0} MB");
    }

    private static ReadSeries Log(string csv)
    {
        var (reading, problems) = Reading.Of(Frame.Replace("SERIES", "log.csv", StringComparison.Ordinal), new MemoryFolder().With("log.csv", csv));
        Assert.Equal("", string.Join('\n', problems));
        return reading.Job!.Evacuation!.Series!.Data!;
    }

    private static string[] Problems(string csv, string series = "log.csv") =>
        Reading.Of(Frame.Replace("SERIES", series, StringComparison.Ordinal), new MemoryFolder().With("log.csv", csv)).Problems;
}
