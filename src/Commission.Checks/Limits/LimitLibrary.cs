using System.Collections.Concurrent;
using System.Collections.Immutable;
using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Checks.Limits;

/// <summary>The packs a job may name: those of this program, each read only when it is asked for, and the job's own.</summary>
internal sealed class LimitLibrary
{
    private const string Prefix = "limits/";

    private static readonly ConcurrentDictionary<string, Lazy<LimitPack>> Read = new(StringComparer.Ordinal);

    private static readonly Lazy<ImmutableSortedSet<string>> Names = new(() => typeof(LimitLibrary).Assembly
        .GetManifestResourceNames()
        .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal))
        .Select(name => name[Prefix.Length..])
        .ToImmutableSortedSet(StringComparer.Ordinal));

    private readonly ImmutableSortedDictionary<string, LimitPack> _own;
    private readonly ImmutableSortedDictionary<string, LimitPack> _byFile;

    private LimitLibrary(ImmutableSortedDictionary<string, LimitPack> own, ImmutableSortedDictionary<string, LimitPack> byFile)
    {
        _own = own;
        _byFile = byFile;
    }

    /// <summary>The packs of this program alone.</summary>
    public static LimitLibrary Embedded { get; } = new(
        ImmutableSortedDictionary.Create<string, LimitPack>(StringComparer.Ordinal), ImmutableSortedDictionary.Create<string, LimitPack>(StringComparer.Ordinal));

    /// <summary>Names of the packs of this program, in order.</summary>
    public static IReadOnlyCollection<string> EmbeddedNames => Names.Value;

    /// <summary>The pack of a name, or of the file the job names it by.</summary>
    /// <param name="name">The name or the file, as the job writes it.</param>
    /// <returns>The pack; null when there is none.</returns>
    public LimitPack? Find(string name)
    {
        if (_own.TryGetValue(name, out var own) || _byFile.TryGetValue(name, out own))
            return own;
        return Names.Value.Contains(name) ? Read.GetOrAdd(name, static key => new Lazy<LimitPack>(() => Load(key))).Value : null;
    }

    /// <summary>Whether there is a pack of this name; it is not read.</summary>
    /// <returns>True when <see cref="Find"/> would give it.</returns>
    public bool Contains(string name) => _own.ContainsKey(name) || Names.Value.Contains(name);

    /// <summary>A library that also holds a pack of a job or a maker.</summary>
    /// <param name="text">The text of the pack's file.</param>
    /// <param name="problems">Where faults go.</param>
    /// <param name="pack">The pack, when it could be read.</param>
    /// <returns>The larger library; this one when the pack could not be read, takes a name in use, or builds on a pack that is not there.</returns>
    public LimitLibrary With(SourceText text, ProblemList problems, out LimitPack? pack)
    {
        var before = problems.Count;
        pack = LimitPackReader.Read(text, problems);
        if (pack is null)
            return this;
        if (Contains(pack.Name))
            problems.Add(SourceLocation.WholeFile(text.File), LimitsMessages.NameTaken(new(pack.Name)), null, LimitsMessages.NameTakenNext, "name-taken");
        foreach (var below in pack.BuildsOn.Where(below => !Contains(below.Name)))
        {
            var near = NearestName.Of(below.Name, AllNames());
            problems.Add(
                below.At,
                LimitsMessages.PackMissing(new(below.Name)),
                null,
                near is null ? LimitsMessages.PacksAre(StrictMapping.Names(AllNames())) : LimitsMessages.DidYouMean(new NameValue(near)),
                "unknown-pack",
                below.Name.Length);
        }

        if (problems.Count == before)
            return new LimitLibrary(_own.Add(pack.Name, pack), _byFile.SetItem(text.File, pack));
        pack = null;
        return this;
    }

    /// <summary>A library in which a pack stands in for the one of its name, for trying out what another figure would change.</summary>
    /// <param name="text">The text of the pack.</param>
    internal LimitLibrary InPlace(SourceText text)
    {
        var problems = new ProblemList();
        return LimitPackReader.Read(text, problems, LimitNotes.OfProgram) is { } pack ? new LimitLibrary(_own.SetItem(pack.Name, pack), _byFile) : throw EmbeddedYaml.Fault(text.File, problems);
    }

    /// <summary>Every name that can be found, in order.</summary>
    /// <returns>The names.</returns>
    public IEnumerable<string> AllNames() => Names.Value.Union(_own.Keys);

    private static LimitPack Load(string name)
    {
        var problems = new ProblemList();
        return LimitPackReader.Read(EmbeddedYaml.Text(Prefix + name, problems), problems, LimitNotes.OfProgram) ?? throw EmbeddedYaml.Fault(name, problems);
    }
}

/// <summary>YAML files inside this program. A fault in one of them is a fault of this program and throws.</summary>
internal static class EmbeddedYaml
{
    /// <summary>Reads one file.</summary>
    /// <typeparam name="T">What it becomes.</typeparam>
    /// <param name="resource">Its name.</param>
    /// <param name="read">How its document is read.</param>
    /// <returns>What it became.</returns>
    /// <exception cref="InvalidDataException">The file is missing or has problems.</exception>
    public static T Read<T>(string resource, Func<SourceNode, ProblemList, T?> read)
        where T : class
    {
        var problems = new ProblemList();
        var result = YamlReader.Read(Text(resource, problems), problems) is { } root ? read(root, problems) : null;
        return result is not null && problems.Count == 0 ? result : throw Fault(resource, problems);
    }

    /// <summary>The text of one file.</summary>
    /// <param name="resource">Its name.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The text.</returns>
    /// <exception cref="InvalidDataException">The file is missing or not text.</exception>
    public static SourceText Text(string resource, ProblemList problems)
    {
        using var stream = typeof(EmbeddedYaml).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidDataException($"{resource} is not in this program.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return SourceText.Decode(resource, bytes, problems) ?? throw Fault(resource, problems);
    }

    /// <summary>The exception for a damaged file.</summary>
    /// <param name="resource">Its name.</param>
    /// <param name="problems">What is wrong.</param>
    /// <returns>The exception, to be thrown.</returns>
    public static InvalidDataException Fault(string resource, ProblemList problems) =>
        new($"{resource} inside this program is damaged:{Environment.NewLine}{string.Join(Environment.NewLine, problems.Sorted())}");
}
