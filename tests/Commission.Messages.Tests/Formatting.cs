using System.Collections.Immutable;
using System.Globalization;

namespace Commission.Messages.Tests;

/// <summary>Formats messages of a catalogue written in a test.</summary>
internal static class Formatting
{
    public static string Text(string catalogue, string name, params NamedValue[] values) => Text(Language.English, catalogue, name, values);

    public static string Text(Language language, string catalogue, string name, params NamedValue[] values) =>
        Writer(file => file == $"{language}/test.ftl" ? catalogue : null).Format(Message.Of("test", name, [.. values]), language);

    public static MessageWriter Writer(Func<string, string?> files) => new(new MessageCatalogue(files), new PlainQuantities());

    public static NamedValue Count(string name, int count) => new(name, new CountValue(count));

    public static NamedValue Number(string name, double number, int decimals) => new(name, new NumberValue(number, decimals));

    public static NamedValue Name(string name, string value) => new(name, new NameValue(value));

    public static NamedValue Choice(string name, string value) => new(name, new ChoiceValue(value));

    public static ListValue Names(ListJoin join, params string[] names) => new([.. names.Select(n => (MessageValue)new NameValue(n))], join);

    private sealed class PlainQuantities : IQuantityWriter
    {
        public string Write(QuantityValue quantity, Language language) =>
            language.Number(quantity.Value.ToString("F" + quantity.Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)) + " " + quantity.Unit;
    }
}
