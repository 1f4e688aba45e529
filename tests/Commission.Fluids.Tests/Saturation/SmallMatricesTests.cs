using Commission.Fluids.Saturation;
using Xunit;

namespace Commission.Fluids.Tests.Saturation;

/// <summary>Linear systems and eigenvalues small enough to be solved by hand.</summary>
public sealed class SmallMatricesTests
{
    // 2x + y = 5, x + 3y = 10: x = 1, y = 3.
    [Fact]
    public void Two_equations()
    {
        double[] right = [5, 10];
        Assert.True(LinearSystem.Solve([2, 1, 1, 3], right, 2));
        Assert.Equal([1.0, 3.0], right.Select(r => Math.Round(r, 12)));
    }

    // x + 2y + 3z = 14, 4x + 5y + 6z = 32, 7x + 8y + 10z = 53: 1, 2, 3. The largest of a column is not on the diagonal.
    [Fact]
    public void Three_equations_whose_rows_change_places()
    {
        double[] right = [14, 32, 53];
        Assert.True(LinearSystem.Solve([1, 2, 3, 4, 5, 6, 7, 8, 10], right, 3));
        Assert.Equal([1.0, 2.0, 3.0], right.Select(r => Math.Round(r, 9)));
    }

    // 3z = 9, 2y = 4, −x + y = 1: 1, 2, 3. Zeros on the diagonal.
    [Fact]
    public void Zeros_on_the_diagonal()
    {
        double[] right = [9, 4, 1];
        Assert.True(LinearSystem.Solve([0, 0, 3, 0, 2, 0, -1, 1, 0], right, 3));
        Assert.Equal([1.0, 2.0, 3.0], right.Select(r => Math.Round(r, 12)));
    }

    // 10⁻²⁰x + y = 1, x + y = 2: without the change of rows the first would swallow the second; x = y = 1.
    [Fact]
    public void A_small_number_on_the_diagonal_is_no_pivot()
    {
        double[] right = [1, 2];
        Assert.True(LinearSystem.Solve([1e-20, 1, 1, 1], right, 2));
        Assert.Equal([1.0, 1.0], right.Select(r => Math.Round(r, 12)));
        double[] negative = [1, 2];
        Assert.True(LinearSystem.Solve([1e-20, 1, -1, 3], negative, 2));
        Assert.Equal([1.0, 1.0], negative.Select(r => Math.Round(r, 12)));
    }

    [Theory]
    [InlineData(new double[] { 1, 2, 2, 4 }, 2)]
    [InlineData(new double[] { 0, 0, 0, 0 }, 2)]
    [InlineData(new double[] { 1, 0, 0, 0, 0, 0, 0, 0, 1 }, 3)]
    [InlineData(new double[] { double.NaN, 1, 1, 1 }, 2)]
    public void A_singular_system_has_no_solution(double[] matrix, int n) => Assert.False(LinearSystem.Solve(matrix, new double[n], n));

    // A pivoted elimination of four: the matrix i·j + (i == j ? 4 : 0) with rows 1 to 4 times (1, −1, 2, 0.5).
    [Fact]
    public void Four_equations()
    {
        double[] x = [1, -1, 2, 0.5];
        var matrix = new double[16];
        var right = new double[4];
        for (var i = 0; i < 4; i++)
        {
            for (var j = 0; j < 4; j++)
            {
                matrix[(i * 4) + j] = ((i + 1) * (j + 1)) + (i == j ? 4 : 0);
                right[i] += matrix[(i * 4) + j] * x[j];
            }
        }

        Assert.True(LinearSystem.Solve(matrix, right, 4));
        Assert.Equal(x, right.Select(r => Math.Round(r, 10)));
    }

    // [2 1; 1 2]: 1 along (1, −1)/√2. [3 −2; −2 6]: 2 along (2, 1)/√5. [1 0; 0 −4]: −4 along (0, 1).
    [Theory]
    [InlineData(new double[] { 2, 1, 1, 2 }, 1.0, 0.70710678, -0.70710678)]
    [InlineData(new double[] { 3, -2, -2, 6 }, 2.0, 0.89442719, 0.44721360)]
    [InlineData(new double[] { 1, 0, 0, -4 }, -4.0, 0.0, 1.0)]
    [InlineData(new double[] { -4, 0, 0, 1 }, -4.0, 1.0, 0.0)]
    public void Smallest_of_two(double[] matrix, double value, double x, double y)
    {
        var vector = new double[2];
        Assert.Equal(value, SymmetricEigen.Smallest(matrix, 2, vector), 1e-12);
        var sign = (vector[0] * x) + (vector[1] * y) < 0 ? -1 : 1;
        Assert.Equal(x, sign * vector[0], 1e-8);
        Assert.Equal(y, sign * vector[1], 1e-8);
    }

    // The chain [2 −1 0; −1 2 −1; 0 −1 2] has 2 − √2, 2 and 2 + √2; the smallest stands along (1, √2, 1)/2. One number large: [4 1 0; 1 3 1; 0 1 100].
    [Fact]
    public void Smallest_of_three()
    {
        var vector = new double[3];
        Assert.Equal(2 - Math.Sqrt(2), SymmetricEigen.Smallest([2, -1, 0, -1, 2, -1, 0, -1, 2], 3, vector), 1e-12);
        Assert.Equal([0.5, 0.70710678, 0.5], vector.Select(v => Math.Round(Math.Abs(v), 8)));
        Assert.True(vector[0] * vector[1] > 0 && vector[1] * vector[2] > 0);
        double[] matrix = [4, 1, 0, 1, 3, 1, 0, 1, 100];
        var smallest = SymmetricEigen.Smallest([.. matrix], 3, vector);
        for (var i = 0; i < 3; i++)
            Assert.Equal(smallest * vector[i], Enumerable.Range(0, 3).Sum(j => matrix[(i * 3) + j] * vector[j]), 1e-10);
        Assert.Equal(1, vector.Sum(v => v * v), 1e-12);
        Assert.InRange(smallest, 2.3, 2.4); // (7 − √5)/2 = 2.382 of the upper block, a little less with the third
    }
}
