using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Commission.Cli.Running;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;

namespace Commission.Cli.Commands;

/// <summary>Arguments and options that several commands take, spelled once.</summary>
internal static class CommonOptions
{
    /// <summary>Language of terminal and record; it holds for every command.</summary>
    public static Option<Language?> Language(CommandStreams streams) => new(TerminalLanguage.Option)
    {
        Description = streams.Say(CliMessages.Language),
        HelpName = string.Join('|', MessageCatalogue.Languages.Select(l => l.Code)),
        Recursive = true,
        CustomParser = result =>
        {
            if (MessageCatalogue.FindLanguage(result.Tokens[0].Value) is { } language)
                return language;
            result.AddError(streams.Say(CliMessages.NoLanguage(new(result.Tokens[0].Value), new([.. MessageCatalogue.Languages.Select(l => new TextValue(l.Code))], ListJoin.Or))));
            return null;
        },
    };

    public static Argument<string[]> Jobs(CommandStreams streams)
    {
        var jobs = new Argument<string[]>("JOB") { Description = streams.Say(CliMessages.Jobs), Arity = ArgumentArity.OneOrMore };
        // Without this a misspelt option would be taken for one more job.
        jobs.Validators.Add(result => RefuseOptions(streams, result));
        return jobs;
    }

    public static Option<string?> Shop(CommandStreams streams) => new("--shop") { Description = streams.Say(CliMessages.Shop), HelpName = "DIR" };

    public static Option<DateTimeOffset?> AsOf(CommandStreams streams) => new("--as-of")
    {
        Description = streams.Say(CliMessages.AsOf),
        HelpName = "TIME",
        CustomParser = result =>
        {
            var text = result.Tokens[0].Value;
            if (DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var time))
                return time;
            result.AddError(streams.Say(CliMessages.NotATime(new(text))));
            return null;
        },
    };

    private static void RefuseOptions(CommandStreams streams, ArgumentResult result)
    {
        foreach (var token in result.Tokens)
        {
            if (token.Value.StartsWith('-') && token.Value.Length > 1)
                result.AddError(streams.Say(CliMessages.NoOption(new(token.Value))));
        }
    }
}

/// <summary>Options of commands that print numbers without a job: units and elevation.</summary>
internal static class UnitOptions
{
    public static Option<UnitSystem> Units(CommandStreams streams) => new("--units")
    {
        Description = streams.Say(CliMessages.Units),
        HelpName = "us|si",
        DefaultValueFactory = _ => UnitSystem.Us,
        CustomParser = result =>
        {
            if (UnitSystem.Find(result.Tokens[0].Value) is { } system)
                return system;
            result.AddError(streams.Say(CliMessages.NoUnits(new(result.Tokens[0].Value))));
            return null;
        },
    };

    public static Option<Length> Elevation(CommandStreams streams) => new("--elevation")
    {
        Description = streams.Say(CliMessages.Elevation),
        HelpName = "LENGTH",
        CustomParser = result =>
        {
            var parsed = QuantityParser.Parse(result.Tokens[0].Value, Dimension.Length);
            if (!parsed.Ok)
                result.AddError(streams.Say(CliMessages.OptionFault(new("--elevation"), new(parsed.Fault.Text(streams.Language)))));
            return parsed.Ok ? parsed.Value.As<Length>() : default;
        },
    };
}
