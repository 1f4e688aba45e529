using Commission.Jobs.Model;
using Commission.Jobs.Problems;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;
using QuantityValue = Commission.Jobs.Model.QuantityValue;

namespace Commission.Jobs.Binding;

/// <summary>Turns written quantities into values, with the field's own unit for bare numbers, and refuses what cannot be.</summary>
internal static class QuantityBinder
{
    // A standard uncertainty is at most twice what stands behind ±, and at least a tenth.
    private const double LeastCoverage = 0.5;

    // kg/m³: water capacity is stamped to three digits, and water at 15 °C differs in the fourth.
    private const double WaterDensity = 1000;
    private const double MostCoverage = 10;

    // Nobody states less of a reading or a full scale; a bound of nothing is no bound.
    private const double LeastAccuracy = 1e-12;

    public static Given<T>? Quantity<T>(BindingContext context, SourceScalar scalar, QuantityField field)
        where T : struct, IQuantity<T> =>
        Parse(context, scalar, field) is { } parsed ? Give(context, scalar, T.FromSi(parsed.Si), parsed) : null;

    /// <summary>A mass of water, or the litres that hold it.</summary>
    public static Given<Mass>? Water(BindingContext context, SourceScalar scalar, QuantityField field)
    {
        if (!Digits.AreRead(context, scalar, field.Key))
            return null;
        if (QuantityParser.Parse(scalar.Text, Dimension.Volume, null) is not { Ok: true, Value: var litres })
            return Quantity<Mass>(context, scalar, field);
        var mass = litres with { Si = litres.Si * WaterDensity, ResolutionSi = litres.ResolutionSi * WaterDensity };
        return IsPlausible(context, scalar, field.Key, mass, field.Within) ? Give(context, scalar, Mass.FromSi(mass.Si), mass) : null;
    }

    public static Given<StatedPressure>? Pressure(BindingContext context, SourceScalar scalar, QuantityField field) =>
        Parse(context, scalar, field) is { } parsed ? Give(context, scalar, parsed.ToStatedPressure(), parsed) : null;

    public static Given<Model.QuantityRange<T>>? Range<T>(BindingContext context, SourceScalar scalar, QuantityField field)
        where T : struct, IQuantity<T>
    {
        if (!Digits.AreRead(context, scalar, field.Key))
            return null;
        var bare = context.UnitsAt(scalar).ForField(field);

        // A plate that says 400 V has a range of no width.
        if (QuantityParser.Parse(scalar.Text, field.Dimension, bare) is { Ok: true, Value: var single })
        {
            if (!IsPlausible(context, scalar, field.Key, single, field.Within))
                return null;
            var end = Give(context, scalar, T.FromSi(single.Si), single);
            return Give(context, scalar, new Model.QuantityRange<T>(end, end), single);
        }

        var result = QuantityParser.ParseRange(scalar.Text, field.Dimension, bare);
        if (!result.Ok)
        {
            Report(context, scalar, result.Fault);
            return null;
        }

        var (lower, upper) = (result.Value.Lower, result.Value.Upper);
        if (!IsPlausible(context, scalar, field.Key, lower, field.Within) || !IsPlausible(context, scalar, field.Key, upper, field.Within))
            return null;
        var range = new Model.QuantityRange<T>(Give(context, scalar, T.FromSi(lower.Si), lower), Give(context, scalar, T.FromSi(upper.Si), upper));
        return WordBinder.Give(context, scalar, range, result.Value.Canonical);
    }

    public static Given<QuantityValue>? Any(
        BindingContext context, SourceScalar scalar, string key, IReadOnlyList<Dimension> dimensions, PlausibleRange[] ranges, Func<Dimension, Unit?> bareUnit)
    {
        if (!Digits.AreRead(context, scalar, key))
            return null;
        ParseFault? first = null;
        foreach (var dimension in dimensions)
        {
            var result = QuantityParser.Parse(scalar.Text, dimension, bareUnit(dimension));
            if (result.Ok)
            {
                var parsed = result.Value;
                return IsPlausible(context, scalar, key, parsed, Array.Find(ranges, r => r.Dimension == dimension))
                    ? Give(context, scalar, new QuantityValue(parsed.Si, dimension, parsed.Reference ?? PressureReference.Absolute, parsed.Unit.Symbol), parsed)
                    : null;
            }

            // A fault of the number or its reference is the one to tell; a wrong dimension may suit the next candidate.
            if (first is null || first.Kind is FaultKind.WrongDimension or FaultKind.UnknownUnit && result.Fault.Kind is not (FaultKind.WrongDimension or FaultKind.UnknownUnit))
                first = result.Fault;
        }

        Report(context, scalar, first!);
        return null;
    }

