using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace Commission.Generators;

/// <summary>A probe that JSON can be read while the compiler runs; replaced by the first real generator.</summary>
[Generator]
public sealed class LimitIdGenerator : IIncrementalGenerator
{
    public void Initialize(IncrementalGeneratorInitializationContext context)
    {
        var files = context.AdditionalTextsProvider.Where(f => f.Path.EndsWith("job.schema.json", StringComparison.Ordinal)).Select((f, c) => f.GetText(c)!.ToString());
        context.RegisterSourceOutput(files, (output, text) =>
        {
            using var json = JsonDocument.Parse(text);
            output.AddSource("Probe.g.cs", SourceText.From("// " + json.RootElement.GetProperty("$id").GetRawText() + "\n", Encoding.UTF8));
        });
    }
}
