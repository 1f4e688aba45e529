using System.Collections.Immutable;
using System.Text.Json;
using Commission.Fluids.Data;

namespace Commission.Fluids;

/// <summary>Every refrigerant the program knows, from a small index; the equations are read only by <see cref="Refrigerant.Load"/>.</summary>
public static class RefrigerantCatalogue
{
    private static readonly Lazy<RefrigerantIndex> Index = new(RefrigerantIndex.Read);

    /// <summary>All refrigerants, pure ones first, in the order of their numbers.</summary>
    public static IReadOnlyList<RefrigerantInfo> All => Index.Value.All;

    /// <summary>Every name a refrigerant goes by, designations first, with its designation: "propane" is R-290.</summary>
    public static IReadOnlyDictionary<string, string> Names => Index.Value.Names;

    /// <summary>
    /// The refrigerant of a designation or another of its names: "R-410A", "r410a", "410A", "HFC-32", "propane", "CO2". Null when there
    /// is none.
    /// </summary>
    /// <param name="nameOrAlias">A name as people write it.</param>
    public static RefrigerantInfo? Find(string nameOrAlias)
    {
        ArgumentNullException.ThrowIfNull(nameOrAlias);
        return Index.Value.Find(nameOrAlias);
    }
}

/// <summary>Reads the index of refrigerants and finds names in it.</summary>
internal sealed class RefrigerantIndex
{
    private readonly Dictionary<string, RefrigerantInfo> _byName;

    private RefrigerantIndex(IReadOnlyList<RefrigerantInfo> all, Dictionary<string, RefrigerantInfo> byName)
    {
        All = all;
        _byName = byName;
    }

    public IReadOnlyList<RefrigerantInfo> All { get; }

    public IReadOnlyDictionary<string, string> Names => field ??= All.Select(i => i.Designation)
        .Concat(All.SelectMany(i => i.Aliases)).Concat(All.Select(i => i.ChemicalName).OfType<string>())
        .Distinct(StringComparer.OrdinalIgnoreCase).ToDictionary(name => name, name => Find(name)!.Designation, StringComparer.OrdinalIgnoreCase);

    public static RefrigerantIndex Read()
    {
        using var file = EmbeddedData.Open("refrigerants.json");
        var root = file.RootElement;
        Dictionary<string, SourceNote> sources = new(StringComparer.Ordinal);
        foreach (var source in root.GetProperty("sources").EnumerateObject())
            sources.Add(source.Name, new SourceNote(source.Value[0].GetString()!, source.Value[1].GetString()!));

        List<RefrigerantInfo> all = [];
        Dictionary<string, RefrigerantInfo> byName = new(StringComparer.Ordinal);
        foreach (var entry in root.GetProperty("pure").EnumerateArray())
            Add(ReadPure(entry, sources), all, byName);
        foreach (var entry in root.GetProperty("blends").EnumerateArray())
            Add(ReadBlend(entry, sources, byName), all, byName);
        return new RefrigerantIndex(all, byName);
    }

    public RefrigerantInfo? Find(string name) => _byName.GetValueOrDefault(Normalize(name));

    /// <summary>Upper case without spaces, hyphens and brackets, and without the leading R of a number: "R-1234ze(E)" → "1234ZEE".</summary>
    internal static string Normalize(string name)
    {
        var buffer = name.Length <= 64 ? stackalloc char[name.Length] : new char[name.Length];
        var length = 0;
        foreach (var c in name)
        {
            if (c is not (' ' or '-' or '(' or ')' or '_' or '\u2010' or '\u2011' or '\u2013'))
                buffer[length++] = char.ToUpperInvariant(c);
        }
        ReadOnlySpan<char> text = buffer[..length];
        if (text.Length > 1 && text[0] == 'R' && (char.IsAsciiDigit(text[1]) || (text.Length > 2 && text[1] is 'E' or 'C' && char.IsAsciiDigit(text[2]))))
            text = text[1..];
        return text.ToString();
    }

    private static void Add(RefrigerantInfo info, List<RefrigerantInfo> all, Dictionary<string, RefrigerantInfo> byName)
    {
        all.Add(info);
        byName.Add(Normalize(info.Designation), info);
        foreach (var alias in info.Aliases)
            byName.TryAdd(Normalize(alias), info);
        if (info.ChemicalName is not null)
            byName.TryAdd(Normalize(info.ChemicalName), info);
    }

