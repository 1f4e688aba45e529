using System.Collections.Immutable;
using System.Text.Json;
using Commission.Fluids.Data;

namespace Commission.Fluids.Mixtures;

/// <summary>What stands in for the parameters of a pair that has none published.</summary>
public enum CombiningRule
{
    /// <summary>β = 1 and γ = 1 in the reduced form of Kunz and Wagner 2012, no departure function.</summary>
    LorentzBerthelot,

    /// <summary>The published parameters of the nearest related pair, without its departure function.</summary>
    Relative,
}

/// <summary>How far the saturation pressures of a blend with estimated pairs may lie from the truth, judged by blends whose boiling points are listed.</summary>
/// <param name="Pair">The pair that decides, "R-22 + R-124".</param>
/// <param name="HoldPair">True when the sisters hold that pair; false when only their rule is the same.</param>
/// <param name="Sisters">The listed blends it was judged by.</param>
/// <param name="Bubble">Share of the bubble pressure.</param>
/// <param name="Dew">Share of the dew pressure.</param>
public sealed record EstimateDeviation(string Pair, bool HoldPair, ImmutableArray<string> Sisters, double Bubble, double Dew);

/// <summary>Reads the deviations of estimated pairs.</summary>
internal static class EstimateFile
{
    /// <summary>The largest deviation of the estimated pairs of a model; null when every pair is published.</summary>
    public static EstimateDeviation? Worst(MixtureModel model)
    {
        if (!model.Pairs.Any(p => p.Rule is not null))
            return null;
        using var file = EmbeddedData.Open("mixtures/estimates.json");
        return model.Pairs.Where(p => p.Rule is not null)
            .Select(p => Of(file.RootElement, model.Components[p.A].Designation, model.Components[p.B].Designation, p.Rule!.Value))
            .MaxBy(d => Math.Max(d.Bubble, d.Dew));
    }

    private static EstimateDeviation Of(JsonElement file, string a, string b, CombiningRule rule)
    {
        foreach (var p in file.GetProperty("pairs").EnumerateArray())
        {
            if ((p.Text("a"), p.Text("b")) is var (first, second) && ((first == a && second == b) || (first == b && second == a)))
                return Read(p, $"{a} + {b}", true);
        }
        var name = rule == CombiningRule.LorentzBerthelot ? "Lorentz-Berthelot" : "relative";
        return Read(file.GetProperty("rules").EnumerateArray().First(r => r.Text("rule") == name), $"{a} + {b}", false);
    }

    private static EstimateDeviation Read(JsonElement entry, string pair, bool holdPair) => new(
        pair,
        holdPair,
        [.. entry.GetProperty("sisters").EnumerateArray().Select(s => s.GetString()!)],
        entry.Number("bubble"),
        entry.Number("dew"));
}
