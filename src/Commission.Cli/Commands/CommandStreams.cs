namespace Commission.Cli.Commands;

/// <summary>Where a command writes.</summary>
/// <param name="Output">Results.</param>
/// <param name="Error">Problems.</param>
internal sealed record CommandStreams(TextWriter Output, TextWriter Error);
