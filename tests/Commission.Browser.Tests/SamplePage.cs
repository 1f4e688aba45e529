using Commission.Documents;
using Commission.Documents.Media;
using Commission.Documents.Plots;
using Commission.Documents.Templates;
using Commission.Documents.Tests.Plots;
using Commission.Records.Json;
using Commission.Records.Tests.Samples;
using Commission.Source;
using Xunit;

namespace Commission.Browser.Tests;

/// <summary>A page made by the built-in templates of an invented record with every kind of figure, written once to a temporary file.</summary>
internal static class SamplePage
{
    private static readonly Lazy<string> File = new(Write);

    public static string Path => File.Value;

    private static string Write()
    {
        var record = SampleRecord.Full;
        record = record with
        {
            Figures =
            [
                .. record.Figures,
                FigureSamples.InstrumentResiduals() with { Phase = "instruments" },
                FigureSamples.PullDownCrowded() with { Phase = "evacuation" },
                FigureSamples.HoldTwoReadings() with { Phase = "evacuation" },
                FigureSamples.Psychrometric() with { Phase = "air" },
            ],
        };
        var problems = new ProblemList();
        var media = new PageMedia(new FigureShelf(record), PhotoShelf.Empty);
        var markup = DocumentRenderer.ToMarkup(RecordJson.Write(record), media, TemplateSet.BuiltIn, problems);
        Assert.Empty(problems.Sorted());
        var path = System.IO.Path.Combine(Directory.CreateTempSubdirectory("commission-page-").FullName, "record.html");
        System.IO.File.WriteAllText(path, DocumentRenderer.ToHtml(record, markup!, media));
        return path;
    }
}
