using System.CommandLine;
using System.Globalization;
using System.Text;
using Commission.Cli.Console;
using Commission.Documents;
using Commission.Documents.Archive;
using Commission.Documents.Plots;
using Commission.Documents.Templates;
using Commission.Jobs;
using Commission.Records.Json;
using Commission.Source;
using Commission.Source.Problems;

namespace Commission.Cli.Commands;

/// <summary><c>commission render JOB… [--out DIR] [--format pdf,html,json]</c>: evaluates and writes the record's files.</summary>
internal static class RenderCommand
{
    // A longer log stays beside the record: its hash proves which it is, and a page that is mailed stays small.
    private const int LargestAttachment = 1 << 20;

    private static readonly string[] KnownFormats = ["pdf", "html", "json"];

    public static Command Build(CommandStreams streams)
    {
        var jobs = CommonOptions.Jobs();
        var shop = CommonOptions.Shop();
        var asOf = CommonOptions.AsOf();
        var folder = new Option<string>("--out") { Description = "Folder for the record's files; made when it is missing.", HelpName = "DIR", DefaultValueFactory = _ => "." };
        var formats = new Option<string[]>("--format")
        {
            Description = "What to write: pdf, html, json, separated by commas.",
            HelpName = "LIST",
            DefaultValueFactory = _ => KnownFormats,
            CustomParser = result =>
            {
                var asked = result.Tokens.SelectMany(t => t.Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)).Select(f => f.ToLowerInvariant()).Distinct(StringComparer.Ordinal).ToArray();
                foreach (var unknown in asked.Except(KnownFormats, StringComparer.Ordinal))
                    result.AddError($"--format: there is no format \"{unknown}\". Write pdf, html, json, or several of them with commas.");
                return asked;
            },
        };
        var template = new Option<string?>("--template") { Description = "Folder with a template of your own (record.liquid).", HelpName = "DIR" };
        var command = new Command("render", "Checks job files and writes their records: PDF, HTML, JSON.") { jobs, folder, formats, template, shop, asOf };
        command.SetAction(parsed =>
        {
            var moment = RunClock.AsOf(parsed.GetValue(asOf), Environment.GetEnvironmentVariable("SOURCE_DATE_EPOCH"));
            var worst = ExitCode.Accepted;
            // Templates are parsed while the first job is read: they need nothing of each other.
            if (parsed.GetValue(template) is null)
                _ = Task.Run(TemplateSet.BuiltIn.Prepare);
            var ready = new List<EvaluatedJob>();
            foreach (var path in parsed.GetRequiredValue(jobs))
            {
                var evaluated = JobRunner.Run(path, parsed.GetValue(shop), moment, streams.Error);
                worst = Math.Max(worst, evaluated?.ExitCode ?? ExitCode.WrongInput);
                if (evaluated is not null)
                    ready.Add(evaluated);
            }

            foreach (var same in ready.GroupBy(e => RecordFileName.Of(e.Record.Header.Id), StringComparer.OrdinalIgnoreCase))
            {
                if (same.Count() > 1)
                {
                    streams.Error.WriteLine($"{string.Join(", ", same.Select(e => e.Path))}: all of them are job \"{same.First().Record.Header.Id}\", and their records would overwrite each other. Give each job an id of its own.");
                    worst = Math.Max(worst, ExitCode.WrongInput);
                    continue;
                }

                var job = same.First();
                worst = Math.Max(worst, Write(job, same.Key, parsed.GetRequiredValue(folder), parsed.GetRequiredValue(formats), parsed.GetValue(template), streams));
            }

            return worst;
        });
        return command;
    }

    private static int Write(EvaluatedJob job, string name, string folder, string[] formats, string? templateFolder, CommandStreams streams)
    {
        var templates = templateFolder is null ? TemplateSet.BuiltIn : TemplateFolder.Read(templateFolder);
        var record = job.Record;
        var json = RecordJson.Write(record);
        var problems = new ProblemList();
        byte[]? pdf = null;
        string? html = null;
        var wantsHtml = formats.Contains("html", StringComparer.Ordinal);
        if (formats.Contains("pdf", StringComparer.Ordinal) || wantsHtml)
        {
            // Figures and markup need nothing of each other: the figures are drawn while the templates are rendered.
            var figures = new FigureShelf(record);
            _ = Task.Run(() => figures.Draw(narrow: wantsHtml));
            if (DocumentRenderer.ToMarkup(json, figures, templates, problems) is not { } markup)
            {
                streams.Error.Write(ProblemRenderer.Render(problems, file => templates.TextOf(file) is { } text ? SourceText.Decode(file, Encoding.UTF8.GetBytes(text), new ProblemList()) : null));
                return ExitCode.WrongInput;
            }

            // The two kinds of pages need nothing of each other.
            var page = wantsHtml ? Task.Run(() => DocumentRenderer.ToHtml(record, markup, figures)) : null;
            if (formats.Contains("pdf", StringComparer.Ordinal))
                pdf = DocumentRenderer.ToPdf(record, markup, figures, Attachments(job, name, json)).Bytes;
            html = page?.GetAwaiter().GetResult();
        }

        OutcomeReport.Write(record, streams.Output);
        Directory.CreateDirectory(folder);
        if (pdf is not null)
            Put(Path.Combine(folder, name + ".pdf"), pdf, streams.Output);
        if (html is not null)
            Put(Path.Combine(folder, name + ".html"), Encoding.UTF8.GetBytes(html), streams.Output);
        if (formats.Contains("json", StringComparer.Ordinal))
            Put(Path.Combine(folder, name + ".record.json"), json, streams.Output);
        return ExitCode.Accepted;
    }

    private static IReadOnlyList<Attachment> Attachments(EvaluatedJob job, string name, byte[] json) =>
    [
        .. job.Reading.Files.Where(f => f.Role != JobFileRole.Photo && f.Content.Length <= LargestAttachment).Select(f => new Attachment(Path.GetFileName(f.Name), MediaType(f.Name), f.Role == JobFileRole.Log ? AttachmentKind.Data : AttachmentKind.Source, Describe(f.Role), f.Content)),
        new Attachment(name + ".record.json", "application/json", AttachmentKind.Data, "The record as data", json),
    ];

    private static string Describe(JobFileRole role) => role switch
    {
        JobFileRole.Job => "The job file as read",
        JobFileRole.Log => "A log of the job",
        JobFileRole.Kit => "The kit file as read",
        _ => "A limits pack as read",
    };

    private static string MediaType(string name) => Path.GetExtension(name).ToLowerInvariant() switch
    {
        ".csv" => "text/csv",
        ".json" => "application/json",
        _ => "application/yaml",
    };

    private static void Put(string path, byte[] bytes, TextWriter output)
    {
        AtomicFile.Write(path, bytes);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  wrote {path} ({(bytes.Length + 1023) / 1024} kB)"));
    }
}
