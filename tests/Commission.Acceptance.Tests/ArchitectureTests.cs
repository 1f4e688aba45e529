using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>One way through the house, never back: the arrows of DEVELOPERS.md, read from project files and from using lines.</summary>
public sealed partial class ArchitectureTests
{
    private static readonly Dictionary<string, string[]> Allowed = new(StringComparer.Ordinal)
    {
        // The generators read catalogues with the parser of Messages: its source, not its assembly.
        ["Generators"] = ["Messages"],
        ["Messages"] = [],
        ["Source"] = ["Messages"],
        ["Fluids"] = ["Messages"],
        ["Measurement"] = ["Messages"],
        ["Jobs"] = ["Messages", "Source", "Measurement"],
        ["Records"] = ["Messages", "Source", "Measurement"],
        ["Checks"] = ["Messages", "Source", "Fluids", "Measurement", "Jobs", "Records"],
        ["Documents"] = ["Messages", "Source", "Records", "Measurement"],
        ["Cli"] = ["Messages", "Source", "Fluids", "Measurement", "Jobs", "Records", "Checks", "Documents"],
    };

    [Fact]
    public void Every_source_project_has_its_place_in_the_house()
    {
        var projects = Directory.EnumerateDirectories(Repository.PathTo("src")).Select(d => Path.GetFileName(d)["Commission.".Length..]).Order(StringComparer.Ordinal);
        Assert.Equal(Allowed.Keys.Order(StringComparer.Ordinal), projects);
    }

    [Fact]
    public void Project_references_follow_the_arrows()
    {
        foreach (var (project, allowed) in Allowed)
        {
            var file = Repository.PathTo("src", $"Commission.{project}", $"Commission.{project}.csproj");
            var references = XDocument.Load(file).Descendants("ProjectReference")
                .Where(r => r.Attribute("OutputItemType")?.Value != "Analyzer")
                .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/'))["Commission.".Length..]);
            foreach (var reference in references)
                Assert.True(allowed.Contains(reference, StringComparer.Ordinal), $"{project} may not reference {reference}.");
        }
    }

