namespace Commission.Jobs.Model;

/// <summary>A figure of the maker.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <typeparam name="TTolerance">The quantity of a deviation from it: a temperature's is a difference.</typeparam>
public sealed record QuantityLimit<T, TTolerance> : JobPart
{
    /// <summary>The figure to be met.</summary>
    public Given<T>? Target { get; init; }

    /// <summary>How far off it may be, both ways.</summary>
    public Given<TTolerance>? Tolerance { get; init; }

    /// <summary>At least this.</summary>
    public Given<T>? Minimum { get; init; }

    /// <summary>At most this.</summary>
    public Given<T>? Maximum { get; init; }

    /// <summary>Where the figure is written: page, plate, sheet.</summary>
    public required Given<string> From { get; init; }
}
