namespace Commission.Fluids.Tests;

internal static class Placeholder;
