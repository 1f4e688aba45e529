using Xunit;
using static Commission.Messages.Tests.Formatting;

namespace Commission.Messages.Tests;

/// <summary>Plural categories, decimal signs, days and lists as Unicode CLDR has them.</summary>
public sealed class LanguageTests
{
    // CLDR, common/supplemental/plurals.xml, type cardinal, locales de and en: one is "i = 1 and v = 0" with the sample 1;
    // other has the integer samples 0, 2~16, 100, 1000, 10000, 100000, 1000000 and the decimal samples 0.0~1.5, 10.0, 100.0 …
    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public void English_and_German_have_one_and_other(string code)
    {
        var language = Language.Find(code)!;
        Assert.Equal(PluralCategory.One, language.Plural(1, 0));
        foreach (var integer in new[] { 0, 2, 3, 9, 11, 16, 21, 100, 101, 1000, 10_000, 100_000, 1_000_000 })
            Assert.Equal(PluralCategory.Other, language.Plural(integer, 0));
        for (var tenths = 0; tenths <= 15; tenths++)
            Assert.Equal(PluralCategory.Other, language.Plural(tenths / 10.0, 1));
        Assert.Equal(PluralCategory.Other, language.Plural(1_000_000, 1));
        Assert.Equal(["one", "other"], language.PluralKeys);
    }

    // The same file, locale es: one is "n = 1" with the samples 1, 1.0, 1.00, 1.000; many is "e = 0 and i != 0 and i % 1000000 = 0 and v = 0 …"
    // with the sample 1000000; other has 0, 2~16, 100, 1000, 10000, 100000 and 0.0~0.9, 1.1~1.6, 1000000.0.
    [Fact]
    public void Spanish_has_one_many_and_other()
    {
        foreach (var decimals in new[] { 0, 1, 2, 3, 4 })
            Assert.Equal(PluralCategory.One, Language.Spanish.Plural(1, decimals));
        foreach (var million in new[] { 1_000_000, 2_000_000, 6_000_000 })
            Assert.Equal(PluralCategory.Many, Language.Spanish.Plural(million, 0));
        foreach (var integer in new[] { 0, 2, 16, 21, 100, 1000, 10_000, 100_000, 1_000_001 })
            Assert.Equal(PluralCategory.Other, Language.Spanish.Plural(integer, 0));
        foreach (var tenth in new[] { 0.0, 0.9, 1.1, 1.6, 10, 1_000_000 })
            Assert.Equal(PluralCategory.Other, Language.Spanish.Plural(tenth, 1));
        Assert.Equal(["one", "many", "other"], Language.Spanish.PluralKeys);
    }

    [Theory]
    [InlineData(1, "Se halló una fuga.")]
    [InlineData(2, "Se hallaron 2 fugas.")]
    [InlineData(3_000_000, "Se hallaron 3000000 de fugas.")]
    public void A_Spanish_count_takes_the_text_of_its_category(int count, string expected) => Assert.Equal(
        expected,
        Text(Language.Spanish, "m = { $n ->\n [one] Se halló una fuga.\n [many] Se hallaron { $n } de fugas.\n*[other] Se hallaron { $n } fugas.\n }", "m", Count("n", count)));

    // CLDR 44, common/main: decimal signs of es and de are commas; short days are d/M/yy and dd.MM.yy, here with all digits; lists end in y, o, und, oder.
    [Fact]
    public void Numbers_days_and_times_follow_the_language()
    {
        const string File = "m = { $p } { $n } { $d } { $t } { $day } { $e }";
        NamedValue[] values =
        [
            new("p", new QuantityValue(1000, "mass", "kg", 1.25, 2)), new("n", new NumberValue(2.5, 1)), new("d", new DurationValue(570)), new("t", TimeValue.At(new TimeOnly(14, 50))),
            new("day", new DateValue(new DateOnly(2026, 3, 9))), new("e", TimeValue.After(75)),
        ];
        Assert.Equal("1.25 kg 2.5 9.5 min 14:50 2026-03-09 1.3 min", Text(Language.English, File, "m", values));
        Assert.Equal("1,25 kg 2,5 9,5 min 14:50 09/03/2026 1,3 min", Text(Language.Spanish, File, "m", values));
        Assert.Equal("1,25 kg 2,5 9,5 min 14:50 09.03.2026 1,3 min", Text(Language.German, File, "m", values));
    }

    [Theory]
    [InlineData("en", "low, high and low2", "low or high")]
    [InlineData("es", "low, high y low2", "low o high")]
    [InlineData("de", "low, high und low2", "low oder high")]
    public void Lists_are_joined_by_the_language(string code, string and, string or)
    {
        var writer = Writer(_ => null);
        Assert.Equal(and, writer.Format(Names(ListJoin.And, "low", "high", "low2"), Language.Find(code)!));
        Assert.Equal(or, writer.Format(Names(ListJoin.Or, "low", "high"), Language.Find(code)!));
        Assert.Equal("low, high", writer.Format(Names(ListJoin.Comma, "low", "high"), Language.Find(code)!));
        Assert.Equal("low", writer.Format(Names(ListJoin.And, "low"), Language.Find(code)!));
    }

    // Real Academia Española, Diccionario panhispánico de dudas, "y" and "o": e before the sound i, but not before a diphthong such as hie-; u before the sound o.
    [Theory]
    [InlineData(ListJoin.And, "indicador", "A e indicador")]
    [InlineData(ListJoin.And, "hilo", "A e hilo")]
    [InlineData(ListJoin.And, "hielo", "A y hielo")]
    [InlineData(ListJoin.And, "ion", "A y ion")]
    [InlineData(ListJoin.And, "aceite", "A y aceite")]
    [InlineData(ListJoin.Or, "otro", "A u otro")]
    [InlineData(ListJoin.Or, "hollín", "A u hollín")]
    [InlineData(ListJoin.Or, "8 bar", "A u 8 bar")]
    [InlineData(ListJoin.Or, "11 bar", "A u 11 bar")]
    [InlineData(ListJoin.Or, "110 bar", "A o 110 bar")]
    [InlineData(ListJoin.Or, "aceite", "A o aceite")]
    public void Spanish_avoids_the_same_vowel_twice(ListJoin join, string last, string expected) =>
        Assert.Equal(expected, Writer(_ => null).Format(Names(join, "A", last), Language.Spanish));

    [Theory]
    [InlineData(45, "45 s")]
    [InlineData(99.4, "99 s")]
    [InlineData(100, "1.7 min")]
    [InlineData(600, "10 min")]
    [InlineData(9_990, "2.8 h")]
    [InlineData(11_520, "3.2 h")]
    public void Spans_have_one_decimal_at_most(double seconds, string expected) => Assert.Equal(expected, Writer(_ => null).Format(new DurationValue(seconds), Language.English));

    [Theory]
    [InlineData(2.345, 2, "2.35")]
    [InlineData(-0.04, 1, "0.0")]
    [InlineData(-0.05, 1, "−0.1")]
    [InlineData(1234567, 0, "1234567")]
    public void Numbers_are_rounded_half_away_from_zero_and_never_minus_nothing(double number, int decimals, string expected) =>
        Assert.Equal(expected, Writer(_ => null).Format(new NumberValue(number, decimals), Language.English));

    [Fact]
    public void Times_of_day_show_seconds_where_there_are_some()
    {
        var writer = Writer(_ => null);
        Assert.Equal("07:05", writer.Format(TimeValue.At(new TimeOnly(7, 5)), Language.English));
        Assert.Equal("07:05:09", writer.Format(TimeValue.At(new TimeOnly(7, 5, 9)), Language.German));
    }
}
