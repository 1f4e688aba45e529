using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Fluids.Mixtures;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Recording;

/// <summary>The constants, formulas and equations of state a record rests on, each with its paper.</summary>
internal static class SourceNotes
{
    public static ImmutableArray<SourceNote> Make(CheckContext context, IReadOnlyList<Finding> findings)
    {
        var present = context.Present;
        var notes = ImmutableArray.CreateBuilder<SourceNote>();
        var refrigerant = context.Get<CircuitRefrigerant>();
        if (refrigerant is { IsLoaded: true, Fluid: { } fluid })
        {
            foreach (var paper in fluid.Papers)
                notes.Add(new SourceNote("equation of state", refrigerant.Designation, fluid.IsBlend ? refrigerant.Info!.CompositionText : "", paper.Citation, "published"));
            notes.Add(new SourceNote("constant", present.Text(RecordMessages.NoteGasConstant(new(refrigerant.Designation))), present.Symbols(string.Create(CultureInfo.InvariantCulture, $"{fluid.GasConstant:0.#########} J/(mol·K)")), present.Text(RecordMessages.NoteOfEquation), "published"));
            if (fluid.EstimatedPairs.Length > 0)
                notes.Add(new SourceNote("equation of state", refrigerant.Designation, present.Text(RecordMessages.NoteEstimatedPairs(new ListValue([.. fluid.EstimatedPairs.Select(p => new NameValue(p))], ListJoin.Comma))), present.Text(RecordMessages.NoteNoParameters(new ListValue([.. fluid.CombiningRules.Select(RuleText)]))), "common practice"));
        }

        var made = present.Phrases.Where(p => p.Value is not null).ToDictionary(p => p.Text, p => p.Value, StringComparer.Ordinal);
        foreach (var step in findings.SelectMany(f => f.Trace).Where(s => s.Source.Length > 0).DistinctBy(s => s.Source).OrderBy(s => s.Source, StringComparer.Ordinal))
            notes.Add(new SourceNote("formula", step.Name, step.Formula, step.Source, MarkOf(step.Source)));
        notes.Add(new SourceNote("standard", present.Text(RecordMessages.NoteUncertainty), present.Text(RecordMessages.NoteUncertaintyLaw), "JCGM 100:2008 (GUM), 5.1, G.3 and G.4", "from memory"));
        notes.Add(new SourceNote("standard", present.Text(RecordMessages.NoteConformity), present.Text(RecordMessages.NoteConformityRule), "ILAC-G8:09/2019; JCGM 106:2012, 7 and 8", "from memory"));
        return notes.ToImmutable();

        // A source in words carries its mark as a message; the source of a limit has that of the limit.
        string MarkOf(string source) => context.Limits.MarkOf(source) ?? SourceMarks.Word(SourceMarks.Of(made.GetValueOrDefault(source)));
    }

    private static Message RuleText(CombiningRule rule) => rule switch
    {
        CombiningRule.LorentzBerthelot => RecordMessages.NoteLorentz,
        _ => RecordMessages.NoteRelatedPairs,
    };

}
