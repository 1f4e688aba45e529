namespace Commission.Checks;

/// <summary>The page of help of one check: what <c>commission explain</c> prints without a job.</summary>
/// <param name="What">What the check asks, in trade words.</param>
/// <param name="Formula">The formula or rule, in words or symbols with units.</param>
/// <param name="Source">Where the formula or rule comes from, with its mark (published, from memory, common practice).</param>
/// <param name="WhenItFails">What to do when the check fails or cannot be judged.</param>
public sealed record CheckHelp(string What, string Formula, string Source, string WhenItFails);
