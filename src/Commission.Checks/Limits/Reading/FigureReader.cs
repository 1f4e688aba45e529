using System.Globalization;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Source;
using Commission.Source.Problems;
using Commission.Source.Yaml;

namespace Commission.Checks.Limits.Reading;

/// <summary>Reads the numbers of a limit.</summary>
internal static class FigureReader
{
    private const int LongestSpan = 1200;

    /// <summary>Reads one number of a limit.</summary>
    /// <param name="scalar">The number with its unit.</param>
    /// <param name="definition">What the limit is measured in.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The figure; null, and a problem, when it cannot be read.</returns>
    public static LimitFigure? Read(SourceScalar scalar, LimitDefinition definition, ProblemList problems)
    {
        if (definition.IsMonths) return ReadMonths(scalar, problems);
        if (definition.Quantity is { } quantity) return Read(scalar, quantity, problems);
        problems.Add(scalar.Location, $"\"{definition.Id}\" is a requirement in words and takes no number.", "", "Write it after \"statement:\".", "wrong-form", scalar.Length);
        return null;
    }

    /// <summary>Reads a quantity.</summary>
    /// <param name="scalar">The number with its unit.</param>
    /// <param name="quantity">What it has to measure.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The figure; null, and a problem, when it cannot be read.</returns>
    public static LimitFigure? Read(SourceScalar scalar, Dimension quantity, ProblemList problems)
    {
        var result = QuantityParser.Parse(scalar.Text, quantity, BareUnit(quantity));
        if (!result.Ok)
        {
            Report(scalar, result.Fault, problems);
            return null;
        }

        if (result.Value.Uncertainty is null) return Of(result.Value);
        problems.Add(scalar.Location, $"\"{scalar.Text}\" carries an uncertainty.", "A limit is an exact number.", "Write the number alone, or \"tolerance:\" for a band.", "limit-with-uncertainty", scalar.Length);
        return null;
    }

    /// <summary>Reads both ends of a range.</summary>
    /// <param name="scalar">The range, such as <c>55 to 115 °F</c>.</param>
    /// <param name="quantity">What it has to measure.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>Both figures; null, and a problem, when they cannot be read or nothing lies between them.</returns>
    public static (LimitFigure Lower, LimitFigure Upper)? ReadRange(SourceScalar scalar, Dimension quantity, ProblemList problems)
    {
        var result = QuantityParser.ParseRange(scalar.Text, quantity, BareUnit(quantity));
        if (!result.Ok)
        {
            Report(scalar, result.Fault, problems);
            return null;
        }

        var (lower, upper) = (Of(result.Value.Lower), Of(result.Value.Upper));
        if (lower.Si < upper.Si && lower.Reference == upper.Reference) return (lower, upper);
        problems.Add(scalar.Location, $"Nothing lies within \"{scalar.Text}\".", "The first number has to be below the second, and both of the same kind.", "", "empty-range", scalar.Length);
        return null;
    }

    private static Unit? BareUnit(Dimension quantity) => quantity == Dimension.Ratio ? UnitTable.Find("1", Dimension.Ratio) : null;

    private static LimitFigure Of(ParsedQuantity quantity) => new(quantity.Si, quantity.Canonical, quantity.Unit, quantity.Decimals);

    private static LimitFigure? ReadMonths(SourceScalar scalar, ProblemList problems)
    {
        var parts = scalar.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length == 2
            && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            && parts[1] is "month" or "months" or "year" or "years"
            && number is > 0 and <= LongestSpan)
        {
            var months = parts[1][0] == 'y' ? number * 12 : number;
            return new LimitFigure(months, $"{number} {parts[1]}", null, 0);
        }

        problems.Add(scalar.Location, $"\"{scalar.Text}\" is not a span of the calendar.", "", "Write for example 12 months or 1 year.", "not-a-period", scalar.Length);
        return null;
    }

    private static void Report(SourceScalar scalar, ParseFault fault, ProblemList problems)
    {
        var at = scalar.Location with { Column = scalar.Location.Column + (scalar.IsQuoted ? 1 : 0) + fault.Offset };
        problems.Add(at, fault.Found, fault.Expected, fault.Advice, "bad-quantity", Math.Max(1, fault.Length));
    }
}
