using System.Globalization;
using System.Text.Encodings.Web;
using Fluid;
using Fluid.Values;

namespace Commission.Documents.Templates;

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
