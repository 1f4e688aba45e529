using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Xunit;

namespace Commission.Browser.Tests;

/// <summary>The rules of axe-core (WCAG 2 A and AA, and its best practices), in both schemes, wide and narrow, folded and unfolded.</summary>
public class AccessibilityTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Theory]
    [InlineData(1280, ColorScheme.Light, false, Traits = ["run", "long"])]
    [InlineData(1280, ColorScheme.Light, true)]
    [InlineData(1280, ColorScheme.Dark, true, Traits = ["run", "long"])]
    [InlineData(360, ColorScheme.Light, true, Traits = ["run", "long"])]
    [InlineData(360, ColorScheme.Dark, false)]
    public async Task Axe_finds_no_violation(int width, ColorScheme scheme, bool unfolded)
    {
        var page = await chromium.Open(width, 900, scheme);
        if (unfolded)
            await page.EvaluateAsync("document.querySelectorAll('details').forEach(d => { d.open = true; })");
        var result = await page.RunAxe();
        Assert.True(result.Passes.Length > 20, "axe ran its rules");
        Assert.Empty(result.Violations.Select(Told));
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Words_in_figures_stand_out_from_their_ground(ColorScheme scheme)
    {
        // axe does not look at SVG text. Relative luminance and contrast as WCAG 2.2 defines them; bands are lighter than paper by little.
        var page = await chromium.Open(scheme: scheme);
        var worst = await page.EvaluateAsync<double>("""
            () => {
              const light = colour => {
                const [r, g, b] = colour.match(/\d+/g).map(v => v / 255).map(v => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);
                return 0.2126 * r + 0.7152 * g + 0.0722 * b;
              };
              const contrast = (a, b) => (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
              const grounds = [getComputedStyle(document.documentElement).backgroundColor];
              for (const shape of document.querySelectorAll('.plot.wide path, .plot.wide :not(clipPath) > rect')) {
                const box = shape.getBBox();
                if (box.width > 100 && shape.getAttribute('fill') !== 'none') grounds.push(getComputedStyle(shape).fill);
              }
              const words = [...document.querySelectorAll('.plot.wide text')].map(text => light(getComputedStyle(text).fill));
              return Math.min(...words.flatMap(word => grounds.map(ground => contrast(word, light(ground)))));
            }
            """);
        Assert.InRange(worst, 4.5, 21);
    }

    private static string Told(AxeResultItem item)
        => $"{item.Id}: {item.Help} ({item.Nodes.Length}×, first {item.Nodes[0].Html})";
}
