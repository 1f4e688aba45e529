using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Functional;

/// <summary>One thing that was tried.</summary>
/// <param name="What">What it is.</param>
/// <param name="Result">How it ended; null when the job does not say.</param>
/// <param name="Needed">Whether the check stands on one leg without it.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Trial(Message What, Given<TestResult>? Result, bool Needed = false);

/// <summary>Judges things that were tried together: one that failed fails, one that was left out is a reservation.</summary>
internal static class Trials
{
    /// <summary>Every single trial of a job, in the order of the record.</summary>
    /// <param name="functional">What was tried.</param>
    public static ImmutableArray<Trial> All(Jobs.Model.Functional functional) =>
    [
        new(FunctionalMessages.TrialCoolingCall, functional.CoolingCall),
        new(FunctionalMessages.TrialHeatingCall, functional.HeatingCall),
        new(FunctionalMessages.TrialFanCall, functional.FanCall),
        new(FunctionalMessages.TrialThermostatSetUp, functional.ThermostatSetUp),
        new(FunctionalMessages.TrialReversingValve, functional.ReversingValve),
        new(FunctionalMessages.TrialDefrostStarts, functional.DefrostStarts),
        new(FunctionalMessages.TrialDefrostEnds, functional.DefrostEnds),
        new(FunctionalMessages.TrialAuxiliaryHeat, functional.AuxiliaryHeat),
        new(FunctionalMessages.TrialAuxiliaryHeatLockout, functional.AuxiliaryHeatLockout),
        new(FunctionalMessages.TrialFanRotation, functional.FanRotation),
        new(FunctionalMessages.TrialCondensateDrains, functional.CondensateDrains),
        new(FunctionalMessages.TrialCondensateTrap, functional.CondensateTrap),
        new(FunctionalMessages.TrialDrainSlope, functional.DrainSlope),
        new(FunctionalMessages.TrialSecondaryDrain, functional.SecondaryDrain),
        new(FunctionalMessages.TrialFloatSwitch, functional.FloatSwitch),
        new(FunctionalMessages.TrialReliefPort, functional.ReliefPort),
        new(FunctionalMessages.TrialAddresses, functional.Addresses),
        new(FunctionalMessages.TrialTrialRun, functional.TrialRun),
    ];

    /// <summary>Judges trials.</summary>
    /// <param name="finding">The finding, begun.</param>
    /// <param name="witness">Who watched.</param>
    /// <param name="whenItFails">What to do when one failed.</param>
    /// <param name="trials">The trials.</param>
    /// <returns>The finding; null when the job has a result of none of them.</returns>
    public static Finding? Judge(FindingBuilder finding, Witness? witness, Message whenItFails, params ReadOnlySpan<Trial> trials)
    {
        List<MessageValue> works = [], failed = [], untested = [], unfitted = [], unwritten = [];
        foreach (var trial in trials)
        {
            finding.Use(trial.What, trial.Result);
            (trial.Result?.Value switch
            {
                TestResult.Ok => works,
                TestResult.Failed => failed,
                TestResult.NotTested => untested,
                TestResult.NotFitted => unfitted,
                _ => unwritten,
            }).Add(trial.What);
        }

        if (unwritten.Count == trials.Length)
            return null;
        finding.Use(FunctionalMessages.TrialWitness, witness?.By);
        var told = new[] { Part(failed, FunctionalMessages.TrialsFailed), Part(works, FunctionalMessages.TrialsWork), Part(untested, FunctionalMessages.TrialsNotTested), Part(unfitted, FunctionalMessages.TrialsNotFitted) }.OfType<Message>().ToList();
        finding.Say(told.Aggregate(CommonMessages.TwoSentences));
        if (failed.Count > 0)
            return finding.Decide(false).Next(whenItFails).Build();
        if (works.Count == 0)
        {
            return untested.Count > 0
                ? finding.NotEvaluated(FunctionalMessages.TrialsOnlyNotTested(Listed(untested)), FunctionalMessages.TrialsOnlyNotTestedNext)
                : finding.Information(told[0], FunctionalMessages.TrialsNothingToTry);
        }

        finding.Decide(true);
        foreach (var what in untested)
            finding.Reserve(FunctionalMessages.TrialWasNotTested((Message)what)).Next(FunctionalMessages.TrialsRestNext);
        foreach (var trial in trials)
        {
            if (trial is { Needed: true, Result: null })
                finding.Reserve(FunctionalMessages.TrialHasNoResult(trial.What)).Next(FunctionalMessages.TrialsRestNext);
        }

        return finding.Build();
    }

    /// <summary>Names of trials, one after the other.</summary>
    /// <param name="trials">The names.</param>
    public static ListValue Listed(IEnumerable<MessageValue> trials) => new([.. trials], ListJoin.Comma);

    private static Message? Part(List<MessageValue> trials, Func<ListValue, Message> sentence) => trials.Count == 0 ? null : sentence(Listed(trials));
}

/// <summary>Everything that was tried, by how it ended.</summary>
internal sealed class FunctionalTable : ITableSource
{
    public IEnumerable<RecordTable> Tables(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        var tried = Trials.All(functional).Where(t => t.Result is not null).ToList();
        if (tried.Count == 0)
            yield break;
        yield return new RecordTable
        {
            Id = "functional",
            Phase = Phases.Functional,
            Title = context.Present.Text(FunctionalMessages.TrialsTable),
            Note = functional.Witnessed is { } witness ? context.Present.Text(FunctionalMessages.TrialsWitnessed(new(witness.Role is { } role ? $"{witness.By.Value}, {role.Value}" : witness.By.Value))) : "",
            Columns = [new TableColumn(context.Present.Text(FunctionalMessages.TrialsTableResult)), new TableColumn(context.Present.Text(FunctionalMessages.TrialsTableTrials))],
            Rows = [.. tried.GroupBy(t => t.Result!.Text, StringComparer.Ordinal).Select(g => ImmutableArray.Create(g.Key, string.Join(", ", g.Select(t => context.Present.Text(t.What)))))],
        };
    }
}
