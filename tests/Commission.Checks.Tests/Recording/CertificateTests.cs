using Commission.Checks.Recording;
using Commission.Checks.Tests.Charge;
using Commission.Measurement.Decisions;
using Commission.Records;
using Xunit;

namespace Commission.Checks.Tests.Recording;

/// <summary>What page 1 answers, as an inspector asks it: accepted? why? vacuum? test? what is in it? (common practice, no source).</summary>
public sealed class CertificateTests
{
    private static readonly Lazy<CommissioningRecord> TarnLane = new(() => JobLines.Record(ChargeJobs.TarnLane));

    [Fact]
    public void Nine_rows_stand_in_the_order_of_the_work()
    {
        Assert.Equal(
            ["Test pressure", "Loss under nitrogen", "Vacuum at isolation", "Hold in vacuum", "Charge", "Superheat, subcooling", "Airflow, split", "Electrical", "Safety"],
            TarnLane.Value.Certificate.Rows.Select(r => r.Label));
    }

    [Theory]
    [InlineData("", "Incomplete: nothing failed, but this is not shown: ", Outcome.Incomplete)]
    [InlineData("limits: {water: {flow: {minimum: 17 L/min, from: manual}}}\nwater: {flow: 11.5 L/min}", "Not accepted: Water side, flow (", Outcome.NotAccepted)]
    public void The_sentence_tells_the_outcome_with_its_reason(string lines, string begin, Outcome outcome)
    {
        var record = JobLines.Record(JobLines.Of(lines, "new installation", lines.Length == 0 ? "split" : "air-to-water heat pump"));
        Assert.Equal(outcome, record.Outcome);
        Assert.StartsWith(begin, record.Certificate.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void What_fails_has_its_number_and_its_limit_and_counts_what_fails_beside_it()
    {
        var record = JobLines.Record(JobLines.Of("limits: {water: {flow: {minimum: 17 L/min, from: manual}}}\nwater: {flow: 11.5 L/min}", "new installation", "air-to-water heat pump"));
        var failed = record.Findings.Where(f => f.Verdict == Verdict.Fail && f.Phase != "evidence").ToList();
        Assert.Equal(failed.Count, record.Certificate.Failed.Length);
        var first = record.Certificate.Failed[0];
        var of = record.Findings[first.Finding - 1];
        Assert.Equal((of.Measured!.Text, of.Limits[0].Text), (first.Measured, first.Limit));
        Assert.Contains($"{first.Measured}, limit {first.Limit}", record.Certificate.Sentence, StringComparison.Ordinal);
    }

    // What was not part of the visit says so in a word; what the work asks for and nobody showed says that.
    [Fact]
    public void A_row_without_a_figure_says_whether_anybody_asks_for_it()
    {
        var rows = JobLines.Record(JobLines.Of(work: "new installation")).Certificate.Rows;
        Assert.Equal(("", "not shown"), (rows[0].Measured, rows[0].Word));
        var seasonal = JobLines.Record(JobLines.Of(work: "seasonal check")).Certificate.Rows;
        Assert.Equal(("", "not this visit"), (seasonal[0].Measured, seasonal[0].Word));
        Assert.All(seasonal, r => Assert.Null(r.Finding is null ? r.Verdict : null));
    }

    [Theory]
    [InlineData("R-410A", "")]
    [InlineData("R-32", "Flammable refrigerant (safety group A2L)")]
    [InlineData("R-290", "Flammable refrigerant (safety group A3)")]
    [InlineData("R-717", "Toxic refrigerant (safety group B2L), and it burns: only")]
    [InlineData("R-744", "Carbon dioxide at very high pressure")]
    public void Only_what_endangers_the_next_person_stands_on_page_one(string refrigerant, string danger)
    {
        // Safety groups: ASHRAE 34 (from memory).
        var said = JobLines.Record(JobLines.Of(refrigerant: refrigerant)).Certificate.Danger;
        if (danger.Length == 0)
            Assert.Empty(said);
        else
            Assert.StartsWith(danger, said, StringComparison.Ordinal);
    }

    // Twice its U from a limit: there the budget decides what the verdict rests on.
    [Fact]
    public void What_lies_within_twice_its_U_of_a_limit_is_named()
    {
        var record = TarnLane.Value;
        foreach (var finding in record.Findings.Where(f => f is { Measured.ExpandedSi: { } u, Limits: [{ UpperSi: { } most, LowerSi: null, TargetSi: null }, ..], Verdict: Verdict.Pass or Verdict.PassWithinUncertainty, Strip: not null } && u > 0))
        {
            var distance = Math.Abs(finding.Limits[0].UpperSi!.Value - finding.Measured!.Value.Si) / finding.Measured.ExpandedSi!.Value;
            if (distance is < 1.9 or > 2.1)
                Assert.Equal(distance < 2, record.Certificate.NearLimit.Contains(finding.Number));
        }

        Assert.NotEmpty(record.Certificate.NearLimit);
    }

    [Fact]
    public void Each_source_of_limits_has_one_code_and_practice_without_a_document_a_letter()
    {
        var record = TarnLane.Value;
        Assert.Equal(record.LimitSources.Length, record.LimitSources.Select(s => s.Code).Distinct(StringComparer.Ordinal).Count());
        Assert.All(record.Findings.SelectMany(f => f.Limits), limit =>
        {
            if (limit.Code == "C")
                Assert.Equal(("common practice", "common practice"), (limit.Basis, limit.Mark));
            else
                Assert.Equal(limit.Source, record.LimitSources.Single(s => s.Code == limit.Code).Source);
        });
        Assert.All(record.LimitSources, s => Assert.Equal(s.Code[0], s.Whose switch { "maker" => 'M', "common practice" => 'C', "job" => 'J', _ => 'P' }));
    }

    [Theory]
    [InlineData("evacuation: {started: \"09:00\", pump: {maker: Halden, model: VP-6, serial: H6-0208}}", "Evacuation", "pump (maker Halden; model VP-6; serial H6-0208)")]
    [InlineData("label: {added: 5.9 oz}", "Label", "added 5.9 oz")]
    public void What_no_table_prints_is_printed_as_it_was_written(string lines, string part, string text) =>
        Assert.Contains(text, JobLines.Record(JobLines.Of(lines)).AsWritten.Single(p => p.Label == part).Value, StringComparison.Ordinal);

    [Fact]
    public void What_the_head_prints_is_not_printed_again() =>
        Assert.DoesNotContain(JobLines.Record(JobLines.Of()).AsWritten, p => p.Value.Contains("R-410A", StringComparison.Ordinal) || p.Value.Contains("Tarn Lane", StringComparison.Ordinal));

    [Fact]
    public void A_column_that_no_row_fills_is_left_out() =>
        Assert.All(TarnLane.Value.Tables, table =>
        {
            Assert.All(table.Rows, row => Assert.Equal(table.Columns.Length, row.Length));
            Assert.All(Enumerable.Range(0, table.Columns.Length), c => Assert.Contains(table.Rows, row => row[c].Length > 0));
        });

    [Theory]
    [InlineData("Charge by weight", "charge by weight")]
    [InlineData("COP", "COP")]
    [InlineData("A line", "a line")]
    public void A_title_in_a_sentence_begins_small_unless_it_is_an_abbreviation(string title, string said) => Assert.Equal(said, MissingWork.InSentence(title));

    // A nameplate is no scale, and a limit for what was added is none for it.
    [Fact]
    public void A_charge_that_nobody_weighed_is_said_to_be_the_nameplates()
    {
        var row = JobLines.Record(JobLines.Of("charging: {unit arrived: charged}", equipment: ", nameplate: {factory charge: 6 lb 2 oz}")).Certificate.Rows.Single(r => r.Label == "Charge");
        Assert.Contains("by the nameplate, not weighed", row.Measured, StringComparison.Ordinal);
        Assert.Equal("", row.Limit);
    }

    // 440 psig of a section whose design pressure is 550 psig: 95 % of that is usual (common practice, no source), nobody makes it a limit, and less is no plain pass.
    [Fact]
    public void A_test_below_the_usual_pressure_is_no_plain_pass()
    {
        var record = JobLines.Record(JobLines.Of(
            "pressure test: {gas: dry nitrogen, section: line set and indoor, tightness: {from: {at: \"08:00\", pressure: 440}, to: {at: \"09:30\", pressure: 440}}}",
            equipment: ", nameplate: {design pressure: {low: 550, high: 550}}"));
        var row = record.Certificate.Rows.Single(r => r.Label == "Test pressure");
        Assert.Null(row.Verdict);
        Assert.Equal("below the usual", row.Word);
        Assert.StartsWith("440", row.Measured, StringComparison.Ordinal);
        Assert.Contains("usual: at least 522.5 psig", row.Limit, StringComparison.Ordinal);
    }
}
