using Commission.Checks.Recording;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;
using Commission.Records.Series;

namespace Commission.Checks.Kernel;

/// <summary>
/// One check: reads a job through its context and says what it found. A check never goes silent: what could not be
/// judged is a finding with the reason. It holds no state; the same context gives the same findings.
/// </summary>
public interface ICheck
{
    /// <summary>The id, phase and name: <c>charge.superheat</c>. Unique in <see cref="CheckCatalogue"/>.</summary>
    string Id { get; }

    /// <summary>The phase of the job the check belongs to: one of <see cref="Phases.All"/>.</summary>
    string Phase { get; }

    /// <summary>
    /// Evaluates the check. An empty sequence means that the job gives the check no subject at all (no such part in the
    /// job, or not of this kind of system); the profile of required checks then decides whether something is missing.
    /// </summary>
    /// <param name="context">The job and everything derived from it.</param>
    IEnumerable<Finding> Evaluate(CheckContext context);
}

/// <summary>
/// A check that looks at what the others found: whether the instruments were good enough, whether the record covers what
/// it must. It speaks after all the others and never sees its own kind.
/// </summary>
public interface IReviewCheck : ICheck
{
    /// <summary>Evaluates the check.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="findings">What the other checks found.</param>
    IEnumerable<Finding> Review(CheckContext context, IReadOnlyList<Finding> findings);

    /// <inheritdoc/>
    IEnumerable<Finding> ICheck.Evaluate(CheckContext context) => [];
}

/// <summary>
/// The words of a check stand in the catalogues under its id: <c>check-superheat</c> and <c>check-superheat-fails</c> in the file of its phase,
/// the page of help, which no record prints, in <c>help.ftl</c>.
/// </summary>
public static class CheckWords
{
    private const string HelpFile = "help";

    /// <summary>The title as the record prints it.</summary>
    public static Message Title(this ICheck check) => Of(check, "");

    /// <summary>What to do when it fails or cannot be judged.</summary>
    public static Message WhenItFails(this ICheck check) => Of(check, "-fails");

    /// <summary>What it asks, in trade words.</summary>
    public static Message HelpWhat(this ICheck check) => Help(check, "-what");

    /// <summary>The formula or rule, in words or symbols with units.</summary>
    public static Message HelpFormula(this ICheck check) => Help(check, "-formula");

    /// <summary>Where the formula or rule comes from, with its mark (published, from memory, common practice).</summary>
    public static Message HelpSource(this ICheck check) => Help(check, "-source");

    private static Message Of(ICheck check, string part)
    {
        ArgumentNullException.ThrowIfNull(check);
        return Message.Of(check.Phase, string.Concat("check-", check.Id.AsSpan(check.Id.IndexOf('.', StringComparison.Ordinal) + 1), part).Replace('.', '-'), []);
    }

    private static Message Help(ICheck check, string part)
    {
        ArgumentNullException.ThrowIfNull(check);
        return Message.Of(HelpFile, check.Id.Replace('.', '-') + part, []);
    }
}

/// <summary>The phases of a job in the order in which the work and the record go.</summary>
public static class Phases
{
    /// <summary>Instruments and their field checks.</summary>
    public const string Instruments = "instruments";

    /// <summary>Pressure test with nitrogen.</summary>
    public const string PressureTest = "pressure-test";

    /// <summary>Evacuation and the isolated hold.</summary>
    public const string Evacuation = "evacuation";

    /// <summary>Charge and refrigerant circuit.</summary>
    public const string Charge = "charge";

    /// <summary>Air side.</summary>
    public const string Air = "air";

    /// <summary>Compressor.</summary>
    public const string Compressor = "compressor";

    /// <summary>Electrical supply and motors.</summary>
    public const string Electrical = "electrical";

    /// <summary>Piping.</summary>
    public const string Piping = "piping";

    /// <summary>Safety of people and room.</summary>
    public const string Safety = "safety";

    /// <summary>Refrigerant ledger, label, leak check and the law.</summary>
    public const string Refrigerant = "refrigerant";

    /// <summary>Function of the system and its controls.</summary>
    public const string Functional = "functional";

    /// <summary>Whether the record is worth relying on.</summary>
    public const string Evidence = "evidence";

    /// <summary>All phases in record order.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        Instruments, PressureTest, Evacuation, Charge, Air, Compressor, Electrical, Piping, Safety, Refrigerant, Functional, Evidence,
    ];
}

/// <summary>Makes tables of readings or facts for one phase, every cell as printed.</summary>
internal interface ITableSource
{
    /// <summary>The tables for the job; none when the job has nothing to list.</summary>
    IEnumerable<RecordTable> Tables(CheckContext context);
}

/// <summary>Makes the data of one kind of figure. Everything the figure shows, fitted curves included, is worked out here.</summary>
internal interface IFigureSource
{
    /// <summary>The figures of this kind for the job; none when the job has nothing to draw.</summary>
    IEnumerable<FigureData> Figures(CheckContext context);
}
