namespace Commission.Source.Tests;

internal static class Placeholder;
