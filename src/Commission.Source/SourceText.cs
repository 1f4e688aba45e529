using System.Globalization;
using System.Text;
using Commission.Messages;

namespace Commission.Source;

/// <summary>The text of one file, checked to be plain UTF-8 text that a person can have written, cut into lines.</summary>
public sealed class SourceText
{
    /// <summary>The largest text file that is read, in bytes (4 MB). A job file has a few thousand.</summary>
    public const int MaximumBytes = 4 * 1024 * 1024;

    private SourceText(string file, string text, IReadOnlyList<string> lines)
    {
        File = file;
        Text = text;
        Lines = lines;
    }

    /// <summary>The file as the user named it, or relative to the job's folder.</summary>
    public string File { get; }

    /// <summary>The whole text without a byte order mark.</summary>
    public string Text { get; }

    /// <summary>The lines without their ends; CR, LF and CRLF all end a line.</summary>
    public IReadOnlyList<string> Lines { get; }

    /// <summary>Decodes a file's bytes. Refuses files over <see cref="MaximumBytes"/>, bytes that are not UTF-8 and control characters.</summary>
    /// <param name="file">The file as the user named it.</param>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="problems">Receives what is wrong.</param>
    /// <returns>The text, or null when at least one problem was added.</returns>
    public static SourceText? Decode(string file, byte[] bytes, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentNullException.ThrowIfNull(problems);
        if (bytes.Length > MaximumBytes)
        {
            problems.Add(SourceLocation.WholeFile(file),
                YamlMessages.TooLarge(new(bytes.Length / 1048576.0, 1)), null, YamlMessages.TooLargeNext, "too-large");
            return null;
        }

        var content = bytes.AsSpan();
        if (content.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]))
            content = content[3..];
        if (content.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || content.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]))
        {
            problems.Add(SourceLocation.WholeFile(file), YamlMessages.Utf16, YamlMessages.Utf8Expected, YamlMessages.Utf8Next, "not-utf8");
            return null;
        }

        string text;
        try
        {
            text = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true).GetString(content);
        }
        catch (DecoderFallbackException)
        {
            problems.Add(PlaceOfBadBytes(file, content, out var found), found, YamlMessages.Utf8Expected, YamlMessages.NotUtf8Next, "not-utf8");
            return null;
        }

        var before = problems.Count;
        var lines = SplitLines(text);
        ReportControlCharacters(file, lines, problems);
        return problems.Count > before ? null : new SourceText(file, text, lines);
    }

    private static List<string> SplitLines(string text)
    {
        var lines = new List<string>();
        var start = 0;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] is not ('\r' or '\n'))
                continue;
            lines.Add(text[start..i]);
            if (text[i] == '\r' && i + 1 < text.Length && text[i + 1] == '\n')
                i++;
            start = i + 1;
        }

        lines.Add(text[start..]);
        return lines;
    }

    // A binary file would give thousands of these: a few say enough.
    private static void ReportControlCharacters(string file, List<string> lines, ProblemList problems)
    {
        const int enough = 5;
        var reported = 0;
        for (var line = 0; line < lines.Count; line++)
        {
            var text = lines[line];
            for (var column = 0; column < text.Length; column++)
            {
                if (KindOfForbidden(text[column]) is not { } kind)
                    continue;
                problems.Add(new SourceLocation(file, line + 1, column + 1), YamlMessages.ControlCharacter(kind, new($"U+{(int)text[column]:X4}")), null,
                    YamlMessages.ControlCharacterNext, "control-character");
                if (++reported >= enough)
                    return;
            }
        }
    }

    private static YamlMessages.ControlCharacterKind? KindOfForbidden(char c) => c switch
    {
        '\t' => null,
        '\0' => YamlMessages.ControlCharacterKind.Nul,
        '\uFEFF' => YamlMessages.ControlCharacterKind.Mark,
        '\u0085' or '\u2028' or '\u2029' => YamlMessages.ControlCharacterKind.Separator,
        _ when char.IsControl(c) => YamlMessages.ControlCharacterKind.Control,
        _ => null,
    };

    private static SourceLocation PlaceOfBadBytes(string file, ReadOnlySpan<byte> content, out Message found)
    {
        var line = 1;
        var column = 1;
        while (Rune.DecodeFromUtf8(content, out var rune, out var used) == System.Buffers.OperationStatus.Done)
        {
            content = content[used..];
            if (rune.Value == '\n')
            {
                line++;
                column = 1;
            }
            else
            {
                column += rune.Utf16SequenceLength;
            }
        }

        found = YamlMessages.NotUtf8(new((content.IsEmpty ? (byte)0 : content[0]).ToString("X2", CultureInfo.InvariantCulture)));
        return new SourceLocation(file, line, column);
    }
}
