using System.Globalization;
using System.Text;
using BitMiracle.LibJpeg.Classic;
using UglyToad.PdfPig;
using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>Jobs far from the usual: a visit of two readings, a thousand joints, sixty photos, a house full of units. Pages grow with what is written, and page 1 stays one page.</summary>
public sealed class PagesOfLargeJobsTests
{
    private const int MostBytesOfSixtyPhotos = 12 * 1024 * 1024;

    private const string Head = """
        commission: 1
        units: us
        job: {id: L-1, work: WORK, date: 2026-07-03, site: {name: Pell Yard, address: 4 Pell Yard, elevation: 310 ft}, people: {installer: Hallam Cooling, technician: Perrin Oake}}
        equipment: {system: split, compressor: fixed, refrigerant: R-410A, metering: TXV, capacity: 2.5 ton}
        instruments:
          - {id: gauges, kind: pressure gauge, serial: G-5, accuracy: 1 psi, calibrated: 2026-01-15, reads: [vapor pressure, liquid pressure, pressure test], checks: {zero: 0.0 psig}}
          - {id: clamps, kind: pipe clamp, sensor: thermistor, accuracy: 1 °F, insulated: yes, reads: [vapor line, liquid line], checks: {ice point: {read: 32.4 °F}}}

        """;

    [Fact]
    public void A_visit_of_two_readings_takes_three_pages_at_most()
    {
        using var folder = new TemporaryFolder();
        var pages = Pages(folder, Head.Replace("WORK", "seasonal check", StringComparison.Ordinal) + """
            limits: {subcooling: {target: 10, tolerance: 3, from: unit plate}}
            charging: {compressor started: "13:30", running: full, readings: [{at: "14:12", liquid pressure: 361.0, liquid line: 99.0}]}
            """);
        Assert.InRange(pages, 1, 3);
    }

    [Fact]
    public void A_thousand_joints_take_fifteen_pages_at_most()
    {
        using var folder = new TemporaryFolder();
        var joints = new StringBuilder();
        for (var i = 1; i <= 1000; i++)
            joints.Append(CultureInfo.InvariantCulture, $"    - {{place: joint {i}, kind: brazed, method: bubble solution, result: none}}\n");
        var pages = Pages(folder, Head.Replace("WORK", "new installation", StringComparison.Ordinal) + $"""
            pressure test:
              gas: dry nitrogen
              section: line set and indoor
              tightness: {"{"}from: {"{"}at: "08:00", pressure: 440.0{"}"}, to: {"{"}at: "09:30", pressure: 440.0{"}"}{"}"}
              joints:
            {joints}
            """);
        Assert.InRange(pages, 5, 15);
    }

    [Fact]
    public void Sixty_photos_take_twelve_pages_and_twelve_megabytes_at_most()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(Path.Combine(folder.Path, "photos"));
        var photos = new StringBuilder("photos:\n");
        for (var i = 1; i <= 60; i++)
        {
            File.WriteAllBytes(Path.Combine(folder.Path, "photos", string.Create(CultureInfo.InvariantCulture, $"p{i}.jpg")), Noise(800, 600, i));
            photos.Append(CultureInfo.InvariantCulture, $"  - {{file: photos/p{i}.jpg, shows: outdoor nameplate, of: unit {i}}}\n");
        }

        var pages = Pages(folder, Head.Replace("WORK", "seasonal check", StringComparison.Ordinal) + photos, out var bytes);
        Assert.InRange(pages, 4, 12);
        Assert.InRange(bytes, 100_000, MostBytesOfSixtyPhotos);
    }

    [Fact]
    public void Twelve_indoor_units_leave_page_one_one_page()
    {
        using var folder = new TemporaryFolder();
        var units = string.Join(", ", Enumerable.Range(1, 12).Select(i => string.Create(CultureInfo.InvariantCulture, $"{{id: I{i}, maker: Brenholt of the northern valleys, model: BA-{i}-WALL-LONG-NAME, serial: 2026-0000-0000-{i:00}, room: a room with a long name number {i}}}")));
        using var document = Open(folder, Head.Replace("WORK", "new installation", StringComparison.Ordinal).Replace("capacity: 2.5 ton}", $"capacity: 2.5 ton, indoor: [{units}]}}", StringComparison.Ordinal), out _);
        var first = string.Concat(document.GetPage(1).Letters.Select(letter => letter.Value));
        Assert.Contains("Reviewed.", first, StringComparison.Ordinal);
        Assert.DoesNotContain("Reviewed.", string.Concat(document.GetPage(2).Letters.Select(letter => letter.Value)), StringComparison.Ordinal);
    }

    private static int Pages(TemporaryFolder folder, string job) => Pages(folder, job, out _);

    private static int Pages(TemporaryFolder folder, string job, out int bytes)
    {
        using var document = Open(folder, job, out bytes);
        return document.NumberOfPages;
    }

    private static PdfDocument Open(TemporaryFolder folder, string job, out int bytes)
    {
        var file = Path.Combine(folder.Path, "job.yaml");
        File.WriteAllText(file, job);
        var run = CommandRun.Of("render", file, "--out", folder.Path, "--format", "pdf");
        Assert.True(run.ExitCode <= 1, run.Error);
        var pdf = File.ReadAllBytes(Assert.Single(run.Written));
        bytes = pdf.Length;
        return PdfDocument.Open(pdf);
    }

    // Blocks of drawn grey: no two pictures alike, each hard to compress.
    private static byte[] Noise(int width, int height, int seed)
    {
        var random = new Random(seed);
        using var file = new MemoryStream();
        var encoder = new jpeg_compress_struct(new jpeg_error_mgr()) { Image_width = width, Image_height = height, Input_components = 1, In_color_space = J_COLOR_SPACE.JCS_GRAYSCALE };
        encoder.jpeg_stdio_dest(file);
        encoder.jpeg_set_defaults();
        encoder.jpeg_start_compress(true);
        var row = new byte[width];
        for (var y = 0; y < height; y++)
        {
            if (y % 20 == 0)
            {
                for (var x = 0; x < width; x++)
                    row[x] = x % 20 == 0 ? (byte)random.Next(256) : row[x - 1];
            }

            encoder.jpeg_write_scanlines([row], 1);
        }

        encoder.jpeg_finish_compress();
        return file.ToArray();
    }
}
