using System.Xml.Linq;
using Commission.Documents.Markup;
using Commission.Documents.Templates;
using Commission.Records;
using Commission.Records.Json;
using Commission.Records.Tests.Samples;
using Commission.Source;
using Xunit;

namespace Commission.Documents.Tests.Templates;

public sealed class BuiltInTemplateTests
{
    [Fact]
    public void A_rich_record_gives_good_markup()
    {
        var document = Markup(SampleRecord.Full);
        Assert.Equal("Commissioning record TEST-2026-061", document.Root!.Attribute("title")!.Value);
    }

    [Fact]
    public void A_bare_record_gives_good_markup_and_one_line_a_phase()
    {
        var document = Markup(SampleRecord.Bare);
        Assert.Equal(
            [
                "1 Every judged check nothing could be judged", "2 Instruments none was written in the job file", "3 Pressure test nothing about it was written in the job file",
                "4 Evacuation nothing about it was written in the job file", "5 Charge nothing about it was written in the job file",
                "6 Air, electrical, piping, safety and evidence", "7 Declaration and signatures", "8 How each number was reached no number was computed",
                "Limits in force none was applied", "Constants, formulas and equations of state none was used", "Input files and digest",
            ],
            document.Descendants("h2").Select(heading => heading.Value));
    }

    [Fact]
    public void Every_judged_check_stands_on_page_one_and_evidence_does_not()
    {
        var rows = Markup(SampleRecord.Full).Descendants("tr").Select(row => row.Attribute("id")?.Value).OfType<string>().ToList();
        var expected = SampleRecord.Full.Findings
            .Where(finding => finding.Verdict != Measurement.Decisions.Verdict.Information && finding.Phase != "evidence")
            .Select(finding => $"finding-{finding.Number}");
        Assert.Equal(expected, rows);
    }

    [Fact]
    public void Every_finding_has_its_trace_and_every_figure_is_drawn()
    {
        var document = Markup(SampleRecord.Full);
        var ids = document.Descendants().Select(element => element.Attribute("id")?.Value).OfType<string>().ToHashSet(StringComparer.Ordinal);
        Assert.All(SampleRecord.Full.Findings, finding => Assert.Contains($"trace-{finding.Number}", ids));
        var drawn = document.Descendants("figure").Select(figure => figure.Attribute("data-plot")!.Value);
        Assert.Equal(SampleRecord.Full.Figures.Select(figure => figure.Id).Order(StringComparer.Ordinal), drawn.Order(StringComparer.Ordinal));
    }

    // Adding a phase to the checks without a place on the pages would hide its findings.
    [Fact]
    public void Every_statement_and_every_reading_place_of_the_record_is_told()
    {
        var text = Markup(SampleRecord.Full).Root!.Value;
        Assert.All(SampleRecord.Full.Findings, finding => Assert.Contains(finding.Statement, text, StringComparison.Ordinal));
        Assert.All(SampleRecord.Full.Findings.SelectMany(finding => finding.Readings), reading => Assert.Contains(reading.At.ToString(), text, StringComparison.Ordinal));
        Assert.All(SampleRecord.Full.Inputs, input => Assert.Contains(input.Sha256, text, StringComparison.Ordinal));
        Assert.All(SampleRecord.Full.LimitsInForce, limit => Assert.Contains(limit.Text, text, StringComparison.Ordinal));
        Assert.All(SampleRecord.Full.Sources, source => Assert.Contains(source.Citation, text, StringComparison.Ordinal));
        Assert.All(SampleRecord.Full.Cautions, caution => Assert.Contains(caution.Text, text, StringComparison.Ordinal));
    }

    [Fact]
    public void The_diagnosis_stands_under_the_outcome_where_there_is_one()
    {
        var diagnosis = SampleRecord.Full.Diagnosis!;
        var outcome = Outcome(SampleRecord.Full);
        Assert.Contains(diagnosis.Sentence, outcome, StringComparison.Ordinal);
        Assert.DoesNotContain("Diagnosis", Outcome(SampleRecord.Bare), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_missing_and_the_first_step_stand_under_the_outcome()
    {
        var outcome = Outcome(SampleRecord.Full with { FirstStep = new PunchItem("Find the leak."), Missing = [new MissingPart(["evacuation.hold"], "Isolated hold: nothing is written.", "brief")] });
        Assert.Contains("To do first. Find the leak.", outcome, StringComparison.Ordinal);
        Assert.Contains("Isolated hold: nothing is written.", outcome, StringComparison.Ordinal);
        Assert.DoesNotContain("To do first", Outcome(SampleRecord.Full with { FirstStep = null }), StringComparison.Ordinal);
    }

    private static string Outcome(CommissioningRecord record) => Markup(record).Descendants("div").Single(div => div.Attribute("class")?.Value == "outcome").Value;

    private static XDocument Markup(CommissioningRecord record)
    {
        var problems = new ProblemList();
        var xml = TemplateSet.BuiltIn.Render(RecordJson.Write(record), problems);
        Assert.Empty(problems.Sorted());
        var document = MarkupReader.Read(xml!, record.Figures.Select(figure => figure.Id).Contains, problems);
        Assert.Empty(problems.Sorted());
        return document!;
    }
}
