using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Readings;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Recording;

/// <summary>The constants, formulas and equations of state a record rests on, each with its paper.</summary>
internal static class SourceNotes
{
    public static ImmutableArray<SourceNote> Make(CheckContext context, IReadOnlyList<Finding> findings)
    {
        var notes = ImmutableArray.CreateBuilder<SourceNote>();
        var refrigerant = context.Get<CircuitRefrigerant>();
        if (refrigerant is { IsLoaded: true, Fluid: { } fluid })
        {
            foreach (var paper in fluid.Papers)
                notes.Add(new SourceNote("equation of state", refrigerant.Designation, fluid.IsBlend ? refrigerant.Info!.CompositionText : "", paper.Citation, "published"));
            notes.Add(new SourceNote("constant", $"{refrigerant.Designation}: gas constant used", string.Create(CultureInfo.InvariantCulture, $"{fluid.GasConstant:0.#########} J/(mol·K)"), "of the equation of state above", "published"));
            if (fluid.EstimatedPairs.Length > 0)
                notes.Add(new SourceNote("equation of state", refrigerant.Designation, $"estimated pairs: {string.Join(", ", fluid.EstimatedPairs)}", "no published parameters for these pairs: Lorentz–Berthelot combination; the uncertainty is widened", "common practice"));
        }

        foreach (var step in findings.SelectMany(f => f.Trace).Where(s => s.Source.Length > 0).DistinctBy(s => s.Source).OrderBy(s => s.Source, StringComparer.Ordinal))
            notes.Add(new SourceNote("formula", step.Name, step.Formula, step.Source, MarkOf(step.Source)));
        notes.Add(new SourceNote("standard", "uncertainty", "law of propagation, k = t95.45(ν)", "JCGM 100:2008 (GUM), 5.1, G.3 and G.4", "from memory"));
        notes.Add(new SourceNote("standard", "statements of conformity", "guarded acceptance w = U; probability of conformity", "ILAC-G8:09/2019; JCGM 106:2012, 7 and 8", "from memory"));
        return notes.ToImmutable();
    }

    private static string MarkOf(string source) =>
        source.Contains("common practice", StringComparison.OrdinalIgnoreCase) ? "common practice"
        : source.Contains("from memory", StringComparison.OrdinalIgnoreCase) ? "from memory"
        : "published";
}
