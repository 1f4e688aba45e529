using System.Collections.Immutable;
using Commission.Jobs.Logs;
using Commission.Jobs.Model;
using Commission.Jobs.Problems;
using Commission.Jobs.Times;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Source.Yaml;

namespace Commission.Jobs.Binding;

/// <summary>
/// Fills the parts of the model from the source tree. A method for each part is made from the schema while the project is built;
/// here stands what they have in common.
/// </summary>
internal sealed partial class PartBinder(BindingContext context)
{
    private JobTimeline Timeline => context.Timeline;

    // The values by the order of the keys in the schema; null when the node is refused, or is nothing such a part can be made of.
    private SourceNode?[]? Open(SourceNode? node, Func<string, int> ordinal, int count, int shortKey)
    {
        if (node is null || context.Rejected.Contains(node))
            return null;
        var values = new SourceNode?[count];
        if (node is SourceScalar && shortKey >= 0)
        {
            values[shortKey] = node;
            return values;
        }

        if (node is not SourceMapping mapping)
            return null;
        var seen = new SourceScalar?[count];
        foreach (var entry in mapping.Entries)
        {
            var at = ordinal(entry.Key.Text);
            if (at < 0)
                continue;
            if (seen[at] is { } first)
            {
                context.Problems.Add(ValueText.TwoNames(entry.Key, first.Text, first.Location.Line));
                continue;
            }

            seen[at] = entry.Key;
            if (!context.Rejected.Contains(entry.Value))
                values[at] = entry.Value;
        }

        return values;
    }

    // One value may stand for a list of one.
    private ImmutableArray<T> List<T>(SourceNode? node, Func<SourceNode, T?> bind)
        where T : class
    {
        if (node is null)
            return [];
        if (node is not SourceSequence sequence)
            return bind(node) is { } single ? [single] : [];
        var values = ImmutableArray.CreateBuilder<T>(sequence.Items.Count);
        foreach (var item in sequence.Items)
        {
            if (!context.Rejected.Contains(item) && bind(item) is { } value)
                values.Add(value);
        }

        return values.ToImmutable();
    }

    private IDisposable Measuring(AnyDimensions any) => context.Measuring(any);

    private void Note(JobIdentity identity) =>
        Timeline.SetCalendar(identity.Zone is { } zone ? JobZone.Find(zone.Value) : null, identity.Date?.Value);

    // A log is read where it is named: the times after it may count from its start.
    private LogFile? Log(SourceNode? node, LogFile? log, QuantityField field, string units, bool startsPhase)
    {
        var name = node as SourceScalar ?? (node as SourceMapping)?.Find("file")?.Value as SourceScalar;
        if (log?.File is null || name is null || context.Logs(name) is not { } content)
            return log;
        var began = Timeline.LogStart;
        var request = new LogRequest(log, field.Dimension, context.UnitsAt(name).ForGroup(units, field.Dimension), field.Within, context.UnitsAt(name).IsSi);
        var data = LogReader.Read(request, content, new LogCalendar(Timeline.Zone, began, Timeline.JobDate), context.Problems);
        if (data is { Start: null })
            data = data with { Start = began };
        if (startsPhase)
            Timeline.StartWithLog(data?.Start);
        return log with { Data = data };
    }

    private Given<T>? Word<T>(SourceNode? node, Func<string, (T Value, string Word)?> find)
        where T : struct, Enum =>
        node is SourceScalar scalar && find(scalar.Text) is { } found ? WordBinder.Give(context, scalar, found.Value, found.Word) : null;

    private Given<bool>? YesNo(SourceNode? node) => node is SourceScalar scalar ? WordBinder.YesNo(context, scalar) : null;

    private Given<int>? Whole(SourceNode? node, string key, int least, int most) => node is SourceScalar scalar ? WordBinder.Whole(context, scalar, key, least, most) : null;

    private Given<double>? Number(SourceNode? node, string key, double least, double most) => node is SourceScalar scalar ? WordBinder.Number(context, scalar, key, least, most) : null;

    private Given<string>? Text(SourceNode? node, string key) => node is SourceScalar scalar ? WordBinder.Text(context, scalar, key) : null;

    private Given<string>? Id(SourceNode? node, string key) => node is SourceScalar scalar ? WordBinder.Id(context, scalar, key) : null;

    private Given<string>? Refrigerant(SourceNode? node) => node is SourceScalar scalar ? WordBinder.Refrigerant(context, scalar) : null;

