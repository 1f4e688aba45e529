using System.Text.Json.Serialization;
using Commission.Measurement.Decisions;

namespace Commission.Records.Findings;

/// <summary>A limit as it was applied: its numbers, whose it is, and where it is printed.</summary>
/// <param name="Kind">What the limit asks.</param>
/// <param name="Text">The printed form, for example <c>9 ± 3 °F</c> or <c>at most 1000 micron after 10 min</c>.</param>
/// <param name="LowerSi">Lower limit in SI; null when there is none.</param>
/// <param name="UpperSi">Upper limit in SI; null when there is none.</param>
/// <param name="TargetSi">Target in SI; null when there is none.</param>
/// <param name="Basis">Whose limit it is: <c>maker</c>, <c>pack</c>, <c>common practice</c>, or <c>job</c> for a target of the crew's own.</param>
/// <param name="Pack">Name of the limits pack it was read from; empty for a maker's figure of the job.</param>
/// <param name="Source">Where it is printed: a plate, a page, a clause.</param>
/// <param name="Mark">How well the source is known: <c>published</c>, <c>from memory</c>, <c>common practice</c> or <c>job</c>.</param>
/// <param name="Rule">The decision rule that belongs to the limit.</param>
public sealed record LimitStatement(
    LimitKind Kind,
    string Text,
    double? LowerSi,
    double? UpperSi,
    double? TargetSi,
    string Basis,
    string Pack,
    string Source,
    string Mark,
    DecisionRule Rule)
{
    /// <summary>The basis of a limit that a named pack sets.</summary>
    public const string PackBasis = "pack";

    /// <summary>Whose it is, for a person: the maker, common practice, or the pack by its name.</summary>
    [JsonIgnore]
    public string Whose => Basis == PackBasis && Pack.Length > 0 ? Pack : Basis;

    /// <summary>Code of its source, which stands once in the list of sources.</summary>
    public string Code { get; init; } = "";

    /// <summary>Identifier of the check it belongs to, for the list of limits in force; empty inside a finding.</summary>
    public string Check { get; init; } = "";

    /// <summary>What is limited, in the trade's words, for the list of limits in force; empty inside a finding.</summary>
    public string Quantity { get; init; } = "";
}

/// <summary>A source of limits.</summary>
/// <param name="Code">A letter for whose it is (M maker, P pack, C common practice, J job) and a number.</param>
/// <param name="Whose">Whose it is, for a person.</param>
/// <param name="Source">Where it is printed.</param>
/// <param name="Mark">How well the source is known, as <see cref="LimitStatement.Mark"/>.</param>
public sealed record LimitSource(string Code, string Whose, string Source, string Mark);

/// <summary>What a limit asks of the measured quantity.</summary>
public enum LimitKind
{
    /// <summary>The quantity must reach the lower limit.</summary>
    AtLeast,

    /// <summary>The quantity must not exceed the upper limit.</summary>
    AtMost,

    /// <summary>The quantity must lie between two limits.</summary>
    Within,

    /// <summary>The quantity must lie within a tolerance of a target.</summary>
    Target,

    /// <summary>A requirement in words, without a number.</summary>
    Statement,
}
