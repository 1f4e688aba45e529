using System.Globalization;

namespace Commission.Messages;

/// <summary>The plural categories of Unicode CLDR that English, Spanish and German use.</summary>
public enum PluralCategory
{
    /// <summary>One.</summary>
    One,

    /// <summary>Whole millions, in Spanish.</summary>
    Many,

    /// <summary>Everything else.</summary>
    Other,
}

/// <summary>How several values are joined.</summary>
public enum ListJoin
{
    /// <summary>a, b and c.</summary>
    And,

    /// <summary>a, b or c.</summary>
    Or,

    /// <summary>a, b, c.</summary>
    Comma,

    /// <summary>One sentence after the other.</summary>
    Sentences,

    /// <summary>a; b; c.</summary>
    Semicolons,
}

/// <summary>A language: plural categories, decimal sign, dates, lists. Units do not belong to it.</summary>
public sealed class Language
{
    private const char Point = '.';

    private readonly char _decimalSign;
    private readonly string _date;
    private readonly string _and;
    private readonly string _or;

    private Language(string code, string name, char decimalSign, string date, string and, string or)
    {
        Code = code;
        Name = name;
        _decimalSign = decimalSign;
        _date = date;
        _and = and;
        _or = or;
    }

    /// <summary>English; days as ISO 8601 writes them, because month and day are read in either order.</summary>
    public static Language English { get; } = new("en", "English", Point, "yyyy-MM-dd", "and", "or");

    /// <summary>Spanish, as CLDR 44 has it for <c>es</c>.</summary>
    public static Language Spanish { get; } = new("es", "Spanish", ',', "dd/MM/yyyy", "y", "o");

    /// <summary>German, as CLDR 44 has it for <c>de</c>.</summary>
    public static Language German { get; } = new("de", "German", ',', "dd.MM.yyyy", "und", "oder");

    /// <summary>The languages a catalogue may be in.</summary>
    public static IReadOnlyList<Language> All { get; } = [English, Spanish, German];

    /// <summary>Two letters of ISO 639-1.</summary>
    public string Code { get; }

    /// <summary>Its English name.</summary>
    public string Name { get; }

    /// <summary>The keys that a plural choice may have, as Fluent and CLDR write them.</summary>
    public IReadOnlyList<string> PluralKeys => this == Spanish ? ["one", "many", "other"] : ["one", "other"];

    /// <summary>The language of a code; null when there is none.</summary>
    /// <param name="code">Two letters.</param>
    public static Language? Find(string code) => All.FirstOrDefault(l => l.Code == code);

    /// <summary>
    /// The plural category of a number as it is printed (CLDR 44, plural rules of type cardinal). English and German: one is the integer 1
    /// without decimals; Spanish: one is everything that equals 1, many are whole millions.
    /// </summary>
    /// <param name="number">The number as printed; 0 or above.</param>
    /// <param name="decimals">Digits printed behind the decimal sign.</param>
    public PluralCategory Plural(double number, int decimals)
    {
        var n = Math.Abs(number);
        if (this != Spanish)
            return n == 1 && decimals == 0 ? PluralCategory.One : PluralCategory.Other;
        return n == 1 ? PluralCategory.One
            : decimals == 0 && n > 0 && n % 1_000_000 == 0 ? PluralCategory.Many
            : PluralCategory.Other;
    }

    /// <summary>The key of a plural category.</summary>
    /// <param name="category">The category.</param>
    public static string KeyOf(PluralCategory category) => category switch
    {
        PluralCategory.One => "one",
        PluralCategory.Many => "many",
        _ => "other",
    };

    /// <summary>A number as this language writes it, or a row of numbers, units and symbols: the point between two digits becomes the sign of this language.</summary>
    /// <param name="invariant">Text with a point for decimals and no sign between thousands; text that this language wrote already stays.</param>
    public string Number(string invariant)
    {
        ArgumentNullException.ThrowIfNull(invariant);
        if (_decimalSign == Point)
            return invariant;
        char[]? written = null;
        for (var i = 1; i < invariant.Length - 1; i++)
        {
            if (invariant[i] == Point && char.IsAsciiDigit(invariant[i - 1]) && char.IsAsciiDigit(invariant[i + 1]))
                (written ??= invariant.ToCharArray())[i] = _decimalSign;
        }

        return written is null ? invariant : new string(written);
    }

    /// <summary>Whether a text holds a decimal sign of this language between two digits.</summary>
    /// <param name="written">Numbers, units and symbols in this language.</param>
    public bool HasDecimals(ReadOnlySpan<char> written)
    {
        for (var i = 1; i < written.Length - 1; i++)
        {
            if (written[i] == _decimalSign && char.IsAsciiDigit(written[i - 1]) && char.IsAsciiDigit(written[i + 1]))
                return true;
        }

        return false;
    }

    /// <summary>A day.</summary>
    /// <param name="day">The day.</param>
    public string Date(DateOnly day) => day.ToString(_date, CultureInfo.InvariantCulture);

    /// <summary>What stands between two of several items that are not the last two.</summary>
    /// <param name="join">How they are joined.</param>
    internal static string Between(ListJoin join) => join switch { ListJoin.Sentences => " ", ListJoin.Semicolons => "; ", _ => ", " };

    /// <summary>The words between the last two of several items: Spanish avoids the same vowel twice (y becomes e before i, o becomes u before o).</summary>
    /// <param name="join">How they are joined.</param>
    /// <param name="last">The last item as written.</param>
    internal string Before(ListJoin join, ReadOnlySpan<char> last)
    {
        if (join is not (ListJoin.And or ListJoin.Or))
            return Between(join);
        var word = join == ListJoin.And ? _and : _or;
        if (this == Spanish && last.Length > 0)
        {
            var sound = last[0] is 'h' or 'H' ? last[1..] : last;
            if (join == ListJoin.And && sound is ['i' or 'I' or 'í' or 'Í', ..] && sound is not ['i' or 'I', 'a' or 'e' or 'o', ..])
                word = "e";
            if (join == ListJoin.Or && (sound is ['o' or 'O' or 'ó' or 'Ó' or '8', ..] or ['1', '1'] or ['1', '1', ' ', ..]))
                word = "u";
        }

        return $" {word} ";
    }

    /// <inheritdoc/>
    public override string ToString() => Code;
}
