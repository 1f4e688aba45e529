using Commission.Jobs.Problems;
using Commission.Jobs.Schema;
using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Jobs;

/// <summary>
/// Puts what a kit file holds in the place where the job names it: its instruments with today's checks, its people.
/// Every value keeps the place where it was written.
/// </summary>
internal sealed class KitExpansion(JobFiles files, ProblemList problems, HashSet<SourceNode> rejected)
{
    private readonly Dictionary<string, SourceMapping?> _kits = new(StringComparer.Ordinal);

    /// <summary>The <c>units</c> of each kit file that was read.</summary>
    public Dictionary<string, SourceNode?> UnitsByFile { get; } = new(StringComparer.Ordinal);

    public SourceMapping Expand(SourceMapping root)
    {
        var entries = root.Entries.Select(entry => entry switch
        {
            { Key.Text: "instruments", Value: SourceMapping use } when !rejected.Contains(use) => entry with { Value = Instruments(use) },
            { Key.Text: "job", Value: SourceMapping job } when !rejected.Contains(job) => entry with { Value = WithPeople(job) },
            _ => entry,
        });
        SourceEntry[] expanded = [.. entries];
        if (_kits.Values.Select(kit => kit?.Find("language")).OfType<SourceEntry>().FirstOrDefault(e => !rejected.Contains(e.Value)) is { } language)
            expanded = [.. expanded.Select(e => e is { Key.Text: "job", Value: SourceMapping job } && job.Find("language") is null ? e with { Value = new SourceMapping(job.Location, job.Length, [.. job.Entries, language], job.IsFlow) } : e)];
        return new SourceMapping(root.Location, root.Length, expanded, root.IsFlow);
    }

    private SourceSequence Instruments(SourceMapping use)
    {
        var items = new List<SourceNode>();
        var today = use.Find("today")?.Value as SourceMapping;
        if (NamedKit(use) is { } kit)
        {
            var known = new List<string>();
            foreach (var item in (kit.Find("instruments")?.Value as SourceSequence)?.Items ?? [])
            {
                if (item is SourceMapping instrument && !rejected.Contains(item) && (instrument.Find("id")?.Value as SourceScalar)?.Text is { } id)
                {
                    known.Add(id);
                    items.Add(today?.Find(id)?.Value is SourceMapping checks && !rejected.Contains(checks) ? WithChecks(instrument, checks) : instrument);
                }
                else
                {
                    items.Add(item);
                }
            }

            foreach (var entry in today?.Entries ?? [])
            {
                if (known.Contains(entry.Key.Text))
                    continue;
                var nearest = NearestName.Of(entry.Key.Text, known);
                var advice = nearest is not null ? ValueText.DidYouMean(nearest) : known.Count == 0 ? JobMessages.KitEmpty : JobMessages.KitInstruments(ValueText.AnyOf(known));
                problems.Add(entry.Key.Location, JobMessages.NotInKit(ValueText.Short(entry.Key.Text)), null, advice, "unknown-instrument", entry.Key.Length);
            }
        }

        if (use.Find("also")?.Value is SourceSequence also && !rejected.Contains(also))
            items.AddRange(also.Items);
        return new SourceSequence(use.Location, use.Length, items);
    }

    private static SourceMapping WithChecks(SourceMapping instrument, SourceMapping today)
    {
        var old = instrument.Find("checks")?.Value as SourceMapping;
        var checks = new SourceMapping(today.Location, today.Length,
            [.. today.Entries, .. (old?.Entries ?? []).Where(e => today.Find(e.Key.Text) is null)], today.IsFlow);
        var key = instrument.Find("checks")?.Key ?? new SourceScalar(today.Location, today.Length, "checks", false);
        return new SourceMapping(instrument.Location, instrument.Length,
            [.. instrument.Entries.Where(e => e.Key.Text != "checks"), new SourceEntry(key, checks)], instrument.IsFlow);
    }

    private SourceMapping WithPeople(SourceMapping job)
    {
        if (job.Find("people")?.Value is not SourceMapping people || rejected.Contains(people) || people.Find("kit") is null)
            return job;
        if (NamedKit(people)?.Find("people")?.Value is not SourceMapping company || rejected.Contains(company))
            return job;
        var written = people.Entries.Select(e => Canonical(e.Key.Text)).ToHashSet(StringComparer.Ordinal);
        var merged = new SourceMapping(people.Location, people.Length,
            [.. people.Entries, .. company.Entries.Where(e => !written.Contains(Canonical(e.Key.Text)))], people.IsFlow);
        return new SourceMapping(job.Location, job.Length,
            [.. job.Entries.Select(e => e.Key.Text == "people" ? e with { Value = merged } : e)], job.IsFlow);
    }

    private static string Canonical(string key) =>
        JobSchema.TryProperty(JobSchema.Instance.Definitions.GetProperty("People"), key, out var property) && JobSchema.Text(property, "x-alias-of") is { } canonical ? canonical : key;

    private SourceMapping? NamedKit(SourceMapping use)
    {
        if (use.Find("kit")?.Value is not SourceScalar name || rejected.Contains(name))
            return null;
        if (_kits.TryGetValue(name.Text, out var known))
            return known;
        return _kits[name.Text] = Read(name);
    }

    private SourceMapping? Read(SourceScalar name)
    {
        if (files.Text(name, JobFileRole.Kit) is not { } text || YamlReader.Read(text, problems) is not { } root)
            return null;
        if (root is not SourceMapping kit)
        {
            problems.Add(root.Location, JobMessages.NotAKitFile, JobMessages.NotAKitFileExpected, JobMessages.NotAKitFileNext(new("kit: 1")), "wrong-type", root.Length);
            return null;
        }

        SchemaCheck.Kit(kit, problems, rejected);
        UnitsByFile[text.File] = kit.Find("units")?.Value;
        return kit;
    }
}
