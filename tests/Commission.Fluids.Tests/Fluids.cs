using System.Collections.Concurrent;
using Xunit;

namespace Commission.Fluids.Tests;

/// <summary>Loads each refrigerant once for all tests.</summary>
internal static class Fluids
{
    private static readonly ConcurrentDictionary<string, Refrigerant> Loaded = new(StringComparer.Ordinal);

    public static Refrigerant Get(string designation) => Loaded.GetOrAdd(designation, Refrigerant.Load);

    /// <summary>The value; a failed test with the reason when there is none.</summary>
    public static T Value<T>(FluidResult<T> result)
        where T : struct
    {
        Assert.True(result.Ok, result.Reason);
        return result.Value;
    }
}
