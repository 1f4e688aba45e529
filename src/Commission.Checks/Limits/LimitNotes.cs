using Commission.Messages;

namespace Commission.Checks.Limits;

/// <summary>
/// The words of what this program carries: what a limit is called, and the texts of its own packs. A pack inside the program names messages of one
/// catalogue where the pack of a user has its own sentences.
/// </summary>
internal static class LimitNotes
{
    /// <summary>The catalogue.</summary>
    public const string Catalogue = "limit-notes";

    /// <summary>What a limit is called, as a phrase.</summary>
    /// <param name="id">Its id, such as <c>evacuation.decay</c>.</param>
    public static Message NameOf(string id) => OfProgram($"limit-{id.Replace('.', '-')}");

    /// <summary>A text of a pack inside the program.</summary>
    /// <param name="name">The name of its message, as the pack has it.</param>
    public static Message OfProgram(string name) => Message.Of(Catalogue, name, []);

    /// <summary>The source of a figure where a pack inside the program has it in words; null where it cites a document.</summary>
    /// <param name="source">What the text of the source became.</param>
    public static Message? SourceOf(Message source) => source.Phase == Catalogue && source.Name.StartsWith("source-", StringComparison.Ordinal) ? source : null;

    /// <summary>A text of a user's pack, in whatever language it is written.</summary>
    /// <param name="text">The text.</param>
    public static Message AsWritten(string text) => CommonMessages.AsWritten(new(text));
}
