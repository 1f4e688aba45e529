using System.Text.RegularExpressions;
using Commission.Documents.Markup;
using Xunit;

namespace Commission.Documents.Tests.Markup;

public sealed class MarkupReadmeTests
{
    [Fact]
    public void The_published_list_of_elements_is_the_real_one()
    {
        using var reader = new StreamReader(typeof(MarkupReadmeTests).Assembly.GetManifestResourceStream("templates.README.md")!);
        var table = reader.ReadToEnd().Split('\n').Where(line => line.StartsWith("| `", StringComparison.Ordinal)).ToList();
        var named = table.SelectMany(line => Ticked(line.Split('|')[1])).Append("figcaption").Order(StringComparer.Ordinal);
        Assert.Equal(MarkupElement.Names, named);
        foreach (var line in table)
        {
            var attributes = Ticked(line.Split('|')[2]).Select(attribute => attribute.Split('=')[0]).ToList();
            foreach (var name in Ticked(line.Split('|')[1]))
                Assert.All(attributes, attribute => Assert.True(MarkupElement.Of(name)!.Attributes.Contains(attribute) || IsShared(line, attribute), $"{name} has no {attribute}"));
        }
    }

    // One row speaks of several elements: an attribute must belong to at least one of them.
    private static bool IsShared(string line, string attribute) => Ticked(line.Split('|')[1]).Any(name => MarkupElement.Of(name)!.Attributes.Contains(attribute));

    private static IEnumerable<string> Ticked(string cell) => Regex.Matches(cell, "`(?<name>[^`]+)`", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Select(match => match.Groups["name"].Value);
}
