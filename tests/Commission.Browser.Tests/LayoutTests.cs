using Microsoft.Playwright;
using Xunit;

namespace Commission.Browser.Tests;

/// <summary>Screens of every width, paper, and a browser without script.</summary>
public class LayoutTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Theory]
    [InlineData(320, Traits = ["run", "long"])]
    [InlineData(360)]
    [InlineData(414, Traits = ["run", "long"])]
    [InlineData(768, Traits = ["run", "long"])]
    [InlineData(1280)]
    [InlineData(1920, Traits = ["run", "long"])]
    public async Task The_page_never_scrolls_sideways(int width)
    {
        var page = await chromium.Open(width);
        await page.EvaluateAsync("document.querySelectorAll('details').forEach(d => { d.open = true; })");
        Assert.InRange(await page.EvaluateAsync<int>("document.documentElement.scrollWidth"), 1, width);
    }

    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task Words_in_figures_are_of_reading_size_and_inside_whatever_the_font(int width)
    {
        var page = await chromium.Open(width);
        var smallest = await page.EvaluateAsync<double>("""
            () => Math.min(...[...document.querySelectorAll('.plot text')].filter(t => t.checkVisibility()).map(t => parseFloat(t.getAttribute('font-size')) * t.getScreenCTM().a))
            """);
        Assert.InRange(smallest, 8.8, 20);
        var outside = await page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll('.plot text')].filter(t => t.checkVisibility()).filter(t => {
              const a = t.getBoundingClientRect(), b = t.ownerSVGElement.getBoundingClientRect();
              return a.left < b.left - 1 || a.right > b.right + 1 || a.bottom > b.bottom + 2.5 || a.top < b.top - 2.5;
            }).map(t => t.textContent)
            """);
        Assert.Empty(outside);
    }

    [Fact]
    public async Task A_narrow_screen_shows_the_narrow_drawings_and_a_wide_one_the_wide()
    {
        Assert.Equal((0, true), await Shown(await chromium.Open(360)));
        var (narrow, wide) = await Shown(await chromium.Open(1280), wide: true);
        Assert.Equal((0, true), (narrow, wide));

        static async Task<(int Wrong, bool Right)> Shown(IPage page, bool wide = false)
        {
            await page.EvaluateAsync("document.querySelectorAll('details.fold').forEach(d => { d.open = true; })");
            var counts = await page.EvaluateAsync<int[]>("() => ['wide', 'narrow'].map(name => [...document.querySelectorAll('figure:not(.bare) .plot.' + name)].filter(p => p.checkVisibility()).length)");
            return wide ? (counts[1], counts[0] >= 5) : (counts[0], counts[1] >= 5);
        }
    }

    [Fact]
    public async Task Paper_shows_the_wide_drawings_every_trace_and_no_furniture_of_the_screen()
    {
        var page = await chromium.Open(360, scheme: ColorScheme.Dark);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        Assert.Equal(0, await Visible(page, "nav, .skip, .tools, button, .read, figure:not(.bare) .plot.narrow"));
        Assert.True(await Visible(page, ".plot.wide") >= 5);
        Assert.Equal("rgb(255, 255, 255)", await page.EvaluateAsync<string>("getComputedStyle(document.documentElement).backgroundColor"));
        Assert.Equal(await page.Locator(".told").CountAsync(), await page.EvaluateAsync<int>("[...document.querySelectorAll('.told')].filter(t => t.getBoundingClientRect().height > 10 && t.checkVisibility({ contentVisibilityAuto: true })).length"));
        var pdf = await page.PdfAsync(new PagePdfOptions { PreferCSSPageSize = true });
        Assert.Equal("%PDF"u8, pdf.AsSpan(0, 4));
    }

    [Fact]
    public async Task Without_script_everything_can_be_read()
    {
        var page = await chromium.Open(script: false);
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Commissioning record TEST-2026-061");
        var trace = page.Locator("details.trace").First;
        await Assertions.Expect(trace.Locator(".told")).ToBeHiddenAsync();
        await trace.Locator("summary").ClickAsync();
        await Assertions.Expect(trace.Locator(".told")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Nothing_is_asked_of_the_network_and_nothing_is_complained_about()
    {
        var page = await chromium.Open();
        var requests = new List<string>();
        var complaints = new List<string>();
        page.Request += (_, request) => requests.Add(request.Url);
        page.Console += (_, message) => complaints.Add(message.Text);
        page.PageError += (_, error) => complaints.Add(error);
        await page.ReloadAsync();
        Assert.Single(requests); // the page itself
        Assert.Empty(complaints);
    }

    private static Task<int> Visible(IPage page, string selector)
        => page.EvaluateAsync<int>("selector => [...document.querySelectorAll(selector)].filter(e => e.checkVisibility()).length", selector);
}
