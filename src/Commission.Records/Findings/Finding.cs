using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Commission.Measurement.Corrections;
using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Messages;
using Commission.Source;

namespace Commission.Records.Findings;

/// <summary>What one check has to say: a number with its uncertainty, the limits, a verdict, and how it came about.</summary>
public sealed record Finding
{
    /// <summary>Identifier of the check, for example <c>charge.superheat</c>.</summary>
    public required string Check { get; init; }

    /// <summary>
    /// Phase of the work: <c>instruments</c>, <c>pressure-test</c>, <c>evacuation</c>, <c>charge</c>, <c>air</c>, <c>compressor</c>,
    /// <c>electrical</c>, <c>piping</c>, <c>safety</c>, <c>refrigerant</c>, <c>functional</c> or <c>evidence</c>.
    /// </summary>
    public required string Phase { get; init; }

    /// <summary>Title in the trade's words.</summary>
    public required string Title { get; init; }

    /// <summary>What it is about when a check speaks more than once: a time, a place, an instrument.</summary>
    public string? Subject { get; init; }

    /// <summary>The verdict.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Why a pass is only conditional although its number lies inside the limit, for example a prerequisite not shown.</summary>
    public string? Reservation { get; init; }

    /// <summary>Why it was not evaluated, or what kind of information it is.</summary>
    public string? Reason { get; init; }

    /// <summary>True when people or the machine are in danger: no record that holds such a finding is accepted.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public bool IsDanger { get; init; }

    /// <summary>Distance to a target that moves with readings of its own, as the verdict was reached; null where the limit stands still. For a comparison with trials, no part of the record.</summary>
    [JsonIgnore]
    public Uncertain? Distance { get; init; }

    /// <summary>Readings that cannot be what they say, by evidence: no verdict may rest on them.</summary>
    [JsonIgnore]
    public ImmutableArray<ReadingUse> Impeached { get => field.IsDefault ? [] : field; init; }

    /// <summary>True when the verdict was taken back because a reading behind it cannot be what it says.</summary>
    [JsonIgnore]
    public bool IsTakenBack { get; init; }

    /// <summary>True for a fact that decides nothing but that somebody has to look at; the first page and the terminal tell it.</summary>
    public bool IsToLookAt { get; init; }

    /// <summary>One plain sentence.</summary>
    public required string Statement { get; init; }

    /// <summary>What to do next; null when nothing is to be done.</summary>
    public string? NextStep { get; init; }

    /// <summary>How the next step is written in the job file, where that is all there is to do; null otherwise. Only the terminal prints it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? InFile { get; init; }

    /// <summary>The same sentences as messages and values, from which they can be written in another language.</summary>
    [JsonIgnore]
    public FindingMessages? Messages { get; init; }

    /// <summary>True when the profile for this kind of work and system asks for the check.</summary>
    public bool Required { get; init; }

    /// <summary>The measured quantity; null where words alone are judged.</summary>
    public MeasuredQuantity? Measured { get; init; }

    /// <summary>The limits applied, the deciding one first.</summary>
    public ImmutableArray<LimitStatement> Limits { get => field.IsDefault ? [] : field; init; }

    /// <summary>Probability that the true value lies inside the limit, 0 to 1 (JCGM 106).</summary>
    public double? ProbabilityOfConformity { get; init; }

    /// <summary>Largest probability of accepting an item that does not conform, 0 to 1.</summary>
    public double? MaximumFalseAccept { get; init; }

    /// <summary>Tolerance over U: how fit the instruments are for this limit.</summary>
    public double? Adequacy { get; init; }

    /// <summary>The way from readings to the number.</summary>
    public ImmutableArray<TraceStep> Trace { get => field.IsDefault ? [] : field; init; }

    /// <summary>The readings used.</summary>
    public ImmutableArray<ReadingUse> Readings { get => field.IsDefault ? [] : field; init; }

    /// <summary>Identifiers of the instruments used.</summary>
    public ImmutableArray<string> Instruments { get => field.IsDefault ? [] : field; init; }

