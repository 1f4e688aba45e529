using System.CommandLine;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Cli.Commands;

/// <summary>Options of commands that print numbers without a job: units and elevation.</summary>
internal static class UnitOptions
{
    public static Option<UnitSystem> Units() => new("--units")
    {
        Description = "us or si.",
        HelpName = "us|si",
        DefaultValueFactory = _ => UnitSystem.Us,
        CustomParser = result =>
        {
            if (UnitSystem.Find(result.Tokens[0].Value) is { } system)
                return system;
            result.AddError($"--units: there is no \"{result.Tokens[0].Value}\". Write us or si.");
            return null;
        },
    };

    public static Option<Length> Elevation() => new("--elevation")
    {
        Description = "Elevation of the site, for gauge pressures; without it sea level.",
        HelpName = "LENGTH",
        CustomParser = result =>
        {
            var parsed = QuantityParser.Parse(result.Tokens[0].Value, Dimension.Length);
            if (!parsed.Ok)
                result.AddError("--elevation: " + parsed.Fault.Message);
            return parsed.Ok ? parsed.Value.As<Length>() : default;
        },
    };
}
