using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Commission.Records.Findings;
using Commission.Records.Series;

namespace Commission.Records;

/// <summary>What became of the job.</summary>
public enum Outcome
{
    /// <summary>Nothing is left to be done.</summary>
    Accepted,

    /// <summary>Something is still to be done, or a pass rests on something that was not shown.</summary>
    AcceptedWithConditions,

    /// <summary>A check failed.</summary>
    NotAccepted,

    /// <summary>A check that this kind of work asks for could not be judged.</summary>
    Incomplete,
}

/// <summary>
/// The whole commissioning record: every number and sentence that a page shows is a field of it.
/// Written by <see cref="Json.RecordJson"/>, sealed by <see cref="Integrity.RecordDigest"/>.
/// </summary>
public sealed record CommissioningRecord
{
    /// <summary>Version of the record format that this program writes.</summary>
    public const int CurrentVersion = 1;

    /// <summary>Version of the record format.</summary>
    public int Version { get; init; } = CurrentVersion;

    /// <summary>What job this is.</summary>
    public required JobHeader Header { get; init; }

    /// <summary>What page 1 answers.</summary>
    public Certificate Certificate { get; init; } = new();

    /// <summary>What became of the job.</summary>
    public required Outcome Outcome { get; init; }

    /// <summary>Whether the system may be handed over, with or without conditions.</summary>
    [JsonIgnore]
    public bool IsAccepted => Outcome is Outcome.Accepted or Outcome.AcceptedWithConditions;

    /// <summary>Why the outcome is not plainly accepted, one sentence each, gravest first.</summary>
    public ImmutableArray<string> Reasons { get => field.IsDefault ? [] : field; init; }

    /// <summary>What a record of this kind of work has to show and does not, in the order of the work; what has one cause stands once.</summary>
    public ImmutableArray<MissingPart> Missing { get => field.IsDefault ? [] : field; init; }

    /// <summary>The one thing to do before anything else; null when nothing is to be done.</summary>
    public PunchItem? FirstStep { get; init; }

    /// <summary>Numbers of the findings whose figures answer for the work before any other: tightness, vacuum, charge, heat, water, room.</summary>
    public ImmutableArray<int> KeyFigures { get => field.IsDefault ? [] : field; init; }

    /// <summary>What the running system's readings say together; null without such readings.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Diagnosis? Diagnosis { get; init; }

    /// <summary>What is still to be done.</summary>
    public ImmutableArray<PunchItem> Conditions { get => field.IsDefault ? [] : field; init; }

    /// <summary>Warnings that belong to the work and the refrigerant.</summary>
    public ImmutableArray<Caution> Cautions { get => field.IsDefault ? [] : field; init; }

    /// <summary>Every finding, in the order of the pages; numbered from 1.</summary>
    public ImmutableArray<Finding> Findings { get => field.IsDefault ? [] : field; init; }

    /// <summary>Tables of readings and facts.</summary>
    public ImmutableArray<RecordTable> Tables { get => field.IsDefault ? [] : field; init; }

    /// <summary>Data of every figure.</summary>
    public ImmutableArray<FigureData> Figures { get => field.IsDefault ? [] : field; init; }

    /// <summary>Instruments used.</summary>
    public ImmutableArray<InstrumentRow> Instruments { get => field.IsDefault ? [] : field; init; }

    /// <summary>Every limit that was applied, with its source.</summary>
    public ImmutableArray<LimitStatement> LimitsInForce { get => field.IsDefault ? [] : field; init; }

    /// <summary>The sources of limits by their codes.</summary>
    public ImmutableArray<LimitSource> LimitSources { get => field.IsDefault ? [] : field; init; }

    /// <summary>What the crew wrote and no other member prints, a part of the job file each.</summary>
    public ImmutableArray<LabelValue> AsWritten { get => field.IsDefault ? [] : field; init; }

    /// <summary>Constants, formulas and equations of state used, with their papers.</summary>
    public ImmutableArray<SourceNote> Sources { get => field.IsDefault ? [] : field; init; }

    /// <summary>Photos.</summary>
    public ImmutableArray<PhotoNote> Photos { get => field.IsDefault ? [] : field; init; }

    /// <summary>The declaration printed above the signatures; empty for the template's own.</summary>
    public string Declaration { get; init; } = "";

    /// <summary>Places to sign.</summary>
    public ImmutableArray<SignatureLine> Signatures { get => field.IsDefault ? [] : field; init; }

    /// <summary>Input files as read.</summary>
    public ImmutableArray<InputFile> Inputs { get => field.IsDefault ? [] : field; init; }

    /// <summary>The job file as read.</summary>
    public ImmutableArray<InputNode> Job { get => field.IsDefault ? [] : field; init; }

    /// <summary>Program and version that evaluated the job, for example <c>Commission 0.1.0</c>.</summary>
    public required string Program { get; init; }

    /// <summary>The moment the record speaks for: ISO 8601 with offset, from the job or stated.</summary>
    public required string AsOf { get; init; }

    /// <summary><c>letter</c> or <c>a4</c>.</summary>
    public string Paper { get; init; } = "letter";

    /// <summary>Unit preset used for display: <c>us</c> or <c>si</c>.</summary>
    public string Units { get; init; } = "us";

