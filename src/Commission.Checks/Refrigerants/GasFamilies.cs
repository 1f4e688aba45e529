using System.Collections.Frozen;
using Commission.Fluids;

namespace Commission.Checks.Refrigerants;

/// <summary>
/// Families of the pure substances refrigerants are made of: Regulation (EU) 2024/573, annexes I and II section 1, and the class I and II
/// substances of 40 CFR 82 subpart A, appendices A and B (both from memory).
/// </summary>
internal static class GasFamilies
{
    /// <summary>Where the families come from, as a trace cites it.</summary>
    public const string Source = "Regulation (EU) 2024/573, annexes I and II (from memory)";

    private static readonly FrozenDictionary<string, GasFamily> Known = Pairs().ToFrozenDictionary(p => p.Designation, p => p.Family, StringComparer.Ordinal);

    /// <summary>The family of a pure substance.</summary>
    /// <param name="designation">Its designation, <c>R-32</c>.</param>
    public static GasFamily Of(string designation) => Known.GetValueOrDefault(designation, GasFamily.Other);

    /// <summary>Whether a refrigerant or a part of it depletes ozone.</summary>
    /// <param name="refrigerant">The refrigerant.</param>
    public static bool DepletesOzone(RefrigerantInfo refrigerant) => refrigerant.Composition.Any(c => Of(c.Designation) == GasFamily.OzoneDepleting);

    private static IEnumerable<(string Designation, GasFamily Family)> Pairs()
    {
        string[] annexOne = ["R-14", "R-23", "R-32", "R-41", "R-116", "R-125", "R-134a", "R-143a", "R-152a", "R-161", "R-218", "R-227ea", "R-236ea", "R-236fa", "R-245ca", "R-245fa", "R-365mfc", "R-C318"];
        string[] annexTwo = ["R-1123", "R-1132(E)", "R-1132a", "R-1224yd(Z)", "R-1233zd(E)", "R-1234yf", "R-1234ze(E)", "R-1234ze(Z)", "R-1243zf", "R-1336mzz(E)", "R-1336mzz(Z)"];
        string[] ozone = ["R-11", "R-12", "R-13", "R-21", "R-22", "R-113", "R-114", "R-115", "R-123", "R-124", "R-141b", "R-142b"];
        return annexOne.Select(d => (d, GasFamily.AnnexOne))
            .Concat(annexTwo.Select(d => (d, GasFamily.AnnexTwo)))
            .Concat(ozone.Select(d => (d, GasFamily.OzoneDepleting)));
    }
}
