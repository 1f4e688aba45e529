using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Regression;

/// <summary>A maker's chart of two arguments: bilinear inside a cell whose corners are all given, nothing beyond.</summary>
public sealed class InterpolationGrid
{
    private readonly TableAxis first;
    private readonly TableAxis second;
    private readonly double?[,] values;

    /// <summary>A grid.</summary>
    /// <param name="firstPlaces">Places along the first argument (rows), two or more, ascending.</param>
    /// <param name="secondPlaces">Places along the second argument (columns), two or more, ascending.</param>
    /// <param name="values">The values, rows by columns; nothing for a dash.</param>
    /// <exception cref="ArgumentException">The places do not ascend, or the sizes differ.</exception>
    public InterpolationGrid(IEnumerable<double> firstPlaces, IEnumerable<double> secondPlaces, double?[,] values)
    {
        first = new TableAxis(firstPlaces, nameof(firstPlaces));
        second = new TableAxis(secondPlaces, nameof(secondPlaces));
        if (values.GetLength(0) != first.Count || values.GetLength(1) != second.Count)
            throw new ArgumentException("There is a value or a dash for every row and column.", nameof(values));
        this.values = (double?[,])values.Clone();
    }

    /// <summary>The value at a place.</summary>
    /// <param name="firstAt">First argument, with its uncertainty.</param>
    /// <param name="secondAt">Second argument, with its uncertainty.</param>
    /// <param name="own">What makes the table itself doubtful, such as its rounding.</param>
    public TableReading Read(Uncertain firstAt, Uncertain secondAt, params ReadOnlySpan<RootTerm> own)
    {
        if (!first.Covers(firstAt.Value))
            return TableReading.Missing(TableMiss.OutsideFirst);
        if (!second.Covers(secondAt.Value))
            return TableReading.Missing(TableMiss.OutsideSecond);
        var (row, down) = first.Locate(firstAt.Value);
        var (column, across) = second.Locate(secondAt.Value);
        var value = 0.0;
        foreach (var (r, weightRow) in new[] { (row, 1 - down), (row + 1, down) })
        {
            foreach (var (c, weightColumn) in new[] { (column, 1 - across), (column + 1, across) })
            {
                // A corner without weight may be a dash.
                if (weightRow * weightColumn == 0)
                    continue;
                if (values[r, c] is not { } corner)
                    return TableReading.Missing(TableMiss.Blank);
                value += weightRow * weightColumn * corner;
            }
        }

        var byFirst = Slope(firstAt.Value, first, cell => Along(cell, column, across, rows: true));
        var bySecond = Slope(secondAt.Value, second, cell => Along(cell, row, down, rows: false));
        return new TableReading(Uncertain.WithPartials(value, (firstAt, byFirst), (secondAt, bySecond), (Uncertain.From(0, own), 1)), TableMiss.None);
    }

    // The slope inside the cell, or the mean of the two where the place is a line of the grid and both are known.
    private static double Slope(double at, TableAxis axis, Func<int, double?> slope)
    {
        var (cell, fraction) = axis.Locate(at);
        var here = slope(cell);
        var beside = fraction switch
        {
            0 when cell > 0 => slope(cell - 1),
            1 when cell + 1 < axis.Count - 1 => slope(cell + 1),
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

    // Slope along one argument in a cell, at a fraction of the cell of the other.
    private double? Along(int cell, int otherCell, double otherFraction, bool rows)
    {
        double? At(int along, int other) => rows ? values[along, other] : values[other, along];
        double? Step(int other) => At(cell + 1, other) - At(cell, other);
        var width = rows ? first.Width(cell) : second.Width(cell);
        var near = otherFraction < 1 ? (1 - otherFraction) * Step(otherCell) : 0;
        var far = otherFraction > 0 ? otherFraction * Step(otherCell + 1) : 0;
        return (near + far) / width;
    }
}
