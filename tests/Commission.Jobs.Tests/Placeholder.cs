namespace Commission.Jobs.Tests;

internal static class Placeholder;
