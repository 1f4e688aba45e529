using System.Text;
using Commission.Source.Yaml;

namespace Commission.Source.Tests;

internal static class Reading
{
    public static (SourceNode? Node, string[] Problems) Yaml(string text) => Yaml(Encoding.UTF8.GetBytes(text));

    public static (SourceNode? Node, string[] Problems) Yaml(byte[] bytes)
    {
        var problems = new ProblemList();
        var source = SourceText.Decode("job.yaml", bytes, problems);
        var node = source is null ? null : YamlReader.Read(source, problems);
        return (node, [.. problems.Sorted().Select(p => p.ToString())]);
    }

    public static string Show(SourceNode node) => node switch
    {
        SourceScalar s => s.IsQuoted ? $"\"{s.Text}\"" : s.Text,
        SourceSequence q => "[" + string.Join(", ", q.Items.Select(Show)) + "]",
        SourceMapping m => "{" + string.Join(", ", m.Entries.Select(e => e.Key.Text + ": " + Show(e.Value))) + "}",
        _ => "?",
    };
}
