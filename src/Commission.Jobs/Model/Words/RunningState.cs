namespace Commission.Jobs.Model.Words;

/// <summary>How the compressor ran while readings were taken.</summary>
public enum RunningState
{
    /// <summary>At full speed or load.</summary>
    Full,

    /// <summary>In high stage.</summary>
    HighStage,

    /// <summary>In the maker's charging or test mode.</summary>
    ChargingMode,

    /// <summary>At part load.</summary>
    Part,

    /// <summary>Nobody knows.</summary>
    Unknown,
}
