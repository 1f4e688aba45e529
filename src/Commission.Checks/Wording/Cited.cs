using Commission.Messages;

namespace Commission.Checks.Wording;

/// <summary>A paper, standard or regulation with how well it is known: the mark is a value of the message, so that whoever reads it need not look for words.</summary>
internal static class Cited
{
    /// <summary>A source that was not at hand.</summary>
    /// <param name="source">The citation.</param>
    public static Message FromMemory(string source) => CommonMessages.Cited(new(source), CommonMessages.CitedMark.FromMemory);

    /// <summary>A source with the mark that the data carry.</summary>
    /// <param name="source">The citation.</param>
    /// <param name="mark">The mark: <c>published</c>, <c>computed</c>, <c>computed from values from memory</c>, <c>from memory</c>, <c>from memory, unconfirmed</c> or <c>common practice</c>.</param>
    /// <exception cref="ArgumentException">There is no such mark: a fault of this program.</exception>
    public static Message As(string source, string mark) => CommonMessages.Cited(new(source), mark switch
    {
        "published" => CommonMessages.CitedMark.Published,
        "computed" => CommonMessages.CitedMark.Computed,
        "computed from values from memory" => CommonMessages.CitedMark.ComputedFromMemory,
        "from memory" => CommonMessages.CitedMark.FromMemory,
        "from memory, unconfirmed" => CommonMessages.CitedMark.Unconfirmed,
        "common practice" => CommonMessages.CitedMark.CommonPractice,
        _ => throw new ArgumentException($"There is no mark \"{mark}\".", nameof(mark)),
    });
}
