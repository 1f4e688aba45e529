using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Safety;

/// <summary>Safety devices: set to what they have to be, and seen to act. A setting that nobody tried is not a pass.</summary>
internal sealed class DevicesCheck : ICheck
{
    public string Id => "safety.devices";

    public string Phase => Phases.Safety;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Safety is not { } safety)
            yield break;
        var names = SafetyDeviceWords.Names(safety.Devices);
        for (var i = 0; i < safety.Devices.Length; i++)
        {
            var (name, device) = (names[i], safety.Devices[i]);
            yield return Acts(context, name, device);
            if (Setting(context, name, device) is { } setting)
                yield return setting;
            if (Spread(context, name, device) is { } spread)
                yield return spread;
        }
    }

    private Finding Acts(CheckContext context, string name, SafetyDevice device)
    {
        var finding = Begin(context, name, device);
        var tripped = Tripped(context, name, device);
        if (tripped is null)
            finding.Use(SafetyMessages.ReadingTripped(new(name)), device.TrippedAt);
        else
            finding.Use(tripped);
        var which = device.Set is { } s ? SafetyMessages.DeviceWithSetting(new(name), new(s.Text)) : SafetyMessages.DeviceName(new(name));
        switch (device.Tested?.Value)
        {
            case TestResult.Failed:
                return finding.Decide(false).Say(SafetyMessages.DeviceFailed(which)).Next(this.WhenItFails()).Build();
            case TestResult.NotFitted:
                return finding.Information(SafetyMessages.DeviceNotFitted(new(name)), SafetyMessages.NothingToTry);
            default:
                break;
        }

        if (device.Kind.Value == SafetyDeviceKind.ReliefValve)
            return Relief(context, finding, name, device);
        if (tripped is not null && device.Kind.Value == SafetyDeviceKind.HighPressureSwitch && context.Job.Equipment.Nameplate?.DesignPressure?.High is { } design
            && context.Limits.Find(LimitIds.SafetyHighPressureSwitchFactor) is { Upper: { } factor } limit)
        {
            var gauge = tripped.Value - context.Get<SiteAtmosphere>().Value;
            finding.Use(CommonMessages.ReadingDesignHigh, design).Judge(gauge, DisplayKind.Pressure, AtMost(context, limit, factor.Si, design));
            return finding.ConcludeOrDanger(
                SafetyMessages.DeviceTrippedBelowDesign(which, new(device.TrippedAt!.Text)),
                SafetyMessages.DeviceTrippedTooHigh(which, new(device.TrippedAt!.Text)),
                this.WhenItFails());
        }

        if (device.TrippedAt is { } at)
            return finding.Decide(true).Say(SafetyMessages.DeviceTripped(which, new(at.Text))).Build();
        return device.Tested?.Value == TestResult.Ok
            ? finding.Decide(true).Say(SafetyMessages.DeviceWorks(which)).Build()
            : finding.NotEvaluated(SafetyMessages.DeviceNotTried, SafetyMessages.DeviceNotTriedNext, "safety: {devices: [{tripped at: …, tested: ok}]}");
    }

    private static Finding Relief(CheckContext context, FindingBuilder finding, string name, SafetyDevice device)
    {
        var dated = device.Date is { } date ? SafetyMessages.ReliefDated(new(date.Text)) : null;
        if (device.Set is not { } set)
            return finding.NotEvaluated(SafetyMessages.ReliefNotWritten, SafetyMessages.ReliefNotWrittenNext);
        if (set.Value.Dimension is not Dimension.Pressure || (context.Job.Equipment.Nameplate?.DesignPressure is not { } plate) || (plate.High ?? plate.Low) is not { } design)
            return finding.Remark(dated).Information(SafetyMessages.ReliefSet(new(name), new(set.Text)), SafetyMessages.ReliefNoDesign);
        var limit = context.Limits.Require(LimitIds.SafetyReliefValveFactor);
        var factor = limit.Most;
        // What is stamped on a valve is no measurement.
        var stamped = Uncertain.Exact(set.Value.ToStatedPressure().ToGauge(context.Get<SiteAtmosphere>().Pressure).Si);
        finding.Use(SafetyMessages.ReadingDesign, design).Remark(dated).Judge(stamped, DisplayKind.Pressure, AtMost(context, limit, factor.Si, design));
        return finding.ConcludeOrDanger(
            SafetyMessages.ReliefWithin(new(name), new(set.Text), new(design.Text)),
            SafetyMessages.ReliefAbove(new(name), new(set.Text), new(design.Text)),
            SafetyMessages.ReliefNext);
    }

    // The maker's or a pack's range for the setting itself.
    private Finding? Setting(CheckContext context, string name, SafetyDevice device)
    {
        if (device is not { Kind.Value: SafetyDeviceKind.HighPressureSwitch, Set: { Value.Dimension: Dimension.Pressure } set } || context.Limits.Find(LimitIds.SafetyHighPressureSwitchSetting) is not { } limit)
            return null;
        var atmosphere = context.Get<SiteAtmosphere>().Pressure;
        var finding = context.Finding(this, context.Present.Text(SafetyMessages.SubjectSetting(new(name)))).Use(SafetyMessages.ReadingSet(new(name)), set)
            .Judge(Uncertain.Exact(set.Value.ToStatedPressure().ToAbsolute(atmosphere).Si), DisplayKind.AbsolutePressure, context.State(limit))
            .Remark(limit.Remark(context.Present.Units));
        return finding.Conclude(
            SafetyMessages.SettingRight(new(set.Text)),
            SafetyMessages.SettingWrong(new(set.Text)),
            SafetyMessages.SettingNext);
    }

    private Finding? Spread(CheckContext context, string name, SafetyDevice device)
    {
        if (device.Set is not { Value.Dimension: Dimension.Pressure } set || Tripped(context, name, device) is not { } tripped || context.Limits.Find(LimitIds.SafetyDeviceTripTolerance) is not { Upper: { } share } limit)
            return null;
        var atmosphere = context.Get<SiteAtmosphere>();
        var target = set.Value.ToStatedPressure().ToGauge(atmosphere.Pressure).Si;
        var half = Math.Abs(share.Si * target);
        var present = context.Present;
        var text = $"{present.Text(target, DisplayKind.Pressure)} ± {present.Text(half, DisplayKind.PressureDifference)}";
        var finding = context.Finding(this, present.Text(SafetyMessages.SubjectAgainstSetting(new(name)))).Use(tripped).Use(SafetyMessages.ReadingSet(new(name)), set).Judge(
            tripped.Value - atmosphere.Value, DisplayKind.Pressure, context.State(limit) with { Kind = LimitKind.Target, Text = text, LowerSi = target - half, UpperSi = target + half, TargetSi = target });
        return finding.Conclude(
            SafetyMessages.TripNear(new(device.TrippedAt!.Text), new(set.Text)),
            SafetyMessages.TripFar(new(device.TrippedAt!.Text), new(set.Text)),
            SafetyMessages.TripNext);
    }

    private static LimitStatement AtMost(CheckContext context, Limit limit, double factor, Given<StatedPressure> design)
    {
        var most = factor * design.Value.ToGauge(context.Get<SiteAtmosphere>().Pressure).Si;
        return context.State(limit) with { Kind = LimitKind.AtMost, Text = context.Present.Text(CommonMessages.LimitAtMost(new(context.Present.Text(most, DisplayKind.Pressure)))), LowerSi = null, UpperSi = most };
    }

    private static CorrectedReading? Tripped(CheckContext context, string name, SafetyDevice device) =>
        device.TrippedAt is { Value: { Dimension: Dimension.Pressure } value } given && SafetyDeviceWords.PressureOf(device.Kind.Value) is { } reading
            ? context.Readings.Pressure(context.Present.Text(SafetyMessages.ReadingTripped(new(name))), reading, new Given<StatedPressure>(value.ToStatedPressure(), given.At, given.Text) { Stated = given.Stated, Step = given.Step })
            : null;

    private FindingBuilder Begin(CheckContext context, string name, SafetyDevice device) => context.Finding(this, name)
        .Use(SafetyMessages.ReadingSet(new(name)), device.Set).Use(SafetyMessages.ReadingReset(new(name)), device.ResetAt)
        .Use(SafetyMessages.ReadingTested(new(name)), device.Tested).Use(SafetyMessages.ReadingDate(new(name)), device.Date);
}

