using System.Text.Json;

namespace Commission.Fluids.Data;

/// <summary>Reads the list of papers of a data file.</summary>
internal static class PaperList
{
    public static IReadOnlyList<Paper> Read(JsonElement list)
    {
        List<Paper> papers = new(list.GetArrayLength());
        foreach (JsonElement p in list.EnumerateArray())
        {
            papers.Add(new Paper(
                p.Text("key"),
                p.Text("authors"),
                p.Text("title"),
                p.Text("year"),
                p.Text("published in"),
                p.OptionalText("volume"),
                p.OptionalText("pages"),
                p.OptionalText("doi")));
        }
        return papers;
    }
}
