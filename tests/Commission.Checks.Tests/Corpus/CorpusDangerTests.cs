using Commission.Checks.Tests.Recording;
using Xunit;

namespace Commission.Checks.Tests.Corpus;

/// <summary>In the jobs of the corpus, too, the word of danger and its mark go together. The rule is the project's own.</summary>
public sealed class CorpusDangerTests
{
    public static TheoryData<string> Jobs() => [.. CorpusJob.All.Where(j => !j.Outcomes.Contains(CorpusJob.Refused, StringComparer.Ordinal)).Select(j => j.Name)];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void The_word_and_the_mark_go_together(string name)
    {
        var job = CorpusJob.All.Single(j => j.Name == name);
        DangerTests.AssertMarked(JobLines.Record(job.Yaml, job.Files));
    }
}
