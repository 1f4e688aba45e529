namespace Commission.Documents.Templates;

/// <summary>Carries a member name that the record does not have out of the template engine; caught where templates are rendered.</summary>
internal sealed class UnknownMemberException(string name, IReadOnlyList<string> known) : Exception($"The record has no member \"{name}\" here.")
{
    public string Name { get; } = name;

    public IReadOnlyList<string> Known { get; } = known;
}
