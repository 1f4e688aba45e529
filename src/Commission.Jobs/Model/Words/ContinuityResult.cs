namespace Commission.Jobs.Model.Words;

/// <summary>What a continuity check found.</summary>
public enum ContinuityResult
{
    /// <summary>Continuous.</summary>
    Continuous,

    /// <summary>Not continuous.</summary>
    NotContinuous,

    /// <summary>Nobody checked.</summary>
    NotChecked,
}
