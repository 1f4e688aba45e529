using Commission.Jobs;
using Commission.Records;

namespace Commission.Cli.Console;

/// <summary>A job file with what came of it.</summary>
/// <param name="Path">The file as the user named it.</param>
/// <param name="Reading">The file as read.</param>
/// <param name="Record">The record.</param>
internal sealed record EvaluatedJob(string Path, JobReading Reading, CommissioningRecord Record)
{
    /// <summary>The exit code the outcome stands for.</summary>
    public int ExitCode => Record.IsAccepted ? Cli.ExitCode.Accepted : Cli.ExitCode.NotAccepted;
}
