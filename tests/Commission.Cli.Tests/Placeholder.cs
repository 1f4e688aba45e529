namespace Commission.Cli.Tests;

internal static class Placeholder;
