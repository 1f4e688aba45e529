namespace Commission.Checks.Tests.Limits;

/// <summary>Files of the repository, found from where the tests were built.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string Read(params string[] path) => File.ReadAllText(Path.Combine([Root, .. path]));

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Commission.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("The repository was not found above the tests.");
    }
}
