using System.Globalization;
using System.Text.RegularExpressions;

namespace Commission.Measurement.Units;

/// <summary>Reads one number: sign, digits, decimal point, exponent, or a fraction as tubes and flares have them (3/8, 1 1/8, 1-1/8, ½).</summary>
internal static partial class NumberReader
{
    private const string VulgarFractions = "½¼¾⅛⅜⅝⅞⅓⅔";
    private static readonly double[] VulgarValues = [1 / 2.0, 1 / 4.0, 3 / 4.0, 1 / 8.0, 3 / 8.0, 5 / 8.0, 7 / 8.0, 1 / 3.0, 2 / 3.0];
    private static readonly string[] VulgarTexts = ["1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8", "1/3", "2/3"];

    /// <summary>Reads the number at a place of a text that <see cref="PlainText.Of"/> has prepared.</summary>
    public static (NumberToken? Number, ParseFault? Fault) Read(string text, int at)
    {
        if (CommaNumber().Match(text, at) is { Success: true } comma)
            return (null, FaultText.Comma(comma.Value, at));
        if (VulgarNumber().Match(text, at) is { Success: true } vulgar)
            return (ReadVulgar(vulgar), null);
        if (Fraction().Match(text, at) is { Success: true } fraction)
            return ReadFraction(fraction);
        if (Plain().Match(text, at) is { Success: true } plain)
            return ReadPlain(plain);
        return (null, null);
    }

    /// <summary>Whether a number starts here.</summary>
    public static bool StartsAt(string text, int at) => Start().IsMatch(text, at);

    private static (NumberToken? Number, ParseFault? Fault) ReadPlain(Match match)
    {
        var value = double.Parse(match.Value, CultureInfo.InvariantCulture);
        if (!double.IsFinite(value))
            return (null, FaultText.TooLarge(match.Value, match.Index));
        var decimals = match.Groups["decimals"].Length;
        var exponent = match.Groups["exponent"] is { Success: true } e ? int.Parse(e.Value, CultureInfo.InvariantCulture) : 0;
        var digits = match.Value.TrimStart('+');
        if (digits.StartsWith('.'))
            digits = "0" + digits;
        else if (digits.StartsWith("-.", StringComparison.Ordinal))
            digits = "-0" + digits[1..];
        var token = new NumberToken(value == 0 ? 0 : value, Math.Max(0, decimals - exponent), Math.Pow(10, exponent - decimals), digits, match.Index, match.Index + match.Length);
        return (token, null);
    }

    private static (NumberToken? Number, ParseFault? Fault) ReadFraction(Match match)
    {
        var numerator = int.Parse(match.Groups["numerator"].Value, CultureInfo.InvariantCulture);
        var denominator = int.Parse(match.Groups["denominator"].Value, CultureInfo.InvariantCulture);
        if (denominator is < 2 or > 64 || numerator >= denominator)
            return (null, FaultText.OddFraction(match.Value.Trim(), match.Index));
        var whole = match.Groups["whole"] is { Success: true } w ? int.Parse(w.Value, CultureInfo.InvariantCulture) : 0;
        var negative = match.Groups["sign"].Value == "-";
        return (FractionToken(match, whole, numerator / (double)denominator, $"{numerator}/{denominator}", negative), null);
    }

    private static NumberToken ReadVulgar(Match match)
    {
        var which = VulgarFractions.IndexOf(match.Groups["fraction"].Value, StringComparison.Ordinal);
        var whole = match.Groups["whole"] is { Success: true } w ? int.Parse(w.Value, CultureInfo.InvariantCulture) : 0;
        return FractionToken(match, whole, VulgarValues[which], VulgarTexts[which], match.Groups["sign"].Value == "-");
    }

    private static NumberToken FractionToken(Match match, int whole, double part, string text, bool negative)
    {
        var canonical = string.Create(CultureInfo.InvariantCulture, $"{(negative ? "-" : "")}{(whole == 0 ? "" : $"{whole} ")}{text}");
        return new NumberToken(negative ? -(whole + part) : whole + part, 0, null, canonical, match.Index, match.Index + match.Length);
    }

    // A letter after "e" would make it a unit; a digit makes it an exponent.
    [GeneratedRegex(@"\G[+-]?(?:\d{1,30}(?:\.(?<decimals>\d{1,30}))?|\.(?<decimals>\d{1,30}))(?:[eE](?<exponent>[+-]?\d{1,4}))?(?![\d.,])", RegexOptions.None, 10_000)]
    private static partial Regex Plain();

    [GeneratedRegex(@"\G(?<sign>[+-]?)(?:(?<whole>\d{1,4})(?: +|-))?(?<numerator>\d{1,4}) ?/ ?(?<denominator>\d{1,4})(?![\d.,/])", RegexOptions.None, 10_000)]
    private static partial Regex Fraction();

    [GeneratedRegex(@"\G(?<sign>[+-]?)(?:(?<whole>\d{1,4}) *-? *)?(?<fraction>[½¼¾⅛⅜⅝⅞⅓⅔])", RegexOptions.None, 10_000)]
    private static partial Regex VulgarNumber();

    [GeneratedRegex(@"\G[+-]?\d[\d.,]*,\d[\d.,]*", RegexOptions.None, 10_000)]
    private static partial Regex CommaNumber();

    [GeneratedRegex(@"\G[+-]?(?:\.?\d|[½¼¾⅛⅜⅝⅞⅓⅔])", RegexOptions.None, 10_000)]
    private static partial Regex Start();
}

/// <summary>A number as written.</summary>
/// <param name="Value">Its value.</param>
/// <param name="Decimals">Decimals written; zero for a fraction.</param>
/// <param name="Step">One step of its last digit; nothing for a fraction.</param>
/// <param name="Text">Canonical digits.</param>
/// <param name="Start">Where it starts.</param>
/// <param name="End">First character after it.</param>
internal readonly record struct NumberToken(double Value, int Decimals, double? Step, string Text, int Start, int End)
{
    public bool IsWhole => Step == 1;
}

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

/// <summary>A part of what was written, without the spaces around it, that knows where it stands.</summary>
internal readonly record struct Excerpt
{
    public Excerpt(string source, string plain, int start, int end)
    {
        while (start < end && plain[start] == ' ')
            start++;
        while (end > start && plain[end - 1] == ' ')
            end--;
        Source = source;
        Plain = plain[..end];
        Start = start;
        End = end;
    }

    /// <summary>The whole text as written.</summary>
    public string Source { get; }

    /// <summary>The text in plain characters up to the end of the part, so that no reader looks further.</summary>
    public string Plain { get; }

    /// <summary>First character of the part.</summary>
    public int Start { get; }

    /// <summary>First character after the part.</summary>
    public int End { get; }

    /// <summary>The part as written, for quoting.</summary>
    public string Written => Source[Start..End];

    /// <summary>The part in plain characters.</summary>
    public string PlainPart => Plain[Start..End];

    /// <summary>A part of the part.</summary>
    public Excerpt Part(int start, int end) => new(Source, Plain, start, end);
}
