using Commission.Records.Tests.Samples;
using Commission.Source.Problems;
using Xunit;

namespace Commission.Documents.Tests.Typesetting;

public sealed class LookNow
{
    [Fact]
    public void Raw()
    {
        var problems = new ProblemList();
        var markup = DocumentRenderer.ToMarkup(SampleRecord.Full, TemplateSet.BuiltIn, problems);
        File.WriteAllBytes("/tmp/look/raw.pdf", DocumentRenderer.Raw(SampleRecord.Full, markup!));
    }
}
