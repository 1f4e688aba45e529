using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Instruments;

/// <summary>A small invented job around the instruments of a test.</summary>
internal static class InstrumentJob
{
    /// <summary>The only finding of a check over one instrument.</summary>
    /// <param name="check">Id of the check.</param>
    /// <param name="instrument">The instrument, one line of YAML.</param>
    /// <param name="site">What the site says of its air.</param>
    public static Finding One(string check, string instrument, string site = "elevation: 0 ft") => Assert.Single(All(check, site, instrument));

    /// <summary>All findings of a check over some instruments.</summary>
    /// <param name="check">Id of the check.</param>
    /// <param name="site">What the site says of its air; nothing for nothing.</param>
    /// <param name="instruments">The instruments, one line of YAML each.</param>
    public static IReadOnlyList<Finding> All(string check, string site, params string[] instruments) => JobText.Evaluate(Yaml(site, instruments), check);

    /// <summary>The job file.</summary>
    /// <param name="site">What the site says of its air.</param>
    /// <param name="instruments">The instruments, one line of YAML each.</param>
    public static string Yaml(string site, params string[] instruments) => $$$"""
        commission: 1
        units: us
        job: {id: IN-1, work: seasonal check, date: 2026-07-02, site: {name: "Fen Row 7", {{{site}}}}}
        equipment: {system: split, refrigerant: R-410A}
        instruments:
        {{{string.Join(Environment.NewLine, instruments.Select(i => "  - " + i))}}}
        """;
}
