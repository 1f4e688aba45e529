namespace Commission.Measurement.Regression;

/// <summary>The places of a table along one argument: two or more, ascending.</summary>
internal sealed class TableAxis
{
    private readonly double[] places;

    public TableAxis(IEnumerable<double> places, string parameter)
    {
        this.places = [.. places];
        if (this.places.Length < 2)
            throw new ArgumentException("A table has two or more places along each argument.", parameter);
        for (var i = 1; i < this.places.Length; i++)
        {
            if (!(this.places[i] > this.places[i - 1]))
                throw new ArgumentException("The places of a table ascend.", parameter);
        }
    }

    public int Count => places.Length;

    public double this[int index] => places[index];

    public bool Covers(double at) => at >= places[0] && at <= places[^1];

    /// <summary>The cell to the right of a place inside the table, and how far into it the place is, 0 to 1. On the last place: the last cell, 1.</summary>
    public (int Cell, double Fraction) Locate(double at)
    {
        var index = Array.BinarySearch(places, at);
        if (index < 0)
            index = ~index - 1;
        index = Math.Min(index, places.Length - 2);
        return (index, (at - places[index]) / (places[index + 1] - places[index]));
    }

    public double Width(int cell) => places[cell + 1] - places[cell];
}
