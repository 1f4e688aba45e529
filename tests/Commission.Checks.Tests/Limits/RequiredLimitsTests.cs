using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Commission.Checks.Limits;
using Xunit;

namespace Commission.Checks.Tests.Limits;

/// <summary>What checks take for granted of common practice.</summary>
public sealed partial class RequiredLimitsTests
{
    // "Require" throws where common practice has no limit: it may only be asked for what stands there without a condition.
    [Fact]
    public void Every_limit_that_is_required_stands_in_common_practice_in_every_situation()
    {
        var common = LimitLibrary.Embedded.Find(LimitPack.CommonPractice)!;
        var ids = typeof(LimitIds).GetFields().ToDictionary(f => f.Name, f => (string)f.GetRawConstantValue()!, StringComparer.Ordinal);
        var required = Directory.EnumerateFiles(Path.Combine(Repository.Root, "src", "Commission.Checks"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains("/obj/", StringComparison.Ordinal)).SelectMany(f => Required().Matches(File.ReadAllText(f))).Select(m => m.Groups["id"].Value).Distinct().ToList();
        Assert.True(required.Count > 20, "The scan finds nothing any more.");
        foreach (var id in required)
            Assert.True(common.Limits.TryGetValue(ids[id], out var cases) && cases.Any(c => c.When.All.IsEmpty), $"{ids[id]} is required and not in common practice without a condition.");
    }

    [Fact]
    public void A_limit_of_no_pack_cannot_be_required() => Assert.Equal(
        "Common practice has no piping.total-length for this job.",
        Assert.Throws<InvalidOperationException>(() => new LimitResolver(LimitLibrary.Embedded, [], ImmutableDictionary<string, MakerFigure>.Empty, new LimitSituation(), new DecisionRuleChoice(null)).Require(LimitIds.PipingTotalLength)).Message);

    // Unbalance.Judge hands its id on.
    [GeneratedRegex(@"(?:Limits\.Require\(|Unbalance\.Judge\(context, this, \w+, )LimitIds\.(?<id>\w+)", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Required();
}
