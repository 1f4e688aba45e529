using Xunit;

namespace Commission.Checks.Tests.Corpus;

/// <summary>In the jobs of the corpus the mark of a source, which comes from a table and from citations, says what its English words say.</summary>
public sealed class CorpusSourceTests
{
    [Fact]
    public void A_source_of_a_formula_is_marked_as_its_words_say()
    {
        foreach (var job in CorpusJob.All.Where(j => !j.Outcomes.Contains(CorpusJob.Refused, StringComparer.Ordinal)))
        {
            foreach (var note in JobLines.Record(job.Yaml, job.Files).Sources.Where(s => s.Kind == "formula"))
            {
                var words = note.Citation.Contains("common practice", StringComparison.Ordinal) ? "common practice" : note.Citation.Contains("from memory", StringComparison.Ordinal) ? "from memory" : null;
                Assert.True(words is null || note.Mark == words, $"{job.Name}: \"{note.Citation}\" is marked \"{note.Mark}\".");
            }
        }
    }
}
