using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Interpolation;

/// <summary>A maker's chart of one argument: linear between its places, nothing beyond them.</summary>
public sealed class InterpolationTable
{
    private readonly TableAxis _axis;
    private readonly double?[] _values;

    /// <summary>A table.</summary>
    /// <param name="places">Places along the argument, two or more, ascending.</param>
    /// <param name="values">The value at each place; nothing for a dash.</param>
    /// <exception cref="ArgumentException">The places do not ascend, or there are not as many values.</exception>
    public InterpolationTable(IEnumerable<double> places, IEnumerable<double?> values)
    {
        _axis = new TableAxis(places, nameof(places));
        _values = [.. values];
        if (_values.Length != _axis.Count)
            throw new ArgumentException("There is a value or a dash for every place.", nameof(values));
    }

    /// <summary>The value at a place.</summary>
    /// <param name="at">The place, with its uncertainty.</param>
    /// <param name="own">What makes the table itself doubtful, such as its rounding.</param>
    public TableReading Read(Uncertain at, params ReadOnlySpan<RootTerm> own)
    {
        if (!_axis.Covers(at.Value))
            return TableReading.Missing(TableMiss.OutsideFirst);
        var (cell, fraction) = _axis.Locate(at.Value);

        // On a place exactly, only its own value is needed, whatever stands beside it.
        if ((fraction < 1 && _values[cell] is null) || (fraction > 0 && _values[cell + 1] is null))
            return TableReading.Missing(TableMiss.Blank);
        var left = _values[cell] ?? _values[cell + 1].GetValueOrDefault();
        var right = _values[cell + 1] ?? left;
        return new TableReading(Uncertain.WithPartials(left + (fraction * (right - left)), (at, Slope(cell, fraction)), (Uncertain.From(0, own), 1)), TableMiss.None);
    }

    // On a place, the two neighbouring slopes are equally good.
    private double Slope(int cell, double fraction)
    {
        var here = SlopeOf(cell);
        var beside = fraction switch
        {
            0 when cell > 0 => SlopeOf(cell - 1),
            1 when cell + 1 < _axis.Count - 1 => SlopeOf(cell + 1),
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

    private double? SlopeOf(int cell) => (_values[cell + 1] - _values[cell]) / _axis.Width(cell);
}

/// <summary>A maker's chart of two arguments: bilinear inside a cell whose corners are all given, nothing beyond.</summary>
public sealed class InterpolationGrid
{
    private readonly TableAxis _first;
    private readonly TableAxis _second;
    private readonly double?[,] _values;

    /// <summary>A grid.</summary>
    /// <param name="firstPlaces">Places along the first argument (rows), two or more, ascending.</param>
    /// <param name="secondPlaces">Places along the second argument (columns), two or more, ascending.</param>
    /// <param name="values">The values, rows by columns; nothing for a dash.</param>
    /// <exception cref="ArgumentException">The places do not ascend, or the sizes differ.</exception>
    public InterpolationGrid(IEnumerable<double> firstPlaces, IEnumerable<double> secondPlaces, double?[,] values)
    {
        _first = new TableAxis(firstPlaces, nameof(firstPlaces));
        _second = new TableAxis(secondPlaces, nameof(secondPlaces));
        if (values.GetLength(0) != _first.Count || values.GetLength(1) != _second.Count)
            throw new ArgumentException("There is a value or a dash for every row and column.", nameof(values));
        _values = (double?[,])values.Clone();
    }

    /// <summary>The value at a place.</summary>
    /// <param name="firstAt">First argument, with its uncertainty.</param>
    /// <param name="secondAt">Second argument, with its uncertainty.</param>
    /// <param name="own">What makes the table itself doubtful, such as its rounding.</param>
    public TableReading Read(Uncertain firstAt, Uncertain secondAt, params ReadOnlySpan<RootTerm> own)
    {
        if (!_first.Covers(firstAt.Value))
            return TableReading.Missing(TableMiss.OutsideFirst);
        if (!_second.Covers(secondAt.Value))
            return TableReading.Missing(TableMiss.OutsideSecond);
        var (row, down) = _first.Locate(firstAt.Value);
        var (column, across) = _second.Locate(secondAt.Value);
        var value = 0.0;
        foreach (var (r, weightRow) in new[] { (row, 1 - down), (row + 1, down) })
        {
            foreach (var (c, weightColumn) in new[] { (column, 1 - across), (column + 1, across) })
            {
                // A corner without weight may be a dash.
                if (weightRow * weightColumn == 0)
                    continue;
                if (_values[r, c] is not { } corner)
                    return TableReading.Missing(TableMiss.Blank);
                value += weightRow * weightColumn * corner;
            }
        }

        var byFirst = Slope(firstAt.Value, _first, cell => Along(cell, column, across, rows: true));
        var bySecond = Slope(secondAt.Value, _second, cell => Along(cell, row, down, rows: false));
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
        double? At(int along, int other) => rows ? _values[along, other] : _values[other, along];
        double? Step(int other) => At(cell + 1, other) - At(cell, other);
        var width = rows ? _first.Width(cell) : _second.Width(cell);
        var near = otherFraction < 1 ? (1 - otherFraction) * Step(otherCell) : 0;
        var far = otherFraction > 0 ? otherFraction * Step(otherCell + 1) : 0;
        return (near + far) / width;
    }
}

/// <summary>What a table says at a place.</summary>
/// <param name="Value">The value with the uncertainty of where it was read; nothing when the table says nothing there.</param>
/// <param name="Miss">Why there is no value.</param>
public sealed record TableReading(Uncertain? Value, TableMiss Miss)
{
    internal static TableReading Missing(TableMiss miss) => new(null, miss);
}

/// <summary>Why a table gives no value.</summary>
public enum TableMiss
{
    /// <summary>It does give one.</summary>
    None,

    /// <summary>The first argument lies outside the table: nothing is extrapolated.</summary>
    OutsideFirst,

    /// <summary>The second argument lies outside the table.</summary>
    OutsideSecond,

    /// <summary>The table has a dash there.</summary>
    Blank,
}

/// <summary>The places of a table along one argument: two or more, ascending.</summary>
internal sealed class TableAxis
{
    private readonly double[] _places;

    public TableAxis(IEnumerable<double> places, string parameter)
    {
        _places = [.. places];
        if (_places.Length < 2)
            throw new ArgumentException("A table has two or more places along each argument.", parameter);
        for (var i = 1; i < _places.Length; i++)
        {
            if (!(_places[i] > _places[i - 1]))
                throw new ArgumentException("The places of a table ascend.", parameter);
        }
    }

    public int Count => _places.Length;

    public bool Covers(double at) => at >= _places[0] && at <= _places[^1];

    /// <summary>The cell to the right of a place inside the table, and how far into it the place is, 0 to 1. On the last place: the last cell, 1.</summary>
    public (int Cell, double Fraction) Locate(double at)
    {
        var index = Array.BinarySearch(_places, at);
        if (index < 0)
            index = ~index - 1;
        index = Math.Min(index, _places.Length - 2);
        return (index, (at - _places[index]) / (_places[index + 1] - _places[index]));
    }

    public double Width(int cell) => _places[cell + 1] - _places[cell];
}
