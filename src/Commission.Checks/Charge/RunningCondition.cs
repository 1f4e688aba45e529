using Commission.Checks.Findings;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Charge;

/// <summary>Whether the compressor ran in a way in which superheat and subcooling say something of the charge.</summary>
internal sealed class RunningCondition : IChargeGate
{
    private readonly Compressor? compressor;
    private readonly ChargeRow row;

    private RunningCondition(Compressor? compressor, ChargeRow row)
    {
        this.compressor = compressor;
        this.row = row;
    }

    /// <inheritdoc/>
    public string? Block { get; private init; }

    /// <inheritdoc/>
    public string? Todo { get; private init; }

    /// <inheritdoc/>
    public string? Reservation { get; private init; }

    /// <summary>Looks at the compressor and at how it ran.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="row">The readings.</param>
    public static RunningCondition Of(CheckContext context, ChargeRow row)
    {
        var fitted = context.Job.Equipment.Compressor;
        var running = row.Running?.Value;
        return (fitted?.Kind.Value, running) switch
        {
            (_, RunningState.ChargingMode) => new RunningCondition(fitted, row),
            (CompressorKind.VariableSpeed, RunningState.Full or RunningState.HighStage or RunningState.Part) => Not(
                $"a variable-speed compressor ran {Words(running.GetValueOrDefault())} and not in the maker's charging mode, which is no valid charging condition",
                "Set the maker's charging or test mode and read again, or weigh the charge in."),
            (CompressorKind.VariableSpeed, _) => Not(
                "it is not shown that the variable-speed compressor was held in the maker's charging mode",
                "Set the maker's charging or test mode, write running: charging mode, and read again; or weigh the charge in."),
            (_, RunningState.Part) => Not(
                "the compressor ran at part load",
                "Run it at full load or in high stage and read again."),
            (CompressorKind.Fixed, _) or (_, RunningState.Full or RunningState.HighStage) => new RunningCondition(fitted, row),
            (null, _) => new RunningCondition(fitted, row) { Reservation = "the kind of compressor and how it ran are not written" },
            _ => new RunningCondition(fitted, row) { Reservation = "it is not written that the compressor ran at full load or in high stage" },
        };

        RunningCondition Not(string why, string todo) => new(fitted, row) { Block = why, Todo = todo };
    }

    /// <summary>How a compressor ran, to stand behind "ran".</summary>
    /// <param name="state">The state.</param>
    public static string Words(RunningState state) => state switch
    {
        RunningState.Full => "at full load",
        RunningState.HighStage => "in high stage",
        RunningState.ChargingMode => "in its charging mode",
        RunningState.Part => "at part load",
        _ => "in a way nobody knows",
    };

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding) =>
        finding.Use("compressor", compressor?.Kind).Use("running", row.Running).Use("compressor speed", row.Speed);
}
