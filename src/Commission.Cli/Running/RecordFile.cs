using System.Text;

namespace Commission.Cli.Running;

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

/// <summary>The file name of a record: the job's id with everything a file system could trip over replaced.</summary>
internal static class RecordFileName
{
    private const int LongestName = 80;

    public static string Of(string jobId)
    {
        var name = new StringBuilder(jobId.Length);
        foreach (var c in jobId)
        {
            var safe = char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.';
            if (safe)
                name.Append(c);
            else if (name.Length > 0 && name[^1] != '-')
                name.Append('-');
        }

        var text = name.ToString().Trim('-', '.');
        if (text.Length > LongestName)
            text = text[..LongestName];
        return text.Length == 0 ? "job" : text;
    }
}