    [Fact]
    public void Using_lines_follow_the_arrows()
    {
        foreach (var (project, allowed) in Allowed)
        {
            var folder = Repository.PathTo("src", $"Commission.{project}");
            foreach (var file in Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories).Where(f => !f.Contains("/obj/", StringComparison.Ordinal)))
            {
                foreach (Match use in UsingLine().Matches(File.ReadAllText(file)))
                {
                    var other = use.Groups["project"].Value;
                    Assert.True(
                        other == project || allowed.Contains(other, StringComparer.Ordinal) || !Allowed.ContainsKey(other),
                        $"{Path.GetRelativePath(Repository.Root, file)} uses Commission.{other}.");
                }
            }
        }
    }

    [Theory]
    [InlineData("Checks")]
    [InlineData("Cli")]
    [InlineData("Documents")]
    [InlineData("Fluids")]
    [InlineData("Jobs")]
    [InlineData("Measurement")]
    [InlineData("Messages")]
    [InlineData("Records")]
    [InlineData("Source")]
    public void Folders_of_a_project_form_no_circle_and_give_their_files_the_namespace(string project)
    {
        // What this test process runs on holds every package and every other project.
        var references = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator);
        var folder = Repository.PathTo("src", $"Commission.{project}");
        var settings = XDocument.Load(Path.Combine(folder, $"Commission.{project}.csproj"));
        var generators = settings.Descendants("ProjectReference").Any(r => r.Attribute("OutputItemType")?.Value == "Analyzer") ? Assembly.Load("Commission.Generators") : null;
        var additional = settings.Descendants("AdditionalFiles").SelectMany(a => Files(folder, a.Attribute("Include")!.Value));
        var arrows = FolderArrows.Of(folder, settings.Descendants("AssemblyName").FirstOrDefault()?.Value ?? $"Commission.{project}", references, generators, additional);

        Assert.True(arrows.Circles().Length == 0, arrows.Circles());
        Assert.True(arrows.Misplaced.Count == 0, string.Join('\n', arrows.Misplaced));
    }

    [Fact]
    public void A_circle_of_folders_is_seen_without_a_using_line()
    {
        using var folder = new TemporaryFolder();
        var project = Path.Combine(folder.Path, "Trial");
        Directory.CreateDirectory(Path.Combine(project, "Low"));
        Directory.CreateDirectory(Path.Combine(project, "High"));
        File.WriteAllText(Path.Combine(project, "Low", "Brick.cs"), "namespace Trial.Low; static class Brick { public static int Weight => 2; public static int Of(this int n) => High.Wall.Count * n; }");
        File.WriteAllText(Path.Combine(project, "High", "Wall.cs"), "using Trial.Low; namespace Trial.High; static class Wall { public static int Count => 3.Of(); }");
        File.WriteAllText(Path.Combine(project, "High", "Gate.cs"), "namespace Trial.Higher; static class Gate { }");
        var arrows = FolderArrows.Of(project, "Trial", [typeof(object).Assembly.Location], null, []);

        Assert.Equal([("High", "Low"), ("Low", "High")], arrows.All);
        Assert.Contains("High, Low", arrows.Circles(), StringComparison.Ordinal);
        Assert.Contains("Low/Brick.cs: Wall", arrows.Circles(), StringComparison.Ordinal);
        Assert.Equal(["High/Gate.cs: Trial.Higher"], arrows.Misplaced);
    }

    // What a library does is done when it returns; who has a processor to spare is known to the program alone.
    [Fact]
    public void Only_the_program_starts_threads()
    {
        string[] starters = ["Task.Run", "Task.Factory", "Parallel.", "new Thread(", "ThreadPool.", ".AsParallel("];
        var sources = Directory.EnumerateFiles(Repository.PathTo("src"), "*.cs", SearchOption.AllDirectories).Where(f => !f.Contains("/obj/", StringComparison.Ordinal)).ToArray();
        var starting = sources.Where(f => starters.Any(s => File.ReadAllText(f).Contains(s, StringComparison.Ordinal))).Select(f => Path.GetRelativePath(Repository.PathTo("src"), f).Split('/')[0]).Distinct();
        Assert.Equal(["Commission.Cli"], starting);
    }

    [Fact]
    public void The_top_level_holds_what_was_agreed()
    {
        string[] agreed = ["README.md", "DEVELOPERS.md", "LICENSE", "Commission.sln", "global.json", "src", "schemas", "templates", "tests", "examples"];
        var found = Directory.EnumerateFileSystemEntries(Repository.Root).Select(p => Path.GetFileName(p))
            .Where(n => !n.StartsWith('.') && !n.StartsWith("Directory.", StringComparison.Ordinal) && n is not ("out" or "TestResults" or "BenchmarkDotNet.Artifacts"));
        Assert.Equal(agreed.Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void No_source_file_is_longer_than_600_lines_without_a_reason()
    {
        foreach (var file in Directory.EnumerateFiles(Repository.PathTo("src"), "*.cs", SearchOption.AllDirectories).Where(f => !f.Contains("/obj/", StringComparison.Ordinal)))
        {
            var lines = File.ReadAllLines(file);
            Assert.True(lines.Length <= 600 || lines.Take(5).Any(l => l.Contains("one published algorithm", StringComparison.Ordinal)), $"{Path.GetRelativePath(Repository.Root, file)}: {lines.Length} lines.");
        }
    }

    // The patterns of a project file: "a/b.json", "a/*.yaml", "a/**/*.json".
    private static IEnumerable<string> Files(string project, string patterns) => patterns.Split(';').SelectMany(pattern =>
    {
        var name = Path.GetFileName(pattern);
        var folder = Path.GetDirectoryName(pattern)!;
        var deep = folder.EndsWith("**", StringComparison.Ordinal);
        return Directory.EnumerateFiles(Path.GetFullPath(Path.Combine(project, deep ? folder[..^2] : folder)), name, deep ? SearchOption.AllDirectories : SearchOption.TopDirectoryOnly).Order(StringComparer.Ordinal);
    });

    [GeneratedRegex(@"^(?:global )?using (?:static )?(?:\w+ = )?Commission\.(?<project>\w+)", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex UsingLine();
}
