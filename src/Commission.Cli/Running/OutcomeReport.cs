using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Cli.Running;

/// <summary>What a person at the tailgate needs to see: the outcome, why, and every check that is not a plain pass.</summary>
internal static class OutcomeReport
{
    private const int LabelWidth = 17;
    private const int MostReadings = 5;

    public static void Write(CommissioningRecord record, TextWriter output)
    {
        output.WriteLine($"{record.Header.Id}: {RecordWords.Text(RecordWords.Of(record.Outcome), Language.English)}");
        if (record.Diagnosis is { } diagnosis)
            Write(diagnosis, output);
        foreach (var reason in record.Reasons)
            output.WriteLine($"  - {reason}");
        var passes = record.Findings.Count(f => f.Verdict is Verdict.Pass or Verdict.PassWithinUncertainty);
        var notes = record.Findings.Count(f => f.Verdict == Verdict.Information);
        var told = record.Findings.Where(IsTold).ToList();
        foreach (var finding in told)
            Write(finding, output);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {passes} passed, {notes} for information, {told.Count} listed above."));
    }

    // The running circuit in a few lines: figures against what they should be, one diagnosis, what to do.
    private static void Write(Diagnosis diagnosis, TextWriter output)
    {
        foreach (var reading in diagnosis.Readings.Where(r => r.Expected.Length > 0).Take(MostReadings))
            output.WriteLine($"  {reading.Name}: {reading.Text} ({reading.Expected}){(reading.PlaceText.Length == 0 ? "" : $" - {reading.PlaceText}")}");
        output.WriteLine($"  Diagnosis at {diagnosis.At}: {diagnosis.Sentence}");
        if (diagnosis.NextStep.Length > 0)
            output.WriteLine($"  Next: {diagnosis.NextStep}");
    }

    // What is no plain pass; and what the record itself shows of copied, constant or impossible readings, where somebody has to look.
    private static bool IsTold(Finding finding) => finding.Verdict switch
    {
        Verdict.Pass or Verdict.PassWithinUncertainty => false,
        Verdict.Information => finding.IsToLookAt,
        _ => finding.Check != Diagnosis.Check,
    };

    private static void Write(Finding finding, TextWriter output)
    {
        var name = finding.Subject is null ? finding.Title : $"{finding.Title} ({finding.Subject})";
        var number = finding.Measured is { } measured ? $"{measured.Text}" : "";
        var limit = finding.Limits.Length > 0 && finding.Verdict != Verdict.NotEvaluated ? $"limit {finding.Limits[0].Text}" : "";
        var chance = finding.ConformityText is { } p ? $"conforms with {p}" : "";
        var facts = string.Join(", ", new[] { number, limit, chance }.Where(t => t.Length > 0));
        output.WriteLine($"  {Word(finding.Verdict).PadRight(LabelWidth)} {name}{(facts.Length > 0 ? ": " + facts : "")}");
        var why = finding.Verdict is Verdict.NotEvaluated or Verdict.CannotDecide ? finding.Reason : finding.Reservation ?? finding.Statement;
        if (!string.IsNullOrEmpty(why))
            output.WriteLine($"  {"",LabelWidth} {why}");
        // What nobody required and nobody wrote down needs no advice at the tailgate; the record has it.
        if (finding.NextStep is { } next && (finding.Verdict != Verdict.NotEvaluated || finding.Required || finding.IsTakenBack))
        {
            output.WriteLine($"  {"",LabelWidth} Next: {next}");
            if (finding.InFile is { } written)
                output.WriteLine($"  {"",LabelWidth} In the file: {written}");
        }
    }

    // A failure stands out without colour, too.
    private static string Word(Verdict verdict)
    {
        var word = RecordWords.Text(RecordWords.Of(verdict), Language.English);
        return verdict == Verdict.Fail ? word.ToUpperInvariant() : word;
    }
}
