using System.CommandLine;
using System.Text;
using System.Xml.Linq;
using Commission.Cli.Running;
using Commission.Documents;
using Commission.Documents.Media;
using Commission.Documents.Plots;
using Commission.Documents.Templates;
using Commission.Messages;
using Commission.Records.Integrity;
using Commission.Source;

namespace Commission.Cli.Commands;

/// <summary>What a user chooses of the pages.</summary>
/// <param name="IsAnnexFull">Whether the PDF carries the way to every number.</param>
/// <param name="KeepsLocation">Whether photos keep what the camera wrote beside them.</param>
internal readonly record struct PageChoices(bool IsAnnexFull, bool KeepsLocation);

/// <summary><c>commission render JOB… [--out DIR] [--format pdf,html,json]</c>: evaluates and writes the record's files.</summary>
internal static class RenderCommand
{
    public static Command Build(CommandStreams streams)
    {
        var jobs = CommonOptions.Jobs(streams);
        var shop = CommonOptions.Shop(streams);
        var asOf = CommonOptions.AsOf(streams);
        var folder = new Option<string>("--out") { Description = streams.Say(CliMessages.Out), HelpName = "DIR", DefaultValueFactory = _ => "." };
        string[] known = [.. RecordFormat.All.Select(f => f.Name)];
        var names = new ListValue([.. known.Select(n => new NameValue(n))], ListJoin.Comma);
        var formats = new Option<string[]>("--format")
        {
            Description = streams.Say(CliMessages.Format(names)),
            HelpName = "LIST",
            DefaultValueFactory = _ => known,
            CustomParser = result =>
            {
                var asked = result.Tokens.SelectMany(t => t.Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)).Select(f => f.ToLowerInvariant()).Distinct(StringComparer.Ordinal).ToArray();
                foreach (var unknown in asked.Except(known, StringComparer.Ordinal))
                    result.AddError(streams.Say(CliMessages.NoFormat(new(unknown), names)));
                return asked;
            },
        };
        var template = new Option<string?>("--template") { Description = streams.Say(CliMessages.Template), HelpName = "DIR" };
        var annex = new Option<string>("--annex") { Description = streams.Say(CliMessages.Annex), HelpName = "short|full", DefaultValueFactory = _ => "short" };
        annex.AcceptOnlyFromAmong("short", "full");
        var keepLocation = new Option<bool>("--keep-location") { Description = streams.Say(CliMessages.KeepLocation) };
        var command = new Command("render", streams.Say(CliMessages.Render(new([.. known.Select(n => new NameValue(n.ToUpperInvariant()))], ListJoin.Comma)))) { jobs, folder, formats, template, annex, keepLocation, shop, asOf };
        command.SetAction(parsed =>
        {
            if (!JobRun.TryAsOf(parsed.GetValue(asOf), streams, out var moment))
                return ExitCode.WrongInput;
            var worst = ExitCode.Accepted;
            // Templates are parsed while the first job is read: they need nothing of each other.
            if (parsed.GetValue(template) is null)
                _ = Task.Run(TemplateSet.BuiltIn.Prepare);
            var ready = new List<EvaluatedJob>();
            foreach (var path in parsed.GetRequiredValue(jobs))
            {
                var evaluated = JobRun.Of(path, parsed.GetValue(shop), new(moment, parsed.GetValue<Language?>(TerminalLanguage.Option)), streams);
                worst = Math.Max(worst, evaluated?.ExitCode ?? ExitCode.WrongInput);
                if (evaluated is not null)
                    ready.Add(evaluated);
            }

            foreach (var same in ready.GroupBy(e => RecordFileName.Of(e.Record.Header.Id), StringComparer.OrdinalIgnoreCase))
            {
                if (same.Count() > 1)
                {
                    streams.Error.WriteLine(streams.Say(CliMessages.SameId(new([.. same.Select(e => new TextValue(e.Path))], ListJoin.Comma), new(same.First().Record.Header.Id))));
                    worst = Math.Max(worst, ExitCode.WrongInput);
                    continue;
                }

                var job = same.First();
                var asked = parsed.GetRequiredValue(formats);
                worst = Math.Max(worst, Write(job, same.Key, parsed.GetRequiredValue(folder), [.. RecordFormat.All.Where(f => asked.Contains(f.Name, StringComparer.Ordinal))], parsed.GetValue(template), new PageChoices(parsed.GetRequiredValue(annex) == "full", parsed.GetValue(keepLocation)), streams));
            }

            return worst;
        });
        return command;
    }

    private static int Write(EvaluatedJob job, string name, string folder, IReadOnlyList<RecordFormat> formats, string? templateFolder, PageChoices choices, CommandStreams streams)
    {
        var templates = templateFolder is null ? TemplateSet.BuiltIn : TemplateFolder.Read(templateFolder);
        var done = RecordDigest.Seal(job.Record);
        var media = new PageMedia(new FigureShelf(done.Record), JobPhotos.Of(done.Record, job.Reading, choices.KeepsLocation));
        XDocument? markup = null;
        if (formats.Any(f => f.Pages != PageKind.None))
        {
            // Figures and markup need nothing of each other: the figures are drawn while the template is rendered.
            if (formats.Any(f => f.Pages == PageKind.Screen))
                _ = Task.Run(media.Figures.DrawForScreens);
            _ = Task.Run(media.Photos.Load);
            var problems = new ProblemList();
            markup = DocumentRenderer.ToMarkup(done.Json, media, templates, problems);
            if (markup is null)
            {
                streams.Error.Write(ProblemRenderer.Render(problems, file => templates.TextOf(file) is { } text ? SourceText.Decode(file, Encoding.UTF8.GetBytes(text), new ProblemList()) : null, streams.Language));
                return ExitCode.WrongInput;
            }
        }

        // The formats need nothing of each other.
        var pages = new RecordPages(name, job.Reading, done, media, markup) { IsAnnexFull = choices.IsAnnexFull };
        var files = formats.Select(format => Task.Run(() => format.Write(pages))).ToArray().Select(t => t.GetAwaiter().GetResult()).ToArray();
        OutcomeReport.Write(done.Record, streams.Output);
        Directory.CreateDirectory(folder);
        foreach (var (format, bytes) in formats.Zip(files))
        {
            var path = Path.Combine(folder, name + format.Suffix);
            AtomicFile.Write(path, bytes.Span);
            streams.Output.WriteLine("  " + streams.Say(CliMessages.Wrote(new(path), (bytes.Length + 1023) / 1024)));
        }

        return ExitCode.Accepted;
    }
}
