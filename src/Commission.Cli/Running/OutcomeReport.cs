using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Sheets;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Cli.Running;

/// <summary>
/// What a person at the tailgate needs to see: the outcome, the one thing to do first, the running circuit with its diagnosis, then what failed, what is
/// missing, what is conditional and what somebody has to look at. What nobody asked for and nothing could be said of is named in one line.
/// </summary>
internal sealed class OutcomeReport
{
    private const string Indent = "    ";
    private const int MostReadings = 5;
    private const int MostUnasked = 6;
    private readonly CommissioningRecord _record;
    private readonly TextWriter _output;

    // A step is told once.
    private readonly HashSet<string> _told = new(StringComparer.Ordinal);

    private readonly bool _isDiagnosed;

    private OutcomeReport(CommissioningRecord record, TextWriter output)
    {
        _record = record;
        _isDiagnosed = record.Findings.Any(f => f is { Check: Diagnosis.Check, Verdict: Verdict.Fail });
        _output = output;
    }

    /// <summary>Writes the report.</summary>
    /// <param name="record">The record.</param>
    /// <param name="output">Where it goes.</param>
    public static void Write(CommissioningRecord record, TextWriter output) => new OutcomeReport(record, output).Write();

    private void Write()
    {
        var (record, output) = (_record, _output);
        output.WriteLine($"{record.Header.Id}: {RecordWords.Text(RecordWords.Of(record.Outcome), Language.English)}");
        if (record.FirstStep is { } first)
        {
            _told.Add(first.Text);
            Steps(record.Outcome == Outcome.Accepted ? "  Worth a look" : "  Do first", first.Text);
        }

        // What fails or is conditional is told below with its reason.
        string[] beforeRunning = [Phases.PressureTest, Phases.Evacuation, Phases.Charge];
        var figures = record.Findings.Where(f => record.KeyFigures.Contains(f.Number) && f.Verdict is Verdict.Pass or Verdict.PassWithinUncertainty or Verdict.Information).ToLookup(f => beforeRunning.Contains(f.Phase));
        foreach (var finding in figures[true])
            WriteFigure(finding);
        if (record.Diagnosis is { } diagnosis)
            Write(diagnosis);
        foreach (var finding in figures[false])
            WriteFigure(finding);
        var findings = record.Findings.Where(f => f.Check != Diagnosis.Check).ToList();
        Section("Failed", findings.Where(f => f.Verdict == Verdict.Fail));
        if (record.Missing.Length > 0)
        {
            output.WriteLine("  Missing");
            foreach (var part in record.Missing)
            {
                output.WriteLine($"{Indent}{part.Brief}");
                Advice(part.NextStep, part.InFile);
            }
        }

        Section("Could not be decided", findings.Where(f => f.Verdict == Verdict.CannotDecide && !IsMissing(f)));
        Section("Conditions", findings.Where(f => f.Verdict == Verdict.Conditional));
        foreach (var item in record.Conditions.Where(c => c.Finding is null))
            output.WriteLine($"  Still to be done: {item.Text}");
        Section("To look at", findings.Where(f => f is { Verdict: Verdict.Information, IsToLookAt: true }));
        var passes = findings.Count(f => f.Verdict is Verdict.Pass or Verdict.PassWithinUncertainty);
        var notes = findings.Count(f => f is { Verdict: Verdict.Information, IsToLookAt: false });
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {passes} checks passed, {notes} for information."));
        var unasked = findings.Where(f => f.Verdict == Verdict.NotEvaluated && !IsMissing(f)).Select(f => f.Title).Distinct().ToList();
        if (unasked.Count > 0)
            output.WriteLine($"  Not asked for here, and not judged: {string.Join(", ", unasked.Take(MostUnasked))}{(unasked.Count > MostUnasked ? string.Create(CultureInfo.InvariantCulture, $" and {unasked.Count - MostUnasked} more") : "")}.");
    }

    private void WriteFigure(Finding finding)
    {
        var asked = finding.Limits.Length > 0 ? $" ({finding.Limits[0].Text}, {finding.Limits[0].Whose})" : "";
        _output.WriteLine($"  {InSentence(finding.Title)}{(finding.Subject is { } subject ? $", {subject}" : "")}: {finding.Measured!.Text}{asked}");
    }

    private static string InSentence(string title) => char.ToLowerInvariant(title[0]) + title[1..];

    // The running circuit in a few lines: figures against what they should be, one diagnosis, what to do.
    private void Write(Diagnosis diagnosis)
    {
        foreach (var reading in diagnosis.Readings.Where(r => r.Expected.Length > 0).Take(MostReadings))
            _output.WriteLine($"  {reading.Name}: {reading.Text} ({reading.Expected}){(reading.PlaceText.Length == 0 ? "" : $" - {reading.PlaceText}")}");
        _output.WriteLine($"  Diagnosis at {diagnosis.At}: {diagnosis.Sentence}");
        // What an earlier step has to prove first comes first.
        if (diagnosis.NextStep.Length > 0 && _isDiagnosed && _told.Add(diagnosis.NextStep))
            Steps("  Then", diagnosis.NextStep);
    }

    private void Steps(string lead, string text)
    {
        foreach (var line in StepLines.Of(lead, text))
            _output.WriteLine(line);
    }

    private bool IsMissing(Finding finding) => _record.Missing.Any(m => m.Checks.Contains(finding.Check));

    private void Section(string title, IEnumerable<Finding> findings)
    {
        var told = findings.ToList();
        if (told.Count > 0)
            _output.WriteLine($"  {title}");
        foreach (var finding in told)
            Write(finding);
    }

    private void Write(Finding finding)
    {
        var name = finding.Subject is null ? finding.Title : $"{finding.Title} ({finding.Subject})";
        // What only has to be looked at is told in its sentence.
        var number = finding is { Verdict: not Verdict.Information, Measured: { } measured } ? measured.Text : "";
        var limit = finding.Limits.Length > 0 ? $"limit {finding.Limits[0].Text}" : "";
        var chance = finding is { Verdict: Verdict.Conditional, ConformityText: { } p } ? $"{p} sure to be within it" : "";
        var facts = string.Join(", ", new[] { number, limit, chance }.Where(t => t.Length > 0));
        _output.WriteLine($"{Indent}{name}{(facts.Length > 0 ? ": " + facts : "")}");
        var why = finding.Verdict is Verdict.CannotDecide ? finding.Reason : finding.Reservation ?? finding.Statement;
        if (!string.IsNullOrEmpty(why))
            _output.WriteLine($"{Indent}{Indent}{why}");
        // The diagnosis speaks for all the readings of the charge.
        if (finding.Phase != Phases.Charge || !_isDiagnosed)
            Advice(finding.Number == _record.FirstStep?.Finding ? null : finding.NextStep, finding.InFile);
    }

    private void Advice(string? next, string? inFile)
    {
        if (next is not null && _told.Add(next))
            Steps($"{Indent}{Indent}Next", next);
        if (inFile is not null)
            _output.WriteLine($"{Indent}{Indent}In the file: {inFile}");
    }
}
