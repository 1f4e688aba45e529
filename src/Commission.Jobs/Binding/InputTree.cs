using Commission.Source.Yaml;

namespace Commission.Jobs.Binding;

/// <summary>Makes the neutral tree of what was read, with canonical texts.</summary>
internal static class InputTree
{
    public static JobInput Of(SourceMapping root, IReadOnlyDictionary<SourceScalar, string> canonical) => Of("", root, canonical);

    private static JobInput Of(string key, SourceNode node, IReadOnlyDictionary<SourceScalar, string> canonical) => node switch
    {
        SourceScalar scalar => new JobInput(key, canonical.GetValueOrDefault(scalar, scalar.Text), node.Location, []),
        SourceMapping mapping => new JobInput(key, null, node.Location, [.. mapping.Entries.Select(e => Of(e.Key.Text, e.Value, canonical))]),
        SourceSequence sequence => new JobInput(key, null, node.Location, [.. sequence.Items.Select(i => Of("", i, canonical))]) { IsList = true },
        _ => throw new InvalidOperationException(),
    };
}