    public static Given<AccuracyStatement>? Accuracy(BindingContext context, SourceScalar scalar, string key, IReadOnlyList<Dimension> dimensions, PlausibleRange[] ranges)
    {
        if (!Digits.AreRead(context, scalar, key))
            return null;
        ParseFault? first = null;
        foreach (var dimension in dimensions)
        {
            var result = AccuracyStatement.Parse(scalar.Text, dimension);
            if (result.Ok)
            {
                var statement = result.Value;
                if (!IsPlausible(statement, AnyDimensions.Of(dimension).Differences[0], ranges))
                {
                    context.Complain(scalar, JobMessages.AccuracyCannotBe(ValueText.Short(scalar.Text)), JobMessages.AccuracyExpected, JobMessages.AccuracyNext, "range");
                    return null;
                }

                context.Canonical[scalar] = statement.Canonical;
                return new Given<AccuracyStatement>(statement, scalar.Location, statement.Canonical);
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
        var units = context.UnitsAt(scalar);
        var advice = units.IsSi ? fault.SiAdvice : fault.Advice;
        if (fault.Kind == FaultKind.UnitMissing && !units.HasPreset)
        {
            // The units line itself was refused: that was told, and is the cause of this.
            if (units.Refused)
                return;
            if (takesBare && context.AdviseUnitsOnce())
                advice = CommonMessages.TwoSentences(advice, JobMessages.UnitsNext);
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

    private static ParsedQuantity? Parse(BindingContext context, SourceScalar scalar, QuantityField field)
    {
        if (!Digits.AreRead(context, scalar, field.Key))
            return null;
        var bare = context.UnitsAt(scalar).ForField(field);
        var result = field.IsGauge ? QuantityParser.ParseGauge(scalar.Text, bare) : QuantityParser.Parse(scalar.Text, field.Dimension, bare);
        if (result.Ok)
            return IsPlausible(context, scalar, field.Key, result.Value, field.Within) ? result.Value : null;
        Report(context, scalar, result.Fault, takesBare: true);
        return null;
    }

    private static bool IsPlausible(BindingContext context, SourceScalar scalar, string key, ParsedQuantity parsed, PlausibleRange? range)
    {
        if (range is null)
            return true;
        if (!range.Holds(parsed.Si, parsed.Reference))
        {
            context.Complain(scalar, JobMessages.CannotBe(new(key), new(parsed.Canonical)), range.InWords(parsed.Unit), QuantityMessages.NumberAndUnit, "range");
            return false;
        }

        if (parsed.Uncertainty is not { } stated)
            return true;
        if (stated.HalfWidthSi > LeastAccuracy * range.Width && stated.HalfWidthSi <= range.Width && stated.CoverageFactor is >= LeastCoverage and <= MostCoverage)
            return true;
        context.Complain(scalar, JobMessages.DoubtCannotBe(new(key), new(parsed.Canonical)), JobMessages.DoubtExpected, JobMessages.DoubtNext, "range");
        return false;
    }

    private static bool IsPlausible(AccuracyStatement statement, Dimension difference, PlausibleRange[] ranges)
    {
        if (statement.CoverageFactor is { } k && k is not (>= LeastCoverage and <= MostCoverage))
            return false;
        var unit = UnitTable.For(difference).First();
        double Bound(double reading, double fullScale, double step) => statement.HalfWidthAt(reading / unit.Factor, unit, fullScale, step) ?? double.NaN;
        var most = Array.Find(ranges, r => r.Dimension == difference)?.Most ?? double.MaxValue;
        return Bound(1, 1, 1) > LeastAccuracy
            && Bound(0, 0, 0) <= most

            // A whole reading, a whole full scale, ten thousand digits.
            && Bound(1, 0, 0) <= most + 1
            && Bound(0, 1, 0) <= most + 1
            && Bound(0, 0, 1) <= most + 10_000;
    }

    private static Given<T> Give<T>(BindingContext context, SourceScalar scalar, T value, ParsedQuantity parsed)
    {
        context.Canonical[scalar] = parsed.Canonical;
        return new Given<T>(value, scalar.Location, parsed.Canonical)
        {
            Stated = parsed.Uncertainty is { } stated ? new Stated(stated.HalfWidthSi, stated.CoverageFactor) : null,
            Step = parsed.ResolutionSi,
            Number = new WrittenNumber(parsed.Si, parsed.Unit, parsed.Decimals),
        };
    }
}
