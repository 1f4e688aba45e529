using System.CommandLine;

namespace Commission.Cli.Commands;

/// <summary>Every command, one line each.</summary>
internal static class CommandCatalogue
{
    public static RootCommand Build(CommandStreams streams) => new("Turns the readings of a commissioning job into a judged, traced record.")
    {
        CheckCommand.Build(streams),
        RenderCommand.Build(streams),
        ExplainCommand.Build(streams),
        LimitsCommand.Build(streams),
        RefrigerantsCommand.Build(streams),
        PropertiesCommand.Build(streams),
    };
}

/// <summary>Where a command writes.</summary>
/// <param name="Output">Results.</param>
/// <param name="Error">Problems.</param>
internal sealed record CommandStreams(TextWriter Output, TextWriter Error);
