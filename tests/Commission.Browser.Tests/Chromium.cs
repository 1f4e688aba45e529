using Microsoft.Playwright;
using Xunit;

namespace Commission.Browser.Tests;

/// <summary>
/// The Chromium of this machine: the program that the variable CHROMIUM names, else one in a usual place. Nothing is downloaded; where
/// there is none, the tests are skipped and say so.
/// </summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string[] UsualPlaces =
    [
        "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/opt/google/chrome/chrome",
        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome", @"C:\Program Files\Google\Chrome\Application\chrome.exe",
    ];

    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public async ValueTask InitializeAsync()
    {
        if (Find() is not { } path)
            return;
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = path, ChromiumSandbox = false });
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
    }

    /// <summary>Opens a page, the sample when none is named; the test is skipped where there is no Chromium.</summary>
    public async Task<IPage> Open(int width = 1280, int height = 900, ColorScheme scheme = ColorScheme.Light, bool script = true, string hash = "", string? file = null)
    {
        Assert.SkipWhen(_browser is null, "No Chromium was found. Install one, or name it in the variable CHROMIUM.");
        var context = await _browser!.NewContextAsync(new BrowserNewContextOptions
        {
            Offline = true,
            ViewportSize = new ViewportSize { Width = width, Height = height },
            ColorScheme = scheme,
            JavaScriptEnabled = script,
        });
        var page = await context.NewPageAsync();
        await page.GotoAsync(new Uri(file ?? SamplePage.Path).AbsoluteUri + hash);
        return page;
    }

    private static string? Find()
    {
        if (Environment.GetEnvironmentVariable("CHROMIUM") is { Length: > 0 } named)
            return File.Exists(named) ? named : null;
        return Array.Find(UsualPlaces, File.Exists);
    }
}
