namespace Commission.Jobs.Model.Words;

/// <summary>How a functional test ended.</summary>
public enum TestResult
{
    /// <summary>It works.</summary>
    Ok,

    /// <summary>It does not work.</summary>
    Failed,

    /// <summary>Nobody tested it.</summary>
    NotTested,

    /// <summary>There is none.</summary>
    NotFitted,
}
