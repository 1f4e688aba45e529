using System.Collections.Immutable;
using Commission.Jobs.Model;
using Commission.Source;
using Commission.Source.Problems;

namespace Commission.Checks.Limits;

/// <summary>The packs a job asks for: names of packs of this program, or pack files beside the job.</summary>
/// <param name="Library">The packs of this program and those of the job.</param>
/// <param name="Names">Names of the packs asked for, in order, each once.</param>
internal sealed record PackSelection(LimitLibrary Library, ImmutableArray<string> Names)
{
    /// <summary>No pack but common practice.</summary>
    public static PackSelection None { get; } = new(LimitLibrary.Embedded, []);

    /// <summary>Finds the packs a job names.</summary>
    /// <param name="packs">What the job wrote.</param>
    /// <param name="open">Opens a pack file named by the job; null when there is none or it may not be read, and then it has added its problem.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The packs that could be found and read.</returns>
    public static PackSelection Of(IEnumerable<Given<string>> packs, Func<Given<string>, SourceText?> open, ProblemList problems)
    {
        var library = LimitLibrary.Embedded;
        var names = new List<string>();
        foreach (var given in packs)
        {
            var name = given.Value;
            if (IsFile(name))
            {
                if (open(given) is not { } text) continue;
                library = library.With(text, problems, out var own);
                if (own is null) continue;
                name = own.Name;
            }
            else if (!library.Contains(name))
            {
                var near = NearestName.Of(name, library.AllNames());
                problems.Add(
                    given.At,
                    $"There is no limit pack \"{name}\".",
                    "",
                    near is null ? $"The packs are {string.Join(", ", library.AllNames())}; a pack of your own is named by its file." : $"Did you mean \"{near}\"?",
                    "unknown-pack",
                    name.Length);
                continue;
            }

            if (!names.Contains(name, StringComparer.Ordinal)) names.Add(name);
        }

        return new PackSelection(library, [.. names]);
    }

    private static bool IsFile(string name) =>
        name.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || name.EndsWith(".yml", StringComparison.OrdinalIgnoreCase);
}
