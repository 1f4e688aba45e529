using Commission.Messages;

namespace Commission.Cli.Running;

/// <summary>Where a command writes.</summary>
/// <param name="Output">Results.</param>
/// <param name="Error">Problems.</param>
/// <param name="Language">The language of what is printed.</param>
/// <param name="Environment">A variable of the environment; null when it is not set.</param>
internal sealed record CommandStreams(TextWriter Output, TextWriter Error, Language Language, Func<string, string?> Environment)
{
    /// <summary>The text of a message that holds no quantity.</summary>
    /// <param name="message">The message.</param>
    public string Say(Message message) => MessageWriter.Words.Format(message, Language);
}