/// <summary>Names of safety devices as the record prints them.</summary>
internal static class SafetyDeviceWords
{
    /// <summary>A name for each device, unlike the others: its own, else its kind with a number where there are several.</summary>
    /// <param name="devices">The devices of the job.</param>
    public static IReadOnlyList<string> Names(IReadOnlyList<SafetyDevice> devices)
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        var names = new List<string>(devices.Count);
        foreach (var device in devices)
        {
            var name = device.Id is { } id ? $"{device.Kind.Text} {id.Value}" : device.Kind.Text;
            seen[name] = seen.GetValueOrDefault(name) + 1;
            names.Add(seen[name] == 1 ? name : string.Create(CultureInfo.InvariantCulture, $"{name} ({seen[name]})"));
        }

        return names;
    }

    /// <summary>Which reading shows where a pressure device trips.</summary>
    /// <param name="kind">The device.</param>
    /// <returns>The reading; null for a device that does not act on a pressure of the circuit.</returns>
    public static ReadingName? PressureOf(SafetyDeviceKind kind) => kind switch
    {
        SafetyDeviceKind.HighPressureSwitch or SafetyDeviceKind.ReliefValve => ReadingName.LiquidPressure,
        SafetyDeviceKind.LowPressureSwitch => ReadingName.VaporPressure,
        _ => null,
    };
}

