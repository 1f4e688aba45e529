using Commission.Records.Findings;

namespace Commission.Checks.Evacuation;

/// <summary>Says with every evacuation that a vacuum proves no tightness, and asks for the pressure test where there is none.</summary>
internal sealed class TightnessNotProvedCheck : ICheck
{
    public string Id => "evacuation.tightness-not-proved";

    public string Phase => Phases.Evacuation;

    public string Title => "Vacuum and tightness";

    public CheckHelp Help { get; } = new(
        "Does the record rest its tightness on a vacuum? It may not: a vacuum pulls with one atmosphere where the running system pushes with ten to forty, and a joint that opens under pressure may close under vacuum.",
        "an evacuation needs a nitrogen hold and a search of each joint beside it",
        "IEC/UL 60335-2-40: joints are searched under pressure with a method that sees 5 g a year or finer (from memory).",
        "Fill with dry nitrogen in steps to the test pressure, hold it with the temperature read at both ends, and search every joint while it is under pressure.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Evacuation is not { } evacuation)
            yield break;
        var finding = context.Finding(this).Use("section under vacuum", evacuation.Section);
        var test = context.Job.PressureTest;
        if (test?.Tightness is not null)
        {
            finding.Use("test gas", test.Gas).Use("section under test", test.Section);
            if (!test.Joints.IsEmpty)
            {
                yield return finding.Information("The hold in vacuum proves no tightness; the nitrogen hold and the search of the joints stand for it.", "tightness is judged by the pressure test");
                yield break;
            }

            yield return finding.Next("Search each joint while it is under nitrogen pressure.").Information("The hold in vacuum proves no tightness; the nitrogen hold stands for it, and no joint was searched.", "tightness is judged by the pressure test");
            yield break;
        }

        yield return finding.Next(Help.WhenItFails).Information("The hold in vacuum proves no tightness, and no nitrogen hold is written.", "tightness is judged by the pressure test");
    }
}
