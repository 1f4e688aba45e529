using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Whether the compressor ran in a way in which superheat and subcooling show the charge.</summary>
internal sealed class RunningConditionCheck : ICheck
{
    public string Id => "charge.running-condition";

    public string Phase => Phases.Charge;

    public string Title => "Running condition";

    public CheckHelp Help { get; } = new(
        "Did the compressor run in a way in which superheat and subcooling say something of the charge?",
        "variable speed: held in the maker's charging or test mode; two-stage, digital, tandem: full load or high stage; fixed speed: running",
        "Makers' charging instructions; common practice, no source.",
        "Set the maker's charging mode or high stage, wait until the system has settled, read again. A system that cannot be held there is charged by weight or by its maker's chart.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.ByWeightOnly is not null || analysis.Spoken(OperatingMode.Cooling, r => r.HasCircuitReading) is not { } row)
            yield break;
        var gate = RunningCondition.Of(context, row);
        var finding = context.Finding(this, row.Time);
        gate.NameIn(finding);
        if (gate.Block is { } why)
        {
            yield return finding.NotEvaluated(why, gate.Todo!);
            yield break;
        }

        finding.Decide(true);
        if (gate.Reservation is { } missing)
            finding.Reserve(missing);
        yield return finding.Say(gate.Reservation is { } open
            ? $"Readings at {row.Time}: {open}."
            : $"At {row.Time} the compressor ran {(row.Running is { Value: not RunningState.Unknown } running ? RunningCondition.Words(running.Value) : "at its one speed")}: a valid condition for charge readings.").Build();
    }
}
