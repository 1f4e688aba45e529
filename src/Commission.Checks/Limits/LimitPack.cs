using System.Collections;
using System.Collections.Immutable;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Source;

namespace Commission.Checks.Limits;

/// <summary>A named set of limits, and of what a record has to show.</summary>
/// <param name="Name">The name a job uses.</param>
/// <param name="Title">The document, in words.</param>
/// <param name="PublishedBy">Who stands for it.</param>
/// <param name="Edition">Which edition.</param>
/// <param name="BuildsOn">Packs that are asked after this one.</param>
/// <param name="Limits">Cases by limit id, in the order written: the first that applies counts.</param>
/// <param name="Required">What a record has to show, by kind of work and system.</param>
internal sealed record LimitPack(
    string Name,
    Message Title,
    Message PublishedBy,
    Message Edition,
    ImmutableArray<PackReference> BuildsOn,
    IReadOnlyDictionary<string, IReadOnlyList<LimitEntry>> Limits,
    ImmutableArray<RequiredProfile> Required)
{
    /// <summary>The name of the pack that stands behind all others.</summary>
    public const string CommonPractice = "common-practice";

    /// <summary>Anything worth telling about it.</summary>
    public Message? About { get; init; }

    /// <summary>The clauses of the document it follows, and which of them were read.</summary>
    public ImmutableArray<PackClause> Clauses { get; init; } = [];

    /// <summary>The case of a limit that applies.</summary>
    /// <param name="id">Limit id.</param>
    /// <param name="situation">What is known of the job.</param>
    /// <returns>The case; null when the pack has none that applies.</returns>
    public LimitEntry? Find(string id, LimitSituation situation) =>
        Limits.TryGetValue(id, out var cases) ? cases.FirstOrDefault(entry => entry.When.Hold(situation)) : null;
}

/// <summary>A clause of the document a pack follows.</summary>
/// <param name="Clause">Its number.</param>
/// <param name="Says">What the pack takes from it, in one sentence.</param>
/// <param name="Mark">How sure: <c>published</c>, <c>from memory</c>, <c>not read</c>.</param>
internal sealed record PackClause(string Clause, Message Says, string Mark)
{
    /// <summary>What a clause may be marked with: one that was not read at all may be named, too.</summary>
    public static readonly IReadOnlyList<string> Marks = ["published", "from memory", "not read"];
}

/// <summary>One case of a limit as a pack states it.</summary>
/// <param name="Shape">Its form.</param>
/// <param name="When">When it applies.</param>
/// <param name="Rule">The decision rule that belongs to it.</param>
/// <param name="Basis">What kind of document it rests on.</param>
/// <param name="Source">Clause or page, or in the words of a user where it comes from; empty where <see cref="SourceInWords"/> says it.</param>
/// <param name="Mark">How sure it is: <c>published</c>, <c>from memory</c>, <c>common practice</c>.</param>
/// <param name="At">Where it is written.</param>
internal sealed record LimitEntry(
    LimitShape Shape,
    LimitConditions When,
    DecisionRule Rule,
    string Basis,
    string Source,
    string Mark,
    SourceLocation At)
{
    /// <summary>Where it comes from in words of this program; null where <see cref="Source"/> says it.</summary>
    public Message? SourceInWords { get; init; }

    /// <summary>Lower bound; of a tolerance minus its half width.</summary>
    public LimitFigure? Lower { get; init; }

    /// <summary>Upper bound; of a tolerance its half width.</summary>
    public LimitFigure? Upper { get; init; }

    /// <summary>Value to aim for.</summary>
    public LimitFigure? Target { get; init; }

    /// <summary>Requirement in words.</summary>
    public Message? Statement { get; init; }

    /// <summary>Further quantities by name.</summary>
    public ImmutableSortedDictionary<string, LimitFigure> With { get; init; } = ImmutableSortedDictionary<string, LimitFigure>.Empty;

    /// <summary>Anything worth telling beside it.</summary>
    public Message? Note { get; init; }

    /// <summary>Where it comes from.</summary>
    /// <param name="words">The text of a message.</param>
    public string SourceText(Func<Message, string> words) => SourceInWords is { } worded ? words(worded) : Source;
}

/// <summary>One number of a limit.</summary>
/// <param name="Si">Value in SI; of a gauge pressure above the atmosphere, in Pa; of a calendar span in months.</param>
/// <param name="Text">The canonical spelling, with the digits as written.</param>
/// <param name="Unit">The unit it was written in; null for a calendar span.</param>
/// <param name="Decimals">Decimals as written.</param>
internal sealed record LimitFigure(double Si, string Text, Unit? Unit, int Decimals)
{
    /// <summary>What a pressure is counted from; null for everything else.</summary>
    public PressureReference? Reference => Unit?.Reference;

    /// <summary>Whether a calendar span was written in years; false for everything else.</summary>
    public bool IsYears { get; init; }

    /// <summary>The pressure under an atmosphere. Only for pressures.</summary>
    /// <param name="atmosphere">Atmospheric pressure at the site.</param>
    /// <returns>Absolute pressure.</returns>
    /// <exception cref="InvalidOperationException">The figure is not a pressure: a fault of this program.</exception>
    public Pressure ToAbsolute(Pressure atmosphere) =>
        new StatedPressure(Si, Reference ?? throw new InvalidOperationException($"{Text} is not a pressure.")).ToAbsolute(atmosphere);
}

/// <summary>What a difference of two figures is measured in.</summary>
internal static class LimitFigures
{
    /// <summary>The quantity of a tolerance around a figure: a temperature's is a difference, a pressure's too.</summary>
    /// <param name="quantity">What the figure is measured in.</param>
    /// <returns>What its tolerance is measured in.</returns>
    public static Dimension DifferenceOf(Dimension quantity) => quantity switch
    {
        Dimension.Temperature => Dimension.TemperatureDifference,
        Dimension.Pressure or Dimension.VacuumLevel or Dimension.AtmosphericPressure => Dimension.PressureDifference,
        _ => quantity,
    };
}

/// <summary>
/// The packs of a job in the order they are asked: the named ones, each followed by what it builds on, then common practice and what
/// that builds on; every pack once. A pack is read when the enumeration reaches it and not before.
/// </summary>
internal sealed class PackChain(Func<string, LimitPack?> find, IEnumerable<string> named) : IEnumerable<LimitPack>
{
    private readonly List<LimitPack> _read = [];
    private readonly Stack<string> _next = new(named.Append(LimitPack.CommonPractice).Reverse());
    private readonly Lock _lock = new();

    /// <inheritdoc/>
    public IEnumerator<LimitPack> GetEnumerator()
    {
        for (var at = 0; At(at) is { } pack; at++)
            yield return pack;
    }

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private LimitPack? At(int index)
    {
        lock (_lock)
        {
            while (_read.Count <= index)
            {
                if (!_next.TryPop(out var name))
                    return null;
                if (_read.Exists(pack => string.Equals(pack.Name, name, StringComparison.Ordinal)))
                    continue;
                var pack = find(name) ?? throw new ArgumentException($"There is no pack \"{name}\".", nameof(index));
                _read.Add(pack);
                foreach (var below in pack.BuildsOn.Reverse())
                    _next.Push(below.Name);
            }

            return _read[index];
        }
    }
}

/// <summary>A pack named by another pack.</summary>
/// <param name="Name">Its name.</param>
/// <param name="At">Where it is named.</param>
internal sealed record PackReference(string Name, SourceLocation At);
