namespace Commission.Checks.Limits;

/// <summary>In which form a limit is written.</summary>
internal enum LimitShape
{
    /// <summary>A lower bound.</summary>
    AtLeast,

    /// <summary>An upper bound.</summary>
    AtMost,

    /// <summary>Two bounds.</summary>
    Within,

    /// <summary>Half a width around a target that comes from elsewhere.</summary>
    Tolerance,

    /// <summary>A value to aim for, with or without a tolerance; or one that a computation assumes.</summary>
    Target,

    /// <summary>A requirement in words.</summary>
    Statement,
}
