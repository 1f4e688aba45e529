using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Commission.Documents.Fonts;
using Xunit;

namespace Commission.Documents.Tests.Typesetting;

/// <summary>Every sign that the program itself can write is in the typeface: an empty box on paper would be taken for a mark.</summary>
public sealed partial class GlyphTests
{
    private static readonly string Root = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", ".."));

    // What reads files knows more signs than are ever printed.
    private static readonly string[] Readers = ["Commission.Jobs/", "Commission.Cli/", "Commission.Generators/", "Commission.Source/", "Commission.Fluids/", "/Fonts/", "/Units/UnitTable.cs", "/Units/Unit.cs"];

    [Theory]
    [InlineData("src", "*.cs")]
    [InlineData("src", "*.ftl")]
    [InlineData("src", "*.yaml")]
    [InlineData("templates", "*.liquid")]
    public void Every_sign_of_the_sources_has_a_glyph(string folder, string pattern)
    {
        var lacking = new SortedSet<string>(StringComparer.Ordinal);
        var files = Directory.EnumerateFiles(Path.Combine(Root, folder), pattern, SearchOption.AllDirectories).Select(f => f.Replace('\\', '/')).Where(f => !f.Contains("/obj/", StringComparison.Ordinal) && !f.Contains("/bin/", StringComparison.Ordinal) && !Readers.Any(r => f.Contains(r, StringComparison.Ordinal))).ToList();
        Assert.True(files.Count > 5);
        foreach (var file in files)
        {
            foreach (var line in File.ReadLines(file))
            {
                foreach (var c in Comment().Replace(line, ""))
                {
                    if (c > '\u00A0' && c != '\u00AD' && !FontFace.Regular.Has(c))
                        lacking.Add($"{c} (U+{(int)c:X4}) in {Path.GetFileName(file)}");
                }
            }
        }

        Assert.Empty(lacking);
    }

    [GeneratedRegex(@"^\s*(//|#).*$|\s// .*$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Comment();

    private static string Here([CallerFilePath] string path = "") => path;
}
