using System.Globalization;
using System.Text;
using Commission.Messages.Fluent;

namespace Commission.Messages;

/// <summary>Prints quantities; whoever knows the units is one.</summary>
public interface IQuantityWriter
{
    /// <summary>A quantity with its unit and, where it has one, its uncertainty.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="language">The language, for the decimal sign.</param>
    string Write(QuantityValue quantity, Language language);
}

/// <summary>Makes text of messages.</summary>
/// <param name="catalogue">The sentences.</param>
/// <param name="quantities">Prints quantities; null where messages hold none.</param>
public sealed class MessageWriter(MessageCatalogue catalogue, IQuantityWriter? quantities)
{
    private const int MostDecimals = 15;

    /// <summary>Writes messages of the catalogues that come with the program; messages that hold quantities need a writer that knows units.</summary>
    public static MessageWriter Words { get; } = new(MessageCatalogue.BuiltIn, null);

    /// <summary>The text of a message.</summary>
    /// <param name="message">The message.</param>
    /// <param name="language">The language.</param>
    /// <exception cref="FormatException">The catalogue has no such message in this language, or it has a gap for which the message brings no value.</exception>
    public string Format(Message message, Language language)
    {
        var text = new StringBuilder(160);
        Append(text, message, language);
        return text.ToString();
    }

    /// <summary>The text of a value.</summary>
    /// <param name="value">The value.</param>
    /// <param name="language">The language.</param>
    public string Format(MessageValue value, Language language)
    {
        var text = new StringBuilder();
        Append(text, value, language);
        return text.ToString();
    }

    private void Append(StringBuilder text, MessageValue value, Language language)
    {
        switch (value)
        {
            case QuantityValue quantity:
                text.Append((quantities ?? throw new FormatException("Nothing here prints quantities.")).Write(quantity, language));
                break;
            case DurationValue duration:
                text.Append(language.Number(Span(duration.Seconds)));
                break;
            case TimeValue { OfDay: { } time }:
                text.Append(time.ToString(time.Second == 0 ? "HH:mm" : "HH:mm:ss", CultureInfo.InvariantCulture));
                break;
            case TimeValue time:
                text.Append(language.Number(Trimmed(time.Elapsed / 60))).Append(" min");
                break;
            case DateValue date:
                text.Append(language.Date(date.Day));
                break;
            case CountValue count:
                text.Append(count.Count);
                break;
            case NumberValue number:
                text.Append(language.Number(Digits(number)));
                break;
            case NameValue name:
                text.Append(name.Name);
                break;
            case SymbolsValue symbols:
                text.Append(language.Number(symbols.Invariant));
                break;
            case TextValue written:
                text.Append(written.Text);
                break;
            case ListValue list:
                Append(text, list, language);
                break;
            case Message message:
                Append(text, message, language);
                break;
            default:
                throw new FormatException($"A value of the kind {value.Kind} is not printed.");
        }
    }

    private void Append(StringBuilder text, Message message, Language language)
    {
        var entry = catalogue.Find(language, message.Phase, message.Name)
            ?? throw new FormatException($"There is no text for {message.Id} in {language.Name}.");
        Append(text, entry.Pattern, new Scope(message, language, []));
    }

    private void Append(StringBuilder text, ListValue list, Language language)
    {
        for (var i = 0; i < list.Items.Length; i++)
        {
            if (i == 0)
            {
                Append(text, list.Items[i], language);
                continue;
            }

            var item = Format(list.Items[i], language);
            text.Append(i < list.Items.Length - 1 ? Language.Between(list.Join) : language.Before(list.Join, item)).Append(item);
        }
    }

