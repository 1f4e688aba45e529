namespace Commission.Measurement.Units;

/// <summary>Makes what phones and word processors type into plain characters, one for one, so that places stay right.</summary>
internal static class PlainText
{
    /// <summary>Longest text that is looked at; a quantity is shorter.</summary>
    public const int Limit = 200;

    public static string Of(string text) => string.Create(text.Length, text, static (plain, source) =>
    {
        for (var i = 0; i < source.Length; i++)
        {
            plain[i] = source[i] switch
            {
                '\t' or '\n' or '\r' or '\u00A0' or '\u2007' or '\u2009' or '\u202F' or '\u200A' => ' ',
                '\u2212' or '\uFF0D' => '-',
                '\u2013' when i == 0 => '-',
                '\u2044' => '/',
                var c => c,
            };
        }
    });
}
