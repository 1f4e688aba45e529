using System.Text;
using System.Text.Json;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace Commission.Generators.JobModel;

/// <summary>Makes the job's model, its words and its binder from <c>job.schema.json</c>.</summary>
[Generator]
public sealed class JobModelGenerator : IIncrementalGenerator
{
    private static readonly DiagnosticDescriptor Fault = new(
        "JOB001", "The job schema cannot become a model", "job.schema.json: {0}", "Commission", DiagnosticSeverity.Error, isEnabledByDefault: true);

    /// <inheritdoc/>
    public void Initialize(IncrementalGeneratorInitializationContext context)
    {
        var schemas = context.AdditionalTextsProvider
            .Where(file => Path.GetFileName(file.Path) == "job.schema.json")
            .Select((file, cancel) => file.GetText(cancel)?.ToString() ?? "");
        context.RegisterSourceOutput(schemas, Make);
    }

    private static void Make(SourceProductionContext output, string text)
    {
        SchemaModel model;
        try
        {
            model = SchemaReader.Read(text);
        }
        catch (Exception fault) when (fault is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            output.ReportDiagnostic(Diagnostic.Create(Fault, Location.None, fault.Message));
            return;
        }

        foreach (var fault in model.Faults)
            output.ReportDiagnostic(Diagnostic.Create(Fault, Location.None, fault));
        if (model.Faults.Count > 0)
            return;
        output.AddSource("Model.g.cs", SourceText.From(ModelWriter.Parts(model), Encoding.UTF8));
        output.AddSource("Words.g.cs", SourceText.From(ModelWriter.Words(model), Encoding.UTF8));
        output.AddSource("PartBinder.g.cs", SourceText.From(BinderWriter.Write(model), Encoding.UTF8));
    }
}
