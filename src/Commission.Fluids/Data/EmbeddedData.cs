using System.Text.Json;

namespace Commission.Fluids.Data;

/// <summary>Opens the data files that are built into the assembly.</summary>
internal static class EmbeddedData
{
    /// <summary>Parses the file of this name, e.g. <c>fluids/r-32.json</c>. A missing file is a fault of the build and throws.</summary>
    public static JsonDocument Open(string name)
    {
        using Stream stream = typeof(EmbeddedData).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The data file '{name}' is not built into the assembly.");
        return JsonDocument.Parse(stream);
    }

    /// <summary>The names of all built-in data files below a folder, e.g. <c>fluids/</c>, in ordinal order.</summary>
    public static IReadOnlyList<string> List(string folder)
    {
        List<string> names = [];
        foreach (string name in typeof(EmbeddedData).Assembly.GetManifestResourceNames())
        {
            if (name.StartsWith(folder, StringComparison.Ordinal))
                names.Add(name);
        }
        names.Sort(StringComparer.Ordinal);
        return names;
    }

    /// <summary>An array of numbers as doubles.</summary>
    public static double[] Doubles(this JsonElement parent, string property)
    {
        JsonElement array = parent.GetProperty(property);
        double[] values = new double[array.GetArrayLength()];
        int i = 0;
        foreach (JsonElement item in array.EnumerateArray())
            values[i++] = item.GetDouble();
        return values;
    }

    /// <summary>An array of whole numbers.</summary>
    public static int[] Integers(this JsonElement parent, string property)
    {
        JsonElement array = parent.GetProperty(property);
        int[] values = new int[array.GetArrayLength()];
        int i = 0;
        foreach (JsonElement item in array.EnumerateArray())
            values[i++] = item.GetInt32();
        return values;
    }

    public static double Number(this JsonElement parent, string property) => parent.GetProperty(property).GetDouble();

    public static string Text(this JsonElement parent, string property) => parent.GetProperty(property).GetString()!;

    public static string? OptionalText(this JsonElement parent, string property) =>
        parent.TryGetProperty(property, out JsonElement value) ? value.GetString() : null;
}
