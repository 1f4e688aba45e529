using System.Collections.Frozen;
using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Wording;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Messages;

namespace Commission.Checks.Limits;

/// <summary>One condition: one of some words, or a quantity between bounds.</summary>
/// <param name="Subject">What is asked about.</param>
internal sealed record LimitCondition(LimitSubject Subject)
{
    /// <summary>Words of which one has to be the job's, folded; empty for a quantity.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    /// <summary>Lower bound in SI, and whether the bound itself is inside.</summary>
    public (double Si, bool Included)? Lower { get; init; }

    /// <summary>Upper bound in SI, and whether the bound itself is inside.</summary>
    public (double Si, bool Included)? Upper { get; init; }

    /// <summary>Whether it holds.</summary>
    /// <param name="situation">What is known of the job.</param>
    /// <returns>False when the job does not say.</returns>
    public bool Holds(LimitSituation situation)
    {
        if (Subject.Quantity is not null)
        {
            return Subject.NumberIn(situation) is { } number
                && (Lower is not { } lower || number > lower.Si || (lower.Included && number >= lower.Si))
                && (Upper is not { } upper || number < upper.Si || (upper.Included && number <= upper.Si));
        }

        return Subject.WordIn(situation) is { } word && Words.Contains(Fold(word), StringComparer.Ordinal);
    }

    /// <summary>Letters and digits in lower case, so that <c>multi-split</c> and the member <c>MultiSplit</c> are one word.</summary>
    /// <param name="word">A word of the trade.</param>
    /// <returns>The folded word.</returns>
    public static string Fold(string word) => string.Concat(word.Where(char.IsLetterOrDigit)).ToLowerInvariant();
}

/// <summary>When a case applies: every condition has to hold. No condition: always.</summary>
/// <param name="All">The conditions.</param>
internal sealed record LimitConditions(ImmutableArray<LimitCondition> All)
{
    public static LimitConditions Always { get; } = new([]);

    /// <summary>Whether the case applies.</summary>
    /// <param name="situation">What is known of the job.</param>
    /// <returns>True when every condition holds; what is not known does not hold.</returns>
    public bool Hold(LimitSituation situation)
    {
        foreach (var condition in All)
        {
            if (!condition.Holds(situation))
                return false;
        }

        return true;
    }
}

/// <summary>What decides which case of a limit applies. A value that is not known matches no condition.</summary>
internal sealed record LimitSituation
{
    /// <summary>Kind of work.</summary>
    public string? Work { get; init; }

    /// <summary>Kind of system.</summary>
    public string? System { get; init; }

    /// <summary>Kind of metering device.</summary>
    public string? Metering { get; init; }

    /// <summary>What the cold is for.</summary>
    public string? Application { get; init; }

    /// <summary>Kind of compressor.</summary>
    public string? Compressor { get; init; }

    /// <summary>Cooling or heating.</summary>
    public string? Mode { get; init; }

    /// <summary>Designation of the refrigerant.</summary>
    public string? Refrigerant { get; init; }

    /// <summary>Safety class of the refrigerant, such as <c>A2L</c>.</summary>
    public string? RefrigerantClass { get; init; }

    /// <summary>Number of phases of the supply.</summary>
    public int? Phases { get; init; }

    /// <summary>Whether the circuit has a receiver.</summary>
    public bool? Receiver { get; init; }

    /// <summary>Whether the air runs through ducts.</summary>
    public bool? Ducted { get; init; }

    /// <summary>Whether the refrigerant depletes ozone.</summary>
    public bool? OzoneDepleting { get; init; }

    /// <summary>Whether the refrigerant is a fluorinated greenhouse gas of the European regulation, or a mixture with one.</summary>
    public bool? Fluorinated { get; init; }

    /// <summary>Whether the circuit is hermetically sealed and labelled so.</summary>
    public bool? HermeticallySealed { get; init; }

    /// <summary>Whether the unit has a leak sensor.</summary>
    public bool? LeakSensor { get; init; }

    /// <summary>Whether gauges were put on the running system.</summary>
    public bool? Readings { get; init; }

