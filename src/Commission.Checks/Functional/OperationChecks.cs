using Commission.Checks.Kernel;
using Commission.Jobs.Model.Words;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Functional;

/// <summary>Whether the system answers the thermostat.</summary>
internal sealed class ThermostatCallsCheck : ICheck
{
    public string Id => "functional.thermostat-calls";

    public string Phase => Phases.Functional;

    public string Title => "Thermostat calls";

    public CheckHelp Help { get; } = new(
        "Does the system do what the thermostat asks: cool, heat, run the fan alone? Is the thermostat set up for this kind of system?",
        "each call tried works; a heat pump is tried in cooling and in heating",
        "Start-up lists of installation manuals (common practice, no source).",
        "Check the control wiring terminal by terminal against the maker's diagram, the setting of the reversing-valve terminal and the thermostat's kind of system; then call again.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        var isHeatPump = context.Job.Equipment.System.Value == SystemKind.HeatPump;
        var finding = Trials.Judge(
            context.Finding(this).Use("system", context.Job.Equipment.System),
            functional.Witnessed,
            Help.WhenItFails,
            new Trial("cooling call", functional.CoolingCall, isHeatPump),
            new Trial("heating call", functional.HeatingCall, isHeatPump),
            new Trial("fan call", functional.FanCall),
            new Trial("thermostat set up", functional.ThermostatSetUp));
        if (finding is not null)
            yield return finding;
    }
}

/// <summary>Whether the fans turn the right way.</summary>
internal sealed class FanRotationCheck : ICheck
{
    public string Id => "functional.fan-rotation";

    public string Phase => Phases.Functional;

    public string Title => "Fan rotation";

    public CheckHelp Help { get; } = new(
        "Do the fans turn the right way? A fan that turns backwards moves air, only too little of it.",
        "seen to turn as the arrow or the blade asks",
        "Start-up lists of installation manuals (common practice, no source).",
        "Disconnect and prove dead; on three phases exchange two conductors at the fan, on one phase follow the motor's diagram.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        if (Trials.Judge(context.Finding(this), functional.Witnessed, Help.WhenItFails, new Trial("fan rotation", functional.FanRotation)) is { } finding)
            yield return finding;
    }
}

/// <summary>Whether the outside damper does what its control asks.</summary>
internal sealed class EconomizerCheck : ICheck
{
    public string Id => "functional.economizer";

    public string Phase => Phases.Functional;

    public string Title => "Economizer";

    public CheckHelp Help { get; } = new(
        "Does the outside damper run through its travel, and does the economizer open when the outside air is good enough and close when it is not?",
        "economizer ok and damper test ok, where they were tried",
        "Start-up lists of packaged units (common practice, no source).",
        "Look at linkage, motor and sensors. A damper stuck open makes a sound unit look short of capacity, one stuck shut starves the building.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Air?.OutsideAir is not { } outside)
            yield break;
        if (Trials.Judge(context.Finding(this), null, Help.WhenItFails, new Trial("economizer", outside.Economizer), new Trial("damper test", outside.DamperTest)) is { } finding)
            yield return finding;
    }
}

/// <summary>Whether the reversing valve changes over both ways.</summary>
internal sealed class ReversingValveCheck : ICheck
{
    public string Id => "functional.reversing-valve";

    public string Phase => Phases.Functional;

    public string Title => "Reversing valve";

    public CheckHelp Help { get; } = new(
        "Does the reversing valve change over from cooling to heating and back?",
        "changed over both ways with the compressor running",
        "Start-up lists of installation manuals (common practice, no source).",
        "Check the voltage at the coil and the board's setting. A valve that sticks half-way shows nearly equal temperatures at its ports; it may free itself when it is changed over at a high pressure difference, otherwise it is replaced.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        if (Trials.Judge(context.Finding(this), functional.Witnessed, Help.WhenItFails, new Trial("reversing valve", functional.ReversingValve)) is { } finding)
            yield return finding;
    }
}

/// <summary>Whether the stages of the auxiliary heat work, and its lockout.</summary>
internal sealed class AuxiliaryHeatCheck : ICheck
{
    public string Id => "functional.auxiliary-heat";

    public string Phase => Phases.Functional;

    public string Title => "Auxiliary heat";

    public CheckHelp Help { get; } = new(
        "Does each stage of the auxiliary heat come on when it is called, and is it locked out above its setting?",
        "each stage called and felt or measured; locked out above the setting",
        "Start-up lists of installation manuals (common practice, no source).",
        "Disconnect, prove dead, then check elements, sequencers, limit switches and the outdoor thermostat. Heating elements are work for a qualified person.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        if (Trials.Judge(context.Finding(this), functional.Witnessed, Help.WhenItFails, new Trial("auxiliary heat", functional.AuxiliaryHeat, true), new Trial("auxiliary heat lockout", functional.AuxiliaryHeatLockout)) is { } finding)
            yield return finding;
    }
}

