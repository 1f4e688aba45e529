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
        var pack = new Argument<string?>("PACK") { Description = streams.Say(CliMessages.LimitsPack), Arity = ArgumentArity.ZeroOrOne };
        var units = UnitOptions.Units(streams);
        var command = new Command("limits", streams.Say(CliMessages.Limits)) { pack, units };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(pack) is not { } name)
            {
                SheetWriter.Write(LimitSheets.All(streams.Language), streams.Output);
                return ExitCode.Accepted;
            }

            if (LimitSheets.One(name, parsed.GetRequiredValue(units), streams.Language) is { } sheet)
            {
                SheetWriter.Write(sheet, streams.Output);
                return ExitCode.Accepted;
            }

            var near = NearestName.Of(name, LimitSheets.Names);
            streams.Error.WriteLine(streams.Say(near is null ? CliMessages.NoPack(new(name)) : CliMessages.NoPackBut(new(name), new(near))));
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
        var name = new Argument<string?>("NAME") { Description = streams.Say(CliMessages.RefrigerantName), Arity = ArgumentArity.ZeroOrOne };
        var units = UnitOptions.Units(streams);
        var elevation = UnitOptions.Elevation(streams);
        var command = new Command("refrigerants", streams.Say(CliMessages.Refrigerants)) { name, units, elevation };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(name) is not { } asked)
            {
                SheetWriter.Write(RefrigerantSheets.All(streams.Language), streams.Output);
                return ExitCode.Accepted;
            }

            if (Find(asked, streams) is not { } info)
                return ExitCode.WrongInput;
            SheetWriter.Write(RefrigerantSheets.One(info, parsed.GetRequiredValue(units), parsed.GetValue(elevation), streams.Language), streams.Output);
            return ExitCode.Accepted;
        });
        return command;
    }

    internal static RefrigerantInfo? Find(string asked, CommandStreams streams)
    {
        if (RefrigerantCatalogue.Find(asked) is { } info)
            return info;
        var near = NearestName.Of(asked, RefrigerantCatalogue.Names.Keys);
        streams.Error.WriteLine(streams.Say(near is null ? CliMessages.NoRefrigerant(new(asked)) : CliMessages.NoRefrigerantBut(new(asked), new(near))));
        return null;
    }
}

/// <summary><c>commission properties NAME --at "118.9 psig, 57.2 °F"</c>: the state of a refrigerant at a pressure and a temperature.</summary>
internal static class PropertiesCommand
{
    private const string ExampleState = "118.9 psig, 57.2 °F";

    public static Command Build(CommandStreams streams)
    {
        var name = new Argument<string>("NAME") { Description = streams.Say(CliMessages.Refrigerant) };
        var at = new Option<string>("--at") { Description = streams.Say(CliMessages.State(new(ExampleState))), HelpName = "STATE", Required = true };
        var units = UnitOptions.Units(streams);
        var elevation = UnitOptions.Elevation(streams);
        var command = new Command("properties", streams.Say(CliMessages.Properties)) { name, at, units, elevation };
        command.SetAction(parsed =>
        {
            if (RefrigerantsCommand.Find(parsed.GetRequiredValue(name), streams) is not { } info)
                return ExitCode.WrongInput;
            if (!info.IsComputable)
            {
                streams.Error.WriteLine(streams.Say(RefrigerantMessages.CannotBeComputed(new(info.Designation), new(info.LacksEquationOf!))));
                return ExitCode.WrongInput;
            }

            var parts = parsed.GetRequiredValue(at).Split(',', 2, StringSplitOptions.TrimEntries);
            if (parts.Length < 2)
            {
                streams.Error.WriteLine(streams.Say(CliMessages.OneQuantity(new(parts[0]), new(ExampleState))));
                return ExitCode.WrongInput;
            }

            var pressure = QuantityParser.Parse(parts[0], Dimension.Pressure);
            var temperature = QuantityParser.Parse(parts[1], Dimension.Temperature);
            if (!pressure.Ok || !temperature.Ok)
            {
                foreach (var fault in new[] { pressure.Fault, temperature.Fault })
                {
                    if (fault is not null)
                        streams.Error.WriteLine(streams.Say(CliMessages.OptionFault(new("--at"), new(fault.Text(streams.Language)))));
                }

                return ExitCode.WrongInput;
            }

            var atmosphere = StandardAtmosphere.At(parsed.GetValue(elevation));
            SheetWriter.Write(
                StateSheet.Make(info, pressure.Value.ToStatedPressure().ToAbsolute(atmosphere), temperature.Value.As<Temperature>(), atmosphere, parsed.GetRequiredValue(units), streams.Language),
                streams.Output);
            return ExitCode.Accepted;
        });
        return command;
    }
}
