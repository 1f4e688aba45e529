using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Commission.Checks.Formulas;
using Commission.Measurement.Quantities;
using Xunit;

namespace Commission.Checks.Tests.Formulas;

public sealed class CaliforniaSplitTableTests
{
    [Fact]
    public void Every_printed_cell_is_the_same_value_or_the_same_dash()
    {
        var compared = 0;
        foreach (var (row, column, expected) in PrintedCaliforniaTables.Cells(PrintedCaliforniaTables.Split, 50, 1))
        {
            var target = At(row, column);
            Assert.Equal(expected is not null, target.HasValue);
            if (expected is { } value)
                Assert.Equal(value, target.Value.FahrenheitDegrees, 9);
            compared++;
        }

        Assert.Equal(15 * 27, compared);
    }

    [Fact]
    public void All_357_cells_are_the_recalled_table_number_for_number()
    {
        // SHA-256 over "row column value" lines of the whole grid of RA3.2-3 as recalled [from memory], computed outside this program.
        var text = new StringBuilder();
        var count = 0;
        for (var row = 70; row <= 84; row++)
        {
            for (var column = 50; column <= 76; column++)
            {
                if (!At(row, column).HasValue)
                    continue;
                text.Append(string.Create(CultureInfo.InvariantCulture, $"{row} {column} {At(row, column).Value.FahrenheitDegrees:0.0}\n"));
                count++;
            }
        }

        Assert.Equal(357, count);
        Assert.Equal("573c25328319f6f98918b0385c1d8c296c322b4a48674238d78e778cdb625ed6", Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(text.ToString()))));
    }

    [Fact]
    public void One_quadratic_fits_all_cells_to_their_rounding()
    {
        // Computed from the table by an independent program: residuals within 0.05 °F, the rounding of the print.
        var count = 0;
        for (var row = 70; row <= 84; row++)
        {
            for (var column = 50; column <= 76; column++)
            {
                if (At(row, column) is not { HasValue: true } target)
                    continue;
                var fit = 19.6995 + (0.544237 * (row - 77)) - (0.678248 * (column - 63)) - (0.0228180 * (column - 63) * (column - 63));
                Assert.InRange(target.Value.FahrenheitDegrees - fit, -0.052, 0.052);
                count++;
            }
        }

        Assert.Equal(357, count);
    }

    [Fact]
    public void Between_whole_degrees_it_is_bilinear() =>
        Assert.Equal((18.6 + 17.9 + 19.2 + 18.5) / 4, At(75.5, 63.5).Value.FahrenheitDegrees, 9);

    [Fact]
    public void The_slopes_are_the_derivatives_of_that_quadratic_within_the_rounding()
    {
        // Slopes between cells printed to 0.1 °F may be 0.1 off; on a line they are means over two degrees.
        var target = At(78, 66);
        Assert.Equal(0.544237, target.PerDryBulb, 0.051);
        Assert.Equal(-0.678248 - (2 * 0.0228180 * 3), target.PerWetBulb, 0.051);
    }

    [Theory]
    [InlineData(69.4, 60, "return air at 69.4 °F is below the table, which ends at 70 °F. Warm the room, or measure the airflow instead.")]
    [InlineData(84.1, 60, "return air at 84.1 °F is above the table, which ends at 84 °F. Let the system bring the room down, or measure the airflow instead.")]
    [InlineData(75, 49, "return wet bulb at 49.0 °F is below the table, which ends at 50 °F. Measure the airflow instead.")]
    [InlineData(80, 77, "return wet bulb at 77.0 °F is above the table, which ends at 76 °F. Let the system bring the room down, or measure the airflow instead.")]
    [InlineData(77, 50, "the table of temperature splits gives no target here: the return air is drier than it covers. Measure the airflow instead.")]
    [InlineData(76.5, 50, "the table of temperature splits gives no target here: the return air is drier than it covers. Measure the airflow instead.")]
    public void Where_the_table_says_nothing_there_is_a_reason(double dryBulb, double wetBulb, string reason) =>
        Assert.Equal(reason, At(dryBulb, wetBulb) is var none ? JobText.Words(none.Why!, none.Todo!) : "");

    [Fact]
    public void The_rounding_of_the_print_is_half_a_tenth() => Assert.Equal(0.05, At(75, 63).Rounding.FahrenheitDegrees, 12);

    private static TableTarget At(double dryBulb, double wetBulb) =>
        CaliforniaSplitTable.At(Temperature.FromFahrenheit(dryBulb), Temperature.FromFahrenheit(wetBulb));
}
