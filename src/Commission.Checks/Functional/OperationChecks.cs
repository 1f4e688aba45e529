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

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        var isHeatPump = context.Job.Equipment.System.Value == SystemKind.HeatPump;
        var finding = Trials.Judge(
            context.Finding(this).Use(CommonMessages.ReadingSystem, context.Job.Equipment.System),
            functional.Witnessed,
            this.WhenItFails(),
            new Trial(FunctionalMessages.TrialCoolingCall, functional.CoolingCall, isHeatPump),
            new Trial(FunctionalMessages.TrialHeatingCall, functional.HeatingCall, isHeatPump),
            new Trial(FunctionalMessages.TrialFanCall, functional.FanCall),
            new Trial(FunctionalMessages.TrialThermostatSetUp, functional.ThermostatSetUp));
        if (finding is not null)
            yield return finding;
    }
}

/// <summary>Whether the fans turn the right way.</summary>
internal sealed class FanRotationCheck : ICheck
{
    public string Id => "functional.fan-rotation";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        if (Trials.Judge(context.Finding(this), functional.Witnessed, this.WhenItFails(), new Trial(FunctionalMessages.TrialFanRotation, functional.FanRotation)) is { } finding)
            yield return finding;
    }
}

/// <summary>Whether the outside damper does what its control asks.</summary>
internal sealed class EconomizerCheck : ICheck
{
    public string Id => "functional.economizer";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Air?.OutsideAir is not { } outside)
            yield break;
        if (Trials.Judge(context.Finding(this), null, this.WhenItFails(), new Trial(FunctionalMessages.TrialEconomizer, outside.Economizer), new Trial(FunctionalMessages.TrialDamperTest, outside.DamperTest)) is { } finding)
            yield return finding;
    }
}

/// <summary>Whether the reversing valve changes over both ways.</summary>
internal sealed class ReversingValveCheck : ICheck
{
    public string Id => "functional.reversing-valve";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        if (Trials.Judge(context.Finding(this), functional.Witnessed, this.WhenItFails(), new Trial(FunctionalMessages.TrialReversingValve, functional.ReversingValve)) is { } finding)
            yield return finding;
    }
}

/// <summary>Whether the stages of the auxiliary heat work, and its lockout.</summary>
internal sealed class AuxiliaryHeatCheck : ICheck
{
    public string Id => "functional.auxiliary-heat";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        if (Trials.Judge(context.Finding(this), functional.Witnessed, this.WhenItFails(), new Trial(FunctionalMessages.TrialAuxiliaryHeat, functional.AuxiliaryHeat, true), new Trial(FunctionalMessages.TrialAuxiliaryHeatLockout, functional.AuxiliaryHeatLockout)) is { } finding)
            yield return finding;
    }
}

/// <summary>Whether a defrost starts and ends.</summary>
internal sealed class DefrostCheck : ICheck
{
    public string Id => "functional.defrost";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        var begun = context.Finding(this).Use(FunctionalMessages.ReadingDefrostsADay, functional.DefrostsPerDay).Use(FunctionalMessages.ReadingDefrostEndsAt, functional.DefrostTerminatesAt);
        if (functional.DefrostsPerDay is { } count)
            begun.Remark(FunctionalMessages.DefrostsADay(new(count.Text)));
        if (functional.DefrostTerminatesAt is { } end)
            begun.Remark(FunctionalMessages.DefrostEndsAt(new(end.Text)));
        if (Trials.Judge(begun, functional.Witnessed, this.WhenItFails(), new Trial(FunctionalMessages.TrialDefrostStarts, functional.DefrostStarts, true), new Trial(FunctionalMessages.TrialDefrostEnds, functional.DefrostEnds, true)) is { } finding)
            yield return finding;
    }
}

/// <summary>Whether the board's fault memory was read, and what stood in it.</summary>
internal sealed class FaultCodesCheck : ICheck
{
    public string Id => "functional.fault-codes";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional?.FaultCodes is not { } codes)
            yield break;
        var finding = context.Finding(this).Use(FunctionalMessages.ReadingCodesRead, codes.Read).Use(FunctionalMessages.ReadingCodesCleared, codes.Cleared);
        foreach (var code in codes.Codes)
            finding.Use(FunctionalMessages.ReadingCode, code);
        var list = new ListValue([.. codes.Codes.Select(c => (MessageValue)new TextValue(c.Value))], ListJoin.Comma);
        if (!codes.Read.Value)
            yield return finding.NotEvaluated(FunctionalMessages.CodesNotRead, FunctionalMessages.CodesNotReadNext);
        else if (codes.Codes.IsEmpty)
            yield return finding.Decide(true).Say(FunctionalMessages.CodesNone).Build();
        else if (codes.Cleared?.Value == true)
            yield return finding.Decide(true).Say(FunctionalMessages.CodesCleared(list)).Remark(FunctionalMessages.CodesClearedComeBack).Build();
        else
            yield return finding.Decide(false).Say(FunctionalMessages.CodesStand(list)).Next(this.WhenItFails()).Build();
    }
}

/// <summary>Whether a unit with many indoor units was run as its maker asks, each under its own address.</summary>
internal sealed class TrialRunCheck : ICheck
{
    public string Id => "functional.trial-run";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        if (Trials.Judge(context.Finding(this), functional.Witnessed, this.WhenItFails(), new Trial(FunctionalMessages.TrialAddresses, functional.Addresses), new Trial(FunctionalMessages.TrialTrialRun, functional.TrialRun)) is { } finding)
            yield return finding;
    }
}

/// <summary>Whether the relief port of a freezer room lets air through: a room that cools down shut draws its door or its panels in.</summary>
internal sealed class ReliefPortCheck : ICheck
{
    public string Id => "functional.relief-port";

    public string Phase => Phases.Functional;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is { } functional && Trials.Judge(context.Finding(this), functional.Witnessed, this.WhenItFails(), new Trial(FunctionalMessages.TrialReliefPort, functional.ReliefPort)) is { } finding)
            yield return finding;
    }
}
