namespace Commission.Measurement.Decisions;

/// <summary>What a check says: the non-binary statement of ILAC-G8:09/2019, and two words for what cannot be judged.</summary>
public enum Verdict
{
    /// <summary>Inside the tolerance by at least the guard band.</summary>
    Pass,

    /// <summary>Inside the tolerance, nearer to the limit than the guard band.</summary>
    ConditionalPass,

    /// <summary>Outside the tolerance, nearer to the limit than the guard band.</summary>
    ConditionalFail,

    /// <summary>Outside the tolerance.</summary>
    Fail,

    /// <summary>Could not be judged; the reason is given.</summary>
    NotEvaluated,

    /// <summary>Nothing sets a limit.</summary>
    Information,
}
