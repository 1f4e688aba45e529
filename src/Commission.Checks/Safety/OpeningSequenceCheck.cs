using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.Safety;

/// <summary>In which order a circuit with a refrigerant that burns was emptied before it was opened.</summary>
internal sealed class OpeningSequenceCheck : ICheck
{
    private static readonly FlammableStep[] Order = [FlammableStep.Recovered, FlammableStep.Purged, FlammableStep.Evacuated, FlammableStep.PurgedAgain, FlammableStep.Opened];

    public string Id => "safety.opening-sequence";

    public string Phase => Phases.Safety;

    public string Title => "Opening a flammable circuit";

    public CheckHelp Help { get; } = new(
        "Was the refrigerant that burns taken out, purged away and pulled off before the circuit was opened or brazed?",
        "recovered → purged with oxygen-free nitrogen → evacuated → purged again → opened; purge vented outdoors",
        "IEC/UL 60335-2-40, annex DD (from memory).",
        "Close the circuit again, ventilate, and begin at the step that was left out. Never cut or braze into a circuit that may still hold refrigerant or oil vapor.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (!context.Get<FlammableRefrigerant>().Burns)
            yield break;
        var work = context.Job.Identity.Work;
        var opens = work.Value is WorkKind.OpenedCircuit or WorkKind.LeakRepair or WorkKind.CompressorReplacement or WorkKind.RefrigerantChange;
        var sequence = context.Job.Safety?.Flammable is { } steps ? steps.Sequence : [];
        if (sequence.IsEmpty && !opens)
            yield break;
        var finding = context.Finding(this).Use("work", work);
        foreach (var step in sequence)
            finding.Use("sequence", step);
        if (context.Limits.Find("safety.flammable.opening") is { } limit)
            finding.Show(context.State(limit));
        if (sequence.IsEmpty)
        {
            yield return finding.NotEvaluated("the order of the steps is not written", "Write the sequence under safety, flammable, such as [recovered, purged, evacuated, purged again, opened].");
            yield break;
        }

        var written = string.Join(", ", sequence.Select(s => s.Text));
        var done = sequence.Select(s => s.Value).ToList();
        // Work that ends before the circuit is opened, such as taking a unit away whole, has no last step.
        var due = done.Contains(FlammableStep.Opened) || opens ? Order : Order[..^1];
        var missing = due.Where(s => !done.Contains(s)).ToList();
        var places = done.Select(s => Array.IndexOf(Order, s)).ToList();
        var isRightOrder = places.SequenceEqual(places.Order());
        if (missing.Count > 0)
            yield return finding.Decide(false).Say($"DANGER: of the steps before a flammable circuit is opened, these are not in the list: {string.Join(", ", missing.Select(Words))}.").Next(Help.WhenItFails).Build();
        else if (!isRightOrder)
            yield return finding.Decide(false).Say($"DANGER: the steps before a flammable circuit is opened stand in another order: {written}.").Next(Help.WhenItFails).Build();
        else
            yield return finding.Decide(true).Say($"In order: {written}.").Build();
    }

    private static string Words(FlammableStep step) => step == FlammableStep.PurgedAgain ? "purged again" : step.ToString().ToLowerInvariant();
}
