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
    private readonly Language _language;

    // A step is told once.
    private readonly HashSet<string> _told = new(StringComparer.Ordinal);

    private readonly bool _isDiagnosed;

    private OutcomeReport(CommissioningRecord record, TextWriter output)
    {
        _record = record;
        _isDiagnosed = record.Findings.Any(f => f is { Check: Diagnosis.Check, Verdict: Verdict.Fail });
        _output = output;
        _language = Language.Find(record.Language) ?? Language.English;
    }

    /// <summary>Writes the report.</summary>
    /// <param name="record">The record.</param>
    /// <param name="output">Where it goes.</param>
    public static void Write(CommissioningRecord record, TextWriter output) => new OutcomeReport(record, output).Write();

    private void Write()
    {
        var (record, output) = (_record, _output);
        output.WriteLine(Say(ReportMessages.Outcome(new(record.Header.Id), RecordWords.Of(record.Outcome))));
        if (record.FirstStep is { } first)
        {
            _told.Add(first.Text);
            Steps("  ", record.Outcome == Outcome.Accepted ? PagesMessages.WorthALook : PagesMessages.DoFirst, first.Text);
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
        Section(PagesMessages.Failed, findings.Where(f => f.Verdict == Verdict.Fail));
        if (record.Missing.Length > 0)
        {
            output.WriteLine("  " + Say(PagesMessages.Missing));
            foreach (var part in record.Missing)
            {
                output.WriteLine($"{Indent}{part.Brief}");
                Advice(part.NextStep, part.InFile);
            }
        }

        Section(ReportMessages.CouldNotBeDecided, findings.Where(f => f.Verdict == Verdict.CannotDecide && !IsMissing(f)));
        Section(ReportMessages.Conditions, findings.Where(f => f.Verdict == Verdict.Conditional));
        foreach (var item in record.Conditions.Where(c => c.Finding is null))
            output.WriteLine("  " + Say(ReportMessages.StillToBeDone(new(item.Text))));
        Section(ReportMessages.ToLookAt, findings.Where(f => f is { Verdict: Verdict.Information, IsToLookAt: true }));
        var passes = findings.Count(f => f.Verdict is Verdict.Pass or Verdict.PassWithinUncertainty);
        var notes = findings.Count(f => f is { Verdict: Verdict.Information, IsToLookAt: false });
        output.WriteLine("  " + Say(ReportMessages.Counted(passes, notes)));
        var unasked = findings.Where(f => f.Verdict == Verdict.NotEvaluated && !IsMissing(f)).Select(f => f.Title).Distinct().ToList();
        if (unasked.Count > 0)
        {
            var named = new ListValue([.. unasked.Take(MostUnasked).Select(t => new TextValue(t))], ListJoin.Comma);
            output.WriteLine("  " + Say(unasked.Count > MostUnasked ? ReportMessages.NotJudgedAndMore(named, unasked.Count - MostUnasked) : ReportMessages.NotJudged(named)));
        }
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
        _output.WriteLine("  " + Say(ReportMessages.Diagnosis(new(diagnosis.At), new(diagnosis.Sentence))));
        // What an earlier step has to prove first comes first.
        if (diagnosis.NextStep.Length > 0 && _isDiagnosed && _told.Add(diagnosis.NextStep))
            Steps("  ", ReportMessages.Then, diagnosis.NextStep);
    }

    private string Say(Message message) => RecordWords.Text(message, _language);

    private void Steps(string indent, Message lead, string text)
    {
        foreach (var line in StepLines.Of(indent + Say(lead), text))
            _output.WriteLine(line);
    }

    private bool IsMissing(Finding finding) => _record.Missing.Any(m => m.Checks.Contains(finding.Check));

    private void Section(Message title, IEnumerable<Finding> findings)
    {
        var told = findings.ToList();
        if (told.Count > 0)
            _output.WriteLine("  " + Say(title));
        foreach (var finding in told)
            Write(finding);
    }

    private void Write(Finding finding)
    {
        var name = finding.Subject is null ? finding.Title : $"{finding.Title} ({finding.Subject})";
        // What only has to be looked at is told in its sentence.
        var number = finding is { Verdict: not Verdict.Information, Measured: { } measured } ? measured.Text : "";
        var limit = finding.Limits.Length > 0 ? Say(ReportMessages.Limit(new(finding.Limits[0].Text))) : "";
        var chance = finding is { Verdict: Verdict.Conditional, ConformityText: { } p } ? Say(ReportMessages.Sure(new(p))) : "";
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
            Steps(Indent + Indent, ReportMessages.Next, next);
        if (inFile is not null)
            _output.WriteLine(Indent + Indent + Say(ReportMessages.InFile(new(inFile))));
    }
}
