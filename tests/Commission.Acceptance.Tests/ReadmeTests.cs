using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>The README keeps its promises.</summary>
public sealed class ReadmeTests
{
    private static readonly string[] Lines = File.ReadAllLines(Repository.PathTo("README.md"));

    [Fact]
    public void It_is_short_and_opens_with_the_job_then_the_two_commands()
    {
        Assert.InRange(Lines.Length, 40, 150);
        Assert.StartsWith("# Commission", Lines[0], StringComparison.Ordinal);
        var commands = Commands().ToList();
        Assert.StartsWith("dotnet run --project src/Commission.Cli -- render ", commands[0], StringComparison.Ordinal);
        Assert.Equal("dotnet test", commands[1]);
    }

    [Fact]
    public void Its_first_command_runs()
    {
        using var folder = new TemporaryFolder();
        var args = Commands().First().Split(" -- ", 2)[1].Split(' ');
        args = [.. args.Select(a => a.StartsWith("examples/", StringComparison.Ordinal) ? Repository.PathTo(a) : a == "out" ? folder.Path : a)];
        var run = CommandRun.Of(args);
        Assert.Equal(0, run.ExitCode);
        Assert.Equal("", run.Error);
        Assert.NotEmpty(run.Written);
        Assert.Equal(run.Written.Order(StringComparer.Ordinal), Directory.EnumerateFiles(folder.Path).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Its_pictures_and_links_exist()
    {
        var text = string.Join('\n', Lines);
        foreach (var part in text.Split("](").Skip(1))
        {
            var target = part[..part.IndexOf(')', StringComparison.Ordinal)];
            if (!target.Contains("://", StringComparison.Ordinal) && !target.StartsWith('#'))
                Assert.True(Path.Exists(Repository.PathTo(target)), $"README.md points to {target}, which is not there.");
        }
    }

    private static IEnumerable<string> Commands()
    {
        var inside = false;
        foreach (var line in Lines)
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
                inside = !inside && line is "```" or "```sh" or "```bash";
            else if (inside && line.StartsWith("dotnet ", StringComparison.Ordinal))
                yield return line.Trim();
        }
    }
}
