using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Commission.Checks.Formulas;
using Commission.Measurement.Quantities;
using CsCheck;
using Xunit;

namespace Commission.Checks.Tests.Formulas;

public sealed class CaliforniaSuperheatTableTests
{
    [Fact]
    public void Every_printed_five_degree_cell_is_the_same_value_or_the_same_dash()
    {
        var compared = 0;
        foreach (var (row, column, expected) in PrintedCaliforniaTables.Cells(PrintedCaliforniaTables.Superheat, 50, 1))
        {
            var target = At(row, column);
            Assert.Equal(expected is not null, target.HasValue);
            if (expected is { } value)
                Assert.Equal(value, target.Value.FahrenheitDegrees, 9);
            compared++;
        }

        Assert.Equal(13 * 27, compared);
    }

    [Fact]
    public void All_1053_cells_are_the_recalled_table_number_for_number()
    {
        // SHA-256 over "row column value" lines of the whole grid of RA3.2-2 as recalled [from memory], computed outside this program.
        var text = new StringBuilder();
        var count = 0;
        for (var row = 55; row <= 115; row++)
        {
            for (var column = 50; column <= 76; column++)
            {
                if (!At(row, column).HasValue)
                    continue;
                text.Append(string.Create(CultureInfo.InvariantCulture, $"{row} {column} {At(row, column).Value.FahrenheitDegrees:0.0}\n"));
                count++;
            }
        }

        Assert.Equal(1053, count);
        Assert.Equal("1a70555f4c22cda8c42808426d47f78d1a68abf7c9f127cbdc62e9ff2ea3ff5e", Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(text.ToString()))));
    }

    [Fact]
    public void It_stays_within_one_and_a_half_degrees_of_the_whole_degree_chart_of_two_manuals()
    {
        // The chart's cells are rounded to whole degrees; the two tables were made independently.
        var common = 0;
        foreach (var (row, column, chart) in PrintedCaliforniaTables.Cells(PrintedCaliforniaTables.WholeDegreeChart, 50, 2))
        {
            if (row < 55 || chart is not { } value || At(row, column) is not { HasValue: true } target)
                continue;
            Assert.InRange(target.Value.FahrenheitDegrees - value, -1.5 - 1e-9, 1.5 + 1e-9);
            common++;
        }

        Assert.Equal(115, common);
    }

    [Fact]
    public void No_cell_stands_out_from_its_neighbours()
    {
        // The table has one crease, between 64 and 65 °F wet bulb; elsewhere second differences stay within 0.25 °F.
        for (var row = 55; row <= 115; row++)
        {
            for (var column = 50; column <= 76; column++)
            {
                var alongColumns = Bend(Cell(row, column - 1), Cell(row, column), Cell(row, column + 1));
                Assert.InRange(alongColumns, 0, column is 64 or 65 ? 0.61 : 0.25);
                Assert.InRange(Bend(Cell(row - 1, column), Cell(row, column), Cell(row + 1, column)), 0, 0.25);
            }
        }
    }

    [Fact]
    public void No_target_is_below_five_degrees_and_dashes_form_one_dry_and_hot_corner()
    {
        for (var row = 55; row <= 115; row++)
        {
            for (var column = 50; column <= 76; column++)
            {
                if (Cell(row, column) is { } value)
                {
                    Assert.True(value >= 5);
                    continue;
                }

                Assert.Null(column > 50 ? Cell(row, column - 1) : null);
                Assert.Null(row < 115 ? Cell(row + 1, column) : null);
            }
        }
    }

    [Theory]
    [InlineData(95, 67, 12.0)]
    [InlineData(95, 70, 17.8)]
    [InlineData(90, 66, 12.8)]
    [InlineData(115, 76, 22.9)]
    [InlineData(55, 50, 8.8)]
    public void Oracle_values_of_the_trade_pages(double outdoor, double wetBulb, double target) =>
        Assert.Equal(target, At(outdoor, wetBulb).Value.FahrenheitDegrees, 9);

    [Theory]
    [InlineData(96, 64)]
    [InlineData(75, 55)]
    [InlineData(95, 63)]
    [InlineData(85, 60)]
    [InlineData(100, 64)]
    public void A_dash_gives_no_value_even_where_the_formula_would(double outdoor, double wetBulb)
    {
        var target = At(outdoor, wetBulb);
        Assert.False(target.HasValue);
        Assert.Equal(
            "the superheat table gives no target at this load: it would be below 5 °F, too little to judge a charge by. Read again when it is cooler outdoors or the return air is more humid. "
            + "Or recover the charge, and weigh in the factory charge with the allowance for the lines.",
            JobText.Words(target.Why!, target.Todo!));
        Assert.True(SuperheatFormula.At(Temperature.FromFahrenheit(outdoor), Temperature.FromFahrenheit(wetBulb)).FahrenheitDegrees >= 5);
    }

    [Theory]
    [InlineData(54.9, 60, "outdoor air at 54.9 °F is below the table, which ends at 55 °F. Weigh the charge in, or come back in warmer weather.")]
    [InlineData(115.2, 70, "outdoor air at 115.2 °F is above the table, which ends at 115 °F. Come back when it is cooler, or weigh the charge in.")]
    [InlineData(60, 49.5, "return wet bulb at 49.5 °F is below the table, which ends at 50 °F. Warm the room, or weigh the charge in.")]
    [InlineData(60, 76.1, "return wet bulb at 76.1 °F is above the table, which ends at 76 °F. Let the system bring the room down, then read again.")]
    public void Off_the_table_there_is_a_reason_and_no_extrapolation(double outdoor, double wetBulb, string reason) =>
        Assert.Equal(reason, At(outdoor, wetBulb) is var none ? JobText.Words(none.Why!, none.Todo!) : "");

    [Fact]
    public void A_reading_that_is_not_a_number_has_no_target() => Assert.False(At(double.NaN, 65).HasValue);

    [Fact]
    public void Between_whole_degrees_it_is_bilinear()
    {
        // By hand from the printed rows is not possible (they are 5 °F apart), so from four cells: 95/67 12.0, 95/68 13.9 and the row below.
        var (a, b, c, d) = (Cell(95, 67)!.Value, Cell(95, 68)!.Value, Cell(96, 67)!.Value, Cell(96, 68)!.Value);
        Assert.Equal((0.75 * 0.6 * a) + (0.75 * 0.4 * b) + (0.25 * 0.6 * c) + (0.25 * 0.4 * d), At(95.25, 67.4).Value.FahrenheitDegrees, 9);
        Assert.Equal((12.0 + 13.9) / 2, At(95, 67.5).Value.FahrenheitDegrees, 9);
    }

    [Fact]
    public void A_point_beside_a_dash_on_a_printed_line_needs_only_that_line()
    {
        // 95 °F row: 64 is the first cell with a value, 5.6; 96/64 is a dash.
        Assert.Equal(5.6, At(95, 64).Value.FahrenheitDegrees, 9);
        Assert.Equal((5.6 + 8.1) / 2, At(95, 64.5).Value.FahrenheitDegrees, 9);
        Assert.False(At(95.5, 64).HasValue);
        Assert.False(At(95.01, 64.5).HasValue);
        Assert.False(At(95, 63.99).HasValue);
    }

    [Fact]
    public void Slopes_are_those_of_the_cell_and_the_mean_of_both_sides_on_a_line()
    {
        var inside = At(95.25, 67.4);
        Assert.Equal((Value(95.25, 67.9) - Value(95.25, 67.1)) / 0.8, inside.PerWetBulb, 9);
        Assert.Equal((Value(95.9, 67.4) - Value(95.1, 67.4)) / 0.8, inside.PerDryBulb, 9);
        var onLine = At(95, 67);
        Assert.Equal((Cell(95, 68)!.Value - Cell(95, 66)!.Value) / 2, onLine.PerWetBulb, 9);
        Assert.Equal((Cell(96, 67)!.Value - Cell(94, 67)!.Value) / 2, onLine.PerDryBulb, 9);
    }

    [Fact]
    public void At_an_edge_the_slope_is_that_of_the_printed_side()
    {
        Assert.Equal(Cell(115, 76)!.Value - Cell(115, 75)!.Value, At(115, 76).PerWetBulb, 9);
        Assert.Equal(Cell(115, 76)!.Value - Cell(114, 76)!.Value, At(115, 76).PerDryBulb, 9);
        Assert.Equal(Cell(95, 65)!.Value - Cell(95, 64)!.Value, At(95, 64).PerWetBulb, 9);
        Assert.Equal(Cell(95, 64)!.Value - Cell(94, 64)!.Value, At(95, 64).PerDryBulb, 9);
    }

    [Fact]
    public void A_target_moves_about_one_and_a_half_to_two_degrees_for_a_degree_of_wet_bulb()
    {
        // The trade page says 1.5 to 2 °F per °F; at the mean conditions of a test.
        for (var outdoor = 75; outdoor <= 100; outdoor += 5)
            Assert.InRange(At(outdoor, 68.5).PerWetBulb, 1.4, 2.1);
    }

    [Fact]
    public void Interpolation_never_leaves_the_values_around_it() =>
        Gen.Select(Gen.Double[55, 115], Gen.Double[50, 76]).Sample((outdoor, wetBulb) =>
        {
            if (At(outdoor, wetBulb) is not { HasValue: true } target)
                return;
            var around = new[] { (int)outdoor, Math.Min(115, (int)outdoor + 1) }
                .SelectMany(row => new[] { Cell(row, (int)wetBulb), Cell(row, Math.Min(76, (int)wetBulb + 1)) })
                .OfType<double>()
                .ToList();
            Assert.InRange(target.Value.FahrenheitDegrees, around.Min() - 1e-9, around.Max() + 1e-9);
        });

    private static TableTarget At(double outdoor, double wetBulb) =>
        CaliforniaSuperheatTable.At(Temperature.FromFahrenheit(outdoor), Temperature.FromFahrenheit(wetBulb));

    private static double Value(double outdoor, double wetBulb) => At(outdoor, wetBulb).Value.FahrenheitDegrees;

    private static double? Cell(int outdoor, int wetBulb) => CaliforniaSuperheatTable.Printed.Cell(outdoor, wetBulb);

    private static double Bend(double? before, double? here, double? after) =>
        before is { } b && here is { } h && after is { } a ? Math.Abs(Math.Round(b - (2 * h) + a, 9)) : 0;
}
