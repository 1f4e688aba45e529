using System.CommandLine;
using Commission.Checks.Sheets;
using Commission.Cli.Running;
using Commission.Source;

namespace Commission.Cli.Commands;

/// <summary><c>commission limits [PACK]</c>: the packs, or one with every figure, its source and its mark.</summary>
internal static class LimitsCommand
{
    public static Command Build(CommandStreams streams)
    {
        var pack = new Argument<string?>("PACK") { Description = "A limits pack, such as common-practice.", Arity = ArgumentArity.ZeroOrOne };
        var units = UnitOptions.Units();
        var command = new Command("limits", "Lists the limit packs, or shows one: every figure with its source and mark.") { pack, units };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(pack) is not { } name)
            {
                SheetWriter.Write(LimitSheets.All(), streams.Output);
                return ExitCode.Accepted;
            }

            if (LimitSheets.One(name, parsed.GetRequiredValue(units)) is { } sheet)
            {
                SheetWriter.Write(sheet, streams.Output);
                return ExitCode.Accepted;
            }

            var near = NearestName.Of(name, LimitSheets.Names);
            streams.Error.WriteLine($"There is no limits pack \"{name}\".{(near is null ? "" : $" Did you mean {near}?")} commission limits lists them.");
            return ExitCode.WrongInput;
        });
        return command;
    }
}
