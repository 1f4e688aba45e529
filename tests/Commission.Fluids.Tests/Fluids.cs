using System.Collections.Concurrent;
using Commission.Fluids.Mixtures;
using Commission.Messages;
using Xunit;

namespace Commission.Fluids.Tests;

/// <summary>Loads each refrigerant once for all tests.</summary>
internal static class Fluids
{
    private static readonly ConcurrentDictionary<string, Refrigerant> Loaded = new(StringComparer.Ordinal);

    public static Refrigerant Get(string designation) => Loaded.GetOrAdd(designation, Refrigerant.Load);

    /// <summary>The model of a refrigerant in its designated composition.</summary>
    public static MixtureModel Model(string designation)
    {
        var parts = RefrigerantCatalogue.Find(designation)!.Composition;
        return MixtureModel.Load([.. parts.Select(c => c.Designation)], [.. parts.Select(c => c.MassFraction)]);
    }

    /// <summary>The model of a mixture by mole fractions.</summary>
    public static MixtureModel Molar(string[] components, double[] moles) =>
        MixtureModel.Load(components, [.. moles.Zip(components, (n, c) => n * RefrigerantCatalogue.Find(c)!.MolarMass!.Value)]);

    /// <summary>The value; a failed test with the reason when there is none.</summary>
    public static T Value<T>(FluidResult<T> result)
        where T : struct
    {
        Assert.True(result.Ok, result.Reason?.Words());
        return result.Value;
    }
}

/// <summary>Reasons as a reader in English has them.</summary>
internal static class ReasonWords
{
    public static string Words(this Message? reason) => reason is null ? "" : MessageWriter.Words.Format(reason, Language.English);
}

/// <summary>Words of a test as a message.</summary>
internal static class PlainWords
{
    public static Message Plain(this string words) => CommonMessages.AsWritten(new(words));
}