    private void Append(StringBuilder text, FluentPattern pattern, Scope scope)
    {
        for (var i = 0; i < pattern.Elements.Count; i++)
        {
            switch (pattern.Elements[i])
            {
                case FluentText piece:
                    text.Append(piece.Value);
                    break;
                case FluentVariable variable when scope.Argument(variable.Name) is { } word:
                    text.Append(word);
                    break;
                case FluentVariable variable:
                    Append(text, scope.Value(variable.Name) ?? throw Missing(variable.Name, scope), scope.Language);
                    break;
                case FluentSelect select:
                    Append(text, Chosen(select, scope).Pattern, scope);
                    break;
                case FluentReference { IsTerm: true } reference:
                    var term = catalogue.Term(scope.Language, scope.Message.Phase, reference.Id) ?? throw Missing("-" + reference.Id, scope);
                    // A term knows only what it is handed.
                    Append(text, term.Pattern, new Scope(scope.Message, scope.Language, reference.Arguments) { IsTerm = true });
                    break;
                case FluentReference reference:
                    var entry = catalogue.Find(scope.Language, scope.Message.Phase, reference.Id) ?? throw Missing(reference.Id, scope);
                    Append(text, entry.Pattern, scope);
                    break;
            }
        }
    }

    // The first key that fits: the exact number, the word, or the plural category of the number as it is printed.
    private static FluentVariant Chosen(FluentSelect select, Scope scope)
    {
        var (word, number) = scope.Argument(select.Selector) is { } argument ? (argument, null) : scope.Value(select.Selector) switch
        {
            ChoiceValue choice => (choice.Option, null),
            CountValue count => (Plural(count.Count, 0), count.Count),
            NumberValue n => (Plural(Round(n), n.Decimals), Round(n)),
            null when scope.IsTerm => ((string?)null, (double?)null),
            null => throw Missing(select.Selector, scope),
            var other => throw new FormatException($"{scope.Message.Id}: no text can hang on ${select.Selector}, which is of the kind {other.Kind}."),
        };
        foreach (var variant in select.Variants)
        {
            if (variant.Number is { } exact ? exact == number : variant.Key == word)
                return variant;
        }

        return select.Default;

        string Plural(double value, int decimals) => Language.KeyOf(scope.Language.Plural(value, decimals));
    }

    private static FormatException Missing(string name, Scope scope) => new($"{scope.Message.Id} brings nothing for {name}.");

    private static string Digits(NumberValue number)
    {
        var text = Round(number).ToString("F" + number.Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.StartsWith('-') && text.AsSpan().IndexOfAnyInRange('1', '9') < 0 ? text[1..] : WithTrueMinus(text);
    }

    /// <summary>A number with the minus sign of print (U+2212) in place of the hyphen that computers write; the reader of jobs takes both.</summary>
    /// <param name="number">A number in the invariant culture.</param>
    public static string WithTrueMinus(string number)
    {
        ArgumentNullException.ThrowIfNull(number);
        return number.Replace('-', '−');
    }

    private static double Round(NumberValue number) =>
        Math.Abs(number.Number) < 1e12 ? (double)Math.Round((decimal)number.Number, Math.Min(number.Decimals, MostDecimals), MidpointRounding.AwayFromZero) : number.Number;

    /// <summary>A span of time as it is read: <c>45 s</c>, <c>9.5 min</c>, <c>3.2 h</c>; at most one decimal, a point.</summary>
    /// <param name="seconds">The span, s, not negative.</param>
    public static string Span(double seconds) => seconds switch
    {
        < 100 => string.Create(CultureInfo.InvariantCulture, $"{seconds:0} s"),
        < 120.5 * 60 => $"{Trimmed(seconds / 60)} min",
        _ => $"{Trimmed(seconds / 3600)} h",
    };

    private static string Trimmed(double value) => Math.Round(value, 1, MidpointRounding.AwayFromZero).ToString("0.#", CultureInfo.InvariantCulture);

    private readonly record struct Scope(Message Message, Language Language, IReadOnlyList<KeyValuePair<string, string>> Arguments)
    {
        public bool IsTerm { get; init; }

        public MessageValue? Value(string name) => IsTerm ? null : Message.Find(name);

        public string? Argument(string name)
        {
            for (var i = 0; i < Arguments.Count; i++)
            {
                if (Arguments[i].Key == name)
                    return Arguments[i].Value;
            }

            return null;
        }
    }
}
