using System.Collections.Immutable;
using Commission.Jobs.Model;
using Commission.Source.Yaml;

namespace Commission.Jobs.Binding;

/// <summary>The cells and axes of a maker's chart. What they are numbers of follows from another key of the chart.</summary>
internal static class ChartBinder
{
    public static IEnumerable<Given<QuantityValue>> Axis(BindingContext context, SourceNode node)
    {
        foreach (var item in (node as SourceSequence)?.Items ?? [])
        {
            if (item is SourceScalar scalar && !context.Rejected.Contains(item)
                && QuantityBinder.Any(context, scalar, context.Any.Values, context.UnitsAt(scalar).ForChart) is { } value)
            {
                yield return value;
            }
        }
    }

    public static ImmutableArray<ImmutableArray<double?>> Rows(BindingContext context, SourceNode node)
    {
        if (node is not SourceSequence rows) return [];

        // One row may be written without the inner brackets.
        if (rows.Items.All(item => item is SourceScalar)) return [Row(context, rows)];
        return [.. rows.Items.OfType<SourceSequence>().Select(row => Row(context, row))];
    }

    private static ImmutableArray<double?> Row(BindingContext context, SourceSequence row)
    {
        var cells = ImmutableArray.CreateBuilder<double?>(row.Items.Count);
        foreach (var item in row.Items)
        {
            if (item is not SourceScalar scalar || context.Rejected.Contains(item)) continue;
            if (scalar.Text is "none" or "-" or "–" or "—" or "dash")
            {
                context.Canonical[scalar] = "none";
                cells.Add(null);
            }
            else
            {
                cells.Add(QuantityBinder.Any(context, scalar, context.Any.Values, context.UnitsAt(scalar).ForChart)?.Value.Si);
            }
        }

        return cells.ToImmutable();
    }
}
