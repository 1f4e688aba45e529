using Commission.Messages;

namespace Commission.Cli.Running;

/// <summary>The language of what is printed: what the command line says, else what the environment says of messages (POSIX: LC_ALL before LC_MESSAGES before LANG), else English.</summary>
internal static class TerminalLanguage
{
    /// <summary>The option that says it.</summary>
    public const string Option = "--language";

    private static readonly string[] Variables = ["LC_ALL", "LC_MESSAGES", "LANG"];

    /// <summary>The language to print in.</summary>
    /// <param name="args">The command line.</param>
    /// <param name="environment">A variable of the environment; null when it is not set.</param>
    public static Language Of(IReadOnlyList<string> args, Func<string, string?> environment)
    {
        for (var i = 0; i < args.Count; i++)
        {
            var value = args[i] == Option && i + 1 < args.Count ? args[i + 1] : args[i].StartsWith(Option + "=", StringComparison.Ordinal) ? args[i][(Option.Length + 1)..] : null;
            if (value is not null)
                return MessageCatalogue.FindLanguage(value) ?? Language.English;
        }

        // An empty variable counts as not set; C and POSIX are no languages.
        return Variables.Select(environment).FirstOrDefault(v => !string.IsNullOrEmpty(v)) is [var first, var second, ..] ? MessageCatalogue.FindLanguage($"{first}{second}") ?? Language.English : Language.English;
    }
}
