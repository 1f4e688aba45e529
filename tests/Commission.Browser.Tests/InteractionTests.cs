using Microsoft.Playwright;
using Xunit;

namespace Commission.Browser.Tests;

/// <summary>Keyboard, pointer, and the three things the script adds.</summary>
public class InteractionTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task The_first_stop_of_the_keyboard_skips_to_the_record()
    {
        var page = await chromium.Open();
        await page.Keyboard.PressAsync("Tab");
        var skip = page.Locator("a.skip");
        await Assertions.Expect(skip).ToBeFocusedAsync();
        await Assertions.Expect(skip).ToBeInViewportAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("main")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Every_stop_of_the_keyboard_can_be_seen()
    {
        var page = await chromium.Open(360);
        var unseen = new List<string>();
        for (var i = 0; i < 400; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            var state = await page.EvaluateAsync<string>("""
                () => {
                  const e = document.activeElement, style = getComputedStyle(e), box = e.getBoundingClientRect();
                  if (e === document.body) return 'end';
                  return parseFloat(style.outlineWidth) >= 1 && style.outlineStyle !== 'none' && box.width > 0 && box.height > 0 ? '' : e.outerHTML.slice(0, 80);
                }
                """);
            if (state == "end")
                break;
            if (state.Length > 0)
                unseen.Add(state);
        }

        Assert.Empty(unseen);
    }

    [Fact]
    public async Task A_table_that_scrolls_is_a_stop_and_one_that_fits_is_none()
    {
        var narrow = await chromium.Open(360);
        Assert.True(await narrow.Locator(".scroll[tabindex='0']").CountAsync() > 0);
        Assert.Equal(0, await narrow.EvaluateAsync<int>("[...document.querySelectorAll('.scroll')].filter(f => f.scrollWidth > f.clientWidth + 1 && f.tabIndex !== 0).length"));
        var wide = await chromium.Open(1920);
        Assert.Equal(0, await wide.Locator(".scroll[tabindex='0']").CountAsync());
    }

    [Fact]
    public async Task A_link_to_a_trace_unfolds_it()
    {
        var page = await chromium.Open();
        var trace = page.Locator("details.trace").First;
        var id = await trace.Locator(".told").GetAttributeAsync("id");
        await Assertions.Expect(trace.Locator(".told")).ToBeHiddenAsync();
        await page.Locator($"a[href='#{id}']").First.ClickAsync();
        await Assertions.Expect(trace.Locator(".told")).ToBeVisibleAsync();
        await Assertions.Expect(trace.Locator(".told")).ToBeInViewportAsync();
    }

    [Fact]
    public async Task A_page_opened_at_a_trace_shows_it()
    {
        var first = await chromium.Open();
        var id = await first.Locator("details.trace .told").Nth(3).GetAttributeAsync("id");
        var page = await chromium.Open(hash: "#" + id);
        await Assertions.Expect(page.Locator("#" + id)).ToBeInViewportAsync();
    }

    [Fact]
    public async Task All_traces_fold_and_unfold_at_once()
    {
        var page = await chromium.Open();
        var traces = await page.Locator("details.trace").CountAsync();
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Unfold all traces" }).ClickAsync();
        Assert.Equal(traces, await page.Locator("details.trace[open]").CountAsync());
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Fold all traces", Exact = true }).ClickAsync();
        Assert.Equal(0, await page.Locator("details.trace[open]").CountAsync());
    }

    [Fact]
    public async Task Values_are_said_at_the_pointer()
    {
        var page = await chromium.Open();
        var plot = page.Locator("figure:not(.bare):has(figcaption:has-text('Pull-down and hold')) .plot.wide");
        await plot.ScrollIntoViewIfNeededAsync();
        var box = (await plot.Locator("svg").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + box.Width * 0.3f, box.Y + box.Height * 0.7f);
        await Assertions.Expect(plot.Locator("output")).ToContainTextAsync("measured: ");
        await Assertions.Expect(plot.Locator("output")).ToContainTextAsync(" micron at ");
        Assert.Equal(1, await plot.Locator("circle.ring").CountAsync());
    }

    [Fact]
    public async Task Values_are_said_by_keyboard()
    {
        var page = await chromium.Open();
        var plot = page.Locator("figure:has(figcaption:has-text('Superheat and subcooling')) .plot.wide");
        await plot.Locator("input").FocusAsync();
        await page.Keyboard.PressAsync("End");
        await Assertions.Expect(plot.Locator("output")).ToHaveTextAsync("subcooling: 10.5 °F (9.1 °F to 11.9 °F) at 11:35");
        Assert.Equal("subcooling: 10.5 °F (9.1 °F to 11.9 °F) at 11:35", await plot.Locator("input").GetAttributeAsync("aria-valuetext"));
        await page.Keyboard.PressAsync("ArrowLeft");
        await Assertions.Expect(plot.Locator("output")).ToHaveTextAsync("superheat: 12.9 °F (11.4 °F to 14.4 °F) at 11:35");
    }

    [Fact]
    public async Task A_value_is_copied_and_the_page_says_so()
    {
        var page = await chromium.Open();
        var cell = page.Locator("#work td.decimal").First;
        var value = (await cell.EvaluateAsync<string>("e => [...e.childNodes].filter(n => n.nodeType === 3).map(n => n.data).join('').trim()"))!;
        await cell.HoverAsync();
        await cell.Locator("button").ClickAsync();
        await Assertions.Expect(page.Locator(".status")).ToHaveTextAsync("Copied " + value);
    }
}
