using Commission.Records.Json;
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
        var json = RecordJson.Write(SampleRecord.Full);
        Attachment[] a = [new("record.json", "application/json", AttachmentKind.Data, "The record", json), new("job.yaml", "application/yaml", AttachmentKind.Source, "Job ± file", "a: 1\n"u8.ToArray())];
        var pdf = DocumentRenderer.ToPdf(SampleRecord.Full, TemplateSet.BuiltIn, a, problems)!;
        File.WriteAllBytes("/tmp/look/raw.pdf", pdf.Bytes);
        pdf = DocumentRenderer.ToPdf(SampleRecord.Full, TemplateSet.BuiltIn, a, problems)!;
        File.WriteAllBytes("/tmp/look/raw2.pdf", pdf.Bytes);
    }
}
