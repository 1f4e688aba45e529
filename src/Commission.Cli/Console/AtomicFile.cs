namespace Commission.Cli.Console;

/// <summary>Writes a file whole or not at all: beside its place, flushed to the disk, then renamed.</summary>
internal static class AtomicFile
{
    public static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        var beside = path + ".part";
        try
        {
            using (var stream = new FileStream(beside, FileMode.Create, FileAccess.Write, FileShare.None))
            {
                stream.Write(bytes);
                stream.Flush(flushToDisk: true);
            }

            File.Move(beside, path, overwrite: true);
        }
        finally
        {
            if (File.Exists(beside))
                File.Delete(beside);
        }
    }
}
