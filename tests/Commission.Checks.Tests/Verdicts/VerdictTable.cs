using System.Runtime.CompilerServices;
using Commission.Measurement.Decisions;
using YamlDotNet.RepresentationModel;

namespace Commission.Checks.Tests.Verdicts;

/// <summary>One line of a table: a job, and what one check has to say of it.</summary>
/// <param name="Place">Table and place in it, for the message of a test.</param>
/// <param name="Check">Id of the check.</param>
/// <param name="Limit">Id of the limit that the entry tries at, just inside and just outside its figure; null for any other entry.</param>
/// <param name="Subject">What the finding is about, where the check speaks of several things.</param>
/// <param name="Because">Why the verdict is right: the rule or the arithmetic.</param>
/// <param name="Value">What stands at <c>{x}</c>.</param>
/// <param name="Job">The whole job file.</param>
/// <param name="Expected">The verdict.</param>
/// <param name="IsReserved">Whether a pass has to carry a reservation.</param>
public sealed record VerdictRow(string Place, string Check, string? Limit, string? Subject, string Because, string Value, string Job, Verdict Expected, bool IsReserved);

/// <summary>
/// The tables of verdicts, <c>*.yaml</c> beside this file: for each phase a frame of a job with holes, <c>{equipment}</c>, and entries that
/// fill them. <c>given</c> lists what stands at <c>{x}</c> with the verdict that follows. README.md beside them says the rest.
/// </summary>
public static class VerdictTable
{
    private static readonly string[] OwnKeys = ["check", "limit", "subject", "because", "given"];

    /// <summary>All rows of all tables.</summary>
    public static IReadOnlyList<VerdictRow> Rows { get; } = [.. Directory.EnumerateFiles(Folder(), "*.yaml").Order(StringComparer.Ordinal).SelectMany(Read)];

    private static IEnumerable<VerdictRow> Read(string path)
    {
        var stream = new YamlStream();
        using (var text = File.OpenText(path))
            stream.Load(text);
        var root = (YamlMappingNode)stream.Documents[0].RootNode;
        var frame = Text(root, "frame")!;
        var table = Path.GetFileNameWithoutExtension(path);
        foreach (var entry in ((YamlSequenceNode)root.Children["entries"]).Cast<YamlMappingNode>())
        {
            var holes = Holes(root, "usual");
            foreach (var (key, value) in entry.Children.Where(c => !OwnKeys.Contains(((YamlScalarNode)c.Key).Value)))
                holes[((YamlScalarNode)key).Value!] = ((YamlScalarNode)value).Value!;
            var check = Text(entry, "check")!;
            foreach (var given in ((YamlSequenceNode)entry.Children["given"]).Cast<YamlSequenceNode>())
            {
                var x = ((YamlScalarNode)given[0]).Value!;
                var verdict = ((YamlScalarNode)given[1]).Value!;
                yield return new VerdictRow(
                    $"{table}.yaml:{given.Start.Line}:{given.Start.Column}", check, Text(entry, "limit"), Text(entry, "subject"), Text(entry, "because")!, x, Fill(frame, holes, x),
                    verdict switch
                    {
                        "pass" => Verdict.Pass,
                        "pass within uncertainty" => Verdict.PassWithinUncertainty,
                        "reserved" or "conditional" => Verdict.Conditional,
                        "cannot decide" => Verdict.CannotDecide,
                        "fail" => Verdict.Fail,
                        "information" => Verdict.Information,
                        "not evaluated" => Verdict.NotEvaluated,
                        _ => throw new InvalidDataException($"{table}.yaml:{given.Start.Line}: there is no verdict \"{verdict}\"."),
                    },
                    verdict == "reserved");
            }
        }
    }

    // Holes may stand in the text of holes: three rounds fill them all.
    private static string Fill(string frame, Dictionary<string, string> holes, string x)
    {
        for (var round = 0; round < 3; round++)
        {
            foreach (var (key, text) in holes)
                frame = frame.Replace($"{{{key}}}", text, StringComparison.Ordinal);
        }

        return frame.Replace("{x}", x, StringComparison.Ordinal);
    }

    private static Dictionary<string, string> Holes(YamlMappingNode root, string key) => root.Children.TryGetValue(key, out var node)
        ? ((YamlMappingNode)node).Children.ToDictionary(c => ((YamlScalarNode)c.Key).Value!, c => ((YamlScalarNode)c.Value).Value!, StringComparer.Ordinal)
        : new(StringComparer.Ordinal);

    private static string? Text(YamlMappingNode node, string key) => node.Children.TryGetValue(key, out var value) ? ((YamlScalarNode)value).Value : null;

    private static string Folder([CallerFilePath] string path = "") => Path.GetDirectoryName(path)!;
}
