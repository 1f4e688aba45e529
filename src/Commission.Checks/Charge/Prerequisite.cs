namespace Commission.Checks.Charge;

/// <summary>One thing that comes before charge, and whether the job shows it.</summary>
/// <param name="What">What it is, in words: <c>the filter is clean</c>.</param>
/// <param name="Shown">True when shown, false when shown not to be so, null when not written.</param>
/// <param name="Otherwise">What the job shows instead; empty when it shows nothing.</param>
internal sealed record Prerequisite(string What, bool? Shown, string Otherwise = "");
