using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Recording;
using Commission.Jobs.Model;
using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Sheets;

/// <summary>The page of one check: what it asks and whose limits it uses; with a job, its numbers step by step and the uncertainty budget.</summary>
public static class ExplanationSheets
{
    /// <summary>The page without a job.</summary>
    /// <param name="check">The check.</param>
    /// <param name="units">Units of the limits.</param>
    /// <param name="language">The language of the page.</param>
    public static Sheet Of(ICheck check, UnitSystem units, Language language)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(units);
        string Text(Message message) => RecordWords.Text(message, language);
        return new Sheet(
            Text(SheetsMessages.TitleOfCheck(new(check.Id), check.Title())),
            [
                SheetPart.Lines(Text(SheetsMessages.Asks), Text(check.HelpWhat())),
                SheetPart.Lines(Text(SheetsMessages.Formula), Text(check.HelpFormula())),
                SheetPart.Lines(Text(SheetsMessages.Source), Text(check.HelpSource())),
                SheetPart.Lines(Text(SheetsMessages.WhenItFails), Text(check.WhenItFails())),
                Packs(check, units, language),
            ]);
    }

    /// <summary>The page with a job: every finding of the check.</summary>
    /// <param name="check">The check.</param>
    /// <param name="job">The job.</param>
    /// <param name="settings">What the evaluation needs beyond the job.</param>
    /// <param name="trials">Monte Carlo trials beside the linear result; 0 for none.</param>
    /// <param name="language">The language of the page.</param>
    public static Sheet With(ICheck check, Job job, CheckSettings settings, int trials, Language language)
    {
        ArgumentNullException.ThrowIfNull(check);
        var context = new CheckContext(job, settings);
        var findings = RecordBuilder.Evaluate(context).Where(f => f.Check == check.Id).ToList();
        var page = Of(check, context.Present.Units, language);
        var parts = page.Parts.ToBuilder();
        if (findings.Count == 0)
            parts.Add(SheetPart.Lines(RecordWords.Text(SheetsMessages.InThisJob, language), RecordWords.Text(SheetsMessages.NothingInThisJob, language)));
        var simulated = trials > 0 ? Simulate(check, job, settings, trials) : [];
        var writer = new FindingParts(language);
        foreach (var finding in findings)
            parts.AddRange(writer.Of(finding, simulated.GetValueOrDefault(finding.Subject ?? "")));
        return page with { Parts = parts.ToImmutable() };
    }

    private static SheetPart Packs(ICheck check, UnitSystem units, Language language)
    {
        string Text(Message message) => RecordWords.Text(message, language);

        // Limits are named after the check they serve, or after a part of it: charge.superheat, charge.superheat.tolerance.
        var prefix = check.Id.Replace("instrument.", "instruments.", StringComparison.Ordinal);
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        foreach (var name in LimitLibrary.EmbeddedNames)
        {
            foreach (var row in LimitSheets.Rows(LimitLibrary.Embedded.Find(name)!, units, language).Where(r => r[0] == prefix || r[0].StartsWith(prefix + ".", StringComparison.Ordinal)))
                rows.Add([name, row[0], row[1], row[2], row[4]]);
        }

        return rows.Count == 0
            ? SheetPart.Lines(Text(SheetsMessages.LimitsByPack), Text(SheetsMessages.LimitsElsewhere))
            : new SheetPart(
                Text(SheetsMessages.LimitsByPack),
                [Text(SheetsMessages.ColumnPack), Text(SheetsMessages.ColumnLimit), Text(SheetsMessages.ColumnFigure), Text(SheetsMessages.ColumnWhen), Text(SheetsMessages.ColumnSource)],
                rows.ToImmutable());
    }

    private static Dictionary<string, Trials> Simulate(ICheck check, Job job, CheckSettings settings, int trials)
    {
        // A fixed seed: the same job gives the same page.
        var scope = new SamplingScope(new Random(20260101));
        var values = new Dictionary<string, Trials>(StringComparer.Ordinal);
        for (var i = 0; i < trials; i++)
        {
            scope.NextTrial();
            var context = new CheckContext(job, settings with { Scope = scope });
            foreach (var finding in check.Evaluate(context).Where(f => f.Measured is not null))
            {
                if (!values.TryGetValue(finding.Subject ?? "", out var drawn))
                    values.Add(finding.Subject ?? "", drawn = new Trials(new(trials), new(trials)));
                drawn.Measured.Add(finding.Measured!.Value.Si);
                if (finding.Distance is { } distance)
                    drawn.Distances.Add(distance.Value);
            }
        }

        return values;
    }
}

/// <summary>What a Monte Carlo run drew of one finding, SI.</summary>
/// <param name="Measured">The number, one for each trial.</param>
/// <param name="Distances">Its distance to a target that moves; empty where there is none.</param>
internal sealed record Trials(List<double> Measured, List<double> Distances);

