using System.Text.Json;
using Commission.Fluids.Data;
using Commission.Fluids.Helmholtz;

namespace Commission.Fluids.Mixtures;

/// <summary>
/// Two components of a mixture (indices <paramref name="A"/> &lt; <paramref name="B"/>): parameters of the reducing functions in the
/// form of Kunz and Wagner 2012, eqs. 16–17, and the departure function with its factor F.
/// </summary>
internal sealed record BinaryPair(int A, int B, double BetaT, double GammaT, double BetaV, double GammaV, double F, HelmholtzFunction? Departure, IReadOnlyList<Paper> Papers)
{
    /// <summary>How the parameters were estimated; null when they are published for this pair.</summary>
    public string? Estimate { get; init; }

    /// <summary>The rule of the estimate; null when the parameters are published for this pair.</summary>
    public CombiningRule? Rule { get; init; }

    /// <summary>
    /// The Lorentz–Berthelot combining rule in the reduced form of Kunz and Wagner 2012: β = 1 and γ = 1, so that
    /// T_ab = √(T_a T_b) and v_ab = ((v_a^⅓ + v_b^⅓)/2)³.
    /// </summary>
    public static BinaryPair LorentzBerthelot(int a, int b) => new(a, b, 1, 1, 1, 1, 0, null, []) { Estimate = "Lorentz–Berthelot", Rule = CombiningRule.LorentzBerthelot };
}

/// <summary>Reads the binary reducing parameters and the departure functions of a set of components.</summary>
internal static class MixtureFiles
{
    /// <summary>
    /// The pairs of the components in the order (0,1), (0,2), …, (1,2), …; a pair without published parameters gets those of its nearest
    /// relative where the data name one, else the Lorentz–Berthelot rule in the form of Kunz and Wagner 2012 (β = 1, γ = 1).
    /// </summary>
    public static BinaryPair[] Load(string[] components)
    {
        var count = components.Length;
        var pairs = new BinaryPair[count * (count - 1) / 2];
        using var file = EmbeddedData.Open("mixtures/pairs.json");
        IReadOnlyList<Paper>? papers = null;
        var departures = new string?[pairs.Length];
        var anyDeparture = false;
        foreach (var p in file.RootElement.GetProperty("pairs").EnumerateArray())
        {
            var a = IndexOf(components, p.GetProperty("a"));
            if (a < 0)
                continue;
            var b = IndexOf(components, p.GetProperty("b"));
            if (b < 0)
                continue;
            papers ??= PaperList.Read(file.RootElement.GetProperty("papers"));
            double betaT = p.Number("beta T"), betaV = p.Number("beta v");
            if (a > b)
            {
                (a, b) = (b, a);
                betaT = 1 / betaT;
                betaV = 1 / betaV;
            }
            var index = Index(a, b, count);
            var departure = p.OptionalText("departure");
            departures[index] = departure;
            anyDeparture |= departure is not null;
            pairs[index] = new BinaryPair(a, b, betaT, p.Number("gamma T"), betaV, p.Number("gamma v"), departure is null ? 0 : p.Number("F"), null, [Find(papers, p.Text("paper"))]);
        }
        if (anyDeparture)
            AddDepartures(pairs, departures);
        var complete = true;
        foreach (var pair in pairs)
            complete &= pair is not null;
        if (!complete)
            AddEstimates(components, pairs, file.RootElement);
        return pairs;
    }

    private static void AddEstimates(string[] components, BinaryPair[] pairs, JsonElement published)
    {
        var count = components.Length;
        using var file = EmbeddedData.Open("mixtures/stand-ins.json");
        foreach (var s in file.RootElement.GetProperty("stand-ins").EnumerateArray())
        {
            int a = IndexOf(components, s.GetProperty("a")), b = IndexOf(components, s.GetProperty("b"));
            if (a < 0 || b < 0)
                continue;
            var index = Index(Math.Min(a, b), Math.Max(a, b), count);
            pairs[index] ??= Relative(published, a, b, s.Text("like a"), s.Text("like b"));
        }
        for (var a = 0; a < count; a++)
        {
            for (var b = a + 1; b < count; b++)
                pairs[Index(a, b, count)] ??= BinaryPair.LorentzBerthelot(a, b);
        }
    }

