using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>What every figure of the maker has in common, whatever it is a figure of.</summary>
internal interface ILimitFigure
{
    /// <summary>Whether at least one figure is written.</summary>
    bool HasFigure { get; }

    /// <summary>Whether the least is above the most.</summary>
    bool IsBackward { get; }
}

/// <summary>A figure of the maker.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <typeparam name="TTolerance">The quantity of a deviation from it: a temperature's is a difference.</typeparam>
public sealed record QuantityLimit<T, TTolerance> : JobPart, ILimitFigure
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

    bool ILimitFigure.HasFigure => Target is not null || Minimum is not null || Maximum is not null;

    bool ILimitFigure.IsBackward => Minimum is { } low && Maximum is { } high && low.Value switch
    {
        StatedPressure p when high.Value is StatedPressure q => p.Reference == q.Reference && p.Pascals > q.Pascals,
        _ => Comparer<T>.Default.Compare(low.Value, high.Value) > 0,
    };
}

public sealed partial record NumberLimit : ILimitFigure
{
    bool ILimitFigure.HasFigure => Target is not null || Minimum is not null || Maximum is not null;

    bool ILimitFigure.IsBackward => Minimum is { } low && Maximum is { } high && low.Value > high.Value;
}
