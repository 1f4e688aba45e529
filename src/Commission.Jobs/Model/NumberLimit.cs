namespace Commission.Jobs.Model;

/// <summary>A figure of the maker that is a pure number or a count.</summary>
public sealed record NumberLimit : JobPart, ILimitFigure
{
    /// <summary>The figure to be met.</summary>
    public Given<double>? Target { get; init; }

    /// <summary>How far off it may be, both ways.</summary>
    public Given<double>? Tolerance { get; init; }

    /// <summary>At least this.</summary>
    public Given<double>? Minimum { get; init; }

    /// <summary>At most this.</summary>
    public Given<double>? Maximum { get; init; }

    /// <summary>Where the figure is written: page, plate, sheet.</summary>
    public required Given<string> From { get; init; }

    bool ILimitFigure.HasFigure => Target is not null || Minimum is not null || Maximum is not null;

    bool ILimitFigure.IsBackward => Minimum is { } low && Maximum is { } high && low.Value > high.Value;

    Given<string>? ILimitFigure.Source => From;
}