    /// <summary>Language of its sentences, two letters of ISO 639-1.</summary>
    public string Language { get; init; } = "en";

    /// <summary>Every text of the record that its program wrote, with what it is made of: from them the record is said again in another language.</summary>
    public ImmutableArray<Phrase> Phrases { get => field.IsDefault ? [] : field; init; }

    /// <summary>SHA-256 over the canonical JSON of the record without this member, lower-case hexadecimal; empty until sealed.</summary>
    public string Digest { get; init; } = "";
}

/// <summary>Something that is still to be done before the job stands without conditions.</summary>
/// <param name="Text">What is to be done.</param>
/// <param name="Finding">Number of the finding it comes from; null when it comes from the job file.</param>
/// <param name="Owner">Who does it; null when nobody is named.</param>
public sealed record PunchItem(string Text, int? Finding = null, string? Owner = null);

/// <summary>Something that a record of this kind of work and system has to show and does not.</summary>
/// <param name="Checks">The checks that could not be judged for this cause; <c>photos</c> for photos.</param>
/// <param name="Sentence">What is missing, why, and who asks for it.</param>
/// <param name="Brief">The same without who asks for it, as it is told at the tailgate.</param>
public sealed record MissingPart(ImmutableArray<string> Checks, string Sentence, string Brief)
{
    /// <summary>The checks that could not be judged for this cause; <c>photos</c> for photos.</summary>
    public ImmutableArray<string> Checks { get; init; } = Checks.IsDefault ? [] : Checks;

    /// <summary>What is missing, one name for each thing that was asked for.</summary>
    public ImmutableArray<string> Names { get => field.IsDefault ? [] : field; init; }

    /// <summary>What to do about it; null where the sentence says it.</summary>
    public string? NextStep { get; init; }

    /// <summary>How that is written in the job file, where that is all there is to do; null otherwise. Only the terminal prints it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? InFile { get; init; }

    /// <summary>The keys of the job file that would answer it, in the order of the work: from the top of the file, joined by dots.</summary>
    public ImmutableArray<string> Keys { get => field.IsDefault ? [] : field; init; }
}

/// <summary>A warning that belongs to the work or the refrigerant.</summary>
/// <param name="Hazard">The hazard in a word or two, for example <c>pressure</c>.</param>
/// <param name="Text">The warning in plain sentences.</param>
public sealed record Caution(string Hazard, string Text);

/// <summary>An instrument: what it is, how it was checked, what was corrected and what it is fit to judge.</summary>
public sealed record InstrumentRow
{
    /// <summary>The crew's name for it.</summary>
    public required string Id { get; init; }

    /// <summary>Kind, for example <c>pressure gauge</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>Maker; empty when none was written.</summary>
    public string Maker { get; init; } = "";

    /// <summary>Model; empty when none was written.</summary>
    public string Model { get; init; } = "";

    /// <summary>Serial number; empty when none was written.</summary>
    public string Serial { get; init; } = "";

    /// <summary>Number of its certificate of calibration; empty when none was written.</summary>
    public string Certificate { get; init; } = "";

    /// <summary>Whether its calibration is out of date; false where none is written.</summary>
    public bool IsOverdue { get; init; }

    /// <summary>Accuracy as stated.</summary>
    public string Accuracy { get; init; } = "";

    /// <summary>Resolution as stated.</summary>
    public string Resolution { get; init; } = "";

    /// <summary>Calibration date and interval as printed.</summary>
    public string Calibrated { get; init; } = "";

    /// <summary>What it read.</summary>
    public ImmutableArray<string> Reads { get => field.IsDefault ? [] : field; init; }

    /// <summary>Field checks of the day, one sentence each.</summary>
    public ImmutableArray<string> FieldChecks { get => field.IsDefault ? [] : field; init; }

    /// <summary>Corrections applied, one sentence each.</summary>
    public ImmutableArray<string> Corrections { get => field.IsDefault ? [] : field; init; }

    /// <summary>What it allows to be judged, one phrase each.</summary>
    public ImmutableArray<string> Judges { get => field.IsDefault ? [] : field; init; }
}

/// <summary>A constant, formula or equation of state that was used, with its paper.</summary>
/// <param name="Kind"><c>constant</c>, <c>equation of state</c>, <c>formula</c> or <c>standard</c>.</param>
/// <param name="Subject">What it is for, for example <c>R-32</c>.</param>
/// <param name="Text">Value, name or range as printed; empty for none.</param>
/// <param name="Citation">Authors, year, title, place.</param>
/// <param name="Mark"><c>published</c>, <c>from memory</c> or <c>common practice</c>.</param>
public sealed record SourceNote(string Kind, string Subject, string Text, string Citation, string Mark);

/// <summary>A place to sign: who, in which role, stating what.</summary>
/// <param name="Name">Name; empty leaves a line to fill in.</param>
/// <param name="Role">Role, for example <c>technician</c>.</param>
/// <param name="Statement">What is stated, for example <c>I performed this work</c>.</param>
/// <param name="Licence">Licence or certificate number; empty for none.</param>
/// <param name="Date">Date as printed; empty leaves a line to fill in.</param>
public sealed record SignatureLine(string Name, string Role, string Statement, string Licence, string Date);
