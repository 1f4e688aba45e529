using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Oil.</summary>
public sealed record Oil : JobPart
{
    /// <summary>The kind of oil.</summary>
    public Given<string>? Type { get; init; }

    /// <summary>How much.</summary>
    public Given<Volume>? Amount { get; init; }
}
