using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Inference;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;
using Commission.Records.Series;
using Commission.Source;

namespace Commission.Checks.Recording;

/// <summary>Runs every check over a job and puts the record together. Pure: the same job, settings and inputs give the same record.</summary>
public static class RecordBuilder
{
    /// <summary>Evaluates a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="settings">What an evaluation needs beyond the job.</param>
    /// <param name="inputs">What the record says of its own making.</param>
    /// <returns>The record; whoever writes it seals it.</returns>
    public static CommissioningRecord Build(Job job, CheckSettings settings, RecordInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(inputs);
        var context = new CheckContext(job, settings);
        var profile = context.Get<JobProfile>();
        var findings = Findings(context, profile);
        var missing = profile.MissingFrom(findings);
        var (outcome, reasons, conditions) = OutcomeMaker.Make(context.Present, findings, missing, PunchList(context));
        var record = new CommissioningRecord
        {
            Header = new HeaderMaker(context).Make(inputs.AsOf),
            Outcome = outcome,
            Language = context.Present.Language.Code,
            Reasons = reasons,
            Missing = missing,
            FirstStep = OutcomeMaker.FirstStep(context.Present, findings, missing, context.Get<CircuitDiagnosis>().Result),
            KeyFigures = KeyFigures.Of(findings),
            Diagnosis = context.Get<CircuitDiagnosis>().Result,
            Conditions = conditions,
            Cautions = CautionMaker.Make(context),
            Findings = [.. findings.Select(f => f with { Readings = [.. f.Readings.Select(r => r with { At = inputs.Place(r.At, job.Origin.File) })] })],
            Tables = [.. TableCatalogue.All.SelectMany(source => source.Tables(context)).Select(WithoutEmptyColumns)],
            Figures = Figures(context),
            Instruments = InstrumentRows.Make(context, findings),
            LimitsInForce = LimitsInForce(findings),
            Sources = SourceNotes.Make(context, findings),
            Photos = [.. job.Photos.Select(p => Photo(p, inputs.Files))],
            Signatures = SignatureLines.Make(context),
            Inputs = inputs.Files,
            Job = [.. inputs.Tree.Select(n => Placed(n, inputs, job.Origin.File))],
            Program = inputs.Program,
            AsOf = inputs.AsOf,
            Paper = (job.Identity.Paper?.Value ?? (context.Present.Preset == "si" ? Paper.A4 : Paper.Letter)) == Paper.A4 ? "a4" : "letter",
            Units = context.Present.Preset,
        };
        record = LimitCodes.Assign(record);
        record = record with { Certificate = CertificateMaker.Make(context, record), AsWritten = AsWritten.Make(record) };
        // Last: until here texts were made.
        return record with { Phrases = context.Present.Phrases };
    }

