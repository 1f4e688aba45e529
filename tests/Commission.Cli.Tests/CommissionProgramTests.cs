using System.Globalization;
using Xunit;

namespace Commission.Cli.Tests;

public sealed class CommissionProgramTests
{
    [Fact]
    public void An_unknown_command_is_told_in_one_line_without_a_stack_trace()
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        using var error = new StringWriter(CultureInfo.InvariantCulture);
        Assert.Equal(2, CommissionProgram.Run(["rendre", "job.yaml"], output, error));
        Assert.StartsWith("commission: ", error.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error.ToString(), StringComparison.Ordinal);
        Assert.Equal("", output.ToString());
    }

    [Fact]
    public void An_argument_that_begins_with_an_at_sign_is_a_file_name()
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        using var error = new StringWriter(CultureInfo.InvariantCulture);
        Assert.Equal(2, CommissionProgram.Run(["check", "@job.yaml"], output, error));
        Assert.Contains("@job.yaml: there is no such file.", error.ToString(), StringComparison.Ordinal);
    }
}
