namespace Commission.Measurement.Tests;

internal static class Placeholder;