    /// <summary>Whether a drive sets the compressor's speed; a motor nobody describes runs on the mains.</summary>
    public bool? Driven { get; init; }

    /// <summary>Whether refrigerant runs through lines that were laid on site.</summary>
    public bool? FieldLines { get; init; }

    /// <summary>Where the indoor unit stands; the attic when one of several stands there, and not known when they differ otherwise.</summary>
    public string? Place { get; init; }

    /// <summary>Rated cooling capacity, W.</summary>
    public double? Capacity { get; init; }

    /// <summary>Full charge, kg.</summary>
    public double? FullCharge { get; init; }

    /// <summary>Temperature around the circuit, K.</summary>
    public double? Ambient { get; init; }

    /// <summary>
    /// What a job says. Not said and still known: outside refrigeration a circuit is for comfort and has no receiver, and a split, a
    /// heat pump or a packaged unit blows into ducts. The refrigerant's class, the full charge and the ambient temperature are
    /// computed elsewhere and added.
    /// </summary>
    /// <returns>The situation.</returns>
    public static LimitSituation Of(Job job)
    {
        var equipment = job.Equipment;
        var system = equipment.System.Value;
        return new LimitSituation
        {
            Work = job.Identity.Work.Value.ToString(),
            System = system.ToString(),
            Metering = equipment.Metering?.Kind.Value.ToString(),
            Application = (equipment.Application?.Value ?? (system == SystemKind.Refrigeration ? null : Jobs.Model.Words.Application.AC))?.ToString(),
            Compressor = equipment.Compressor?.Kind.Value.ToString(),
            Driven = equipment.Compressor?.Kind.Value == CompressorKind.VariableSpeed,
            FieldLines = !equipment.Piping.IsEmpty,
            Refrigerant = equipment.Refrigerant.Value,
            Phases = equipment.Nameplate?.Phases?.Value,
            Receiver = equipment.Receiver?.Value ?? (system == SystemKind.Refrigeration ? null : false),
            Ducted = equipment.Ducted?.Value ?? (system is SystemKind.Split or SystemKind.HeatPump or SystemKind.Packaged ? true : null),
            HermeticallySealed = equipment.HermeticallySealed?.Value,
            LeakSensor = job.Safety?.LeakSensor?.Fitted.Value ?? (job.Safety?.Mitigation?.Value is { } mitigation ? mitigation == Mitigation.LeakSensorWithFan : null),
            Readings = job.Charging?.Readings.Any(r => r.VaporPressure is not null || r.LiquidPressure is not null) == true,
            FullCharge = (job.Label?.Total ?? equipment.Nameplate?.FactoryCharge)?.Value.Si,
            Place = PlaceOf(equipment),
            Capacity = equipment.Capacity?.Value.Si,
        };
    }

    // Water does its harm from the attic, whatever stands elsewhere.
    private static string? PlaceOf(Equipment equipment)
    {
        var places = equipment.Indoor.Select(unit => unit.Place?.Value).Distinct().ToList();
        return places.Contains(UnitPlace.Attic) ? nameof(UnitPlace.Attic) : places is [{ } only] ? only.ToString() : null;
    }
}

/// <summary>What a substance is in the eyes of the laws on refrigerants.</summary>
internal enum GasFamily
{
    /// <summary>A saturated hydrofluorocarbon or a perfluorocarbon: Annex I of the European regulation.</summary>
    AnnexOne,

    /// <summary>An unsaturated hydrofluorocarbon or hydrochlorofluorocarbon: Annex II, section 1.</summary>
    AnnexTwo,

    /// <summary>A class I or II substance: it depletes ozone.</summary>
    OzoneDepleting,

    /// <summary>None of these: hydrocarbons, ammonia, carbon dioxide, water.</summary>
    Other,
}

