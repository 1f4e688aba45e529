namespace Commission.Checks.Tests;

internal static class Placeholder;
