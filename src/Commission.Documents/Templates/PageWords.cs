using System.Collections.Immutable;
using Commission.Messages;
using Commission.Records;
using Fluid;
using Fluid.Values;

namespace Commission.Documents.Templates;

/// <summary>
/// The words of the pages themselves, in the language of the record: messages of the catalogue <c>pages</c>. A template names one with the filter
/// <c>say</c> and brings its values by name: <c>{{ 'more-failed' | say: more: 3 }}</c>.
/// </summary>
internal static class PageWords
{
    /// <summary>The filter's name.</summary>
    public const string Filter = "say";

    private const string Phase = "pages";
    private const int DigitsOfSeal = 12;

    /// <summary>A message as text.</summary>
    /// <param name="message">The message.</param>
    /// <param name="language">Code of the record's language.</param>
    public static string Text(Message message, string language) => RecordWords.Text(message, Language.Find(language) ?? Language.English);

    /// <summary>The first digits of a record's digest, enough to tell two records apart at a glance, and the program; without a digest the program alone.</summary>
    /// <param name="record">The record.</param>
    public static string Seal(CommissioningRecord record) => record.Digest.Length < DigitsOfSeal
        ? record.Program
        : Text(PagesMessages.Seal(new(record.Digest[..DigitsOfSeal]), new(record.Program)), record.Language);

    /// <summary>The filter.</summary>
    /// <exception cref="FormatException">There is no such message, or a value of it is missing.</exception>
    public static ValueTask<FluidValue> Say(FluidValue input, FilterArguments arguments, TemplateContext context)
    {
        var values = ImmutableArray.CreateBuilder<NamedValue>();
        foreach (var name in arguments.Names)
            values.Add(new NamedValue(name, Value(arguments[name])));
        return new ValueTask<FluidValue>(new StringValue(Text(Message.Of(Phase, input.ToStringValue(), values.ToImmutable()), context.GetValue("language").ToStringValue())));
    }

    private static MessageValue Value(FluidValue value) =>
        value.Type == FluidValues.Number ? new CountValue((int)value.ToNumberValue()) : new TextValue(value.ToStringValue());
}
