using System.Diagnostics;
using System.Globalization;
using Commission.Cli;
using Microsoft.Playwright;
using Xunit;

namespace Commission.Browser.Tests;

/// <summary>
/// Two programs that share no code, poppler's pdftoppm and MuPDF's mutool, draw the pages of a record alike. Compared by the mean grey of small squares, so that
/// edges may differ and nothing may be missing. Skipped where the tools are not on the machine.
/// </summary>
public class EnginesTests(Chromium chromium) : IClassFixture<Chromium>
{
    // Of black to white. Measured on all examples; a lost line of small text makes 0.2 and more.
    private const double MostOfASquare = 0.12;

    private const string Difference = """
        async ([first, second]) => {
          const load = async data => {
            const image = new Image();
            image.src = "data:image/png;base64," + data;
            await image.decode();
            const canvas = document.createElement("canvas");
            [canvas.width, canvas.height] = [595, 770];
            const ink = canvas.getContext("2d", { willReadFrequently: true });
            ink.fillStyle = "#fff";
            ink.fillRect(0, 0, canvas.width, canvas.height);
            ink.drawImage(image, 0, 0, canvas.width, canvas.height);
            return ink.getImageData(0, 0, canvas.width, canvas.height).data;
          };
          const [a, b] = [await load(first), await load(second)];
          let most = 0;
          for (let top = 0; top < 770; top += 14) {
            for (let left = 0; left < 595; left += 17) {
              let sum = 0;
              for (let y = top; y < top + 14; y++)
                for (let x = left; x < left + 17; x++)
                  for (let c = 0; c < 3; c++)
                    sum += a[4 * (595 * y + x) + c] - b[4 * (595 * y + x) + c];
              most = Math.max(most, Math.abs(sum) / (14 * 17 * 3 * 255));
            }
          }
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
        Run("mutool", "draw", "-q", "-r", "72", "-o", Path.Combine(folder, "two-%d.png"), pdf);
        var first = Directory.GetFiles(folder, "one*.png").Order(StringComparer.Ordinal).ToList();
        Assert.InRange(first.Count, 2, 12);
        var page = await chromium.Open();
        for (var i = 0; i < first.Count; i++)
        {
            var second = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"two-{i + 1}.png"));
            var most = await page.EvaluateAsync<double>(Difference, new[] { Convert.ToBase64String(await File.ReadAllBytesAsync(first[i], TestContext.Current.CancellationToken)), Convert.ToBase64String(await File.ReadAllBytesAsync(second, TestContext.Current.CancellationToken)) });
            Assert.True(most <= MostOfASquare, string.Create(CultureInfo.InvariantCulture, $"{example}, page {i + 1}: a square differs by {most:0.000}"));
        }

        await page.Context.CloseAsync();
    }

    private static bool Has(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, program)));

    private static void Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
        var said = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0 && said.Length == 0, $"{program}: {said}");
    }
}
