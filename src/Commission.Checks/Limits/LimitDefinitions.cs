using System.Collections.Immutable;
using System.Globalization;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Messages;

namespace Commission.Checks.Limits;

/// <summary>What a limit of a given id means, whatever its figure.</summary>
/// <param name="Id">The id, such as <c>evacuation.decay</c>.</param>
/// <param name="Means">What is limited, as a phrase.</param>
/// <param name="Quantity">What it is measured in; null for a statement and for a calendar span.</param>
/// <param name="IsMonths">Whether it is a calendar span in months.</param>
/// <param name="Shapes">Forms a pack may use.</param>
/// <param name="Rule">Decision rule where no pack says one.</param>
/// <param name="Companions">Further quantities, all required where the limit is stated.</param>
internal sealed record LimitDefinition(
    string Id,
    Message Means,
    Dimension? Quantity,
    bool IsMonths,
    ImmutableArray<LimitShape> Shapes,
    DecisionRule Rule,
    ImmutableArray<LimitCompanion> Companions)
{
    /// <summary>The group it belongs to, which is the first part of its id.</summary>
    public LimitGroup Group { get; } = Id[..Id.IndexOf('.', StringComparison.Ordinal)] switch
    {
        "instruments" => LimitGroup.Instruments,
        "pressure-test" => LimitGroup.PressureTest,
        "evacuation" => LimitGroup.Evacuation,
        "charge" => LimitGroup.Charge,
        "air" => LimitGroup.Air,
        "compressor" => LimitGroup.Compressor,
        "electrical" => LimitGroup.Electrical,
        "piping" => LimitGroup.Piping,
        "safety" => LimitGroup.Safety,
        "refrigerant" => LimitGroup.Refrigerant,
        "functional" => LimitGroup.Functional,
        "evidence" => LimitGroup.Evidence,
        "assumption" => LimitGroup.Assumption,
        var other => throw new InvalidOperationException($"{other} is no group of limits."),
    };
}

/// <summary>A group of limits: a phase of the work, or what computations assume.</summary>
internal enum LimitGroup
{
    Instruments,
    PressureTest,
    Evacuation,
    Charge,
    Air,
    Compressor,
    Electrical,
    Piping,
    Safety,
    Refrigerant,
    Functional,
    Evidence,
    Assumption,
}

/// <summary>Every limit this program knows, read once when the first is asked for.</summary>
internal static class LimitDefinitions
{
    private static readonly Lazy<Dictionary<string, LimitDefinition>> ById = new(() =>
        EmbeddedYaml.Read("limit-definitions.yaml", (root, problems) => DefinitionsReader.Read(root, problems)));

    /// <summary>All definitions, ordered by id.</summary>
    public static IEnumerable<LimitDefinition> All => ById.Value.Values.OrderBy(definition => definition.Id, StringComparer.Ordinal);

    /// <summary>The definition of an id.</summary>
    /// <returns>The definition, or null.</returns>
    public static LimitDefinition? Find(string id) => ById.Value.GetValueOrDefault(id);

    /// <summary>The definition of an id a check asks for.</summary>
    /// <returns>The definition.</returns>
    /// <exception cref="ArgumentException">There is none: a fault of this program.</exception>
    public static LimitDefinition Get(string id) => Find(id) ?? throw new ArgumentException($"There is no limit \"{id}\".", nameof(id));
}

/// <summary>Something a condition may ask about: a key of <c>when</c>, the words or the quantity it takes, and where the job says it.</summary>
internal sealed class LimitSubject
{
    private static readonly ImmutableArray<string> YesNo = ["yes", "no"];

    private readonly Func<LimitSituation, string?> _word;
    private readonly Func<LimitSituation, double?> _number;

    private LimitSubject(string key, ImmutableArray<string> words, Func<LimitSituation, string?> word)
    {
        Key = key;
        Words = words;
        _word = word;
        _number = _ => null;
    }

    private LimitSubject(string key, Dimension quantity, Func<LimitSituation, double?> number)
    {
        Key = key;
        Quantity = quantity;
        Words = [];
        _word = _ => null;
        _number = number;
    }

    /// <summary>Every subject, in the order they are offered.</summary>
    public static ImmutableArray<LimitSubject> All { get; } =
    [
        new("work", ["new installation", "opened circuit", "leak repair", "compressor replacement", "refrigerant change", "charge adjustment", "seasonal check", "decommissioning"], s => s.Work),
        new("system", ["split", "ductless split", "multi-split", "VRF", "packaged", "heat pump", "refrigeration", "air-to-water heat pump", "chiller"], s => s.System),
        new("metering", ["fixed orifice", "capillary", "TXV", "EEV"], s => s.Metering),
        new("application", ["AC", "high temperature", "medium temperature", "low temperature", "ice", "drying"], s => s.Application),
        new("compressor", ["fixed", "two-stage", "variable speed", "digital", "tandem"], s => s.Compressor),
        new("driven", YesNo, s => Word(s.Driven)),
        new("mode", ["cooling", "heating"], s => s.Mode),
        new("refrigerant", [], s => s.Refrigerant),
        new("refrigerant class", ["A1", "A2L", "A2", "A3", "B1", "B2L", "B2", "B3"], s => s.RefrigerantClass),
        new("phases", ["1", "3"], s => s.Phases?.ToString(CultureInfo.InvariantCulture)),
        new("receiver", YesNo, s => Word(s.Receiver)),
        new("ducted", YesNo, s => Word(s.Ducted)),
        new("ozone depleting", YesNo, s => Word(s.OzoneDepleting)),
        new("fluorinated", YesNo, s => Word(s.Fluorinated)),
        new("hermetically sealed", YesNo, s => Word(s.HermeticallySealed)),
        new("leak sensor", YesNo, s => Word(s.LeakSensor)),
        new("readings", YesNo, s => Word(s.Readings)),
        new("field lines", YesNo, s => Word(s.FieldLines)),
        new("place", ["attic", "basement", "closet", "ceiling", "room", "crawl space", "garage", "machine room", "roof", "other"], s => s.Place),
        new("capacity", Dimension.Power, s => s.Capacity),
        new("full charge", Dimension.Mass, s => s.FullCharge),
        new("ambient", Dimension.Temperature, s => s.Ambient),
    ];

    public string Key { get; }

    /// <summary>The words it takes; empty when any word will do or when it takes a quantity.</summary>
    public ImmutableArray<string> Words { get; }

    /// <summary>What it is measured in; null when it takes words.</summary>
    public Dimension? Quantity { get; }

    /// <summary>The job's word.</summary>
    /// <param name="situation">What is known of the job.</param>
    /// <returns>The word, or null when it is not known.</returns>
    public string? WordIn(LimitSituation situation) => _word(situation);

    /// <summary>The job's number.</summary>
    /// <param name="situation">What is known of the job.</param>
    /// <returns>SI value, or null when it is not known.</returns>
    public double? NumberIn(LimitSituation situation) => _number(situation);

    private static string? Word(bool? value) => value is { } known ? (known ? "yes" : "no") : null;
}