    private static RefrigerantInfo ReadPure(JsonElement e, Dictionary<string, SourceNote> sources)
    {
        var designation = e.Text("designation");
        return new RefrigerantInfo
        {
            Designation = designation,
            ChemicalName = e.Text("chemical name"),
            Aliases = Aliases(e),
            Composition = [new BlendComponent(designation, 1)],
            MolarMass = e.Number("molar mass kg/mol"),
            SafetyGroup = Word(e, "safety group", sources),
            GwpAr4 = Value(e, "GWP AR4", sources),
            GwpAr5 = Value(e, "GWP AR5", sources),
            GwpAr6 = Value(e, "GWP AR6", sources),
            LowerFlammabilityLimit = Value(e, "LFL kg/m3", sources),
            ConcentrationLimit = Value(e, "RCL kg/m3", sources),
        };
    }

    private static RefrigerantInfo ReadBlend(JsonElement e, Dictionary<string, SourceNote> sources, Dictionary<string, RefrigerantInfo> pure)
    {
        JsonElement names = e.GetProperty("components"), shares = e.GetProperty("mass %");
        var sum = 0.0;
        foreach (var share in shares.EnumerateArray())
            sum += share.GetDouble();
        var composition = ImmutableArray.CreateBuilder<BlendComponent>(names.GetArrayLength());
        for (var i = 0; i < names.GetArrayLength(); i++)
            composition.Add(new BlendComponent(names[i].GetString()!, shares[i].GetDouble() / sum));
        var source = sources[e.Text("composition source")];
        var parts = composition.MoveToImmutable();
        BoilingRange? listed = null;
        if (e.TryGetProperty("normal bubble and dew point C", out var range))
        {
            var from = sources[range[2].GetString()!];
            listed = new BoilingRange(range[0].GetDouble() + 273.15, range[1].GetDouble() + 273.15, from.Mark, from.Source);
        }
        return new RefrigerantInfo
        {
            Designation = e.Text("designation"),
            Aliases = [],
            Composition = parts,
            CompositionSource = new SourcedText(e.Text("designation"), source.Mark, source.Source),
            MolarMass = MolarMass(parts, pure),
            SafetyGroup = Word(e, "safety group", sources),
            GwpAr4 = Weighted(parts, pure, static i => i.GwpAr4),
            GwpAr5 = Weighted(parts, pure, static i => i.GwpAr5),
            GwpAr6 = Weighted(parts, pure, static i => i.GwpAr6),
            LowerFlammabilityLimit = Value(e, "LFL kg/m3", sources),
            ConcentrationLimit = Value(e, "RCL kg/m3", sources),
            ListedBoilingRange = listed,
            LacksEquationOf = e.OptionalText("lacks equation of"),
        };
    }

    private static ImmutableArray<string> Aliases(JsonElement e)
    {
        if (!e.TryGetProperty("aliases", out var list))
            return [];
        var names = ImmutableArray.CreateBuilder<string>(list.GetArrayLength());
        foreach (var name in list.EnumerateArray())
            names.Add(name.GetString()!);
        return names.MoveToImmutable();
    }

    private static SourcedValue? Value(JsonElement e, string property, Dictionary<string, SourceNote> sources)
    {
        if (!e.TryGetProperty(property, out var pair))
            return null;
        var note = sources[pair[1].GetString()!];
        return new SourcedValue(pair[0].GetDouble(), note.Mark, note.Source);
    }

    private static SourcedText? Word(JsonElement e, string property, Dictionary<string, SourceNote> sources)
    {
        if (!e.TryGetProperty(property, out var pair))
            return null;
        var note = sources[pair[1].GetString()!];
        return new SourcedText(pair[0].GetString()!, note.Mark, note.Source);
    }

    private static double? MolarMass(ImmutableArray<BlendComponent> parts, Dictionary<string, RefrigerantInfo> pure)
    {
        var moles = 0.0;
        foreach (var part in parts)
        {
            if (!pure.TryGetValue(Normalize(part.Designation), out var info) || info.MolarMass is not double mass)
                return null;
            moles += part.MassFraction / mass;
        }
        return 1 / moles;
    }

    private static SourcedValue? Weighted(ImmutableArray<BlendComponent> parts, Dictionary<string, RefrigerantInfo> pure, Func<RefrigerantInfo, SourcedValue?> of)
    {
        var sum = 0.0;
        var published = true;
        foreach (var part in parts)
        {
            if (!pure.TryGetValue(Normalize(part.Designation), out var info) || of(info) is not SourcedValue value)
                return null;
            sum += part.MassFraction * value.Value;
            published &= value.Mark == "published";
        }
        var mark = published ? "computed" : "computed from values from memory";
        return new SourcedValue(sum, mark, "mass-weighted sum over the components");
    }
}

/// <summary>How a value of the index is known. A class, not a tuple: a dictionary of references needs no code generated at start.</summary>
internal sealed record SourceNote(string Mark, string Source);
