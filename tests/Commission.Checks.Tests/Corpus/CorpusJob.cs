using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using YamlDotNet.RepresentationModel;

namespace Commission.Checks.Tests.Corpus;

/// <summary>
/// A job of <c>tests/corpus</c> and what the best technician in town would say of it. <c>NAME.job.yaml</c> is the job as a crew writes it,
/// <c>NAME.expected.yaml</c> was written beside it by somebody who had not read the program: story, source, outcomes that can be defended,
/// marks by check, marks that would be wrong, causes diagnosed and causes that must not be, advice that must not be given.
/// </summary>
internal sealed partial record CorpusJob
{
    public required string Name { get; init; }

    /// <summary>The job file as written.</summary>
    public required string Yaml { get; init; }

    /// <summary>Further files beside it.</summary>
    public required (string Name, string Text)[] Files { get; init; }

    public required string Story { get; init; }

    public required string Source { get; init; }

    /// <summary>What stands for an outcome where the file is rightly not read at all.</summary>
    public const string Refused = "file refused";

    /// <summary>Outcomes that an expert could defend.</summary>
    public required string[] Outcomes { get; init; }

    /// <summary>Marks that are right, by id of the check; <c>absent</c> where the check has nothing to say.</summary>
    public required IReadOnlyDictionary<string, string[]> Findings { get; init; }

    /// <summary>Marks that would be wrong, by id of the check.</summary>
    public required IReadOnlyDictionary<string, string[]> Never { get; init; }

    /// <summary>Whether the record has to carry a danger, or must not; null where the expert does not say.</summary>
    public required bool? Danger { get; init; }

    /// <summary>The causes: the first is expected in front, the others among the ranked; null where nothing is diagnosed.</summary>
    public required string[]? Diagnosis { get; init; }

    /// <summary>Causes that may stand in front instead.</summary>
    public required string[] Or { get; init; }

    /// <summary>Causes that must not be concluded.</summary>
    public required string[] Not { get; init; }

    /// <summary>Advice on the charge that must not be given: add, recover.</summary>
    public required string[] AdviceNot { get; init; }

    /// <summary>Checks whose finding the record has to show as something to look at.</summary>
    public required string[] ToLookAt { get; init; }

    /// <summary>Whether it is a complete ordinary job: nothing is missing, no condition, nothing to look at.</summary>
    public required bool Ordinary { get; init; }

    /// <summary>All jobs, by name.</summary>
    public static IReadOnlyList<CorpusJob> All { get; } =
        [.. Directory.EnumerateFiles(Folder(), "*.job.yaml").Order(StringComparer.Ordinal).Select(path => Read(Path.GetFileName(path)[..^".job.yaml".Length]))];

    /// <summary>The job file with its numbers printed in other units.</summary>
    /// <param name="units">us or si.</param>
    public string In(string units) => UnitsLine().IsMatch(Yaml) ? UnitsLine().Replace(Yaml, $"units: {units}", 1) : $"units: {units}\n{Yaml}";

    private static CorpusJob Read(string name)
    {
        var folder = Folder();
        var yaml = File.ReadAllText(Path.Combine(folder, $"{name}.job.yaml"));
        var stream = new YamlStream();
        using (var text = File.OpenText(Path.Combine(folder, $"{name}.expected.yaml")))
            stream.Load(text);
        var root = (YamlMappingNode)stream.Documents[0].RootNode;
        return new CorpusJob
        {
            Name = name,
            Yaml = yaml,
            Files =
            [
                .. Directory.EnumerateFiles(folder, "*.csv").Where(f => yaml.Contains(Path.GetFileName(f), StringComparison.Ordinal)).Select(f => (Path.GetFileName(f), File.ReadAllText(f))),
                // What a photo shows is what the crew says it shows: each is drawn from its name, or from the words of NAME.photos.txt.
                .. Photo().Matches(yaml).Select(m => m.Groups["file"].Value).Distinct(StringComparer.Ordinal).Select(photo => (photo, Drawn(folder, name).GetValueOrDefault(photo, photo))),
            ],
            Story = Words(root, "story")[0],
            Source = Words(root, "source")[0],
            Outcomes = Words(root, "outcome"),
            Findings = Marks(root, "findings"),
            Never = Marks(root, "never"),
            Danger = Words(root, "danger") is [var danger] ? danger == "true" : null,
            Diagnosis = Words(root, "diagnosis") is { Length: > 0 } kinds ? kinds : null,
            Or = Words(root, "or"),
            Not = Words(root, "not"),
            AdviceNot = Words(root, "advice not"),
            ToLookAt = Words(root, "to look at"),
            Ordinary = Words(root, "ordinary") is ["yes"],
        };
    }

    // A line for each photo that is not drawn from its own name: "photos/end.jpg: plate; size 160x120".
    private static Dictionary<string, string> Drawn(string folder, string name) => Path.Combine(folder, $"{name}.photos.txt") is var path && File.Exists(path)
        ? File.ReadAllLines(path).Where(l => l.Length > 0).Select(l => l.Split(": ", 2)).ToDictionary(l => l[0], l => l[1], StringComparer.Ordinal)
        : [];

    private static Dictionary<string, string[]> Marks(YamlMappingNode root, string key) => root.Children.TryGetValue(key, out var node)
        ? ((YamlMappingNode)node).Children.ToDictionary(c => ((YamlScalarNode)c.Key).Value!, c => Words(c.Value), StringComparer.Ordinal)
        : [];

    private static string[] Words(YamlMappingNode root, string key) => root.Children.TryGetValue(key, out var node) ? Words(node) : [];

    private static string[] Words(YamlNode node) => node is YamlSequenceNode list ? [.. list.Children.Cast<YamlScalarNode>().Select(c => c.Value!)] : [((YamlScalarNode)node).Value!];

    private static string Folder([CallerFilePath] string path = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(path)!, "..", "..", "corpus"));

    [GeneratedRegex(@"file: (?<file>[\w/.-]+\.(png|jpg))", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Photo();

    [GeneratedRegex("^units:.*$", RegexOptions.Multiline, 10_000)]
    private static partial Regex UnitsLine();
}
