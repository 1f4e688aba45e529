using System.Text;
using Commission.Jobs.Files;

namespace Commission.Jobs.Tests;

internal sealed class MemoryFolder : IJobFolder
{
    private readonly Dictionary<string, byte[]> _files = new(StringComparer.Ordinal);

    public byte[] this[string path]
    {
        get => _files[path];
        set => _files[path] = value;
    }

    public MemoryFolder With(string path, string text)
    {
        _files[path] = Encoding.UTF8.GetBytes(text);
        return this;
    }

    public FolderFile Read(string path, long mostBytes)
    {
        if (!_files.TryGetValue(path, out var bytes))
            return FolderFile.Not(FolderFileState.Missing);
        return bytes.LongLength > mostBytes ? FolderFile.Not(FolderFileState.TooLong, bytes.LongLength) : FolderFile.Of(bytes);
    }
}
