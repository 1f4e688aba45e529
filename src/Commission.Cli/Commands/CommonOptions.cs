using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Commission.Messages;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Cli.Commands;

/// <summary>Arguments and options that several commands take, spelled once.</summary>
internal static class CommonOptions
{
    public static Argument<string[]> Jobs()
    {
        var jobs = new Argument<string[]>("JOB") { Description = "Job files.", Arity = ArgumentArity.OneOrMore };
        // Without this a misspelt option would be taken for one more job.
        jobs.Validators.Add(RefuseOptions);
        return jobs;
    }

    public static Option<string?> Shop() => new("--shop") { Description = "Folder shared by jobs: kit files and limit packs.", HelpName = "DIR" };

    public static Option<DateTimeOffset?> AsOf() => new("--as-of")
    {
        Description = "The moment the record speaks for (ISO 8601); without it SOURCE_DATE_EPOCH, else the day of the job.",
        HelpName = "TIME",
        CustomParser = result =>
        {
            var text = result.Tokens[0].Value;
            if (DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var time))
                return time;
            result.AddError($"--as-of: \"{text}\" is not a time. Write 2026-06-18 or 2026-06-18T16:30:00-06:00.");
            return null;
        },
    };

    private static void RefuseOptions(ArgumentResult result)
    {
        foreach (var token in result.Tokens)
        {
            if (token.Value.StartsWith('-') && token.Value.Length > 1)
                result.AddError($"There is no option {token.Value}. commission --help lists them; ./{token.Value} names a file.");
        }
    }
}

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
                result.AddError("--elevation: " + parsed.Fault.Text(Language.English));
            return parsed.Ok ? parsed.Value.As<Length>() : default;
        },
    };
}
