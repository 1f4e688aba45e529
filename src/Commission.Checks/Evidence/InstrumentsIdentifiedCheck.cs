using System.Globalization;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Commission.Source;

namespace Commission.Checks.Evidence;

/// <summary>Whether every reading that was judged names the instrument it was read on.</summary>
internal sealed class InstrumentsIdentifiedCheck : IReviewCheck
{
    public string Id => "evidence.instruments-identified";

    public string Phase => Phases.Evidence;

    public string Title => "Instruments identified";

    public CheckHelp Help { get; } = new(
        "Can each judged reading be traced to an instrument? Without one nothing is known of its error, and its U is too small.",
        "for each finding with a verdict: every reading taken on an instrument names one",
        "ISO/IEC 17025 asks for the equipment used (from memory); the field's habit follows it.",
        "Name the instrument once, with reads: [vapor pressure, …], or in the phase with: high.");

    public IEnumerable<Finding> Review(CheckContext context, IReadOnlyList<Finding> findings)
    {
        var byPlace = new Dictionary<SourceLocation, HandReading>();
        foreach (var reading in context.Get<HandReadings>().All)
            byPlace.TryAdd(reading.At, reading);
        if (byPlace.Count == 0)
            yield break;
        var judged = new HashSet<SourceLocation>();
        var without = new SortedDictionary<SourceLocation, ReadingUse>();
        foreach (var finding in findings.Where(f => f.Verdict is not (Verdict.NotEvaluated or Verdict.Information) && f.Phase is not (Phases.Instruments or Phases.Evidence)))
        {
            foreach (var use in finding.Readings.Where(r => byPlace.ContainsKey(r.At)))
            {
                judged.Add(use.At);
                if (use.Instrument is null)
                    without.TryAdd(use.At, use);
            }
        }

        // The same place may be named with its instrument by one check and without by another.
        var named = findings.SelectMany(f => f.Readings).Where(r => r.Instrument is not null).Select(r => r.At).ToHashSet();
        foreach (var place in without.Keys.Where(named.Contains).ToList())
            without.Remove(place);
        var finished = context.Finding(this);
        foreach (var place in judged.Order())
            finished.Use(byPlace[place].Use(null));
        if (judged.Count == 0)
            yield break;
        yield return without.Count == 0
            ? finished.Decide(true).Say(string.Create(CultureInfo.InvariantCulture, $"All {judged.Count} judged readings name their instrument.")).Build()
            : finished.Decide(true).Reserve("some judged readings name no instrument").Next(Help.WhenItFails)
                .Say(string.Create(CultureInfo.InvariantCulture, $"{without.Count} of {judged.Count} judged readings name no instrument: {string.Join(", ", without.Keys.Select(p => byPlace[p].Series).Distinct(StringComparer.Ordinal))}.")).Build();
    }
}
