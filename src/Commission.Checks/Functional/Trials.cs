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
/// <param name="What">What it is, in the words of the job file.</param>
/// <param name="Result">How it ended; null when the job does not say.</param>
/// <param name="Needed">Whether the check stands on one leg without it.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Trial(string What, Given<TestResult>? Result, bool Needed = false);

/// <summary>Judges things that were tried together: one that failed fails, one that was left out is a reservation.</summary>
internal static class Trials
{
    /// <summary>Every single trial of a job, in the order of the record.</summary>
    /// <param name="functional">What was tried.</param>
    public static ImmutableArray<Trial> All(Jobs.Model.Functional functional) =>
    [
        new("cooling call", functional.CoolingCall),
        new("heating call", functional.HeatingCall),
        new("fan call", functional.FanCall),
        new("thermostat set up", functional.ThermostatSetUp),
        new("reversing valve", functional.ReversingValve),
        new("defrost starts", functional.DefrostStarts),
        new("defrost ends", functional.DefrostEnds),
        new("auxiliary heat", functional.AuxiliaryHeat),
        new("auxiliary heat lockout", functional.AuxiliaryHeatLockout),
        new("fan rotation", functional.FanRotation),
        new("condensate drains", functional.CondensateDrains),
        new("condensate trap", functional.CondensateTrap),
        new("drain slope", functional.DrainSlope),
        new("secondary drain", functional.SecondaryDrain),
        new("float switch", functional.FloatSwitch),
        new("relief port", functional.ReliefPort),
        new("addresses", functional.Addresses),
        new("trial run", functional.TrialRun),
    ];

    /// <summary>Judges trials.</summary>
    /// <param name="finding">The finding, begun.</param>
    /// <param name="witness">Who watched.</param>
    /// <param name="whenItFails">What to do when one failed.</param>
    /// <param name="trials">The trials.</param>
    /// <returns>The finding; null when the job has a result of none of them.</returns>
    public static Finding? Judge(FindingBuilder finding, Witness? witness, Message whenItFails, params ReadOnlySpan<Trial> trials)
    {
        List<string> works = [], failed = [], untested = [], unfitted = [], unwritten = [];
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
        finding.Use("witnessed by", witness?.By);
        var sentence = string.Join(" ", new[] { Part("Failed", failed), Part("Works", works), Part("Not tested", untested), Part("Not fitted", unfitted) }.OfType<string>());
        finding.Say(sentence);
        if (failed.Count > 0)
            return finding.Decide(false).Next(whenItFails).Build();
        if (works.Count == 0)
        {
            return untested.Count > 0
                ? finding.NotEvaluated($"not tested: {string.Join(", ", untested)}", "Try it and write the result.")
                : finding.Information(sentence, "there is nothing of the kind to try");
        }

        finding.Decide(true);
        foreach (var what in untested)
            finding.Reserve($"{what} was not tested").Next("Try what is left and write the results.");
        foreach (var trial in trials)
        {
            if (trial is { Needed: true, Result: null })
                finding.Reserve($"no result of {trial.What} is written").Next("Try what is left and write the results.");
        }

        return finding.Build();
    }

    private static string? Part(string word, List<string> items) => items.Count == 0 ? null : $"{word}: {string.Join(", ", items)}.";
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
            Title = "What was tried",
            Note = functional.Witnessed is { } witness ? $"Witnessed by {witness.By.Value}{(witness.Role is { } role ? ", " + role.Value : "")}." : "",
            Columns = [new TableColumn("Result"), new TableColumn("Trials")],
            Rows = [.. tried.GroupBy(t => t.Result!.Text, StringComparer.Ordinal).Select(g => ImmutableArray.Create(g.Key, string.Join(", ", g.Select(t => t.What))))],
        };
    }
}
