using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Electrical;

/// <summary>A small invented job around what an electrical test writes.</summary>
internal static class ElectricalJob
{
    /// <summary>The finding of a check over one electrical part.</summary>
    /// <param name="check">Id of the check; it speaks once.</param>
    /// <param name="electrical">The electrical part, one line.</param>
    /// <param name="nameplate">The nameplate, one line; nothing for none.</param>
    /// <param name="more">Further equipment keys, one line; nothing for none.</param>
    /// <param name="limits">The maker's limits, one line; nothing for none.</param>
    public static Finding One(string check, string electrical, string nameplate = "", string more = "", string limits = "") =>
        Assert.Single(All(check, electrical, nameplate, more, limits));

    /// <summary>All findings of a check over one electrical part.</summary>
    /// <param name="check">Id of the check.</param>
    /// <param name="electrical">The electrical part, one line.</param>
    /// <param name="nameplate">The nameplate, one line; nothing for none.</param>
    /// <param name="more">Further equipment keys, one line; nothing for none.</param>
    /// <param name="limits">The maker's limits, one line; nothing for none.</param>
    public static IReadOnlyList<Finding> All(string check, string electrical, string nameplate = "", string more = "", string limits = "") =>
        JobText.Evaluate(Yaml(electrical, nameplate, more, limits), check);

    /// <summary>The job file.</summary>
    /// <param name="electrical">The electrical part, one line.</param>
    /// <param name="nameplate">The nameplate, one line; nothing for none.</param>
    /// <param name="more">Further equipment keys, one line; nothing for none.</param>
    /// <param name="limits">The maker's limits, one line; nothing for none.</param>
    public static string Yaml(string electrical, string nameplate = "", string more = "", string limits = "") => $$$"""
        commission: 1
        units: us
        job: {id: EL-1, work: seasonal check, date: 2026-07-02, site: {name: "Fen Row 7", elevation: 0 ft}}
        equipment: {system: split, refrigerant: R-410A{{{Part(more)}}}{{{Part(nameplate.Length == 0 ? "" : $"nameplate: {nameplate}")}}}}
        {{{(limits.Length == 0 ? "" : $"limits: {limits}")}}}
        instruments:
          - {id: meter, kind: clamp meter, accuracy: 1.5 % of reading, resolution: 0.1 A, calibrated: 2026-01-10, reads: [electrical]}
        electrical: {{{electrical}}}
        """;

    private static string Part(string text) => text.Length == 0 ? "" : ", " + text;
}