/// <summary>Whether a defrost starts and ends.</summary>
internal sealed class DefrostCheck : ICheck
{
    public string Id => "functional.defrost";

    public string Phase => Phases.Functional;

    public string Title => "Defrost";

    public CheckHelp Help { get; } = new(
        "Does a defrost start, and does it end by itself?",
        "started by the board's test, ended by the coil sensor and not by the time limit alone",
        "Start-up lists of installation manuals (common practice, no source).",
        "Check the coil sensor and its place, the outdoor fan relay and the board's setting. A defrost that ends only by time leaves ice on the coil.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        var begun = context.Finding(this).Use("defrosts per day", functional.DefrostsPerDay).Use("defrost terminates at", functional.DefrostTerminatesAt);
        if (functional.DefrostsPerDay is { } count)
            begun.Remark($"Defrosts a day: {count.Text}.");
        if (functional.DefrostTerminatesAt is { } end)
            begun.Remark($"It is set to end at {end.Text}.");
        if (Trials.Judge(begun, functional.Witnessed, Help.WhenItFails, new Trial("defrost starts", functional.DefrostStarts, true), new Trial("defrost ends", functional.DefrostEnds, true)) is { } finding)
            yield return finding;
    }
}

/// <summary>Whether the board's fault memory was read, and what stood in it.</summary>
internal sealed class FaultCodesCheck : ICheck
{
    public string Id => "functional.fault-codes";

    public string Phase => Phases.Functional;

    public string Title => "Fault codes";

    public CheckHelp Help { get; } = new(
        "Was the board's fault memory read at the end, and what stood in it?",
        "memory read at the end of the work; no code left in it",
        "Start-up lists of installation manuals (common practice, no source).",
        "Look each code up in the maker's manual, remove its cause, clear the memory, run the system and read it again.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional?.FaultCodes is not { } codes)
            yield break;
        var finding = context.Finding(this).Use("fault codes read", codes.Read).Use("fault codes cleared", codes.Cleared);
        foreach (var code in codes.Codes)
            finding.Use("fault code", code);
        var list = string.Join(", ", codes.Codes.Select(c => c.Value));
        if (!codes.Read.Value)
            yield return finding.NotEvaluated("the fault memory was not read", "Read it at the board or the controller and write the codes.");
        else if (codes.Codes.IsEmpty)
            yield return finding.Decide(true).Say("The fault memory was read; no code stood in it.").Build();
        else if (codes.Cleared?.Value == true)
            yield return finding.Decide(true).Say($"Found and cleared: {list}.").Remark("What was cleared comes back when its cause is still there.").Build();
        else
            yield return finding.Decide(false).Say($"In the fault memory: {list}.").Next(Help.WhenItFails).Build();
    }
}

/// <summary>Whether a unit with many indoor units was run as its maker asks, each under its own address.</summary>
internal sealed class TrialRunCheck : ICheck
{
    public string Id => "functional.trial-run";

    public string Phase => Phases.Functional;

    public string Title => "Trial run and addresses";

    public CheckHelp Help => field ??= CheckHelp.Of(FunctionalMessages.TrialRunWhat, FunctionalMessages.TrialRunFormula, FunctionalMessages.TrialRunSource, FunctionalMessages.TrialRunNext);

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        if (Trials.Judge(context.Finding(this), functional.Witnessed, Help.WhenItFails, new Trial("addresses", functional.Addresses), new Trial("trial run", functional.TrialRun)) is { } finding)
            yield return finding;
    }
}

/// <summary>Whether the relief port of a freezer room lets air through: a room that cools down shut draws its door or its panels in.</summary>
internal sealed class ReliefPortCheck : ICheck
{
    public string Id => "functional.relief-port";

    public string Phase => Phases.Functional;

    public string Title => "Relief port of the room";

    public CheckHelp Help => field ??= CheckHelp.Of(FunctionalMessages.ReliefPortWhat, FunctionalMessages.ReliefPortFormula, FunctionalMessages.ReliefPortSource, FunctionalMessages.ReliefPortNext);

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is { } functional && Trials.Judge(context.Finding(this), functional.Witnessed, Help.WhenItFails, new Trial("relief port", functional.ReliefPort)) is { } finding)
            yield return finding;
    }
}
