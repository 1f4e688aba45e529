using Commission.Cli;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Xunit;

namespace Commission.Browser.Tests;

/// <summary>The pages of the example jobs, made by the whole program.</summary>
public class ExamplePagesTests(Chromium chromium) : IClassFixture<Chromium>
{
    public static TheoryData<string> Examples() => [.. Directory.GetDirectories(Path.Combine(Root(), "examples")).Select(folder => Path.GetFileName(folder)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task The_page_of_an_example_has_no_violation_and_fits_a_telephone(string example)
    {
        var folder = Directory.CreateTempSubdirectory("commission-example-").FullName;
        using var output = new StringWriter();
        using var error = new StringWriter();
        var exit = CommissionProgram.Run(["render", Path.Combine(Root(), "examples", example, "job.yaml"), "--out", folder], output, error);
        Assert.True(exit is 0 or 1, error.ToString()); // 1: not accepted or incomplete, which an example may be

        var file = Assert.Single(Directory.GetFiles(folder, "*.html"));
        var page = await chromium.Open(360, 740, ColorScheme.Light, file: file);
        Assert.InRange(await page.EvaluateAsync<int>("document.documentElement.scrollWidth"), 1, 360);
        await page.EvaluateAsync("document.querySelectorAll('details').forEach(d => { d.open = true; })");
        Assert.InRange(await page.EvaluateAsync<int>("document.documentElement.scrollWidth"), 1, 360);
        await page.SetViewportSizeAsync(1280, 900);
        Assert.Empty((await page.RunAxe()).Violations.Select(item => $"{item.Id}: {item.Nodes[0].Html}"));
    }

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
