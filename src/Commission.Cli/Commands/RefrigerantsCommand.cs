using System.CommandLine;
using Commission.Checks.Sheets;
using Commission.Cli.Running;
using Commission.Fluids;
using Commission.Source;

namespace Commission.Cli.Commands;

/// <summary><c>commission refrigerants [NAME]</c>: the list, or one refrigerant with its pressures.</summary>
internal static class RefrigerantsCommand
{
    public static Command Build(CommandStreams streams)
    {
        var name = new Argument<string?>("NAME") { Description = "A refrigerant, such as R-454B, R410A or propane.", Arity = ArgumentArity.ZeroOrOne };
        var units = UnitOptions.Units();
        var elevation = UnitOptions.Elevation();
        var command = new Command("refrigerants", "Lists the refrigerants, or shows one: identity, safety group, GWP, pressures, papers.") { name, units, elevation };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(name) is not { } asked)
            {
                SheetWriter.Write(RefrigerantSheets.All(), streams.Output);
                return ExitCode.Accepted;
            }

            if (Find(asked, streams.Error) is not { } info)
                return ExitCode.WrongInput;
            SheetWriter.Write(RefrigerantSheets.One(info, parsed.GetRequiredValue(units), parsed.GetValue(elevation)), streams.Output);
            return ExitCode.Accepted;
        });
        return command;
    }

    internal static RefrigerantInfo? Find(string asked, TextWriter error)
    {
        if (RefrigerantCatalogue.Find(asked) is { } info)
            return info;
        var near = NearestName.Of(asked, RefrigerantCatalogue.Names.Keys);
        error.WriteLine($"There is no refrigerant \"{asked}\".{(near is null ? "" : $" Did you mean {near}?")} commission refrigerants lists them.");
        return null;
    }
}
