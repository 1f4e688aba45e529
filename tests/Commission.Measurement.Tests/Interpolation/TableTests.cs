using Commission.Measurement.Interpolation;
using Commission.Measurement.Uncertainty;
using Commission.Messages;
using CsCheck;

namespace Commission.Measurement.Tests.Interpolation;

public sealed class TableTests
{
    // Corner of the California target superheat table RA3.2-2 (public regulation, from memory): outdoor 90 to 100 °F, return wet bulb 63 to 67 °F; a dash below 5 °F.
    private static readonly InterpolationGrid Superheat = new(
        [90, 95, 100],
        [63, 64, 65, 66, 67],
        new double?[,] { { 6.8, 8.8, 10.9, 12.8, 14.6 }, { null, 5.6, 8.1, 10.0, 12.0 }, { null, null, 5.3, 7.3, 9.3 } });

    [Fact]
    public void A_grid_gives_its_own_values_at_its_places()
    {
        Assert.Equal(12.0, At(95, 67).Value!.Value, 1e-12);
        Assert.Equal(6.8, At(90, 63).Value!.Value, 1e-12);
        Assert.Equal(5.6, At(95, 64).Value!.Value, 1e-12);
        Assert.Equal(9.3, At(100, 67).Value!.Value, 1e-12);
    }

    [Fact]
    public void Between_places_it_is_bilinear()
    {
        // Middle of the cell 90…95 by 66…67: the mean of its corners 12.8, 14.6, 10.0, 12.0.
        Assert.Equal(12.35, At(92.5, 66.5).Value!.Value, 1e-12);
    }

    [Fact]
    public void Dashes_and_edges_give_nothing()
    {
        Assert.Equal(TableMiss.Blank, At(95, 63).Miss);
        Assert.Equal(TableMiss.Blank, At(92, 63.5).Miss);
        Assert.Equal(TableMiss.OutsideFirst, At(89.9, 65).Miss);
        Assert.Equal(TableMiss.OutsideSecond, At(95, 67.1).Miss);
        Assert.Null(At(95, 63).Value);
    }

    [Fact]
    public void Uncertainty_of_the_place_becomes_uncertainty_of_the_value()
    {
        var bulb = new RootCause("wet bulb".Plain(), "".Plain(), 0.5);
        var rounding = RootCause.FromResolution("table".Plain(), "printed to 0.1 °F".Plain(), 0.1);
        var inside = Superheat.Read(Uncertain.Exact(95), Uncertain.From(66.5, bulb), rounding).Value!;
        Assert.Equal(2.0 * 0.5, Math.Abs(inside.Budget.Single(l => ReferenceEquals(l.Cause, bulb)).Contribution), 1e-12);
        Assert.Equal(Math.Sqrt(1 + (0.01 / 12)), inside.StandardUncertainty, 1e-12);

        // On a line of the grid the slopes of both sides count alike: (1.9 + 2.0)/2.
        var line = Superheat.Read(Uncertain.Exact(95), Uncertain.From(66, bulb)).Value!;
        Assert.Equal(1.95 * 0.5, line.StandardUncertainty, 1e-12);

        // Beside a dash only one side is known.
        var edge = Superheat.Read(Uncertain.Exact(95), Uncertain.From(64, bulb)).Value!;
        Assert.Equal(2.5 * 0.5, edge.StandardUncertainty, 1e-12);
        var outdoor = Superheat.Read(Uncertain.From(92.5, bulb), Uncertain.Exact(67)).Value!;
        Assert.Equal(-0.52 * 0.5, outdoor.Budget[0].Contribution, 1e-12);
    }

    [Fact]
    public void A_plane_is_reproduced_everywhere() => Gen.Double[0, 4].Select(Gen.Double[10, 30]).Sample((x, y) =>
    {
        var values = new double?[5, 3];
        for (var i = 0; i < 5; i++)
        {
            for (var j = 0; j < 3; j++)
                values[i, j] = 3 + (2 * i) - (0.5 * (10 + (10 * j)));
        }

        RootCause a = new("a".Plain(), "".Plain(), 0.1), b = new("b".Plain(), "".Plain(), 0.2);
        var value = new InterpolationGrid([0, 1, 2, 3, 4], [10, 20, 30], values).Read(Uncertain.From(x, a), Uncertain.From(y, b)).Value!;
        Assert.Equal(3 + (2 * x) - (0.5 * y), value.Value, 1e-12);
        Assert.Equal(Math.Sqrt((0.2 * 0.2) + (0.1 * 0.1)), value.StandardUncertainty, 1e-12);
    });

    [Fact]
    public void A_table_of_one_argument()
    {
        var table = new InterpolationTable([60, 70, 80, 90], [10.0, 12, 16, null]);
        var cause = new RootCause("x".Plain(), "".Plain(), 1);
        Assert.Equal(11, table.Read(Uncertain.From(65, cause)).Value!.Value, 1e-12);
        Assert.Equal(0.2, table.Read(Uncertain.From(65, cause)).Value!.StandardUncertainty, 1e-12);
        Assert.Equal(0.3, table.Read(Uncertain.From(70, cause)).Value!.StandardUncertainty, 1e-12);
        Assert.Equal(16, table.Read(Uncertain.From(80, cause)).Value!.Value, 1e-12);
        Assert.Equal(0.4, table.Read(Uncertain.From(80, cause)).Value!.StandardUncertainty, 1e-12);
        Assert.Equal(TableMiss.Blank, table.Read(Uncertain.From(81, cause)).Miss);
        Assert.Equal(TableMiss.Blank, table.Read(Uncertain.From(90, cause)).Miss);
        Assert.Equal(TableMiss.OutsideFirst, table.Read(Uncertain.From(59, cause)).Miss);
    }

    [Fact]
    public void A_table_out_of_order_is_our_mistake()
    {
        Assert.Throws<ArgumentException>(() => new InterpolationTable([1, 1], [1.0, 2]));
        Assert.Throws<ArgumentException>(() => new InterpolationTable([1], [1.0]));
        Assert.Throws<ArgumentException>(() => new InterpolationTable([1, 2], [1.0]));
        Assert.Throws<ArgumentException>(() => new InterpolationGrid([1, 2], [1, 2], new double?[1, 2]));
    }

    private static TableReading At(double outdoor, double bulb) => Superheat.Read(Uncertain.Exact(outdoor), Uncertain.Exact(bulb));
}
