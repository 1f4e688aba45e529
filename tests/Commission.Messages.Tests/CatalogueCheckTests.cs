using Xunit;

namespace Commission.Messages.Tests;

/// <summary>Two small catalogues that fit, and what is said when one of them is damaged.</summary>
public sealed class CatalogueCheckTests
{
    private const string English = """
        # $level (quantity) - highest pressure
        # $n (count) - number of readings
        # $rig (choice: tested, untested) - whether the rig was watched alone
        held =
            { $n ->
                [one] One reading
               *[other] { $n } readings
            } never above { $level }{ $rig ->
                [tested] {""}
               *[untested] , the rig was not tested
            }.

        gap = The log has a gap.
        """;

    private const string German = """
        held =
            { $n ->
                [one] Eine Ablesung
               *[other] { $n } Ablesungen
            }, nie über { $level }{ $rig ->
                [tested] {""}
               *[untested] , Pumpstand nicht geprüft
            }.

        gap = Das { -log } hat eine Lücke.
        """;

    [Fact]
    public void Catalogues_that_fit_have_no_faults() => Assert.Empty(Faults(English, German));

    [Theory]
    [InlineData("gap = Das { -log } hat eine Lücke.", "", "de/test.ftl: gap is missing; its English text stands in en/test.ftl.")]
    [InlineData("gap = Das", "leer = Leer.\ngap = Das", "de/test.ftl:10:1: leer is in no English file; nothing uses it.")]
    [InlineData("{ $level }", "{ $pressure }", "de/test.ftl:5:19: $pressure is not declared in the comment above the English message: # $pressure (kind) - what it is")]
    [InlineData(", nie über { $level }", "", "de/test.ftl:1:1: held leaves out $level.")]
    [InlineData("[one] Eine", "[few] Eine", "de/test.ftl:3:9: [few] is none of the words for $n: one, other")]
    [InlineData("*[untested]", "*[unproved]", "de/test.ftl:7:9: [unproved] is none of the words for $rig: tested, untested")]
    [InlineData("{ $rig ->", "{ $rig }{ $level ->", "de/test.ftl:5:29: $rig is a choice: texts hang on it, but it is not printed itself")]
    [InlineData("{ $rig ->", "{ $rig }{ $level ->", "de/test.ftl:5:37: texts can hang on a choice, a count or a number, and $level is neither")]
    [InlineData("{ -log }", "{ -protokoll }", "de/test.ftl:10:13: there is no term -protokoll in this file or in the file of terms")]
    [InlineData("{ -log }", "{ -log(fall: \"dativ\") }", "de/test.ftl:10:13: -log takes no fall")]
    [InlineData("{ -log }", "{ gap }", "de/test.ftl:10:13: gap contains itself")]
    [InlineData("{ -log }", "{ -log", "de/test.ftl:10:18: expected “}”, found “h”")]
    public void A_damaged_language_is_told_with_its_place(string healthy, string damaged, string expected) =>
        Assert.Contains(expected, Faults(English, German.Replace(healthy, damaged, StringComparison.Ordinal)));

    [Theory]
    [InlineData("(quantity)", "(pressure)", "en/test.ftl:1:3: expected “$name (kind) - what it is” with one of the kinds quantity, duration, time, date, count, number, list, name, text, symbols, message, choice; a choice names its words: (choice: open, closed)")]
    [InlineData("(choice: tested, untested)", "(choice)", "en/test.ftl:3:3: expected “$name (kind) - what it is” with one of the kinds quantity, duration, time, date, count, number, list, name, text, symbols, message, choice; a choice names its words: (choice: open, closed)")]
    [InlineData("# $n (count)", "# $level (count)", "en/test.ftl:2:3: $level is declared twice")]
    [InlineData("gap = The", "# $at (time) - when\ngap = The", "en/test.ftl:14:1: gap leaves out $at.")]
    public void A_damaged_English_file_is_told_with_its_place(string healthy, string damaged, string expected) =>
        Assert.Contains(expected, Faults(English.Replace(healthy, damaged, StringComparison.Ordinal), German));

    [Fact]
    public void A_phase_that_a_language_lacks_is_told()
    {
        var files = new Dictionary<string, string> { ["en/test.ftl"] = "a = A", ["en/air.ftl"] = "b = B", ["de/test.ftl"] = "a = A", ["fr/test.ftl"] = "a = A", ["de/more.ftl"] = "c = C" };
        Assert.Equal(
            ["de/more.ftl: there is no en/more.ftl.", "fr/test.ftl: the folder is none of the languages en, es, de.", "de/air.ftl is missing."],
            CatalogueCheck.Faults(files));
    }

    private static IReadOnlyList<string> Faults(string english, string german) => CatalogueCheck.Faults(new Dictionary<string, string>
    {
        ["en/test.ftl"] = english,
        ["de/test.ftl"] = german,
        ["en/terms.ftl"] = "-log = log",
        ["de/terms.ftl"] = "-log = Protokoll",
    });
}
