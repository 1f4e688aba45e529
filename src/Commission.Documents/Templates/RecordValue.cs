using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Xml;
using Fluid;
using Fluid.Values;

namespace Commission.Documents.Templates;

/// <summary>Shows JSON to Liquid. Members are turned into values when a template asks for them: the long series of figures never are.</summary>
internal sealed class RecordValue(JsonElement members) : IFluidIndexable
{
    private readonly Dictionary<string, FluidValue> _seen = new(StringComparer.Ordinal);

    public int Count => members.GetPropertyCount();

    public IEnumerable<string> Keys => members.EnumerateObject().Select(member => member.Name);

    public bool TryGetValue(string name, out FluidValue value)
    {
        if (_seen.TryGetValue(name, out value!))
            return true;
        if (!members.TryGetProperty(name, out var member))
            throw new UnknownMemberException(name, [.. Keys.Order(StringComparer.Ordinal)]);

        value = Of(member);
        _seen.Add(name, value);
        return true;
    }

    public static FluidValue Of(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.Object => new DictionaryValue(new RecordValue(json)),
        JsonValueKind.Array => Array(json),
        JsonValueKind.String => new StringValue(Writable(json.GetString()!)),
        JsonValueKind.Number => NumberValue.Create(json.TryGetDecimal(out var number) ? number : 0),
        JsonValueKind.True => BooleanValue.True,
        JsonValueKind.False => BooleanValue.False,
        _ => NothingValue.Instance,
    };

    private static ArrayValue Array(JsonElement json)
    {
        var items = new FluidValue[json.GetArrayLength()];
        var i = 0;
        foreach (var item in json.EnumerateArray())
            items[i++] = Of(item);
        return new ArrayValue(items);
    }

    // XML has no way to write most control characters; a record made elsewhere may hold them.
    private static string Writable(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (!IsXml(text, i))
                return Replaced(text);
            if (char.IsHighSurrogate(text[i]))
                i++;
        }

        return text;
    }

    private static string Replaced(string text)
    {
        var output = text.ToCharArray();
        for (var i = 0; i < output.Length; i++)
        {
            if (!IsXml(text, i))
                output[i] = '\uFFFD';
            else if (char.IsHighSurrogate(text[i]))
                i++;
        }

        return new string(output);
    }

    private static bool IsXml(string text, int i) =>
        XmlConvert.IsXmlChar(text[i]) || (i + 1 < text.Length && XmlConvert.IsXmlSurrogatePair(text[i + 1], text[i]));
}

/// <summary>
/// A member that is there and has no value (JSON null). It is false and prints nothing, and unlike the engine's own nil it is
/// not taken for a misspelt name.
/// </summary>
internal sealed class NothingValue : FluidValue
{
    private NothingValue()
    {
    }

    public static NothingValue Instance { get; } = new();

    public override FluidValues Type => FluidValues.Object;

    public override bool Equals(FluidValue other) => other is NothingValue || other.IsNil();

    public override bool ToBooleanValue() => false;

    public override decimal ToNumberValue() => 0;

    public override string ToStringValue() => "";

    public override object ToObjectValue() => "";

    public override ValueTask<FluidValue> GetValueAsync(string name, TemplateContext context) => new(this);

    public override ValueTask WriteToAsync(TextWriter writer, TextEncoder encoder, CultureInfo cultureInfo) => ValueTask.CompletedTask;
}

/// <summary>Carries a member name that the record does not have out of the template engine; caught where templates are rendered.</summary>
internal sealed class UnknownMemberException(string name, IReadOnlyList<string> known) : Exception(name)
{
    public string Name { get; } = name;

    public IReadOnlyList<string> Known { get; } = known;
}
