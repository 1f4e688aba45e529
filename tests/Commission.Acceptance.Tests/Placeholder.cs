namespace Commission.Acceptance.Tests;

internal static class Placeholder;
