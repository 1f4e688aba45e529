namespace Commission.Documents.Tests;

internal static class Placeholder;
