using System.Text;

namespace Commission.Cli.Console;

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
