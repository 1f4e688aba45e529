using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Regression;

/// <summary>A maker's chart of one argument: linear between its places, nothing beyond them.</summary>
public sealed class InterpolationTable
{
    private readonly TableAxis axis;
    private readonly double?[] values;

    /// <summary>A table.</summary>
    /// <param name="places">Places along the argument, two or more, ascending.</param>
    /// <param name="values">The value at each place; nothing for a dash.</param>
    /// <exception cref="ArgumentException">The places do not ascend, or there are not as many values.</exception>
    public InterpolationTable(IEnumerable<double> places, IEnumerable<double?> values)
    {
        axis = new TableAxis(places, nameof(places));
        this.values = [.. values];
        if (this.values.Length != axis.Count)
            throw new ArgumentException("There is a value or a dash for every place.", nameof(values));
    }

    /// <summary>The value at a place.</summary>
    /// <param name="at">The place, with its uncertainty.</param>
    /// <param name="own">What makes the table itself doubtful, such as its rounding.</param>
    public TableReading Read(Uncertain at, params ReadOnlySpan<RootTerm> own)
    {
        if (!axis.Covers(at.Value))
            return TableReading.Missing(TableMiss.OutsideFirst);
        var (cell, fraction) = axis.Locate(at.Value);

        // On a place exactly, only its own value is needed, whatever stands beside it.
        if ((fraction < 1 && values[cell] is null) || (fraction > 0 && values[cell + 1] is null))
            return TableReading.Missing(TableMiss.Blank);
        var left = values[cell] ?? values[cell + 1].GetValueOrDefault();
        var right = values[cell + 1] ?? left;
        return new TableReading(Uncertain.WithPartials(left + (fraction * (right - left)), (at, Slope(cell, fraction)), (Uncertain.From(0, own), 1)), TableMiss.None);
    }

    // On a place, the two neighbouring slopes are equally good.
    private double Slope(int cell, double fraction)
    {
        var here = SlopeOf(cell);
        var beside = fraction switch
        {
            0 when cell > 0 => SlopeOf(cell - 1),
            1 when cell + 1 < axis.Count - 1 => SlopeOf(cell + 1),
            _ => null,
        };
        return (here, beside) switch
        {
            ({ } a, { } b) => (a + b) / 2,
            ({ } a, null) => a,
            (null, { } b) => b,
            _ => 0,
        };
    }

    private double? SlopeOf(int cell) => (values[cell + 1] - values[cell]) / axis.Width(cell);
}
