using System.Reflection;

namespace Commission.Cli.Console;

/// <summary>Name and version as records print them.</summary>
internal static class ProgramVersion
{
    public static string Text { get; } =
        "Commission " + (typeof(ProgramVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "0");
}