    private Given<string>? Zone(SourceNode? node) => node is SourceScalar scalar ? WordBinder.Zone(context, scalar) : null;

    private Given<string>? UnitName(SourceNode? node) => node is SourceScalar scalar ? WordBinder.UnitName(context, scalar) : null;

    private Given<string>? DisplayUnitName(SourceNode? node, string key) => node is SourceScalar scalar ? WordBinder.DisplayUnitName(context, scalar, key) : null;

    private Given<DateOnly>? Date(SourceNode? node) => node is SourceScalar scalar ? DateAndTime.Date(context, scalar) : null;

    private Given<JobTime>? Time(SourceNode? node, TimeRole role) => node is SourceScalar scalar ? DateAndTime.Time(context, scalar, role) : null;

    private Given<CalendarPeriod>? Period(SourceNode? node) => node is SourceScalar scalar ? DateAndTime.Period(context, scalar) : null;

    private Given<AccuracyStatement>? Accuracy(SourceNode? node, string key, Dimension? dimension, PlausibleRange[] ranges) =>
        node is SourceScalar scalar ? QuantityBinder.Accuracy(context, scalar, key, dimension is { } own ? [own] : context.Any.Values, ranges) : null;

    private Given<QuantityValue>? AnyValue(SourceNode? node, string key, PlausibleRange[] ranges) =>
        node is SourceScalar scalar
            ? QuantityBinder.Any(context, scalar, key, context.Any.Values, ranges, d => d == context.Any.Usual ? context.UnitsAt(scalar).ForInstrument(d) : null)
            : null;

    private Given<QuantityValue>? AnyDifference(SourceNode? node, string key, PlausibleRange[] ranges) =>
        node is SourceScalar scalar
            ? QuantityBinder.Any(context, scalar, key, context.Any.Differences, ranges, d => context.Any.Usual is { } usual && d == AnyDimensions.Of(usual).Differences[0] ? context.UnitsAt(scalar).ForInstrumentStep(usual, d) : null)
            : null;

    private Given<T>? Quantity<T>(SourceNode? node, QuantityField field)
        where T : struct, IQuantity<T> =>
        node is SourceScalar scalar ? QuantityBinder.Quantity<T>(context, scalar, field) : null;

    private Given<Mass>? Water(SourceNode? node, QuantityField field) => node is SourceScalar scalar ? QuantityBinder.Water(context, scalar, field) : null;

    private Given<StatedPressure>? Pressure(SourceNode? node, QuantityField field) => node is SourceScalar scalar ? QuantityBinder.Pressure(context, scalar, field) : null;

    private Given<Model.QuantityRange<T>>? Range<T>(SourceNode? node, QuantityField field)
        where T : struct, IQuantity<T> =>
        node is SourceScalar scalar ? QuantityBinder.Range<T>(context, scalar, field) : null;

    private ImmutableArray<Given<QuantityValue>> Axis(SourceNode? node, string key, PlausibleRange[] ranges) =>
        node is SourceSequence ? List(node, item => item is SourceScalar scalar ? ChartValue(scalar, key, ranges) : null) : [];

    private ImmutableArray<ImmutableArray<double?>> Chart(SourceNode? node, string key, PlausibleRange[] ranges)
    {
        if (node is not SourceSequence rows)
            return [];

        // One row may be written without the inner brackets.
        if (rows.Items.All(item => item is SourceScalar))
            return [ChartRow(rows, key, ranges)];
        return [.. rows.Items.OfType<SourceSequence>().Select(row => ChartRow(row, key, ranges))];
    }

    private ImmutableArray<double?> ChartRow(SourceSequence row, string key, PlausibleRange[] ranges)
    {
        var cells = ImmutableArray.CreateBuilder<double?>(row.Items.Count);
        foreach (var item in row.Items)
        {
            if (item is not SourceScalar scalar || context.Rejected.Contains(item))
                continue;
            if (scalar.Text is "none" or "-" or "–" or "—" or "dash")
            {
                context.Canonical[scalar] = "none";
                cells.Add(null);
            }
            else
            {
                cells.Add(ChartValue(scalar, key, ranges)?.Value.Si);
            }
        }

        return cells.ToImmutable();
    }

    private Given<QuantityValue>? ChartValue(SourceScalar scalar, string key, PlausibleRange[] ranges) =>
        QuantityBinder.Any(context, scalar, key, context.Any.Values, ranges, context.UnitsAt(scalar).ForChart);
}
