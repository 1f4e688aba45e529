using Commission.Jobs.Model.Words;
using Commission.Source;
using Commission.Source.Problems;
using Commission.Source.Yaml;

namespace Commission.Checks.Limits.Reading;

/// <summary>Reads what a record has to show.</summary>
internal static class ProfileReader
{
    // In the order of the members.
    private static readonly string[] Photos = [.. Enum.GetNames<PhotoSubject>().Select(MemberWords.Of)];

    /// <summary>Reads one profile.</summary>
    /// <param name="node">An item of <c>required</c>.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The profile; null, and a problem, when it cannot be read.</returns>
    public static RequiredProfile? Read(SourceNode node, ProblemList problems)
    {
        if (StrictMapping.Open(node, "a profile", problems) is not { } mapping) return null;
        var before = problems.Count;
        var when = ConditionsReader.Read(mapping.Take("when"), problems);
        var checks = mapping.Items("checks").Select(item => ReadChecks(item, problems)).OfType<string[]>().ToArray();
        var photos = new List<PhotoSubject>();
        foreach (var item in mapping.Items("photos"))
        {
            if (ReadPhoto(item, problems) is { } photo) photos.Add(photo);
        }

        var because = mapping.RequireText("because");
        mapping.Close();
        if (problems.Count > before || because is null) return null;
        if (checks.Length + photos.Count > 0) return new RequiredProfile(when, checks, photos, because.Text, mapping.Location);
        problems.Add(mapping.Location, "A profile asks for nothing.", "", "Name checks or photos.", "missing-key");
        return null;
    }

    private static string[]? ReadChecks(SourceNode node, ProblemList problems)
    {
        if (node is SourceScalar) return ReadCheck(node, problems) is { } id ? [id] : null;
        if (StrictMapping.Open(node, "a choice of checks", problems) is not { } mapping) return null;
        var ids = mapping.Items("one of").Select(item => ReadCheck(item, problems)).OfType<string>().ToArray();
        mapping.Close();
        if (ids.Length > 1) return ids;
        problems.Add(node.Location, "A choice needs at least two checks.", "", "Write {one of: [first, second]}.", "missing-key", node.Length);
        return null;
    }

    private static string? ReadCheck(SourceNode node, ProblemList problems)
    {
        if (node is SourceScalar scalar && IsCheckId(scalar.Text)) return scalar.Text;
        problems.Add(node.Location, $"{StrictMapping.Kind(node)} is not the id of a check.", "", "Write it as phase.name, for example pressure-test.hold.", "bad-check-id", node.Length);
        return null;
    }

    private static bool IsCheckId(string text)
    {
        var dot = text.IndexOf('.', StringComparison.Ordinal);
        return dot > 0 && dot < text.Length - 1 && text.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c is '.' or '-');
    }

    private static PhotoSubject? ReadPhoto(SourceNode node, ProblemList problems)
    {
        if (node is SourceScalar { IsEmpty: false } scalar)
        {
            if (Array.IndexOf(Photos, scalar.Text) is >= 0 and var at) return (PhotoSubject)at;
            var near = NearestName.Of(scalar.Text, Photos);
            problems.Add(scalar.Location, $"No photo shows \"{scalar.Text}\".", "", near is null ? "Use a word of the job file's photos." : $"Did you mean \"{near}\"?", "unknown-word", scalar.Length);
            return null;
        }

        problems.Add(node.Location, $"\"photos\" holds {StrictMapping.Kind(node)}.", "A word was expected.", "", "wrong-type", node.Length);
        return null;
    }
}
