using System.Globalization;
using Commission.Checks.Sheets;
using Commission.Cli.Running;
using Xunit;

namespace Commission.Cli.Tests.Running;

public sealed class SheetWriterTests
{
    [Fact]
    public void Columns_are_as_wide_as_their_cells_and_lines_have_no_trailing_space()
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        SheetWriter.Write(
            new Sheet("R-32", [SheetPart.Lines("", "difluoromethane"), new SheetPart("Table", ["t", "bubble"], [["-40.0 °F", "11 psig"], ["0 °F", ""]])]),
            output);
        Assert.Equal("R-32\n\n  difluoromethane\n\nTable\n  t         bubble\n  -40.0 °F  11 psig\n  0 °F\n", output.ToString());
    }
}
