using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Commission.Measurement.Decisions;

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

    /// <summary>One plain sentence.</summary>
    public required string Statement { get; init; }

    /// <summary>What to do next; null when nothing is to be done.</summary>
    public string? NextStep { get; init; }

    /// <summary>The same sentences as messages and values, from which they can be written in another language; null while none of them is in a catalogue.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
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
    public string? ConformityText => ProbabilityText.Of(ProbabilityOfConformity);

    /// <summary>The largest false-accept probability as printed; null when there is none.</summary>
    public string? FalseAcceptText => ProbabilityText.Of(MaximumFalseAccept);

    /// <summary>The adequacy as printed, for example <c>2.1</c>; null when there is none.</summary>
    public string? AdequacyText => ProbabilityText.Ratio(Adequacy);
}
