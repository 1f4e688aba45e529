using System.Globalization;
using System.Text;
using Commission.Messages;

namespace Commission.Source;

/// <summary>Writes problems for people: the place and the sentences, the line itself, a caret below the fault, and a count.</summary>
public static class ProblemRenderer
{
    /// <summary>How many problems are written out; of the rest only the number is told.</summary>
    public const int MostShown = 50;

    private const int WidestLine = 110;

    /// <summary>Renders the problems, sorted by place.</summary>
    /// <param name="problems">The problems.</param>
    /// <param name="textOf">Gives a file's text, or null when it cannot be shown.</param>
    /// <param name="language">The language of the sentences.</param>
    /// <returns>Lines ended by a line feed; empty when there is no problem.</returns>
    public static string Render(ProblemList problems, Func<string, SourceText?> textOf, Language language)
    {
        ArgumentNullException.ThrowIfNull(problems);
        ArgumentNullException.ThrowIfNull(textOf);
        if (problems.Count == 0)
            return "";
        var page = new StringBuilder();
        foreach (var problem in problems.Sorted().Take(MostShown))
        {
            page.Append(HiddenCharacters.Replaced(problem.Line(language))).Append('\n');
            AppendLine(page, problem, textOf(problem.Location.File));
        }

        if (problems.Count > MostShown)
            page.Append(MessageWriter.Words.Format(ProblemsMessages.More(problems.Count - MostShown), language)).Append('\n');
        page.Append(MessageWriter.Words.Format(ProblemsMessages.Count(problems.Count), language)).Append('\n');
        return page.ToString();
    }

    private static void AppendLine(StringBuilder page, Problem problem, SourceText? text)
    {
        var (_, line, column) = problem.Location;
        if (text is null || line < 1 || line > text.Lines.Count)
            return;
        var content = text.Lines[line - 1];
        var fault = Math.Clamp(column - 1, 0, content.Length);
        var start = 0;
        if (content.Length > WidestLine)
        {
            start = Math.Clamp(fault - (WidestLine / 2), 0, content.Length - WidestLine);
            if (start > 0 && char.IsLowSurrogate(content[start]))
                start--;
        }

        var end = Math.Min(content.Length, start + WidestLine);
        if (end < content.Length && char.IsLowSurrogate(content[end]))
            end++;
        page.Append("    ").Append(start > 0 ? "…" : "").Append(Shown(content[start..end])).Append(end < content.Length ? "…" : "").Append('\n');
        if (column < 1)
            return;
        page.Append("    ").Append(' ', (start > 0 ? 1 : 0) + Width(Shown(content[start..Math.Max(start, fault)]))).Append('^');
        var covered = Math.Min(problem.Length, end - fault);
        if (covered > 1)
            page.Append('~', Math.Max(0, Width(Shown(content[fault..(fault + covered)])) - 1));
        page.Append('\n');
    }

    // A tab or a character that is not seen would move the caret away from the fault.
    private static string Shown(string content) => HiddenCharacters.Replaced(content.Replace('\t', ' '));

    private static int Width(ReadOnlySpan<char> content)
    {
        var width = 0;
        foreach (var rune in content.EnumerateRunes())
        {
            var category = Rune.GetUnicodeCategory(rune);
            if (category is not (UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format))
                width++;
        }

        return width;
    }
}
