using Commission.Source.Yaml;

namespace Commission.Checks.Limits.Reading;

/// <summary>A form of a limit, and what was written in it.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Shape">Its form.</param>
internal sealed record LimitForm(string Key, LimitShape Shape)
{
    /// <summary>What was written; null in the list of forms.</summary>
    public SourceScalar? Text { get; init; }
}
