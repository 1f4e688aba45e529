using System.Globalization;

namespace Commission.Checks.Formulas;

/// <summary>
/// A printed table over two temperatures in whole degrees Fahrenheit, some cells of which are dashes. Between whole degrees it is
/// read by bilinear interpolation; a dash that would have to be used, or a point outside, gives no value. It never extrapolates.
/// </summary>
internal sealed class WholeDegreeGrid
{
    // A reading in kelvin comes back to Fahrenheit with an error near 1e-13; nobody reads a thermometer to a millionth.
    private const double Snap = 1e-6;

    private readonly double[,] _cells;

    private WholeDegreeGrid(int firstRow, int firstColumn, double[,] cells)
    {
        FirstRow = firstRow;
        FirstColumn = firstColumn;
        _cells = cells;
    }

    /// <summary>First row, °F.</summary>
    public int FirstRow { get; }

    /// <summary>Last row, °F.</summary>
    public int LastRow => FirstRow + _cells.GetLength(0) - 1;

    /// <summary>First column, °F.</summary>
    public int FirstColumn { get; }

    /// <summary>Last column, °F.</summary>
    public int LastColumn => FirstColumn + _cells.GetLength(1) - 1;

    /// <summary>Reads the table from an embedded data file: comment lines with <c>#</c>, a head, then rows of whole degrees.</summary>
    /// <param name="resource">The file's name.</param>
    /// <returns>The table.</returns>
    /// <exception cref="InvalidDataException">The data file is damaged: a fault of this program.</exception>
    public static WholeDegreeGrid Load(string resource)
    {
        using var stream = typeof(WholeDegreeGrid).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidDataException($"The table {resource} is not in this program.");
        using var reader = new StreamReader(stream);
        var lines = reader.ReadToEnd().Split('\n').Where(line => line.Length > 0 && line[0] != '#').ToList();
        var head = lines[0].Split(',');
        var columns = head.Length - 1;
        var firstColumn = Whole(head[1]);
        var firstRow = Whole(lines[1].Split(',')[0]);
        var cells = new double[lines.Count - 1, columns];
        for (var row = 0; row < lines.Count - 1; row++)
        {
            var parts = lines[row + 1].Split(',');
            if (parts.Length != columns + 1 || Whole(parts[0]) != firstRow + row)
                throw new InvalidDataException($"{resource}: row {row + 1} is not one degree after the row before it, or has the wrong number of cells.");
            for (var column = 0; column < columns; column++)
            {
                if (Whole(head[column + 1]) != firstColumn + column)
                    throw new InvalidDataException($"{resource}: the columns are not one degree apart.");
                cells[row, column] = parts[column + 1] is "-" ? double.NaN : double.Parse(parts[column + 1], NumberStyles.Float, CultureInfo.InvariantCulture);
            }
        }

        return new WholeDegreeGrid(firstRow, firstColumn, cells);
    }

    /// <summary>The printed cell.</summary>
    /// <param name="row">Row, °F.</param>
    /// <param name="column">Column, °F.</param>
    /// <returns>The printed value; null for a dash or outside the table.</returns>
    public double? Cell(int row, int column)
    {
        if (row < FirstRow || row > LastRow || column < FirstColumn || column > LastColumn)
            return null;
        var value = _cells[row - FirstRow, column - FirstColumn];
        return double.IsNaN(value) ? null : value;
    }

    /// <summary>Reads the table.</summary>
    /// <param name="row">Row temperature, °F.</param>
    /// <param name="column">Column temperature, °F.</param>
    /// <returns>Where the point lies and, on printed ground, the value and its slopes along rows and columns.</returns>
    public Reading Read(double row, double column)
    {
        row = Snapped(row);
        column = Snapped(column);
        if (!(row >= FirstRow))
            return new Reading(Place.BelowRows, 0, 0, 0);
        if (row > LastRow)
            return new Reading(Place.AboveRows, 0, 0, 0);
        if (!(column >= FirstColumn))
            return new Reading(Place.BelowColumns, 0, 0, 0);
        if (column > LastColumn)
            return new Reading(Place.AboveColumns, 0, 0, 0);
        return Interpolate(row, column) is { } value
            ? new Reading(Place.OnTable, value, SlopeAlongRows(row, column), SlopeAlongColumns(row, column))
            : new Reading(Place.Dash, 0, 0, 0);
    }

    // A cell of zero weight is not asked for, so a point on a printed row or column does not need its neighbours.
    private double? Interpolate(double row, double column)
    {
        var (r, fr) = Split(row);
        var (c, fc) = Split(column);
        var sum = 0.0;
        for (var dr = 0; dr <= 1; dr++)
        {
            for (var dc = 0; dc <= 1; dc++)
            {
                var weight = (dr == 0 ? 1 - fr : fr) * (dc == 0 ? 1 - fc : fc);
                if (weight is 0)
                    continue;
                if (Cell(r + dr, c + dc) is not { } cell)
                    return null;
                sum += weight * cell;
            }
        }

        return sum;
    }

    private double SlopeAlongRows(double row, double column)
    {
        var (r, fraction) = Split(row);
        return Slope(fraction is 0 ? r - 1 : null, r, r + 1, at => Interpolate(at, column));
    }

    private double SlopeAlongColumns(double row, double column)
    {
        var (c, fraction) = Split(column);
        return Slope(fraction is 0 ? c - 1 : null, c, c + 1, at => Interpolate(row, at));
    }

    // The slope jumps at a printed line: there the mean of both sides is taken, or the one side that is printed.
    private static double Slope(double? before, double here, double after, Func<double, double?> value)
    {
        var low = before is { } b && value(b) is { } atBefore ? (At: b, Value: atBefore) : (At: here, Value: value(here) ?? double.NaN);
        var high = value(after) is { } atAfter ? (At: after, Value: atAfter) : (At: here, Value: value(here) ?? double.NaN);
        return high.At > low.At ? (high.Value - low.Value) / (high.At - low.At) : double.NaN;
    }

    private static (int Whole, double Fraction) Split(double value)
    {
        var whole = Math.Floor(value);
        return ((int)whole, value - whole);
    }

    private static double Snapped(double value) => Math.Abs(value - Math.Round(value)) < Snap ? Math.Round(value) : value;

    private static int Whole(string text) => int.Parse(text, NumberStyles.Integer, CultureInfo.InvariantCulture);

    /// <summary>Where a point lies.</summary>
    internal enum Place
    {
        /// <summary>Between printed cells.</summary>
        OnTable,

        /// <summary>A dash would have to be used.</summary>
        Dash,

        /// <summary>Colder than the first row.</summary>
        BelowRows,

        /// <summary>Warmer than the last row.</summary>
        AboveRows,

        /// <summary>Colder than the first column.</summary>
        BelowColumns,

        /// <summary>Warmer than the last column.</summary>
        AboveColumns,
    }

    /// <summary>What the table says at a point; the numbers count only on the table.</summary>
    /// <param name="Where">Where the point lies.</param>
    /// <param name="Value">The value, °F of difference.</param>
    /// <param name="AlongRows">Change of the value for one degree of the row temperature.</param>
    /// <param name="AlongColumns">Change of the value for one degree of the column temperature.</param>
    internal readonly record struct Reading(Place Where, double Value, double AlongRows, double AlongColumns);
}