    /// <summary>The reducing parameters of another pair, set on components a and b; its departure function belongs to it alone.</summary>
    private static BinaryPair Relative(JsonElement published, int a, int b, string likeA, string likeB)
    {
        foreach (var p in published.GetProperty("pairs").EnumerateArray())
        {
            JsonElement first = p.GetProperty("a"), second = p.GetProperty("b");
            var same = first.ValueEquals(likeA) && second.ValueEquals(likeB);
            if (!same && !(first.ValueEquals(likeB) && second.ValueEquals(likeA)))
                continue;
            // β belongs to an order of the two: it is inverted with every exchange.
            var inverted = !same ^ (a > b);
            double betaT = p.Number("beta T"), betaV = p.Number("beta v");
            var paper = Find(PaperList.Read(published.GetProperty("papers")), p.Text("paper"));
            return new BinaryPair(Math.Min(a, b), Math.Max(a, b), inverted ? 1 / betaT : betaT, p.Number("gamma T"), inverted ? 1 / betaV : betaV, p.Number("gamma v"), 0, null, [paper])
            {
                Estimate = $"parameters of {likeA} + {likeB}",
                Rule = CombiningRule.Relative,
            };
        }
        throw new InvalidOperationException($"The stand-in pair {likeA} + {likeB} has no parameters.");
    }

    private static void AddDepartures(BinaryPair[] pairs, string?[] names)
    {
        using var file = EmbeddedData.Open("mixtures/departures.json");
        var papers = PaperList.Read(file.RootElement.GetProperty("papers"));
        foreach (var d in file.RootElement.GetProperty("departures").EnumerateArray())
        {
            HelmholtzFunction? function = null;
            var name = d.GetProperty("name");
            for (var i = 0; i < names.Length; i++)
            {
                if (names[i] is null || !name.ValueEquals(names[i]))
                    continue;
                function ??= ReadDeparture(d);
                var paper = Find(papers, d.Text("paper"));
                var both = pairs[i].Papers[0] == paper ? pairs[i].Papers : [pairs[i].Papers[0], paper];
                pairs[i] = pairs[i] with { Departure = function, Papers = both };
            }
        }
    }

    internal static HelmholtzFunction ReadDeparture(JsonElement d)
    {
        double[] n = d.Doubles("n"), t = d.Doubles("t");
        var degree = d.Integers("d");
        if (d.Text("kind") == "Exponential")
            return new HelmholtzFunction([new PowerTerms(n, t, degree, d.Integers("l"))]);
        var m = d.GetProperty("power terms").GetInt32();
        List<ResidualTerms> kinds = [];
        if (m > 0)
            kinds.Add(new PowerTerms(n[..m], t[..m], degree[..m], new int[m]));
        if (m < n.Length)
            kinds.Add(new GergTerms(n[m..], t[m..], degree[m..], d.Doubles("eta")[m..], d.Doubles("epsilon")[m..], d.Doubles("beta")[m..], d.Doubles("gamma")[m..]));
        return new HelmholtzFunction([.. kinds]);
    }

    private static Paper Find(IReadOnlyList<Paper> papers, string key)
    {
        foreach (var paper in papers)
        {
            if (paper.Key == key)
                return paper;
        }
        throw new InvalidOperationException($"The mixture data name the paper '{key}' but do not cite it.");
    }

    private static int IndexOf(string[] components, JsonElement name)
    {
        for (var i = 0; i < components.Length; i++)
        {
            if (name.ValueEquals(components[i]))
                return i;
        }
        return -1;
    }

    internal static int Index(int a, int b, int count) => a * count - a * (a + 1) / 2 + b - a - 1;
}