    /// <summary>Runs every check over a job, for programs that want findings and no record.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    public static ImmutableArray<Finding> Evaluate(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return Findings(context, context.Get<JobProfile>());
    }

    private static ImmutableArray<Finding> Findings(CheckContext context, JobProfile profile)
    {
        var all = Impeachment.Apply(context, [.. CheckCatalogue.All.SelectMany(check => check.Evaluate(context))]).ToList();
        // Reviews look at the findings of the others only, so that their order among themselves does not matter.
        all.AddRange(CheckCatalogue.All.OfType<IReviewCheck>().SelectMany(review => review.Review(context, all)).ToList());
        var numbered = ImmutableArray.CreateBuilder<Finding>(all.Count);
        foreach (var phase in Phases.All)
        {
            foreach (var finding in all.Where(f => f.Phase == phase))
                numbered.Add(finding with { Number = numbered.Count + 1, Required = profile.Requires(finding.Check) });
        }

        return numbered.Count == all.Count
            ? PointingBack(numbered)
            : throw new InvalidOperationException("A check names a phase that the record does not know.");
    }

    // The corrections of one reading stand behind several findings; pages show them once and point back from then on.
    private static ImmutableArray<Finding> PointingBack(IEnumerable<Finding> numbered)
    {
        var steps = new Dictionary<TraceStep, int>();
        var readings = new Dictionary<ReadingUse, int>();
        return
        [
            .. numbered.Select(f => f with
            {
                Trace = [.. f.Trace.Select(s => First(steps, s, f.Number) is var n && n < f.Number ? s with { ShownIn = n } : s)],
                Readings = [.. f.Readings.Select(r => First(readings, r, f.Number) is var n && n < f.Number ? r with { ShownIn = n } : r)],
            }),
        ];
    }

    private static int First<T>(Dictionary<T, int> seen, T item, int number)
        where T : notnull
    {
        if (seen.TryGetValue(item, out var first))
            return first;
        seen.Add(item, number);
        return number;
    }

    private static ImmutableArray<FigureData> Figures(CheckContext context)
    {
        var figures = ImmutableArray.CreateBuilder<FigureData>();
        foreach (var source in FigureCatalogue.All)
            figures.AddRange(source.Figures(context));
        return figures.ToImmutable();
    }

    // A column that no row fills says nothing and takes the room of those that do.
    private static RecordTable WithoutEmptyColumns(RecordTable table)
    {
        var kept = Enumerable.Range(0, table.Columns.Length).Where(c => table.Rows.Any(row => row[c].Length > 0)).ToList();
        return kept.Count == table.Columns.Length || table.Rows.IsEmpty
            ? table
            : table with { Columns = [.. kept.Select(c => table.Columns[c])], Rows = [.. table.Rows.Select(row => kept.Select(c => row[c]).ToImmutableArray())] };
    }

    private static ImmutableArray<LimitStatement> LimitsInForce(ImmutableArray<Finding> findings) =>
    [
        .. findings
            .SelectMany(f => f.Limits.Select(l => l with { Check = f.Check, Quantity = f.Title }))
            .DistinctBy(l => (l.Check, l.Text, l.Basis, l.Pack, l.Source)),
    ];

    // What the crew itself leaves for another day.
    private static ImmutableArray<PunchItem> PunchList(CheckContext context)
    {
        var items = ImmutableArray.CreateBuilder<PunchItem>();
        if (context.Job.Charging?.ReturnVisit is { } visit)
        {
            items.Add(new PunchItem(context.Present.Text((visit.OutdoorAtLeast, visit.By) switch
            {
                ({ } t, { } by) => RecordMessages.ReturnVisitOutdoorBy(new(visit.What.Value), new(t.Text), by.Value),
                ({ } t, null) => RecordMessages.ReturnVisitOutdoor(new(visit.What.Value), new(t.Text)),
                (null, { } by) => RecordMessages.ReturnVisitBy(new(visit.What.Value), by.Value),
                _ => RecordMessages.ReturnVisit(new(visit.What.Value)),
            })));
        }

        foreach (var photo in context.Job.PhotosToFollow)
            items.Add(new PunchItem(context.Present.Text(RecordMessages.PhotoFollows(SchemaWords.Of(photo.Shows.Value), photo.By.Value))));
        return items.ToImmutable();
    }

    private static InputNode Placed(InputNode node, RecordInputs inputs, string job) => node with
    {
        At = node.At is { } at ? inputs.Place(at, job) : null,
        Children = [.. node.Children.Select(c => Placed(c, inputs, job))],
    };

    private static PhotoNote Photo(Photo photo, ImmutableArray<InputFile> files) => new(
        photo.File.Value,
        photo.Of is { } of ? $"{photo.Shows.Text}, {of.Value}" : photo.Shows.Text,
        photo.At?.Text ?? "",
        files.FirstOrDefault(f => string.Equals(f.Name, photo.File.Value, StringComparison.Ordinal))?.Sha256 ?? "");
}

/// <summary>What a record says of its own making.</summary>
/// <param name="Program">Name and version of the program.</param>
/// <param name="AsOf">The moment the record speaks for, ISO 8601.</param>
/// <param name="Files">The input files with their hashes.</param>
/// <param name="Tree">The job file as read: key, canonical text, place.</param>
public sealed record RecordInputs(string Program, string AsOf, ImmutableArray<InputFile> Files, ImmutableArray<InputNode> Tree)
{
    /// <summary>Where a place of the job lies as the record prints it: the job file by its own name, however the user reached it, so that the same job gives the same record from any folder.</summary>
    /// <param name="at">The place as read.</param>
    /// <param name="job">The job file as the user named it.</param>
    public SourceLocation Place(SourceLocation at, string job) =>
        Files.Length > 0 && string.Equals(at.File, job, StringComparison.Ordinal) ? at with { File = Files[0].Name } : at;
}