    /// <summary>The uncertainty budget, largest contribution first.</summary>
    public ImmutableArray<BudgetLine> Budget { get => field.IsDefault ? [] : field; init; }

    /// <summary>Order of appearance in the record, from 1; 0 until the record sets it.</summary>
    public int Number { get; init; }

    /// <summary>Place on the strip chart; null when the check has no numeric limit.</summary>
    public StripPosition? Strip { get; init; }

    /// <summary>The probability of conformity as printed; null when there is none.</summary>
    public string? ConformityText { get; init; }

    /// <summary>The largest false-accept probability as printed; null when there is none.</summary>
    public string? FalseAcceptText { get; init; }

    /// <summary>The adequacy as printed, for example <c>2.1</c>; null when there is none.</summary>
    public string? AdequacyText { get; init; }
}

/// <summary>A reading that a finding used, with the place where the crew wrote it.</summary>
/// <param name="Name">What was read, for example <c>vapor line, 11:35</c>.</param>
/// <param name="Text">The reading in its canonical spelling, for example <c>57.2 °F</c>.</param>
/// <param name="At">File, line and column of the value.</param>
/// <param name="Instrument">Identifier of the instrument; null when none is named.</param>
public sealed record ReadingUse(string Name, string Text, SourceLocation At, string? Instrument)
{
    /// <summary>Number of the earlier finding that names this very reading with its place; null where it stands for the first time.</summary>
    public int? ShownIn { get; init; }
}

/// <summary>One step on the way from readings to a number.</summary>
/// <param name="Symbol">Symbol of the result, for example <c>T_dew</c>.</param>
/// <param name="Name">What the symbol stands for.</param>
/// <param name="Formula">The formula in symbols or words.</param>
/// <param name="Substitution">The formula with the values put in.</param>
/// <param name="Result">The result with its unit.</param>
/// <param name="Source">Paper, standard or maker's page the formula comes from; empty for plain arithmetic.</param>
public sealed record TraceStep(string Symbol, string Name, string Formula, string Substitution, string Result, string Source)
{
    /// <summary>What the step takes off a reading; null where it is no correction.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public CorrectionKind? Correction { get; init; }

    /// <summary>Identifier of the instrument that is corrected; null where the step is no correction.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Instrument { get; init; }

    /// <summary>Number of the earlier finding that shows this very step; null where it stands for the first time. Pages print it once.</summary>
    public int? ShownIn { get; init; }

    /// <summary>Whether an earlier finding shows it.</summary>
    public bool WasShown => ShownIn is not null;
}

/// <summary>Where a value and its uncertainty lie on the scale of their own limit: 0 is the lower limit, 1 the upper.</summary>
/// <param name="Value">Position of the value.</param>
/// <param name="Low">Position of value − U; null without an uncertainty.</param>
/// <param name="High">Position of value + U; null without an uncertainty.</param>
/// <param name="LowerIsLimit">False when nothing is limited at 0 (the limit is "at most").</param>
/// <param name="UpperIsLimit">False when nothing is limited at 1 (the limit is "at least").</param>
public sealed record StripPosition(double Value, double? Low, double? High, bool LowerIsLimit, bool UpperIsLimit);

/// <summary>The sentences of a finding as what they say and about what. A part that is in no catalogue yet is a plain text.</summary>
/// <param name="Statement">The statement and its remarks; their texts are joined by spaces.</param>
public sealed record FindingMessages(ImmutableArray<Message> Statement)
{
    /// <summary>The statement and its remarks; their texts are joined by spaces.</summary>
    public ImmutableArray<Message> Statement { get; init; } = Statement.IsDefault ? [] : Statement;

    /// <summary>Why it was not evaluated, or what kind of information it is.</summary>
    public Message? Reason { get; init; }

    /// <summary>What a pass rests on and was not shown; the texts are joined by semicolons.</summary>
    public ImmutableArray<Message> Reservation { get => field.IsDefault ? [] : field; init; }

    /// <summary>What to do next.</summary>
    public Message? NextStep { get; init; }
}
