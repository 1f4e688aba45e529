using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Whether a three-phase compressor turns the right way.</summary>
internal sealed class PhaseRotationCheck : ICheck
{
    public string Id => "electrical.phase-rotation";

    public string Phase => Phases.Electrical;

    public string Title => "Phase rotation";

    public CheckHelp Help { get; } = new(
        "Does a three-phase scroll or screw compressor turn the right way? Turned backwards it is loud, draws little, and pumps nothing.",
        "rotation correct on a phase-rotation meter, or pressures move apart at start",
        "Common practice, no source.",
        "Stop at once, lock out, swap two phases at the supply, and try again.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { } electrical)
            yield break;
        var phases = context.Job.Equipment.Nameplate?.Phases;
        if (phases?.Value != 3)
            yield break;
        var finding = context.Finding(this).Use("phases", phases).Use("phase rotation", electrical.PhaseRotation);
        if (electrical.PhaseRotation is not { } rotation)
        {
            yield return finding.NotEvaluated("the phase rotation is not written", "Read it with a meter and write phase rotation: correct.");
            yield break;
        }

        if (rotation.Value == PhaseRotation.SinglePhase)
        {
            yield return finding.NotEvaluated("the job says single phase and the nameplate says three phases", "Correct whichever is wrong; with three phases read the rotation with a meter.");
            yield break;
        }

        finding.Decide(rotation.Value == PhaseRotation.Correct);
        yield return finding.Passes
            ? finding.Say("Phase rotation is correct.").Build()
            : finding.Say($"Phase rotation is {rotation.Text}.").Next(Help.WhenItFails).Build();
    }
}
