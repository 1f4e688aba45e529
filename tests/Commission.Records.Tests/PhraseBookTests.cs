using Commission.Messages;
using Xunit;

namespace Commission.Records.Tests;

/// <summary>A record's texts with what they are made of. Decimal signs as CLDR 44 has them for en, es and de.</summary>
public sealed class PhraseBookTests
{
    [Theory]
    [InlineData("en", "118.9 psig + 12.2 psi", "118.9 psig + 12.2 psi")]
    [InlineData("es", "118.9 psig + 12.2 psi", "118,9 psig + 12,2 psi")]
    [InlineData("de", "− 0.50 K, k = 2.00", "− 0,50 K, k = 2,00")]
    [InlineData("de", "R. 3. a.b .5 5.", "R. 3. a.b .5 5.")]
    [InlineData("de", "12,5 bar", "12,5 bar")]
    public void Symbols_take_the_decimal_sign_of_the_language(string code, string invariant, string text)
    {
        var language = Language.Find(code)!;
        Assert.Equal(text, new PhraseBook(language).Symbols(invariant));
        Assert.Equal(text, new PhraseBook(language).Symbols(text));
    }

    [Fact]
    public void Only_numbers_with_decimals_are_remembered_without_a_value()
    {
        var book = new PhraseBook(Language.German);
        book.Symbols("500 micron");
        book.Symbols("1.5 K");
        book.Text(new SymbolsValue("2.5 K"));
        Assert.Equal([new Phrase("1,5 K"), new Phrase("2,5 K")], book.Entries());
    }

    [Fact]
    public void A_message_is_remembered_once_and_names_and_the_crews_words_are_not()
    {
        var book = new PhraseBook(Language.English);
        Assert.Equal("pass", book.Text(RecordMessages.VerdictPass));
        Assert.Equal("pass", book.Text(RecordMessages.VerdictPass));
        Assert.Equal("R-32", book.Text(new NameValue("R-32")));
        Assert.Equal("windy", book.Text(new TextValue("windy")));
        Assert.Equal([new Phrase("pass", RecordMessages.VerdictPass)], book.Entries());
    }

    [Fact]
    public void Entries_are_in_the_order_of_their_characters()
    {
        var book = new PhraseBook(Language.English);
        foreach (var text in new[] { "b 1.5", "a 1.5", "B 1.5", "é 1.5" })
            book.Symbols(text);
        Assert.Equal(["B 1.5", "a 1.5", "b 1.5", "é 1.5"], book.Entries().Select(p => p.Text));
    }
}
