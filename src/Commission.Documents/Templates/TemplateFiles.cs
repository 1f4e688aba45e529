using System.Globalization;
using System.Text;
using Microsoft.Extensions.FileProviders;
using Microsoft.Extensions.Primitives;

namespace Commission.Documents.Templates;

/// <summary>Gives the template engine the parts of a set, with line marks.</summary>
internal sealed class TemplateFiles(IReadOnlyDictionary<string, string> files) : IFileProvider
{
    public IFileInfo GetFileInfo(string subpath) =>
        files.TryGetValue(subpath, out var text) ? new TemplateFile(subpath, Encoding.UTF8.GetBytes(LineMarks.Insert(subpath, text))) : new NotFoundFileInfo(subpath);

    public IDirectoryContents GetDirectoryContents(string subpath) => NotFoundDirectoryContents.Singleton;

    public IChangeToken Watch(string filter) => NullChangeToken.Singleton;

    private sealed class TemplateFile(string name, byte[] content) : IFileInfo
    {
        public bool Exists => true;

        public long Length => content.Length;

        public string? PhysicalPath => null;

        public string Name => name;

        public DateTimeOffset LastModified => DateTimeOffset.UnixEpoch;

        public bool IsDirectory => false;

        public Stream CreateReadStream() => new MemoryStream(content, writable: false);
    }
}

/// <summary>
/// Puts <c>&lt;?at file:line?&gt;</c> before every element a template writes, so that a fault in the markup can name the template line.
/// Lines stay where they were.
/// </summary>
internal static class LineMarks
{
    public static string Insert(string file, string template)
    {
        var output = new StringBuilder(template.Length + (template.Length / 2));
        var line = 1;
        for (var i = 0; i < template.Length; i++)
        {
            var c = template[i];
            var next = i + 1 < template.Length ? template[i + 1] : '\0';
            if (c == '{' && next is '%' or '{')
            {
                // Liquid itself: copied up to its end, where a < is an operator.
                var close = template.IndexOf(next == '%' ? "%}" : "}}", i + 2, StringComparison.Ordinal);
                var end = close < 0 ? template.Length : close + 2;
                for (; i < end; i++)
                {
                    if (template[i] == '\n')
                        line++;
                    output.Append(template[i]);
                }

                i--;
                continue;
            }

            if (c == '<' && char.IsAsciiLetter(next))
                output.Append("<?at ").Append(file).Append(':').Append(line.ToString(CultureInfo.InvariantCulture)).Append("?>");
            if (c == '\n')
                line++;
            output.Append(c);
        }

        return output.ToString();
    }
}
