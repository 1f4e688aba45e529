using System.Text.Json;
using Commission.Jobs.Model;
using Commission.Jobs.Schema;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Source.Problems;
using Commission.Source.Yaml;

namespace Commission.Jobs.Binding;

/// <summary>Turns written quantities into values, with the field's own unit for bare numbers.</summary>
internal static class QuantityBinder
{
    public static Given<T>? Quantity<T>(BindingContext context, SourceScalar scalar, JsonElement field)
        where T : struct, IQuantity<T> =>
        Parse(context, scalar, field) is { } parsed ? Give(T.FromSi(parsed.Si), scalar, parsed) : null;

    public static Given<StatedPressure>? Pressure(BindingContext context, SourceScalar scalar, JsonElement field) =>
        Parse(context, scalar, field) is { } parsed ? Give(parsed.ToStatedPressure(), scalar, parsed) : null;

    public static Given<Model.QuantityRange<T>>? Range<T>(BindingContext context, SourceScalar scalar, JsonElement field)
        where T : struct, IQuantity<T>
    {
        var dimension = DimensionOf(field);
        var bare = context.UnitsAt(scalar).ForField(field, dimension);

        // A plate that says 400 V has a range of no width.
        if (QuantityParser.Parse(scalar.Text, dimension, bare) is { Ok: true, Value: var single })
        {
            context.Canonical[scalar] = single.Canonical;
            return new Given<Model.QuantityRange<T>>(new(T.FromSi(single.Si), T.FromSi(single.Si)), scalar.Location, single.Canonical);
        }

        var result = QuantityParser.ParseRange(scalar.Text, dimension, bare);
        if (!result.Ok)
        {
            Report(context, scalar, result.Fault);
            return null;
        }

        context.Canonical[scalar] = result.Value.Canonical;
        return new Given<Model.QuantityRange<T>>(new(T.FromSi(result.Value.Lower.Si), T.FromSi(result.Value.Upper.Si)), scalar.Location, result.Value.Canonical);
    }

    public static Given<QuantityValue>? Any(BindingContext context, SourceScalar scalar, JsonElement field) =>
        Any(context, scalar, JobSchema.Text(field, "x-kind") == "any-difference" ? context.Any.Differences : context.Any.Values, _ => null);

    public static Given<QuantityValue>? Any(BindingContext context, SourceScalar scalar, IReadOnlyList<Dimension> dimensions, Func<Dimension, Unit?> bareUnit)
    {
        ParseFault? first = null;
        foreach (var dimension in dimensions)
        {
            var result = QuantityParser.Parse(scalar.Text, dimension, bareUnit(dimension));
            if (result.Ok)
            {
                var parsed = result.Value;
                return Give(new QuantityValue(parsed.Si, dimension, parsed.Reference ?? PressureReference.Absolute, parsed.Unit.Symbol), scalar, parsed, context);
            }

            // A fault of the number or its reference is the one to tell; a wrong dimension may suit the next candidate.
            if (first is null || first.Kind is FaultKind.WrongDimension or FaultKind.UnknownUnit && result.Fault.Kind is not (FaultKind.WrongDimension or FaultKind.UnknownUnit))
                first = result.Fault;
        }

        Report(context, scalar, first!);
        return null;
    }

    public static Given<AccuracyStatement>? Accuracy(BindingContext context, SourceScalar scalar, string key)
    {
        ParseFault? first = null;
        foreach (var dimension in key == "humidity accuracy" ? [Dimension.Ratio] : context.Any.Values)
        {
            var result = AccuracyStatement.Parse(scalar.Text, dimension);
            if (result.Ok)
            {
                context.Canonical[scalar] = result.Value.Canonical;
                return new Given<AccuracyStatement>(result.Value, scalar.Location, result.Value.Canonical);
            }

            first ??= result.Fault;
        }

        Report(context, scalar, first!);
        return null;
    }

    /// <summary>Adds a parser's fault at the very characters it is about.</summary>
    /// <param name="context">What the binder knows.</param>
    /// <param name="scalar">The value.</param>
    /// <param name="fault">What the parser says.</param>
    /// <param name="takesBare">Whether a number without a unit would do, had the file said what it means.</param>
    public static void Report(BindingContext context, SourceScalar scalar, ParseFault fault, bool takesBare = false)
    {
        var advice = fault.Advice;
        if (fault.Kind == FaultKind.UnitMissing && context.UnitsAt(scalar) is { HasPreset: false } units)
        {
            // The units line itself was refused: that was told, and is the cause of this.
            if (units.Refused) return;
            if (takesBare && context.AdviseUnitsOnce()) advice += " Or write units: us at the top, which gives every bare number its unit.";
        }

        var at = scalar.Location;
        var length = Math.Max(1, fault.Length);
        if (scalar.Length >= scalar.Text.Length)
        {
            // Within quotes the text starts one character later.
            at = at with { Column = at.Column + fault.Offset + (scalar.Length - scalar.Text.Length == 2 ? 1 : 0) };
        }
        else
        {
            length = scalar.Length;
        }

        context.Problems.Add(new Problem(at, fault.Found, fault.Expected, advice) { Code = "quantity-" + fault.Kind, Length = length });
    }

    private static ParsedQuantity? Parse(BindingContext context, SourceScalar scalar, JsonElement field)
    {
        var dimension = DimensionOf(field);
        var result = QuantityParser.Parse(scalar.Text, dimension, context.UnitsAt(scalar).ForField(field, dimension));
        if (!result.Ok)
        {
            Report(context, scalar, result.Fault, takesBare: true);
            return null;
        }

        context.Canonical[scalar] = result.Value.Canonical;
        return result.Value;
    }

    private static Given<T> Give<T>(T value, SourceScalar scalar, ParsedQuantity parsed, BindingContext? context = null)
    {
        if (context is not null) context.Canonical[scalar] = parsed.Canonical;
        return new Given<T>(value, scalar.Location, parsed.Canonical)
        {
            Stated = parsed.Uncertainty is { } stated ? new Stated(stated.HalfWidthSi, stated.CoverageFactor) : null,
            Step = parsed.ResolutionSi,
        };
    }

    private static Dimension DimensionOf(JsonElement field) =>
        Enum.Parse<Dimension>(JobSchema.Text(field, "x-quantity") ?? throw new InvalidOperationException("The field has no x-quantity."));
}
