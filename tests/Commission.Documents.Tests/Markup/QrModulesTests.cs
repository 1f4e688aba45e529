using Commission.Documents.Markup;
using Xunit;

namespace Commission.Documents.Tests.Markup;

public sealed class QrModulesTests
{
    // ISO/IEC 18004, 6.3.3: three finder patterns, 7 squares wide, each dark, light, dark from the rim inwards; 17 + 4v squares a side.
    [Fact]
    public void Three_corners_show_the_finder_pattern()
    {
        var modules = QrModules.Of("TEST-2026-061|accepted with conditions|" + new string('f', 64));
        var size = modules.GetLength(0);
        Assert.Equal(size, modules.GetLength(1));
        Assert.Equal(0, (size - 17) % 4);
        foreach (var (row, column) in new[] { (0, 0), (0, size - 7), (size - 7, 0) })
        {
            for (var r = 0; r < 7; r++)
            {
                for (var c = 0; c < 7; c++)
                {
                    var ring = Math.Max(Math.Abs(r - 3), Math.Abs(c - 3));
                    Assert.Equal(ring != 2, modules[row + r, column + c]);
                }
            }
        }
    }

    [Fact]
    public void Another_text_is_another_code() => Assert.NotEqual(QrModules.Of("a").Cast<bool>(), QrModules.Of("b").Cast<bool>());
}
