namespace Commission.Checks.Recording;

/// <summary>Something the profile for this kind of work and system requires and the job does not have.</summary>
/// <param name="Id">The check or the kind of evidence.</param>
/// <param name="Sentence">What is missing and what to do, in one sentence.</param>
public sealed record MissingRequirement(string Id, string Sentence);
