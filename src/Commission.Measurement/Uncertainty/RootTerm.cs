namespace Commission.Measurement.Uncertainty;

/// <summary>A root cause and how strongly it moves a reading.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Sensitivity">Change of the reading for each unit of the cause, signed.</param>
public readonly record struct RootTerm(RootCause Cause, double Sensitivity)
{
    /// <summary>A cause that enters one to one.</summary>
    public static implicit operator RootTerm(RootCause cause) => new(cause, 1);

    /// <summary>A cause that enters one to one.</summary>
    public static RootTerm FromRootCause(RootCause cause) => new(cause, 1);
}
