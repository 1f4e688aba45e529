using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Commission.Messages.Fluent;
using Xunit;

namespace Commission.Messages.Tests;

/// <summary>The catalogues that the program carries.</summary>
public sealed partial class BuiltInCatalogueTests
{
    // Its names are made of the keys of a table; CauseTableTests of the checks holds the one against the other.
    private const string ByKey = "en/causes.ftl";

    // Words of the job's lists: SchemaWordsTests of the checks holds the one against the other.
    private const string OfWords = "en/words.ftl";

    // Templates name its messages; PageWordsTests of the documents holds the ones against the others.
    private const string OfPages = "en/pages.ftl";

    // The limit packs inside the program name its messages; EmbeddedPackTests of the checks holds the ones against the others.
    private const string OfLimits = "en/limit-notes.ftl";

    // Checks name them by their id, and in other files those that begin so; RegistryTests holds the ones against the others.
    private const string OfHelp = "en/help.ftl";
    private const string OfCheck = "check-";

    [Fact]
    public void Every_language_has_every_message_with_the_right_values() =>
        Assert.Empty(CatalogueCheck.Faults(MessageCatalogue.BuiltInFiles.ToDictionary(f => f, f => MessageCatalogue.Embedded(f)!)));

    [Fact]
    public void English_is_there() => Assert.Contains("en/evacuation.ftl", MessageCatalogue.BuiltInFiles);

    /// <summary>A message nobody makes is a sentence that nobody reads.</summary>
    [Fact]
    public void Every_English_message_is_used_by_the_program_or_by_another_message()
    {
        var code = Code();
        var whole = string.Concat(code);
        foreach (var file in MessageCatalogue.BuiltInFiles.Where(f => f.StartsWith("en/", StringComparison.Ordinal) && f is not (ByKey or OfPages or OfHelp or OfLimits or OfWords)))
        {
            var text = MessageCatalogue.Embedded(file)!;
            foreach (var message in FluentParser.Parse(file, text).Entries.Where(e => !e.IsTerm && !e.Id.StartsWith(OfCheck, StringComparison.Ordinal)))
            {
                var (type, name) = ($"{Pascal(Path.GetFileNameWithoutExtension(file))}Messages", Pascal(message.Id));
                Assert.True(
                    Mentions(whole, $"{type}.{name}") || Mentions(text, "{ " + message.Id) || code.Exists(c => c.Contains($"using static Commission.Messages.{type};", StringComparison.Ordinal) && Mentions(c, name)),
                    $"{file}:{message.Line}: {message.Id} is used by nobody ({type}.{name} stands nowhere in src).");
            }
        }
    }

    /// <summary>A next step says what to do at the unit; how that is written stands apart from it (<c>Finding.InFile</c>).</summary>
    [Fact]
    public void No_next_step_holds_the_syntax_of_the_file()
    {
        var steps = MessageCatalogue.BuiltInFiles.SelectMany(f => MessageCatalogue.Embedded(f)!.Replace("\n ", " ", StringComparison.Ordinal).Split('\n').Where(l => l.Split(' ')[0].EndsWith("-next", StringComparison.Ordinal))).ToList();
        Assert.True(steps.Count > 100);
        Assert.DoesNotContain(steps, s => Syntax().IsMatch(s));
    }

    [GeneratedRegex("""[a-z]: (yes\b|no\b|ok\b|…|[\[{"0-9])""", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Syntax();

    private static bool Mentions(string text, string name)
    {
        for (var at = text.IndexOf(name, StringComparison.Ordinal); at >= 0; at = text.IndexOf(name, at + 1, StringComparison.Ordinal))
        {
            var after = at + name.Length < text.Length ? text[at + name.Length] : ' ';
            if (!char.IsAsciiLetterOrDigit(after) && after != '-')
                return true;
        }

        return false;
    }

    private static List<string> Code()
    {
        var src = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "src"));
        return [.. Directory.EnumerateFiles(src, "*.cs", SearchOption.AllDirectories).Where(f => !f.Contains("/obj/", StringComparison.Ordinal)).Select(File.ReadAllText)];
    }

    private static string Pascal(string id) => string.Concat(id.Split('-').Select(w => char.ToUpperInvariant(w[0]) + w[1..]));

    private static string Here([CallerFilePath] string path = "") => path;
}
