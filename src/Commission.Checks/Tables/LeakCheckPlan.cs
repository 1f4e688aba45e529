namespace Commission.Checks.Tables;

/// <summary>How often a circuit has to be checked for leaks.</summary>
/// <param name="Months">Longest time between checks, calendar months; null when no check is prescribed.</param>
/// <param name="DetectionObligatory">Whether a leakage detection system is prescribed.</param>
/// <param name="Because">Which trigger governs, as a sentence.</param>
internal sealed record LeakCheckPlan(int? Months, bool DetectionObligatory, string Because);
