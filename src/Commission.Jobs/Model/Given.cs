using Commission.Source;

namespace Commission.Jobs.Model;

/// <summary>A value as somebody gave it: it knows where it was written and how.</summary>
/// <typeparam name="T">The kind of value.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="At">Where it was written.</param>
/// <param name="Text">How the record prints it: canonical spelling of number and unit.</param>
public sealed record Given<T>(T Value, SourceLocation At, string Text)
{
    /// <summary>The uncertainty written behind the value; null when none was.</summary>
    public Stated? Stated { get; init; }

    /// <summary>
    /// The smallest step the written number shows, in SI: 0.1 °F of difference for <c>45.2 °F</c>.
    /// Null when the value is not a quantity, or was written as a fraction or a compound.
    /// </summary>
    public double? Step { get; init; }
}