/// <summary>What the person who asks for a record chooses of it.</summary>
/// <param name="AsOf">The moment the record speaks for; null takes the day of the job.</param>
/// <param name="Language">Its language; null takes that of the job, else that of its kit, else English.</param>
public sealed record RecordChoices(DateTimeOffset? AsOf = null, Language? Language = null);

/// <summary>From a job file that was read to its record: brings in the job's own limit packs, runs every check.</summary>
public static class JobEvaluation
{
    /// <summary>Evaluates a job.</summary>
    /// <param name="reading">The job file as read; it holds a job.</param>
    /// <param name="choices">What the person who asks for the record chooses of it.</param>
    /// <param name="program">Name and version of the program, printed in the record.</param>
    /// <param name="problems">Where faults of the job's own limit packs go.</param>
    /// <returns>The record; null when a pack of the job is wrong.</returns>
    public static CommissioningRecord? Evaluate(JobReading reading, RecordChoices choices, string program, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(choices);
        var asOf = choices.AsOf;
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(problems);
        var job = reading.Job ?? throw new ArgumentException("The job file was not read.", nameof(reading));
        if (Library(reading, job, problems) is not { } library)
            return null;
        var day = asOf is { } moment ? DateOnly.FromDateTime(moment.Date) : job.Identity.Date.Value;
        var text = asOf is { } at
            ? at.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture)
            : LastDay(job).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        return RecordBuilder.Build(
            job,
            new CheckSettings(day) { Library = library, Language = choices.Language ?? LanguageOf(job) },
            new RecordInputs(program, text, [.. reading.Files.Select(f => new InputFile(f.Name, f.Length, f.Sha256))], Tree(reading.Input)));
    }

    private static Language LanguageOf(Job job) => MessageCatalogue.FindLanguage(job.Identity.Language?.Value is { } word ? MemberWords.Of(word.ToString()) : "") ?? Language.English;

    // A record speaks of a leak check two days after the work: it was not issued before.
    private static DateOnly LastDay(Job job) =>
        new[] { job.Identity.Date.Value, job.LeakCheck?.Date.Value ?? default, job.Label?.Date?.Value ?? default }.Concat(job.Signatures.Select(s => s.Date?.Value ?? default)).Max();

    private static LimitLibrary? Library(JobReading reading, Job job, ProblemList problems)
    {
        var library = LimitLibrary.Embedded;
        var before = problems.Count;
        var own = new List<string>();
        foreach (var file in reading.Files.Where(f => f.Role == JobFileRole.Pack))
        {
            if (reading.TextOf(file.Name) is not { } text)
                continue;
            library = library.With(text, problems, out var pack);
            if (pack is not null)
                own.Add(pack.Name);
        }

        foreach (var name in job.Limits?.Packs ?? [])
        {
            // A path names a pack file, which is in the library under its own name by now.
            if (library.Find(name.Value) is not null || reading.Files.Any(f => f.Role == JobFileRole.Pack && string.Equals(f.Name, name.Value, StringComparison.Ordinal)))
                continue;
            var known = LimitLibrary.EmbeddedNames.Concat(own);
            problems.Add(new Problem(
                name.At,
                LimitsMessages.NoPack(new(name.Value)),
                null,
                NearestName.Of(name.Value, known) is { } near ? QuantityMessages.DidYouMean(new(near)) : LimitsMessages.KnownPacks(new([.. known.Select(k => new NameValue(k))], ListJoin.Comma))));
        }

        return problems.Count > before ? null : library;
    }

    private static ImmutableArray<InputNode> Tree(JobInput? input) => input is null ? [] : Children(input);

    private static ImmutableArray<InputNode> Children(JobInput parent) =>
        [.. parent.Children.Select((child, i) => new InputNode(parent.IsList ? (i + 1).ToString(CultureInfo.InvariantCulture) : child.Key, child.Text, child.At, Children(child)))];
}
