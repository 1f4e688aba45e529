using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Commission.Messages;

namespace Commission.Records.Findings;

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

    /// <summary>Whether any part is in a catalogue.</summary>
    [JsonIgnore]
    public bool HasMessage => Statement.Concat(Reservation).Append(Reason).Append(NextStep).Any(m => m is { PlainText: null });
}
