using Commission.Source;
using Commission.Source.Problems;
using Commission.Source.Yaml;

namespace Commission.Checks.Limits;

/// <summary>YAML files inside this program. A fault in one of them is a fault of this program and throws.</summary>
internal static class EmbeddedYaml
{
    /// <summary>Reads one file.</summary>
    /// <typeparam name="T">What it becomes.</typeparam>
    /// <param name="resource">Its name.</param>
    /// <param name="read">How its document is read.</param>
    /// <returns>What it became.</returns>
    /// <exception cref="InvalidDataException">The file is missing or has problems.</exception>
    public static T Read<T>(string resource, Func<SourceNode, ProblemList, T?> read)
        where T : class
    {
        var problems = new ProblemList();
        var result = YamlReader.Read(Text(resource, problems), problems) is { } root ? read(root, problems) : null;
        return result is not null && problems.Count == 0 ? result : throw Fault(resource, problems);
    }

    /// <summary>The text of one file.</summary>
    /// <param name="resource">Its name.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The text.</returns>
    /// <exception cref="InvalidDataException">The file is missing or not text.</exception>
    public static SourceText Text(string resource, ProblemList problems)
    {
        using var stream = typeof(EmbeddedYaml).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidDataException($"{resource} is not in this program.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return SourceText.Decode(resource, bytes, problems) ?? throw Fault(resource, problems);
    }

    /// <summary>The exception for a damaged file.</summary>
    /// <param name="resource">Its name.</param>
    /// <param name="problems">What is wrong.</param>
    /// <returns>The exception, to be thrown.</returns>
    public static InvalidDataException Fault(string resource, ProblemList problems) =>
        new($"{resource} inside this program is damaged:{Environment.NewLine}{string.Join(Environment.NewLine, problems.Sorted())}");
}
