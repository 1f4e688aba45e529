using Commission.Checks.Limits.Reading;

namespace Commission.Checks.Limits;

/// <summary>Every limit this program knows, read once when the first is asked for.</summary>
internal static class LimitDefinitions
{
    private static readonly Lazy<Dictionary<string, LimitDefinition>> ById = new(() =>
        EmbeddedYaml.Read("limit-definitions.yaml", (root, problems) => DefinitionsReader.Read(root, problems)));

    /// <summary>All definitions, ordered by id.</summary>
    public static IEnumerable<LimitDefinition> All => ById.Value.Values.OrderBy(definition => definition.Id, StringComparer.Ordinal);

    /// <summary>The definition of an id.</summary>
    /// <param name="id">The id.</param>
    /// <returns>The definition, or null.</returns>
    public static LimitDefinition? Find(string id) => ById.Value.GetValueOrDefault(id);

    /// <summary>The definition of an id a check asks for.</summary>
    /// <param name="id">The id.</param>
    /// <returns>The definition.</returns>
    /// <exception cref="ArgumentException">There is none: a fault of this program.</exception>
    public static LimitDefinition Get(string id) => Find(id) ?? throw new ArgumentException($"There is no limit \"{id}\".", nameof(id));
}
