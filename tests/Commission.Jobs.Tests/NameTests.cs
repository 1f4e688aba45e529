using Commission.Messages;
using Commission.Source;
using Xunit;

namespace Commission.Jobs.Tests;

/// <summary>Names and ids that are not what they seem. Characters and their meaning: the Unicode standard, chapters 23 (special areas) and UAX 9 (direction).</summary>
public sealed class NameTests
{
    private const string Job = "commission: 1\nunits: si\njob:\n  id: ID\n  work: seasonal check\n  date: 2026-06-18\n  people: {technician: PERSON}\n  site: {name: SITE, elevation: 100 m}\n  notes: NOTES\nequipment: {system: split, refrigerant: R-410A}\ninstruments: [{id: TOOL, kind: pressure gauge}]\nsignatures: [{name: SIGNED, date: 2026-06-18}]\n";

    [Theory]
    [InlineData("PERSON", "\\u200b", "7:24", "Nothing of \"technician\" can be seen: it is written in characters without a shape. Write it in letters, or delete the line.")]
    [InlineData("PERSON", "\\u2060\\ufeff\\u00ad", "7:24", "Nothing of \"technician\" can be seen: it is written in characters without a shape. Write it in letters, or delete the line.")]
    [InlineData("SIGNED", "\\u3164 \\u2800", "12:21", "Nothing of \"name\" can be seen: it is written in characters without a shape. Write it in letters, or delete the line.")]
    [InlineData("SITE", "\\u0301\\ufe0f", "8:16", "Nothing of \"name\" can be seen: it is written in characters without a shape. Write it in letters, or delete the line.")]
    [InlineData("SITE", "Tarn \\u202eenaL", "8:16", "\"name\" holds a character that turns the direction of what is read (U+202E). Delete it: what is read has to be what is written.")]
    [InlineData("NOTES", "good \\u2067dab\\u2069", "9:10", "\"notes\" holds a character that turns the direction of what is read (U+2067). Delete it: what is read has to be what is written.")]
    [InlineData("ID", "A\\u202a1", "4:7", "\"id\" holds a character that turns the direction of what is read (U+202A). Delete it: what is read has to be what is written.")]
    [InlineData("ID", "FS\\nFS: accepted", "4:7", "\"id\" \"FS FS: accepted\" holds a line break. A name on one line is expected. Write it with letters, digits, spaces, - _ . / only.")]
    [InlineData("ID", "FS\\u2028accepted", "4:7", "\"id\" \"FS accepted\" holds a line break. A name on one line is expected. Write it with letters, digits, spaces, - _ . / only.")]
    [InlineData("ID", "HB|accepted", "4:7", "\"id\" \"HB|accepted\" holds |, which separates the parts of the record's code. A name on one line is expected. Write it with letters, digits, spaces, - _ . / only.")]
    [InlineData("ID", "HB\\tx", "4:7", "\"id\" \"HB?x\" holds a tab. A name on one line is expected. Write it with letters, digits, spaces, - _ . / only.")]
    [InlineData("ID", "HB\\u200b-7", "4:7", "\"id\" \"HB?-7\" holds a character that cannot be seen. A name on one line is expected. Write it with letters, digits, spaces, - _ . / only.")]
    [InlineData("TOOL", "g|1", "11:20", "\"id\" \"g|1\" holds |, which separates the parts of the record's code. A name on one line is expected. Write it with letters, digits, spaces, - _ . / only.")]
    [InlineData("ID", "12345678901234567890123456789012345678901234567890123456789012345", "4:7", "\"id\" has 65 characters. A name of at most 64 is expected. Shorten it; a longer story belongs in the notes.")]
    public void A_name_that_is_not_what_it_seems_is_refused(string at, string written, string place, string said)
    {
        var (reading, problems) = Reading.Of(Filled(at, $"\"{written}\""));
        Assert.Null(reading.Job);
        Assert.Equal($"job.yaml:{place}: {said}", Assert.Single(problems));
    }

    // Names as people have them: Arabic with its mark of direction, Persian with a joiner, Korean, an accent of its own, a sign made of three.
    [Theory]
    [InlineData("PERSON", "سارة\\u200f")]
    [InlineData("PERSON", "علی\\u200cرضا")]
    [InlineData("PERSON", "김민수")]
    [InlineData("SITE", "Cafe\\u0301 Zoe\\u0308")]
    [InlineData("NOTES", "fitted by \\U0001F469\\u200D\\U0001F527\\nand checked")]
    [InlineData("ID", "Объект 5")]
    [InlineData("ID", "TL-2026/061_b.2")]
    [InlineData("ID", "1234567890123456789012345678901234567890123456789012345678901234")]
    public void Names_of_people_and_places_are_taken(string at, string written)
    {
        var (reading, problems) = Reading.Of(Filled(at, $"\"{written}\""));
        Assert.Empty(problems);
        Assert.NotNull(reading.Job);
    }

    // What is refused is shown with nothing in it that a terminal obeys or a reader does not see.
    [Theory]
    [InlineData("\"\\e[2J\\a\": 1")]
    [InlineData("\"k\\u202ey\": 1")]
    [InlineData("notes: \"\\u202Ea\\u2066b\"")]
    [InlineData("notes: \u202Eabc\u2066")]
    [InlineData("\u200B\u200B: 1")]
    public void A_problem_shows_nothing_that_hides(string line)
    {
        var text = Filled("NOTES", "x") + line + "\n";
        var problems = new ProblemList();
        var reading = JobReader.Read(new JobSource("job.yaml", "job.yaml", new MemoryFolder().With("job.yaml", text), null), Reading.Refrigerants, problems);
        var page = ProblemRenderer.Render(problems, reading.TextOf, Language.English);
        Assert.NotEqual("", page);
        Assert.DoesNotContain(page, c => (char.IsControl(c) && c != '\n') || c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\u200B');
    }

    private static string Filled(string at, string written)
    {
        var text = Job;
        foreach (var (key, usual) in new[] { ("ID", "T-1"), ("PERSON", "Mira Solend"), ("SITE", "Tarn Lane"), ("TOOL", "low"), ("SIGNED", "Mira Solend"), ("NOTES", "none") })
            text = text.Replace(key, key == at ? written : usual, StringComparison.Ordinal);
        return text;
    }
}
