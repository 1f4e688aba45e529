using System.CommandLine;
using Commission.Checks.Sheets;
using Commission.Cli.Running;
using Commission.Fluids;
using Commission.Measurement.Atmosphere;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
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
                SheetWriter.Write(LimitSheets.All(Language.English), streams.Output);
                return ExitCode.Accepted;
            }

            if (LimitSheets.One(name, parsed.GetRequiredValue(units), Language.English) is { } sheet)
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
                SheetWriter.Write(RefrigerantSheets.All(Language.English), streams.Output);
                return ExitCode.Accepted;
            }

            if (Find(asked, streams.Error) is not { } info)
                return ExitCode.WrongInput;
            SheetWriter.Write(RefrigerantSheets.One(info, parsed.GetRequiredValue(units), parsed.GetValue(elevation), Language.English), streams.Output);
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

/// <summary><c>commission properties NAME --at "118.9 psig, 57.2 °F"</c>: the state of a refrigerant at a pressure and a temperature.</summary>
internal static class PropertiesCommand
{
    public static Command Build(CommandStreams streams)
    {
        var name = new Argument<string>("NAME") { Description = "A refrigerant." };
        var at = new Option<string>("--at") { Description = "Pressure and temperature, with a comma between: \"118.9 psig, 57.2 °F\".", HelpName = "STATE", Required = true };
        var units = UnitOptions.Units();
        var elevation = UnitOptions.Elevation();
        var command = new Command("properties", "Shows a refrigerant at a pressure and a temperature: phase, superheat or subcooling, density, enthalpy.") { name, at, units, elevation };
        command.SetAction(parsed =>
        {
            if (RefrigerantsCommand.Find(parsed.GetRequiredValue(name), streams.Error) is not { } info)
                return ExitCode.WrongInput;
            if (!info.IsComputable)
            {
                streams.Error.WriteLine(MessageWriter.Words.Format(RefrigerantMessages.CannotBeComputed(new(info.Designation), new(info.LacksEquationOf!)), Language.English));
                return ExitCode.WrongInput;
            }

            var parts = parsed.GetRequiredValue(at).Split(',', 2, StringSplitOptions.TrimEntries);
            if (parts.Length < 2)
            {
                streams.Error.WriteLine($"--at: \"{parts[0]}\" is one quantity. Write a pressure and a temperature with a comma between: \"118.9 psig, 57.2 °F\".");
                return ExitCode.WrongInput;
            }

            var pressure = QuantityParser.Parse(parts[0], Dimension.Pressure);
            var temperature = QuantityParser.Parse(parts[1], Dimension.Temperature);
            if (!pressure.Ok || !temperature.Ok)
            {
                foreach (var fault in new[] { pressure.Fault, temperature.Fault })
                {
                    if (fault is not null)
                        streams.Error.WriteLine("--at: " + fault.Text(Language.English));
                }

                return ExitCode.WrongInput;
            }

            var atmosphere = StandardAtmosphere.At(parsed.GetValue(elevation));
            SheetWriter.Write(
                StateSheet.Make(info, pressure.Value.ToStatedPressure().ToAbsolute(atmosphere), temperature.Value.As<Temperature>(), atmosphere, parsed.GetRequiredValue(units), Language.English),
                streams.Output);
            return ExitCode.Accepted;
        });
        return command;
    }
}