/// <summary>The parts of a page that show one finding.</summary>
/// <param name="language">The language of the page.</param>
internal sealed class FindingParts(Language language)
{
    /// <summary>The parts: its sentences, its steps, its budget, its readings.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="trials">What a Monte Carlo run drew of it; null for none.</param>
    public IEnumerable<SheetPart> Of(Finding finding, Trials? trials)
    {
        yield return SheetPart.Lines(
            Text(finding.Subject is { } subject ? SheetsMessages.InThisJobSubject(new(subject)) : SheetsMessages.InThisJob),
            [finding.Statement,
            finding.Measured is { } m ? Text(m.CoverageText is { } c ? SheetsMessages.MeasuredWithCoverage(new(m.Text), new(c)) : SheetsMessages.Measured(new(m.Text))) : null,
            .. finding.Limits.Select(l => Text(SheetsMessages.Limit(
                new(l.Text), RecordWords.Whose(l), new(l.Source), RecordWords.Mark(l.Mark), l.Rule == DecisionRule.Simple ? SheetsMessages.LimitRule.Simple : SheetsMessages.LimitRule.Guarded))),
            Text(SheetsMessages.Verdict(RecordWords.Of(finding.Verdict))),
            finding.ConformityText is { } p ? Text(SheetsMessages.Conformity(new(p))) : null,
            finding.AdequacyText is { } a ? Text(SheetsMessages.Adequacy(new(a))) : null,
            finding.Reservation is { } r ? Text(SheetsMessages.Reservation(new(r))) : null,
            finding.Reason is { } why ? Text(SheetsMessages.Reason(new(why))) : null,
            .. finding.NextStep is { } next ? StepLines.Of(Text(SheetsMessages.Next), next) : []]);
        if (!finding.Trace.IsEmpty)
        {
            yield return new SheetPart(
                Text(SheetsMessages.Steps), ["", "", Text(SheetsMessages.StepsValues), Text(SheetsMessages.StepsResult), Text(SheetsMessages.StepsSource)],
                [.. finding.Trace.Select(s => ImmutableArray.Create(Text(SheetsMessages.StepName(new(s.Symbol), new(s.Name))), s.Formula, s.Substitution, s.Result, s.Source))]);
        }

        if (!finding.Budget.IsEmpty)
        {
            yield return new SheetPart(
                Text(SheetsMessages.Budget),
                [Text(SheetsMessages.BudgetCause), "u", Text(SheetsMessages.BudgetDistribution), Text(SheetsMessages.BudgetSensitivity), Text(SheetsMessages.BudgetShare), Text(SheetsMessages.ColumnSource)],
                [.. finding.Budget.Select(b => ImmutableArray.Create(b.Cause, b.StandardUncertainty, b.Distribution, b.Sensitivity, b.ShareText, b.Source))]);
        }

        foreach (var part in trials is null ? [] : MonteCarlo(finding, trials))
            yield return part;
        if (!finding.Readings.IsEmpty)
        {
            yield return new SheetPart(
                Text(SheetsMessages.Readings),
                [Text(SheetsMessages.ReadingsName), Text(SheetsMessages.ReadingsWritten), Text(SheetsMessages.ReadingsPlace), Text(SheetsMessages.ReadingsInstrument)],
                [.. finding.Readings.Select(x => ImmutableArray.Create(x.Name, x.Text, x.At.ToString(), x.Instrument ?? ""))]);
        }
    }

    // The number, and where a target moves with readings of its own, the distance to it: that is what the verdict rests on.
    private IEnumerable<SheetPart> MonteCarlo(Finding finding, Trials trials)
    {
        if (finding.Measured is { StandardUncertaintySi: { } u } measured && trials.Measured.Count > 1)
        {
            foreach (var part in Compared(SheetsMessages.MonteCarlo(trials.Measured.Count), (measured.Value.Si, u, measured.ExpandedSi!.Value), Spread(measured.DegreesOfFreedom), trials.Measured))
                yield return part;
        }

        if (finding.Distance is { } distance && trials.Distances.Count > 1)
        {
            foreach (var part in Compared(SheetsMessages.MonteCarloDistance(trials.Distances.Count), (distance.Value, distance.StandardUncertainty, distance.Expanded), Spread(distance.DegreesOfFreedom), trials.Distances))
                yield return part;
        }

        static double Spread(double? freedom) => freedom is { } nu and > 2 && double.IsFinite(nu) ? Math.Sqrt(nu / (nu - 2)) : 1;
    }

    private IEnumerable<SheetPart> Compared(Message title, (double Value, double U, double Expanded) linear, double spread, List<double> values)
    {
        var result = MonteCarloResult.Of(values);
        var compared = MonteCarloComparison.Of(linear, spread, result, digits: 1);
        string G(double x) => language.Number(x.ToString("G6", CultureInfo.InvariantCulture));
        yield return new SheetPart(
            Text(title),
            ["", Text(SheetsMessages.MonteCarloEstimate), "u", Text(SheetsMessages.MonteCarloFrom), Text(SheetsMessages.MonteCarloTo)],
            [
                [Text(SheetsMessages.MonteCarloLinear), G(linear.Value), G(linear.U), G(compared.LinearInterval.Low), G(compared.LinearInterval.High)],
                [Text(SheetsMessages.MonteCarloSampled), G(result.Mean), G(result.StandardUncertainty), G(compared.SampledInterval.Low), G(compared.SampledInterval.High)],
                [Text(SheetsMessages.MonteCarloDifference), G(compared.EstimateDifference), G(result.StandardUncertainty - linear.U), G(compared.SampledInterval.Low - compared.LinearInterval.Low), G(compared.SampledInterval.High - compared.LinearInterval.High)],
            ]);
        yield return SheetPart.Lines(
            "",
            Text(SheetsMessages.MonteCarloCompared(compared.AgreesAfter(values.Count) ? SheetsMessages.MonteCarloComparedAgrees.Yes : SheetsMessages.MonteCarloComparedAgrees.No, new(G(compared.Tolerance)))),
            Text(SheetsMessages.MonteCarloEnds));
    }

    private string Text(Message message) => RecordWords.Text(message, language);
}
