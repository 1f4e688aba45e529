namespace Commission.Jobs.Model;

/// <summary>Who stands for the work.</summary>
public sealed record Signature : JobPart
{
    /// <summary>The name.</summary>
    public required Given<string> Name { get; init; }

    /// <summary>In what role.</summary>
    public Given<string>? Role { get; init; }

    /// <summary>Licence or certificate number.</summary>
    public Given<string>? Licence { get; init; }

    /// <summary>What is declared.</summary>
    public Given<string>? Statement { get; init; }

    /// <summary>When.</summary>
    public required Given<DateOnly> Date { get; init; }
}
