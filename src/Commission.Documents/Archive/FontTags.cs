namespace Commission.Documents.Archive;

/// <summary>
/// Replaces the random six letters before the name of every embedded font by letters counted from AAAAAA in order of appearance,
/// so that the same pages are the same bytes.
/// </summary>
internal sealed class FontTags
{
    private readonly Dictionary<string, string> _tags = new(StringComparer.Ordinal);

    public byte[] Replace(byte[] body)
    {
        for (var i = 0; i + 8 < body.Length; i++)
        {
            if (body[i] != (byte)'/' || body[i + 7] != (byte)'+' || !AreLetters(body.AsSpan(i + 1, 6))) continue;
            var old = System.Text.Encoding.ASCII.GetString(body, i + 1, 6);
            if (!_tags.TryGetValue(old, out var tag)) _tags.Add(old, tag = Letters(_tags.Count));
            System.Text.Encoding.ASCII.GetBytes(tag, body.AsSpan(i + 1));
        }

        return body;
    }

    private static bool AreLetters(ReadOnlySpan<byte> text) => !text.ContainsAnyExceptInRange((byte)'A', (byte)'Z');

    private static string Letters(int count)
    {
        Span<char> letters = stackalloc char[6];
        for (var i = 5; i >= 0; i--)
        {
            letters[i] = (char)('A' + (count % 26));
            count /= 26;
        }

        return new string(letters);
    }
}
