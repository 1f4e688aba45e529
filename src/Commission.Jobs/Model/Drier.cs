namespace Commission.Jobs.Model;

/// <summary>The filter drier.</summary>
public sealed record Drier : JobPart
{
    /// <summary>The model.</summary>
    public Given<string>? Model { get; init; }

    /// <summary>Where it sits.</summary>
    public Given<string>? Place { get; init; }

    /// <summary>Whether it was replaced in this job.</summary>
    public Given<bool>? Replaced { get; init; }
}
