using System.Runtime.CompilerServices;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;

namespace Commission.Checks.Findings;

/// <summary>
/// Remembers in which unit a root cause is to be read, so that a budget can print "0.72 psi" and "0.15 °F per psi".
/// A cause that nobody entered prints without a unit.
/// </summary>
public sealed class CauseBook
{
    private readonly ConditionalWeakTable<RootCause, object> kinds = [];

    /// <summary>Enters a cause.</summary>
    /// <param name="cause">The cause.</param>
    /// <param name="kind">How its standard uncertainty is displayed; a difference for temperatures and pressures.</param>
    /// <returns>The same cause.</returns>
    public RootCause Enter(RootCause cause, DisplayKind kind)
    {
        kinds.AddOrUpdate(cause, kind);
        return cause;
    }

    /// <summary>How the cause is displayed; null when nobody said.</summary>
    /// <param name="cause">The cause.</param>
    public DisplayKind? KindOf(RootCause cause) => kinds.TryGetValue(cause, out var kind) ? (DisplayKind)kind : null;
}