/// <summary>Whether the unit's own leak sensor was connected and tried.</summary>
internal sealed class LeakSensorCheck : ICheck
{
    public string Id => "safety.leak-sensor";

    public string Phase => Phases.Safety;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var safety = context.Job.Safety;
        var relies = safety?.Mitigation?.Value == Mitigation.LeakSensorWithFan;
        if (safety?.LeakSensor is not { } sensor)
        {
            if (relies)
                yield return context.Finding(this).Use(SafetyMessages.ReadingMitigation, safety!.Mitigation).NotEvaluated(SafetyMessages.SensorReliedUpon, SafetyMessages.RoomSensorNotWrittenNext, "safety: {leak sensor: {fitted: yes, test run: yes, fan on: yes, compressor off: yes}}");
            yield break;
        }

        yield return Judge(context, sensor, relies ? safety.Mitigation : null);
    }

    private Finding Judge(CheckContext context, LeakSensorTest sensor, Given<Mitigation>? mitigation)
    {
        var finding = context.Finding(this).Use(SafetyMessages.ReadingSensorFitted, sensor.Fitted).Use(SafetyMessages.ReadingMitigation, mitigation);
        if (!sensor.Fitted.Value)
        {
            return mitigation is null
                ? finding.Information(SafetyMessages.SensorNone, SafetyMessages.NothingToTry)
                : finding.Decide(false).Say(SafetyMessages.SensorMissing).Next(SafetyMessages.SensorMissingNext).Build();
        }

        List<MessageValue> works = [], fails = [];
        List<Message> open = [];
        foreach (var (name, not, given) in new[]
        {
            (SafetyMessages.SensorConnected, SafetyMessages.SensorNotConnected, sensor.Connected),
            (SafetyMessages.SensorTestRun, SafetyMessages.SensorNoTestRun, sensor.TestRun),
            (SafetyMessages.SensorBlowerOn, SafetyMessages.SensorBlowerNotOn, sensor.FanOn),
            (SafetyMessages.SensorCompressorOff, SafetyMessages.SensorCompressorNotOff, sensor.CompressorOff),
        })
        {
            finding.Use(name, given);
            if (given is null)
                open.Add(name);
            else if (given.Value)
                works.Add(name);
            else
                fails.Add(not);
        }

        finding.Use(SafetyMessages.ReadingResponded, sensor.RespondedIn);
        var time = sensor.RespondedIn is { } responded ? SafetyMessages.SensorResponded(new(responded.Text)) : null;
        if (sensor.TestRun?.Value == false && fails.Count == 1)
            return finding.NotEvaluated(SafetyMessages.SensorTestNotRun, SafetyMessages.RoomSensorNotWrittenNext);
        if (fails.Count > 0)
            return finding.Decide(false).Say(SafetyMessages.SensorTold(new([.. fails], ListJoin.Comma))).Remark(time).Next(this.WhenItFails()).Build();
        if (sensor.TestRun is null)
            return finding.NotEvaluated(SafetyMessages.SensorTestNotWritten, SafetyMessages.RoomSensorNotWrittenNext, "safety: {leak sensor: {test run: yes}}");
        finding.Decide(true).Say(SafetyMessages.SensorTold(new([.. works], ListJoin.Comma))).Remark(time);
        foreach (var name in open)
            finding.Reserve(SafetyMessages.SensorPointNotWritten(name)).Next(SafetyMessages.SensorPointNotWrittenNext);
        return finding.Build();
    }
}
