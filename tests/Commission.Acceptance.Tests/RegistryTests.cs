using System.Text.Json;
using System.Text.RegularExpressions;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Messages;
using Commission.Records;
using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>Walks the registries: nothing is half there.</summary>
public sealed class RegistryTests
{
    // That each check is shown right and wrong is held by the tables of verdicts: VerdictTableTests.Every_check_is_shown_right_and_wrong.
    [Fact]
    public void Every_check_has_an_id_of_its_phase_a_title_and_help()
    {
        foreach (var check in CheckCatalogue.All)
        {
            Assert.Contains(check.Phase, Phases.All);
            Assert.StartsWith(check.Phase == Phases.Instruments ? "instrument." : check.Phase + ".", check.Id, StringComparison.Ordinal);
            Assert.NotEmpty(Text(check.Title()));
            Assert.All([check.HelpWhat(), check.HelpFormula(), check.HelpSource(), check.WhenItFails()], text => Assert.True(Text(text).Length > 20, $"{check.Id}: \"{Text(text)}\" explains nothing."));
        }

        Assert.Equal(CheckCatalogue.All.Count, CheckCatalogue.All.Select(c => c.Id).Distinct(StringComparer.Ordinal).Count());
    }

    // Checks name these messages by their id, so that no compiler misses one that is left over.
    [Fact]
    public void No_words_of_a_check_are_left_without_it()
    {
        var known = CheckCatalogue.All.SelectMany(c => new[] { c.Title(), c.WhenItFails(), c.HelpWhat(), c.HelpFormula(), c.HelpSource() }).Select(m => m.Id).ToHashSet(StringComparer.Ordinal);
        var written = MessageCatalogue.BuiltInFiles.Where(f => f.StartsWith("en/", StringComparison.Ordinal)).SelectMany(f => FluentNames(f)).Where(id => id.StartsWith("help.", StringComparison.Ordinal) || id.Contains(".check-", StringComparison.Ordinal));
        Assert.Equal(known.Order(StringComparer.Ordinal), written.Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> FluentNames(string file) =>
        MessageCatalogue.Embedded(file)!.Split('\n').Where(line => line.Length > 0 && char.IsAsciiLetterLower(line[0])).Select(line => $"{Path.GetFileNameWithoutExtension(file)}.{line.Split(" =")[0]}");

    private static string Text(Message message) => RecordWords.Text(message, Language.English);

    [Fact]
    public void Every_check_file_is_in_the_catalogue()
    {
        var known = CheckCatalogue.All.Select(c => c.GetType().Name).ToHashSet(StringComparer.Ordinal);
        var found = typeof(ICheck).Assembly.GetTypes().Where(t => t is { IsClass: true, IsAbstract: false } && t.IsAssignableTo(typeof(ICheck))).Select(t => t.Name);
        Assert.Equal(known.Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_figure_of_every_example_is_drawn_on_its_page_and_every_kind_of_figure_is_in_an_example()
    {
        var kinds = new HashSet<string>(StringComparer.Ordinal);
        foreach (var example in Repository.Examples)
        {
            using var folder = new TemporaryFolder();
            CommandRun.Of("render", Repository.PathTo("examples", example, "job.yaml"), "--out", folder.Path, "--format", "html,json");
            using var record = JsonDocument.Parse(File.ReadAllText(Assert.Single(Directory.GetFiles(folder.Path, "*.json"))));
            var page = File.ReadAllText(Assert.Single(Directory.GetFiles(folder.Path, "*.html")));
            var figures = record.RootElement.GetProperty("figures").EnumerateArray().ToList();
            Assert.All(figures, f => Assert.Contains($"<figcaption><strong>{f.GetProperty("title").GetString()}.", page, StringComparison.Ordinal));
            Assert.Equal(figures.Count + record.RootElement.GetProperty("certificate").GetProperty("figures").GetArrayLength(), Regex.Count(page, "class=\"plot wide\""));
            kinds.UnionWith(figures.Select(f => f.GetProperty("plot").GetString()!));
        }

        Assert.Equal(["charge-time", "hold", "instrument-residuals", "nitrogen-hold", "pressure-enthalpy", "psychrometric", "pull-down"], kinds.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_example_renders_with_the_outcome_its_readme_says()
    {
        foreach (var example in Repository.Examples)
        {
            var readme = File.ReadAllText(Repository.PathTo("examples", example, "README.md"));
            using var folder = new TemporaryFolder();
            var run = CommandRun.Of("render", Repository.PathTo("examples", example, "job.yaml"), "--out", folder.Path);
            Assert.Equal("", run.Error);
            Assert.NotEmpty(run.Written);
            Assert.Equal(run.Written.Order(StringComparer.Ordinal), Directory.EnumerateFiles(folder.Path).Order(StringComparer.Ordinal));
            var outcome = run.Output.Split('\n')[0].Split(": ", 2)[1].Trim();
            Assert.True(readme.Contains($"Outcome: {outcome}.", StringComparison.Ordinal), $"{example}: the outcome is \"{outcome}\"; its README says otherwise.\n{run.Output}");
            Assert.Equal(outcome.StartsWith("accepted", StringComparison.Ordinal) ? 0 : 1, run.ExitCode);
        }
    }
}
