using System.Diagnostics;
using System.Globalization;
using Commission.Cli;
using Microsoft.Playwright;
using Xunit;

namespace Commission.Browser.Tests;

/// <summary>
/// Two programs that share no code, poppler's pdftoppm and MuPDF's mutool, draw the pages of a record alike. Compared after a blur, so that
/// edges may differ and nothing may be missing. Skipped where the tools are not on the machine.
/// </summary>
public class EnginesTests(Chromium chromium) : IClassFixture<Chromium>
{
    // Of black to white, after a blur of 5 pixels at 72 to the inch: edges and baselines may lie half a pixel apart. Measured 0.02 to 0.063; a lost line of small text makes 0.082.
    private const double MostDifference = 0.07;

    private const string Difference = """
        async ([first, second]) => {
          const [width, height] = [612, 792];
          const load = async data => {
            const image = new Image();
            image.src = "data:image/png;base64," + data;
            await image.decode();
            const plain = new OffscreenCanvas(width, height).getContext("2d");
            plain.fillStyle = "#fff";
            plain.fillRect(0, 0, width, height);
            plain.drawImage(image, 0, 0, width, height);
            // mutool hangs a flag of its own, bright red, on a signature field that nobody signed.
            const pixels = plain.getImageData(0, 0, width, height);
            for (let i = 0; i < pixels.data.length; i += 4)
              if (pixels.data[i] > 200 && pixels.data[i] - pixels.data[i + 2] > 50) pixels.data.fill(255, i, i + 3);
            plain.putImageData(pixels, 0, 0);
            // The code in the corner is nothing but edges, which each program softens in its own way.
            plain.fillRect(490, 24, 100, 90);
            const soft = new OffscreenCanvas(width, height).getContext("2d");
            soft.filter = "grayscale(1) blur(5px)";
            soft.drawImage(plain.canvas, 0, 0);
            return soft.getImageData(0, 0, width, height).data;
          };
          const [a, b] = [await load(first), await load(second)];
          let most = 0;
          for (let y = 12; y < height - 12; y++)
            for (let x = 12; x < width - 12; x++)
              most = Math.max(most, Math.abs(a[4 * (width * y + x)] - b[4 * (width * y + x)]) / 255);
          return most;
        }
        """;

    [Theory]
    [InlineData("first-split")]
    [InlineData("wet-system")]
    [InlineData("tarn-lane", Traits = ["run", "long"])]
    [InlineData("compressor-replacement", Traits = ["run", "long"])]
    [InlineData("cold-room", Traits = ["run", "long"])]
    [InlineData("multi-split-by-weight", Traits = ["run", "long"])]
    public async Task Two_programs_draw_each_page_alike(string example)
    {
        Assert.SkipUnless(Has("pdftoppm") && Has("mutool"), "pdftoppm and mutool are not on this machine.");
        var folder = Directory.CreateTempSubdirectory("commission-engines-").FullName;
        using (var output = new StringWriter())
            Assert.InRange(CommissionProgram.Run(["render", ExamplePagesTests.Job(example), "--out", folder, "--format", "pdf"], output, output), 0, 1);
        var pdf = Assert.Single(Directory.GetFiles(folder, "*.pdf"));
        Run("pdftoppm", "-r", "72", "-png", pdf, Path.Combine(folder, "one"));
        Run("mutool", "draw", "-q", "-N", "-r", "72", "-o", Path.Combine(folder, "two-%d.png"), pdf);
        var first = Directory.GetFiles(folder, "one*.png").Order(StringComparer.Ordinal).ToList();
        Assert.InRange(first.Count, 2, 12);
        var page = await chromium.Open();
        for (var i = 0; i < first.Count; i++)
        {
            var second = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"two-{i + 1}.png"));
            var most = await page.EvaluateAsync<double>(Difference, new[] { Convert.ToBase64String(await File.ReadAllBytesAsync(first[i], TestContext.Current.CancellationToken)), Convert.ToBase64String(await File.ReadAllBytesAsync(second, TestContext.Current.CancellationToken)) });
            Assert.True(most <= MostDifference, string.Create(CultureInfo.InvariantCulture, $"{example}, page {i + 1}: a place differs by {most:0.000}"));
        }

        await page.Context.CloseAsync();
    }

    private static bool Has(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, program)));

    private static void Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true, UseShellExecute = false })!;
        var said = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0 && said.Length == 0, $"{program}: {said}");
    }
}
