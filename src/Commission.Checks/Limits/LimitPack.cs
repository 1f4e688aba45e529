using System.Collections.Immutable;

namespace Commission.Checks.Limits;

/// <summary>A named set of limits, and of what a record has to show.</summary>
/// <param name="Name">The name a job uses.</param>
/// <param name="Title">The document, in words.</param>
/// <param name="PublishedBy">Who stands for it.</param>
/// <param name="Edition">Which edition.</param>
/// <param name="BuildsOn">Packs that are asked after this one.</param>
/// <param name="Limits">Cases by limit id, in the order written: the first that applies counts.</param>
/// <param name="Required">What a record has to show, by kind of work and system.</param>
internal sealed record LimitPack(
    string Name,
    string Title,
    string PublishedBy,
    string Edition,
    ImmutableArray<PackReference> BuildsOn,
    IReadOnlyDictionary<string, IReadOnlyList<LimitEntry>> Limits,
    ImmutableArray<RequiredProfile> Required)
{
    /// <summary>The name of the pack that stands behind all others.</summary>
    public const string CommonPractice = "common-practice";

    /// <summary>Anything worth telling about it.</summary>
    public string? About { get; init; }

    /// <summary>The case of a limit that applies.</summary>
    /// <param name="id">Limit id.</param>
    /// <param name="situation">What is known of the job.</param>
    /// <returns>The case; null when the pack has none that applies.</returns>
    public LimitEntry? Find(string id, LimitSituation situation) =>
        Limits.TryGetValue(id, out var cases) ? cases.FirstOrDefault(entry => entry.When.Hold(situation)) : null;
}
