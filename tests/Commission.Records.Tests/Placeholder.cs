namespace Commission.Records.Tests;

internal static class Placeholder;
