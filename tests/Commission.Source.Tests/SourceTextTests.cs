using System.Text;
using Xunit;

namespace Commission.Source.Tests;

public sealed class SourceTextTests
{
    [Theory]
    [InlineData("a\r\nb\rc\nd", 4)]
    [InlineData("", 1)]
    [InlineData("a\n", 2)]
    public void Every_kind_of_line_end_counts_once(string text, int lines) =>
        Assert.Equal(lines, SourceText.Decode("f", Encoding.UTF8.GetBytes(text), new ProblemList())!.Lines.Count);

    [Fact]
    public void A_byte_order_mark_at_the_start_is_dropped() =>
        Assert.Equal("a: 1", SourceText.Decode("f", [0xEF, 0xBB, 0xBF, .. "a: 1"u8], new ProblemList())!.Text);

    [Theory]
    [InlineData("a: \0x", "job.yaml:1:4: The text holds a NUL byte (U+0000). Delete it; a job file is plain text.")]
    [InlineData("a: 1\nb: \u001B[1m", "job.yaml:2:4: The text holds a control character (U+001B). Delete it; a job file is plain text.")]
    [InlineData("a: 1\nb:\u2028 c", "job.yaml:2:3: The text holds an invisible line separator (U+2028). Delete it; a job file is plain text.")]
    [InlineData("a: 1\nb: \uFEFFc", "job.yaml:2:4: The text holds a byte order mark (U+FEFF). Delete it; a job file is plain text.")]
    public void Characters_nobody_can_see_are_refused_at_their_place(string text, string expected) =>
        Assert.Equal([expected], Faults(Encoding.UTF8.GetBytes(text)));

    [Fact]
    public void Bytes_that_are_not_utf8_are_named_at_their_place() =>
        Assert.Equal(["job.yaml:2:6: The byte 0xB0 is not UTF-8 text. UTF-8 is expected. Save the file as UTF-8 in the editor, or retype that character."],
            Faults([.. "a: 1\nt: 45"u8, 0xB0, .. "F"u8]));

    [Fact]
    public void Utf16_is_recognised() =>
        Assert.Equal(["job.yaml: The file is UTF-16 text. UTF-8 is expected. Save the file as UTF-8 in the editor."],
            Faults([0xFF, 0xFE, .. Encoding.Unicode.GetBytes("a: 1")]));

    [Fact]
    public void A_hundred_megabytes_are_refused_by_their_length() =>
        Assert.Equal(["job.yaml: The file has 100.0 MB; at most 4 MB are read. Put long series of readings into a CSV file beside the job."],
            Faults(new byte[100 * 1024 * 1024]));

    private static string[] Faults(byte[] bytes)
    {
        var problems = new ProblemList();
        Assert.Null(SourceText.Decode("job.yaml", bytes, problems));
        return [.. problems.Sorted().Select(p => p.ToString())];
    }
}
