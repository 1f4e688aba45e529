using Commission.Documents.Templates;

namespace Commission.Cli.Running;

/// <summary>Reads a crew's own templates: every .liquid file of a folder, in place of the built-in one of the same name.</summary>
internal static class TemplateFolder
{
    public static TemplateSet Read(string folder)
    {
        if (!Directory.Exists(folder))
            throw new IOException($"--template {folder}: there is no such folder.");
        var files = Directory.EnumerateFiles(folder, "*.liquid", SearchOption.AllDirectories)
            .ToDictionary(path => Path.GetRelativePath(folder, path).Replace('\\', '/'), File.ReadAllText, StringComparer.Ordinal);
        return files.Count > 0
            ? TemplateSet.With(files)
            : throw new IOException($"--template {folder}: there is no .liquid file in it. A template is named {TemplateSet.Main}; its parts lie in parts/.");
    }
}
