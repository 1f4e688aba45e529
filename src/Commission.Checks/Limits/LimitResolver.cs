using System.Collections.Concurrent;
using System.Collections.Immutable;
using Commission.Jobs.Model;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Chosen = Commission.Jobs.Model.Given<Commission.Jobs.Model.Words.DecisionRule>;

namespace Commission.Checks.Limits;

/// <summary>
/// Finds the limit that applies: the maker's figure of the job, else the named packs in their order, else common practice. Packs are
/// read as far as they are needed. Safe to use from several threads.
/// </summary>
internal sealed class LimitResolver
{
    private readonly PackChain _chain;
    private readonly ImmutableDictionary<string, MakerFigure> _maker;
    private readonly DecisionRuleChoice _rules;
    private readonly Func<Message, string> _words;

    // Marks of the sources of every limit that was found, by the text of the source.
    private readonly ConcurrentDictionary<string, string> _marks;

    /// <summary>Makes a resolver.</summary>
    /// <param name="library">Where packs come from.</param>
    /// <param name="packs">Names or files of the packs the job asks for, in order; each has to be in the library.</param>
    /// <param name="maker">Figures of the job by limit id.</param>
    /// <param name="situation">What is known of the job.</param>
    /// <param name="rules">Where the job asks for a guarded decision.</param>
    /// <param name="words">The text of a source in words; null for English.</param>
    public LimitResolver(
        LimitLibrary library,
        IEnumerable<string> packs,
        ImmutableDictionary<string, MakerFigure> maker,
        LimitSituation situation,
        DecisionRuleChoice rules,
        Func<Message, string>? words = null)
        : this(new PackChain(library.Find, packs), maker, situation, rules, words ?? (message => MessageWriter.Words.Format(message, Language.English)), new(StringComparer.Ordinal))
    {
    }

    private LimitResolver(
        PackChain chain, ImmutableDictionary<string, MakerFigure> maker, LimitSituation situation, DecisionRuleChoice rules, Func<Message, string> words, ConcurrentDictionary<string, string> marks)
    {
        _chain = chain;
        _maker = maker;
        Situation = situation;
        _rules = rules;
        _words = words;
        _marks = marks;
    }

    /// <summary>What is known of the job.</summary>
    public LimitSituation Situation { get; }

    /// <summary>The same packs and figures in another situation, such as heating instead of cooling.</summary>
    /// <param name="situation">The other situation.</param>
    /// <returns>Another resolver.</returns>
    public LimitResolver In(LimitSituation situation) => new(_chain, _maker, situation, _rules, _words, _marks);

    /// <summary>How well the source of a limit that was found here is known; null for other sources and for published ones.</summary>
    /// <param name="source">The source as the limit gives it.</param>
    public string? MarkOf(string source) => _marks.GetValueOrDefault(source);

    /// <summary>The limit that applies.</summary>
    /// <param name="id">Limit id, one of the definitions.</param>
    /// <returns>The limit; null when nobody sets one in this situation.</returns>
    /// <exception cref="ArgumentException">There is no such id: a fault of this program.</exception>
    public Limit? Find(string id)
    {
        var definition = LimitDefinitions.Get(id);
        if (!_maker.TryGetValue(id, out var figure))
            return FindPublished(definition);
        var published = Published(definition).ToList();
        var limit = figure.Limit with { Rule = _rules.For(definition.Group, published.Count > 0 ? published[0].Rule : definition.Rule) };
        if (published.Count == 0)
            return limit;
        if (figure.HasSource)
            return limit with { LooserThan = published.Find(other => LimitComparison.IsLooser(limit, other)) };

        // The crew's own target counts where it asks more than the published limit, and only there.
        if (LimitComparison.IsLooser(limit, published[0]))
            return published[0] with { SetAside = limit };
        return LimitComparison.IsLooser(published[0], limit) ? limit : published[0];
    }

    /// <summary>The limit that applies, for a limit that common practice has in every situation.</summary>
    /// <param name="id">Limit id, one of the definitions.</param>
    /// <exception cref="InvalidOperationException">Common practice has none: a fault of this program.</exception>
    public Limit Require(string id) => Find(id) ?? throw new InvalidOperationException($"Common practice has no {id} for this job.");

    /// <summary>What the record of this job has to show, by the named packs and by common practice together.</summary>
    /// <returns>Checks and photos, each once, in the order of the packs.</returns>
    public RequiredEvidence Required() => RequiredEvidence.Of(_chain, Situation);

    private Limit? FindPublished(LimitDefinition definition) => Published(definition).FirstOrDefault();

    // At most two: the first named pack that has the limit, and common practice behind it.
    private IEnumerable<Limit> Published(LimitDefinition definition)
    {
        var found = false;
        foreach (var pack in _chain)
        {
            var isCommon = string.Equals(pack.Name, LimitPack.CommonPractice, StringComparison.Ordinal);
            if ((found && !isCommon) || pack.Find(definition.Id, Situation) is not { } entry)
                continue;
            yield return Of(definition, entry, pack, isCommon);
            if (isCommon)
                yield break;
            found = true;
        }
    }

    private Limit Of(LimitDefinition definition, LimitEntry entry, LimitPack pack, bool isCommon)
    {
        var source = entry.SourceText(_words);
        // The worse of two marks, whichever thread comes first.
        if (source.Length > 0 && entry.Mark != "published")
            _marks.AddOrUpdate(source, entry.Mark, (_, other) => string.CompareOrdinal(other, entry.Mark) < 0 ? other : entry.Mark);
        return new()
        {
            Definition = definition,
            Shape = entry.Shape,
            Tier = isCommon ? LimitTier.CommonPractice : string.Equals(entry.Basis, "maker", StringComparison.Ordinal) ? LimitTier.Maker : LimitTier.Pack,
            Pack = pack.Name,
            Basis = entry.Basis,
            Source = source,
            Mark = entry.Mark,
            Rule = _rules.For(definition.Group, entry.Rule),
            At = entry.At,
            Lower = entry.Lower,
            Upper = entry.Upper,
            Target = entry.Target,
            Statement = entry.Statement,
            With = entry.With,
            Note = entry.Note,
        };
    }
}

/// <summary>Where a job asks for more than the rule that belongs to a limit. It can make a limit guarded, never simple.</summary>
/// <param name="Rules">The job's choice; null when it makes none.</param>
internal sealed record DecisionRuleChoice(DecisionRules? Rules)
{
    /// <summary>The rule in force.</summary>
    /// <param name="group">The limit's group.</param>
    /// <param name="own">The rule that belongs to the limit.</param>
    /// <returns>The stricter of both.</returns>
    public DecisionRule For(LimitGroup group, DecisionRule own) =>
        (Of(group) ?? Rules?.All)?.Value == Jobs.Model.Words.DecisionRule.Guarded ? DecisionRule.Guarded : own;

    private Chosen? Of(LimitGroup group) => group switch
    {
        LimitGroup.Instruments => Rules?.Instruments,
        LimitGroup.PressureTest => Rules?.PressureTest,
        LimitGroup.Evacuation => Rules?.Evacuation,
        LimitGroup.Charge => Rules?.Charge,
        LimitGroup.Air => Rules?.Air,
        LimitGroup.Compressor => Rules?.Compressor,
        LimitGroup.Electrical => Rules?.Electrical,
        LimitGroup.Piping => Rules?.Piping,
        LimitGroup.Safety => Rules?.Safety,
        LimitGroup.Refrigerant => Rules?.Refrigerant,
        _ => null,
    };
}
