using System.CommandLine;
using Commission.Checks.Sheets;
using Commission.Cli.Running;
using Commission.Measurement.Atmosphere;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Cli.Commands;

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
                streams.Error.WriteLine($"{info.Designation} cannot be computed: {info.NotComputable}");
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
                        streams.Error.WriteLine("--at: " + fault.Message);
                }

                return ExitCode.WrongInput;
            }

            var atmosphere = StandardAtmosphere.At(parsed.GetValue(elevation));
            SheetWriter.Write(
                StateSheet.Make(info, pressure.Value.ToStatedPressure().ToAbsolute(atmosphere), temperature.Value.As<Temperature>(), atmosphere, parsed.GetRequiredValue(units)),
                streams.Output);
            return ExitCode.Accepted;
        });
        return command;
    }
}
