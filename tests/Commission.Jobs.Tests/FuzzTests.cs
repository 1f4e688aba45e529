using System.Text;
using CsCheck;
using Xunit;

namespace Commission.Jobs.Tests;

/// <summary>Whatever is written, there is a job or there are problems, and nothing is thrown.</summary>
public sealed class FuzzTests
{
    private static readonly string Good = Reading.Data("tarn-lane.yaml");
    private static readonly string[] Lines = Good.Split('\n');

    private static readonly string[] Odd =
    [
        "", "~", "null", "{}", "[]", "[[]]", "{a: b}", "yes", "no", "true", "0", "-1", "1e308", "1e999", "0x10", ".inf", ".nan", "\"\"", "'", "\"", "- ", "?", "&a x", "*a", "!!int 3", "|", ">", "%", "@",
        "NaN psig", "1e308 psig", "-0 °F", "999999999999999999999 lb", "1/0 in", "3/8", "12:60", "24:00", "0000-00-00", "9999-12-31", "2026-06-18 25:00", "99999 months", "R-", "R-9999Z", "../..", "/", "a\\b", "\\u0000", "\"\\ud800\"",
        "\"\\e[1m\"", "°", "±", "5 °F +/- -1", "5 °F +/- 1 (k=0)", "1 to 2 V", "2 to 1 V", "100 % of nothing", "[none, none]", "[1, [2]]", "\u202E", "😀 psig",
    ];

    [Fact]
    public void Damaged_characters() =>
        Gen.Select(Gen.Int[0, Good.Length - 1], Gen.Int[0, 8], Gen.Int[0, Odd.Length - 1].Select(i => Odd[i])).Array[1, 3].Sample(damages =>
        {
            var text = Good;
            foreach (var (at, cut, odd) in damages)
            {
                var from = Math.Min(at, text.Length - 1);
                text = text.Remove(from, Math.Min(cut, text.Length - from)).Insert(from, odd);
            }

            return JobOrProblems(text);
        }, iter: 600, threads: 1);

    [Fact]
    public void Values_replaced_by_odd_ones() =>
        Gen.Select(Gen.Int[0, Lines.Length - 1], Gen.Int[0, Odd.Length - 1].Select(i => Odd[i]), Gen.Int[0, 20]).Sample((line, odd, which) =>
        {
            var lines = (string[])Lines.Clone();
            var colons = Enumerable.Range(0, lines[line].Length).Where(i => lines[line][i] == ':' && i + 1 < lines[line].Length && lines[line][i + 1] == ' ').ToArray();
            if (colons.Length == 0)
                return true;
            var from = colons[which % colons.Length] + 2;
            var end = lines[line].IndexOfAny([',', '}'], from);
            lines[line] = lines[line][..from] + odd + (end < 0 ? "" : lines[line][end..]);
            return JobOrProblems(string.Join('\n', lines));
        }, iter: 600, threads: 1);

    [Fact]
    public void Lines_lost_doubled_or_moved() =>
        Gen.Select(Gen.Int[0, Lines.Length - 1], Gen.Int[0, Lines.Length - 1], Gen.Int[0, 2]).Sample((from, to, what) =>
        {
            var lines = Lines.ToList();
            var line = lines[from];
            if (what != 1)
                lines.RemoveAt(from);
            if (what != 0)
                lines.Insert(Math.Min(to, lines.Count), line);
            return JobOrProblems(string.Join('\n', lines));
        }, iter: 400, threads: 1);

    [Fact]
    public void Any_log()
    {
        const string alphabet = "0123456789.,;:\t\n\r -/\"OLTamp%e";
        var yaml = Reading.Data("plain.yaml").Replace("  levels:", "  series: log.csv\n  levels:", StringComparison.Ordinal);
        Gen.Char[alphabet].Array[0, 120].Sample(chars => JobOrProblems(yaml, "s,micron\n0,1\n" + new string(chars)) && JobOrProblems(yaml, new string(chars)), iter: 600, threads: 1);
        Gen.Byte.Array[0, 120].Sample(bytes => JobOrProblems(yaml, Encoding.Latin1.GetString(bytes)), iter: 300, threads: 1);
    }

    private static bool JobOrProblems(string yaml, string? log = null)
    {
        var folder = Reading.TarnLaneFolder();
        if (log is not null)
            folder.With("log.csv", log);

        // A lone surrogate cannot be encoded; it becomes a question mark as in any editor.
        var (reading, problems) = Reading.Of(Encoding.UTF8.GetBytes(yaml), folder);
        return reading.Job is null == problems.Length > 0;
    }
}
