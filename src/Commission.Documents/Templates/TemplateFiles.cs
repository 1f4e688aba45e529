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
