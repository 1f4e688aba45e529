using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Text.Unicode;
using Commission.Documents.Templates;
using Commission.Messages;
using Commission.Source;
using Fluid;
using Fluid.Values;

namespace Commission.Documents.Templates;

/// <summary>
/// The Liquid templates that say what the pages show: <c>record.liquid</c> and its parts. Parsed once, safe to use from several
/// threads. A template is trusted like a program.
/// </summary>
public sealed partial class TemplateSet
{
    /// <summary>Name of the template that writes the whole document.</summary>
    public const string Main = "record.liquid";

    private const string ResourcePrefix = "templates/";
    private static readonly Lazy<Dictionary<string, string>> BuiltInFiles = new(LoadBuiltIn);
    private static readonly Lazy<TemplateSet> BuiltInSet = new(static () => new TemplateSet(BuiltInFiles.Value));
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    private readonly Dictionary<string, string> _files;
    private readonly Lazy<(IFluidTemplate? Template, string? Fault)> _main;
    private readonly TemplateOptions _options;

    private TemplateSet(Dictionary<string, string> files)
    {
        _files = files;
        _options = new TemplateOptions
        {
            CultureInfo = CultureInfo.InvariantCulture,
            TimeZone = TimeZoneInfo.Utc,
            Now = static () => DateTimeOffset.UnixEpoch,
            StrictVariables = true,
            StrictFilters = true,
            FileProvider = new TemplateFiles(files),
            MaxSteps = 2_000_000,
            MaxRecursion = 100,
        };
        _options.Filters.AddFilter(PageWords.Filter, PageWords.Say);
        _main = new(Parse);
    }

    /// <summary>The templates that ship with the program.</summary>
    public static TemplateSet BuiltIn => BuiltInSet.Value;

    /// <summary>The built-in templates with some replaced or added.</summary>
    /// <param name="files">Text by name, such as <c>record.liquid</c> or <c>parts/findings.liquid</c>, with forward slashes.</param>
    /// <returns>A new set.</returns>
    public static TemplateSet With(IReadOnlyDictionary<string, string> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var all = new Dictionary<string, string>(BuiltInFiles.Value, StringComparer.Ordinal);
        foreach (var (name, text) in files)
            all[name] = text;
        return new TemplateSet(all);
    }

    /// <summary>Names of the templates in the set, sorted.</summary>
    public IReadOnlyList<string> Names => [.. _files.Keys.Order(StringComparer.Ordinal)];

    /// <summary>The text of a template, for a person who wants to change it.</summary>
    /// <param name="name">A name of <see cref="Names"/>.</param>
    /// <returns>The text; null when there is none of that name.</returns>
    public string? TextOf(string name) => _files.GetValueOrDefault(name);

    /// <summary>Parses the templates ahead of their first use, for a program that has something else to do meanwhile.</summary>
    public void Prepare() => _ = _main.Value;

    /// <summary>Renders a record's JSON into markup.</summary>
    /// <param name="record">UTF-8 JSON of a record.</param>
    /// <param name="problems">Receives a fault of the templates.</param>
    /// <returns>The markup with line marks; null when a template is at fault.</returns>
    public string? Render(ReadOnlyMemory<byte> record, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(problems);
        var (template, fault) = _main.Value;
        if (template is null)
        {
            problems.Add(Syntax(Main, fault!));
            return null;
        }

        using var json = JsonDocument.Parse(record);
        var context = new TemplateContext(_options);

        // The one member that a record may leave out: a template may ask whether there is one.
        context.SetValue("diagnosis", NothingValue.Instance);
        foreach (var member in json.RootElement.EnumerateObject())
            context.SetValue(member.Name, RecordValue.Of(member.Value));
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        try
        {
            template.RenderAsync(output, Encoder, context).AsTask().GetAwaiter().GetResult();
        }
        catch (UnknownMemberException unknown)
        {
            var nearest = NearestName.Of(unknown.Name, unknown.Known);
            problems.Add(LastMark(output), TemplateMessages.NoMember(new(unknown.Name)), nearest is null ? null : TemplateMessages.DidYouMean(new($"\"{nearest}\"")), ThereAre(unknown.Known), "template-member");
            return null;
        }
        catch (FileNotFoundException missing)
        {
            problems.Add(LastMark(output), TemplateMessages.NoTemplate(new(missing.Message)), null, ThereAre(Names), "template-part");
            return null;
        }
        catch (FormatException wordless)
        {
            problems.Add(LastMark(output), TemplateMessages.NoWords(new(wordless.Message)), null, TemplateMessages.NoWordsNext, "template-words");
            return null;
        }
        catch (ParseException broken)
        {
            problems.Add(Syntax("a part", broken.Message) with { Location = LastMark(output) });
            return null;
        }
        catch (Exception faulty) when (faulty is FluidException or InvalidOperationException)
        {
            problems.Add(LastMark(output), TemplateMessages.CannotRun(new(faulty.Message.TrimEnd('.'))), null, null, "template");
            return null;
        }

        return output.ToString();
    }

    private (IFluidTemplate? Template, string? Fault) Parse()
    {
        var parser = new FluidParser();
        return parser.TryParse(LineMarks.Insert(Main, _files[Main]), out var template, out var fault) ? (template, null) : (null, fault);
    }

    private static Message ThereAre(IEnumerable<string> names) => TemplateMessages.ThereAre(new([.. names.Select(n => new NameValue(n))], ListJoin.Comma));

    private static Problem Syntax(string file, string fault)
    {
        var place = PlaceInMessage().Match(fault);
        var at = place.Success
            ? new SourceLocation(file, int.Parse(place.Groups["line"].ValueSpan, CultureInfo.InvariantCulture), 0)
            : SourceLocation.WholeFile(file);
        return new Problem(at, TemplateMessages.NotLiquid(new(fault.TrimEnd('.'))), null, TemplateMessages.NotLiquidNext(new("{% tag %}"), new("{{ value }}"))) { Code = "template-syntax" };
    }

    // What was written last before the fault: the nearest element above it.
    private static SourceLocation LastMark(StringWriter output)
    {
        var text = output.GetStringBuilder().ToString();
        var start = text.LastIndexOf("<?at ", StringComparison.Ordinal);
        if (start < 0)
            return SourceLocation.WholeFile(Main);
        var end = text.IndexOf("?>", start, StringComparison.Ordinal);
        var mark = text[(start + 5)..end];
        var colon = mark.LastIndexOf(':');
        return new SourceLocation(mark[..colon], int.Parse(mark.AsSpan(colon + 1), CultureInfo.InvariantCulture), 0);
    }

    private static Dictionary<string, string> LoadBuiltIn()
    {
        var files = new Dictionary<string, string>(StringComparer.Ordinal);
        var assembly = typeof(TemplateSet).Assembly;
        foreach (var name in assembly.GetManifestResourceNames())
        {
            if (!name.StartsWith(ResourcePrefix, StringComparison.Ordinal))
                continue;
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!, Encoding.UTF8);
            files[name[ResourcePrefix.Length..].Replace('\\', '/')] = reader.ReadToEnd();
        }

        return files;
    }

    [GeneratedRegex(@"\((?<line>\d+):\d+\)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex PlaceInMessage();
}
