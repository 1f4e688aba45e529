using System.Runtime.CompilerServices;

namespace Commission.Acceptance.Tests;

/// <summary>Finds the files of the repository from where this source file lies.</summary>
internal static class Repository
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", ".."));

    public static string PathTo(params string[] parts) => Path.Combine([Root, .. parts]);

    public static IEnumerable<string> Examples => Directory.EnumerateDirectories(PathTo("examples")).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal);

    private static string Here([CallerFilePath] string path = "") => path;
}
