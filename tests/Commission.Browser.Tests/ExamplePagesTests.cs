using System.Collections.Concurrent;
using Commission.Cli;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Xunit;

namespace Commission.Browser.Tests;

/// <summary>The pages of the example jobs, made by the whole program.</summary>
public class ExamplePagesTests(Chromium chromium) : IClassFixture<Chromium>
{
    private static readonly ConcurrentDictionary<string, Lazy<string>> Pages = new(StringComparer.Ordinal);

    private static readonly int[] Widths = [360, 768, 1280, 1920];

    public static TheoryData<string, int, ColorScheme> Matrix() => new(
        from example in Directory.GetDirectories(Path.Combine(Root(), "examples")).Select(folder => Path.GetFileName(folder)).Order(StringComparer.Ordinal)
        from width in Widths
        from scheme in new[] { ColorScheme.Light, ColorScheme.Dark }
        select (example, width, scheme));

    /// <summary>Every example at every width, light and dark: minutes, so it runs on request (<c>tests/run-long browser</c>).</summary>
    [Theory]
    [Trait("run", "long")]
    [MemberData(nameof(Matrix))]
    public Task Each_page_has_no_violation_and_fits_its_screen(string example, int width, ColorScheme scheme) => Look(example, width, scheme);

    /// <summary>The example with the most figures on a telephone, for every commit.</summary>
    [Fact]
    public Task A_page_has_no_violation_and_fits_a_telephone() => Look("tarn-lane", 360, ColorScheme.Light);

    /// <summary>On a telephone the answer and its proof come before the way to every number: twelve screens at most (the project's own budget).</summary>
    [Theory]
    [InlineData("tarn-lane")]
    [InlineData("compressor-replacement")]
    public async Task The_annex_begins_after_twelve_screens_of_a_telephone_at_most(string example)
    {
        const int Height = 800;
        var page = await chromium.Open(360, Height, file: Page(example));
        var top = await page.EvaluateAsync<double>("document.getElementById('numbers').getBoundingClientRect().top + scrollY");
        Assert.InRange(top / Height, 3, 12);
        await page.Context.CloseAsync();
    }

    /// <summary>Whoever prints the page gets what is unfolded, not every trace.</summary>
    [Fact]
    public async Task Printing_leaves_folds_closed()
    {
        var page = await chromium.Open(1280, 900, file: Page("tarn-lane"));
        await page.EvaluateAsync("document.querySelector('details.trace').open = true");
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        await page.EvaluateAsync("dispatchEvent(new Event('beforeprint'))");
        Assert.Equal(1, await page.EvaluateAsync<int>("document.querySelectorAll('details.trace[open]').length"));
        await page.Context.CloseAsync();
    }

    private async Task Look(string example, int width, ColorScheme scheme)
    {
        var page = await chromium.Open(width, 900, scheme, file: Page(example));
        Assert.InRange(await page.EvaluateAsync<int>("document.documentElement.scrollWidth"), 1, width);
        await page.EvaluateAsync("document.querySelectorAll('details').forEach(d => { d.open = true; })");
        Assert.InRange(await page.EvaluateAsync<int>("document.documentElement.scrollWidth"), 1, width);
        var result = await page.RunAxe();
        Assert.True(result.Passes.Length > 20, "axe ran its rules");
        Assert.Empty(result.Violations.Select(item => $"{item.Id}: {item.Nodes[0].Html}"));
        await page.Context.CloseAsync();
    }

    private static string Page(string example) => Pages.GetOrAdd(example, name => new Lazy<string>(() => Render(name))).Value;

    private static string Render(string example)
    {
        var folder = Directory.CreateTempSubdirectory("commission-example-").FullName;
        using var output = new StringWriter();
        using var error = new StringWriter();
        var exit = CommissionProgram.Run(["render", Job(example), "--out", folder], output, error);
        Assert.True(exit is 0 or 1, error.ToString()); // 1: not accepted or incomplete, which an example may be
        return Assert.Single(Directory.GetFiles(folder, "*.html"));
    }

    internal static string Job(string example) => Path.Combine(Root(), "examples", example, "job.yaml");

    private static string Root()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Commission.sln")))
                return folder.FullName;
        }

        throw new InvalidOperationException("The tests run outside the repository.");
    }
}
