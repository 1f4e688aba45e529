using System.Text.RegularExpressions;
using Commission.Documents.Templates;
using Commission.Messages;
using Commission.Messages.Fluent;
using Xunit;

namespace Commission.Documents.Tests.Templates;

/// <summary>The words of the pages: every one from the catalogue, every one of the catalogue on a page.</summary>
public sealed partial class PageWordsTests
{
    private static readonly TemplateSet BuiltIn = TemplateSet.BuiltIn;

    private static IEnumerable<(string File, string Text)> Templates => BuiltIn.Names.Select(name => (name, BuiltIn.TextOf(name)!));

    [Fact]
    public void Templates_name_messages_that_there_are() => Assert.All(
        Templates.SelectMany(t => Said().Matches(t.Text).Select(m => (t.File, Name: m.Groups["name"].Value))),
        said => Assert.True(MessageCatalogue.BuiltIn.Has(Language.English, "pages", said.Name), $"{said.File}: {said.Name}"));

    // A phase is said by its own name; what templates do not say, the pages' own code does.
    [Fact]
    public void Every_message_is_said_somewhere()
    {
        var said = Templates.SelectMany(t => Said().Matches(t.Text).Select(m => m.Groups["name"].Value))
            .Concat(Templates.SelectMany(t => Quoted().Matches(t.Text).SelectMany(m => m.Groups["name"].Value.Split(','))))
            .ToHashSet(StringComparer.Ordinal);
        var code = string.Concat(Directory.EnumerateFiles(Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "..", "src", "Commission.Documents")), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains("/obj/", StringComparison.Ordinal)).Select(File.ReadAllText));
        Assert.All(
            FluentParser.Parse("en/pages.ftl", MessageCatalogue.Embedded("en/pages.ftl")!).Entries,
            entry => Assert.True(said.Contains(entry.Id) || code.Contains($"PagesMessages.{Pascal(entry.Id)}", StringComparison.Ordinal), entry.Id));
    }

    // What stands between tags and outside of Liquid is punctuation.
    [Fact]
    public void No_template_holds_words_of_its_own() => Assert.All(Templates, t =>
    {
        var bare = Tag().Replace(Liquid().Replace(t.Text, " "), " ");
        Assert.False(Word().IsMatch(bare), $"{t.File}: {Word().Match(bare).Value}");
    });

    [Theory]
    [InlineData("{{ 'failled' | say }}", "There is no text for pages.failled in English.")]
    [InlineData("{{ 'more-failed' | say }}", "more")]
    public void A_message_that_cannot_be_said_is_a_fault_with_its_line(string liquid, string expected)
    {
        var problems = new Commission.Source.ProblemList();
        var templates = TemplateSet.With(new Dictionary<string, string>(StringComparer.Ordinal) { [TemplateSet.Main] = $"<body>\n<p>{liquid}</p></body>" });
        Assert.Null(templates.Render(Commission.Records.Json.RecordJson.Write(Commission.Records.Tests.Samples.SampleRecord.Full), problems));
        var problem = Assert.Single(problems.Sorted());
        Assert.Equal(2, problem.Location.Line);
        Assert.Contains(expected, problem.Text(Language.English), StringComparison.Ordinal);
    }

    private static string Pascal(string id) => string.Concat(id.Split('-').Select(w => char.ToUpperInvariant(w[0]) + w[1..]));

    private static string Here([System.Runtime.CompilerServices.CallerFilePath] string path = "") => path;

    [GeneratedRegex(@"'(?<name>[a-z-]+)' \| say", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Said();

    [GeneratedRegex(@"(phase: |phases = )'(?<name>[a-z,-]+)'", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\{%-? comment %\}.*?\{% endcomment %\}|\{%.*?%\}|\{\{.*?\}\}", RegexOptions.ExplicitCapture | RegexOptions.Singleline, 1000)]
    private static partial Regex Liquid();

    [GeneratedRegex("<[^>]*>", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Tag();

    [GeneratedRegex(@"\p{L}{2,}", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Word();
}
