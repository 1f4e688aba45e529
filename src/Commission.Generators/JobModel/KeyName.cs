using System.Text;

namespace Commission.Generators.JobModel;

/// <summary>How a key or a word of the job file is called in C#: <c>vapor pressure</c> is <c>VaporPressure</c>, <c>compressor RLA</c> is <c>CompressorRLA</c>.</summary>
internal static class KeyName
{
    public static string Of(string key)
    {
        var name = new StringBuilder(key.Length);
        var capital = true;
        foreach (var c in key)
        {
            if (c is ' ' or '-' or ',')
            {
                capital = true;
            }
            else if (c != '\'')
            {
                name.Append(capital ? char.ToUpperInvariant(c) : c);
                capital = false;
            }
        }

        return name.ToString();
    }
}
