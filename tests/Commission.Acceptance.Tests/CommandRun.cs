using System.Globalization;
using Commission.Cli;

namespace Commission.Acceptance.Tests;

/// <summary>One run of the program in this process, with what it wrote.</summary>
internal sealed record CommandRun(int ExitCode, string Output, string Error)
{
    private const string Wrote = "  wrote ";

    /// <summary>The files it says it wrote.</summary>
    public IEnumerable<string> Written => Output.Split('\n').Where(l => l.StartsWith(Wrote, StringComparison.Ordinal)).Select(l => l[Wrote.Length..l.LastIndexOf(" (", StringComparison.Ordinal)]);

    public static CommandRun Of(params string[] args)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        using var error = new StringWriter(CultureInfo.InvariantCulture);
        var code = CommissionProgram.Run(args, output, error);
        return new CommandRun(code, output.ToString(), error.ToString());
    }
}
