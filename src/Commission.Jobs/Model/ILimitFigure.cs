namespace Commission.Jobs.Model;

/// <summary>What every figure of the maker has in common, whatever it is a figure of.</summary>
internal interface ILimitFigure
{
    /// <summary>Whether at least one figure is written.</summary>
    bool HasFigure { get; }

    /// <summary>Whether the least is above the most.</summary>
    bool IsBackward { get; }

    /// <summary>Where the figure is written.</summary>
    Given<string>? Source { get; }
}
