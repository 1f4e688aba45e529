using Commission.Messages;

namespace Commission.Source;

/// <summary>Something outside the program that it cannot go on with, in words for the person at the command line.</summary>
/// <param name="words">What is wrong, and what to do.</param>
public sealed class RefusedException(Message words) : IOException(MessageWriter.Words.Format(words, Language.English))
{
    /// <summary>What is wrong, and what to do.</summary>
    public Message Words { get; } = words;
}
