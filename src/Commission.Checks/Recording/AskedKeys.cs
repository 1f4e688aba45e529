using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Checks.Recording;

/// <summary>A key of the job file that this job is asked for and that does not yet answer.</summary>
/// <param name="Path">Its place: keys from the top of the file, joined by dots, for example <c>evacuation.levels</c>.</param>
/// <param name="Phase">Phase of the work.</param>
/// <param name="Check">The check that it answers.</param>
/// <param name="Because">Why it is asked, as a phrase.</param>
/// <param name="Pack">The limits pack that asks for it.</param>
public sealed record AskedKey(string Path, string Phase, string Check, string Because, string Pack);

/// <summary>
/// What a job is asked for: from the answers so far to the keys that are still asked, in the order of the work, each once. A blank job of a kind of work and system
/// gives everything a crew will need; a finished one gives nothing.
/// </summary>
public static class AskedKeys
{
    private static readonly Lazy<Dictionary<string, ImmutableArray<Answer>>> Table = new(() => EmbeddedYaml.Read("recording/asked", Read));

    /// <summary>The keys that a job is still asked for.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    public static ImmutableArray<AskedKey> Of(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return Of(context, context.Limits.Required(), RecordBuilder.Evaluate(context));
    }

    /// <summary>The same with what the checks found, where that is known already.</summary>
    internal static ImmutableArray<AskedKey> Of(CheckContext context, RequiredEvidence required, IReadOnlyList<Finding> findings) =>
    [
        .. required.Checks.Where(r => !MissingWork.IsJudged(r, findings))
            .SelectMany(r => KeysOf(Chosen(r, findings), context.Limits.Situation).Select(path => new AskedKey(path, CheckCatalogue.Find(Chosen(r, findings))!.Phase, Chosen(r, findings), context.Present.Text(r.Because), r.Pack)))
            .OrderBy(k => WorkOrder.OfCheck(k.Check))
            .DistinctBy(k => k.Path),
    ];

    /// <summary>The keys that answer a check in a situation.</summary>
    /// <param name="check">Id of a check that a pack may require.</param>
    /// <param name="situation">What is known of the job.</param>
    internal static IEnumerable<string> KeysOf(string check, LimitSituation situation) =>
        Table.Value.TryGetValue(check, out var answers) ? answers.Where(a => a.When.Hold(situation)).Select(a => a.Path) : [];

    // Of a choice the one a crew has begun with, else the first.
    private static string Chosen(RequiredCheck required, IReadOnlyList<Finding> findings) =>
        required.Choice.OneOf.FirstOrDefault(id => findings.Any(f => f.Check == id && f.Verdict == Verdict.NotEvaluated)) ?? required.Choice.OneOf[0];

    private static Dictionary<string, ImmutableArray<Answer>>? Read(SourceNode root, ProblemList problems) => root is SourceMapping table
        ? table.Entries.ToDictionary(e => e.Key.Text, e => (e.Value as SourceSequence)?.Items.Select(item => Answer(item, problems)).OfType<Answer>().ToImmutableArray() ?? [], StringComparer.Ordinal)
        : null;

    private static Answer? Answer(SourceNode node, ProblemList problems)
    {
        if (node is SourceScalar path)
            return new Answer(path.Text, LimitConditions.Always);
        if (StrictMapping.Open(node, PackPart.OfProgram("a key with its situation"), problems) is not { } mapping)
            return null;
        var answer = new Answer(mapping.RequireText("key")?.Text ?? "", ConditionsReader.Read(mapping.Take("when"), problems));
        mapping.Close();
        return answer;
    }
}

/// <summary>A key that answers a check.</summary>
/// <param name="Path">Its place.</param>
/// <param name="When">When it is asked.</param>
internal sealed record Answer(string Path, LimitConditions When);
