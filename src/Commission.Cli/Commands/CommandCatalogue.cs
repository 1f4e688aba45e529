using System.CommandLine;
using Commission.Cli.Running;
using Commission.Messages;

namespace Commission.Cli.Commands;

/// <summary>Every command, one line each.</summary>
internal static class CommandCatalogue
{
    public static RootCommand Build(CommandStreams streams) => new(streams.Say(CliMessages.Program))
    {
        CommonOptions.Language(streams),
        CheckCommand.Build(streams),
        RenderCommand.Build(streams),
        ExplainCommand.Build(streams),
        LimitsCommand.Build(streams),
        RefrigerantsCommand.Build(streams),
        PropertiesCommand.Build(streams),
    };
}