/// <summary>
/// Families of the pure substances refrigerants are made of: Regulation (EU) 2024/573, annexes I and II section 1 (published: R-1123 and R-1243zf
/// stand in neither), and the class I and II substances of 40 CFR 82 subpart A, appendices A and B (from memory).
/// </summary>
internal static class GasFamilies
{
    /// <summary>Where the families come from, as a trace cites it.</summary>
    public static Message Source => Cited.As("Regulation (EU) 2024/573, annexes I and II", "published");

    private static readonly string[] Perfluorocarbons = ["R-14", "R-116", "R-218", "R-C318"];

    private static readonly FrozenDictionary<string, GasFamily> Known = Pairs().ToFrozenDictionary(p => p.Designation, p => p.Family, StringComparer.Ordinal);

    // Annex VI [published]: what parts that are no fluorinated greenhouse gases count; what is not listed counts nothing.
    private static readonly FrozenDictionary<string, double> AnnexSix = new (string Designation, double Potential)[]
    {
        ("R-170", 0.437), ("R-290", 0.02), ("R-600", 0.006), ("R-610", 4), ("R-611", 11), ("R-702", 6), ("R-1150", 4),
    }.ToFrozenDictionary(p => p.Designation, p => p.Potential, StringComparer.Ordinal);

    /// <summary>The family of a pure substance.</summary>
    /// <param name="designation">Its designation, <c>R-32</c>.</param>
    public static GasFamily Of(string designation) => Known.GetValueOrDefault(designation, GasFamily.Other);

    /// <summary>Whether a refrigerant or a part of it depletes ozone.</summary>
    public static bool DepletesOzone(RefrigerantInfo refrigerant) => refrigerant.Composition.Any(c => Of(c.Designation) == GasFamily.OzoneDepleting);

    /// <summary>Whether a refrigerant is a fluorinated greenhouse gas of annex I or II section 1, or a mixture with one.</summary>
    public static bool IsFluorinated(RefrigerantInfo refrigerant) => refrigerant.Composition.Any(c => Of(c.Designation) is GasFamily.AnnexOne or GasFamily.AnnexTwo);

    /// <summary>
    /// Warming potential over 100 years of a pure substance as Regulation (EU) 2024/573 counts it: hydrofluorocarbons by AR4, perfluorocarbons and the
    /// gases of annex II by AR6, others by annex VI; what depletes ozone, which the regulation does not count, by AR4.
    /// </summary>
    /// <param name="substance">The substance.</param>
    /// <returns>The potential; null when it is not known here.</returns>
    public static double? EuropeanPotential(RefrigerantInfo substance) => Of(substance.Designation) switch
    {
        GasFamily.AnnexOne when Perfluorocarbons.Contains(substance.Designation, StringComparer.Ordinal) => substance.GwpAr6?.Value,
        GasFamily.AnnexTwo => substance.GwpAr6?.Value,
        GasFamily.AnnexOne or GasFamily.OzoneDepleting => substance.GwpAr4?.Value,
        // Carbon dioxide is what the others are measured by.
        _ => substance.Designation == "R-744" ? 1 : AnnexSix.GetValueOrDefault(substance.Designation),
    };

    private static IEnumerable<(string Designation, GasFamily Family)> Pairs()
    {
        string[] hydrofluorocarbons = ["R-23", "R-32", "R-41", "R-125", "R-134a", "R-143a", "R-152a", "R-161", "R-227ea", "R-236ea", "R-236fa", "R-245ca", "R-245fa", "R-365mfc"];
        string[] annexTwo = ["R-1132(E)", "R-1132a", "R-1224yd(Z)", "R-1233zd(E)", "R-1234yf", "R-1234ze(E)", "R-1234ze(Z)", "R-1336mzz(E)", "R-1336mzz(Z)"];
        string[] ozone = ["R-11", "R-12", "R-13", "R-21", "R-22", "R-113", "R-114", "R-115", "R-123", "R-124", "R-141b", "R-142b"];
        return hydrofluorocarbons.Concat(Perfluorocarbons).Select(d => (d, GasFamily.AnnexOne))
            .Concat(annexTwo.Select(d => (d, GasFamily.AnnexTwo)))
            .Concat(ozone.Select(d => (d, GasFamily.OzoneDepleting)));
    }
}
