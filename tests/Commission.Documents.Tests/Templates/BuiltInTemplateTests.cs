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
    public void A_bare_record_gives_good_markup_and_says_what_was_not_part_of_the_visit()
    {
        var text = Markup(SampleRecord.Bare).Root!.Value;
        Assert.All(new[] { "Pressure test", "Evacuation", "Charge", "Air" }, phase => Assert.Contains($"{phase}. Not part of this visit.", text, StringComparison.Ordinal));
    }

    // Page 1 answers: accepted or not, why, by which figures, on what, signed by whom.
    [Fact]
    public void Page_one_carries_outcome_reason_figures_units_and_lines_to_sign()
    {
        var record = SampleRecord.Full;
        var page = Markup(record).Descendants("section").Single(section => section.Attribute("class")?.Value == "one-page");
        Assert.Contains(record.Certificate.Sentence, page.Value, StringComparison.Ordinal);
        Assert.All(record.Certificate.Rows, row => Assert.Contains(page.Descendants("tr"), tr => tr.Value.Contains(row.Label, StringComparison.Ordinal) && tr.Value.Contains(row.Measured, StringComparison.Ordinal) && tr.Value.Contains(row.Limit, StringComparison.Ordinal) && tr.Value.Contains(row.Word, StringComparison.Ordinal)));
        Assert.All(record.Certificate.Failed, failed => Assert.Contains(failed.Measured, page.Value, StringComparison.Ordinal));
        Assert.Equal(record.Certificate.Figures, page.Descendants("figure").Select(figure => figure.Attribute("data-plot")!.Value));
        Assert.All(record.Certificate.Units, unit => Assert.Contains(unit.Value, page.Value, StringComparison.Ordinal));
        Assert.Contains(record.Certificate.Danger, page.Value, StringComparison.Ordinal);
        Assert.Equal(record.Signatures.Length, page.Descendants("sign").Count());
        Assert.All(record.Signatures, line => Assert.Contains(line.Statement, page.Value, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_judged_check_of_the_work_has_one_row()
    {
        var rows = Markup(SampleRecord.Full).Descendants("tr").Select(row => row.Attribute("id")?.Value).OfType<string>().ToList();
        var expected = SampleRecord.Full.Findings
            .Where(finding => finding.Verdict is not (Measurement.Decisions.Verdict.Information or Measurement.Decisions.Verdict.NotEvaluated) && finding.Phase is not ("evidence" or "instruments"))
            .Select(finding => $"check-{finding.Number}");
        Assert.Equal(expected.Order(StringComparer.Ordinal), rows.Where(id => id.StartsWith("check-", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
    }

    // Of a check that did not pass and has no number, the limit still stands under the head that says so.
    [Fact]
    public void A_limit_stands_in_the_column_of_limits()
    {
        var number = SampleRecord.Full.Findings.First(finding => finding.Phase is not ("evidence" or "instruments") && finding.Limits.Length > 0).Number;
        var record = SampleRecord.Full with { Findings = [.. SampleRecord.Full.Findings.Select(finding => finding.Number == number ? finding with { Measured = null, Verdict = Measurement.Decisions.Verdict.Fail } : finding)] };
        var row = Markup(record).Descendants("tr").Single(tr => tr.Attribute("id")?.Value == $"check-{number}");
        var limit = row.Elements().Single(cell => cell.Value.StartsWith(record.Findings[number - 1].Limits[0].Text, StringComparison.Ordinal));
        var head = row.Ancestors("table").First().Descendants("th").TakeWhile(cell => cell.Value != "Limit").Count();
        Assert.Equal(head, limit.ElementsBeforeSelf().Sum(cell => int.Parse(cell.Attribute("colspan")?.Value ?? "1", System.Globalization.CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void Every_finding_has_its_trace_and_every_figure_is_drawn()
    {
        var document = Markup(SampleRecord.Full);
        var ids = document.Descendants().Select(element => element.Attribute("id")?.Value).OfType<string>().ToHashSet(StringComparer.Ordinal);
        Assert.All(SampleRecord.Full.Findings, finding => Assert.Contains($"trace-{finding.Number}", ids));
        var drawn = document.Descendants("figure").Where(figure => figure.Ancestors("section").All(section => section.Attribute("class")?.Value != "one-page")).Select(figure => figure.Attribute("data-plot")!.Value);
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
        Assert.Contains("Do first. Find the leak.", outcome, StringComparison.Ordinal);
        Assert.Contains("Isolated hold: brief.", Markup(SampleRecord.Full with { Missing = [new MissingPart(["evacuation.hold"], "Isolated hold: nothing is written.", "Isolated hold: brief.")] }).Root!.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("Do first", Outcome(SampleRecord.Full with { FirstStep = null }), StringComparison.Ordinal);
    }

    private static string Outcome(CommissioningRecord record) => Markup(record).Descendants("div").Single(div => div.Attribute("class")?.Value.StartsWith("outcome ", StringComparison.Ordinal) == true).Value;

    private static XDocument Markup(CommissioningRecord record)
    {
        var problems = new ProblemList();
        var xml = TemplateSet.BuiltIn.Render(RecordJson.Write(record), problems);
        Assert.Empty(problems.Sorted());
        var document = MarkupReader.Read(xml!, record.Figures.Select(figure => figure.Id).Contains, static _ => true, problems);
        Assert.Empty(problems.Sorted());
        return document!;
    }
}
