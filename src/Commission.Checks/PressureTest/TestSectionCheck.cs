using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.PressureTest;

/// <summary>What was inside the test: a closed valve leaves a part of the circuit untested.</summary>
internal sealed class TestSectionCheck : ICheck
{
    public string Id => "pressure-test.section";

    public string Phase => Phases.PressureTest;

    public string Title => "Section under test";

    public CheckHelp Help { get; } = new(
        "Which part of the circuit was under pressure, and how did its valves stand? A closed expansion valve, solenoid or service valve leaves a part untested.",
        "section and valve positions as written, against what this kind of system can shut off",
        "Common practice, no source.",
        "Drive the expansion valve open, hold solenoids open with a magnet, open the service valves of the part under test, and repeat; or name the section and test the rest as its own section.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PressureTest is not { } test)
            yield break;
        yield return SectionStatement.Make(context, context.Finding(this), test.Section, test.SectionName, test.Valves, "tested");
    }
}
