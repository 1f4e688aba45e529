using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;
using QuantityValue = Commission.Messages.QuantityValue;

namespace Commission.Checks.Safety;

/// <summary>Whether a charge that burns may be in the rooms it can leak into.</summary>
internal sealed class FlammableChargeCheck : ICheck
{
    private const ChargeLimitEdition Edition = ChargeLimitEdition.From2018;
    private const string DispersalPack = "ashrae-15";

    public string Id => "safety.flammable-charge";

    public string Phase => Phases.Safety;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var gas = context.Get<FlammableRefrigerant>();
        var rooms = RoomCase.All(context);
        var appliance = RefrigeratingAppliance.Of(context);
        if (!gas.Burns || (rooms.IsEmpty && appliance?.Charge is null && context.Job.Identity.Work.Value is not (WorkKind.NewInstallation or WorkKind.RefrigerantChange)))
            yield break;
        var finding = context.Finding(this).Use(ReadingsMessages.Refrigerant, context.Job.Equipment.Refrigerant);
        foreach (var use in rooms.SelectMany(r => r.Uses))
            finding.Use(use);
        foreach (var below in rooms.Where(r => r.IsBelowGround))
            finding.Remark(SafetyMessages.RoomBelowGround(new(Capital(below.Name))));
        if (rooms.Any(r => r.CountsDucts is not null))
            finding.Remark(rooms.Any(r => r.CountsDucts == true) ? SafetyMessages.RoomDuctsCounted : SafetyMessages.RoomDuctsNotCounted);
        yield return Judge(context, finding, gas, rooms);
    }

    private Finding Judge(CheckContext context, FindingBuilder finding, FlammableRefrigerant gas, ImmutableArray<RoomCase> rooms)
    {
        Circulation.Of(context).UseIn(finding);
        if (AllBurns(context, finding, gas, rooms) is { } all)
            return all;
        if (context.Limits.Find(LimitIds.SafetyRoomArea) is { Lower: { } least } makers && !rooms.IsEmpty)
            return ByMaker(context, finding, makers, least, rooms);
        if (gas.Group!.Value[0] != 'A')
            return finding.NotEvaluated(SafetyMessages.ChargeOtherGroup(new(gas.Group.Value)), SafetyMessages.ChargeOtherGroupNext);
        if (gas.LowerFlammabilityLimit is not { } lfl)
            return finding.NotEvaluated(SafetyMessages.ChargeLflUnknown(new(gas.Designation)), SafetyMessages.ChargeLflUnknownNext, "limits: {room area: {minimum: …, from: …}}");
        if (RefrigeratingAppliance.Of(context) is { Charge: not null } appliance && context.Limits.Find(LimitIds.SafetyFlammableApplianceCharge) is { } applianceLimit)
            return appliance.Judge(finding, applianceLimit, gas, lfl.Value, rooms);
        if (context.Limits.Find(LimitIds.SafetyFlammableCharge) is not { } limit)
            return finding.NotEvaluated(SafetyMessages.CarbonMonoxideNoLimit, CommonMessages.NameAPackNext);
        var charge = context.Get<CircuitCharge>();
        if (charge.Total is not { } total)
            return finding.NotEvaluated(SafetyMessages.ChargeUnknown(charge.WhyNot!), SafetyMessages.ChargeUnknownWeighNext);
        total.UseIn(finding);
        finding.Step("LFL", SafetyMessages.StepLfl, SafetyMessages.StepPublished, gas.Designation, string.Create(CultureInfo.InvariantCulture, $"{lfl.Value:0.###} kg/m³"), Cited.As(lfl.Source, lfl.Mark));
        var released = Released(context, finding, total.Value);
        return limit.Pack == DispersalPack
            ? Dispersed(context, finding, limit, new(gas, released, lfl.Value), rooms)
            : ByRoom(context, finding, limit, new(gas, released, lfl.Value), rooms);
    }

    // Above LFL · V a full leak makes all the air of the room burn, and no formula, fan or table of a maker makes that right.
    private Finding? AllBurns(CheckContext context, FindingBuilder finding, FlammableRefrigerant gas, ImmutableArray<RoomCase> rooms)
    {
        if (rooms.IsEmpty || gas.LowerFlammabilityLimit is not { } lfl || context.Get<CircuitCharge>().Total is not { } total)
            return null;
        var safety = context.Job.Safety;
        var charge = safety is { Mitigation.Value: Mitigation.ShutOffValves, ReleasableCharge: { } part } ? Written.Value(context, context.Present.Text(SafetyMessages.ReadingReleasable), part, DisplayKind.Mass) : total.Value;
        var room = rooms.MinBy(r => r.Dispersal.Value)!;
        var most = room.Dispersal * lfl.Value;
        if (charge.Value <= most.Value)
            return null;
        total.UseIn(finding);
        finding.Use(SafetyMessages.ReadingReleasable, safety?.ReleasableCharge);
        var present = context.Present;
        var height = context.Limits.Require(LimitIds.SafetyFlammableDispersalHeight);
        var text = present.Text(most.Value, DisplayKind.Mass);
        finding.Step("m_LFL", SafetyMessages.StepAirBurns(new(room.Name)), "V·LFL", string.Create(CultureInfo.InvariantCulture, $"{room.DispersalText}, {lfl.Value:0.###} kg/m³"), text, Cited.As(lfl.Source, lfl.Mark));
        var limit = context.State(height);
        Against(finding, charge, most, limit with { Kind = LimitKind.AtMost, Text = present.Text(SafetyMessages.LimitAllAir(present.InMessage(most.Value, DisplayKind.Mass))), LowerSi = null, UpperSi = most.Value });
        return finding.Danger(
            SafetyMessages.RoomAllBurns(present.InMessage(charge.Value, DisplayKind.Mass), new TextValue(room.Name), present.InMessage(most.Value, DisplayKind.Mass), present.InMessage(Math.Min(height.Most.Si, room.Ceiling ?? height.Most.Si), DisplayKind.Length)),
            this.WhenItFails());
    }

    // Shut-off valves hold a part of the charge back; without them all of it can come out.
    private static Uncertain Released(CheckContext context, FindingBuilder finding, Uncertain total)
    {
        var safety = context.Job.Safety;
        finding.Use(SafetyMessages.ReadingMitigation, safety?.Mitigation);
        if (safety?.ReleasableCharge is not { } part)
            return total;
        finding.Use(SafetyMessages.ReadingReleasable, part);
        if (safety.Mitigation?.Value != Mitigation.ShutOffValves)
        {
            finding.Remark(SafetyMessages.ReleasableWithoutValves);
            return total;
        }

        finding.Step("m_rel", SafetyMessages.StepReleasable, SafetyMessages.StepMakersFigure, part.Text, part.Text);
        return Written.Value(context, context.Present.Text(SafetyMessages.ReadingReleasable), part, DisplayKind.Mass);
    }

    private Finding ByMaker(CheckContext context, FindingBuilder finding, Limit makers, LimitFigure least, ImmutableArray<RoomCase> rooms)
    {
        var smallest = rooms.MinBy(r => r.Area.Value)!;
        finding.Judge(smallest.Area, DisplayKind.Area, context.State(makers));
        return finding.ConcludeOrDanger(
            SafetyMessages.RoomMakerEnough(new(Capital(smallest.Name)), new(smallest.AreaText), new(least.Text)),
            SafetyMessages.RoomMakerTooSmall(new(smallest.Name), new(smallest.AreaText), new(least.Text)),
            this.WhenItFails());
    }

    // What can come out of the circuit, and its lower flammability limit, kg/m³.
    private sealed record Release(FlammableRefrigerant Gas, Uncertain Charge, double Lfl);

    private Finding ByRoom(CheckContext context, FindingBuilder finding, Limit limit, Release release, ImmutableArray<RoomCase> rooms)
    {
        var (gas, charge, lfl) = release;
        var present = context.Present;
        var mass = present.InMessage(charge.Value, DisplayKind.Mass);
        var m1 = FlammableCharge.WithoutRoomLimit(lfl, gas.IsA2L, Edition);
        var m2 = FlammableCharge.WithoutMeasures(lfl, gas.IsA2L, Edition);
        var m3 = FlammableCharge.AtAll(lfl, gas.IsA2L, Edition);
        Named(finding, present, "m1", SafetyMessages.StepM1, gas.IsA2L ? 6 : 4, lfl, m1);
        if (charge.Value <= m1)
        {
            finding.Judge(charge, DisplayKind.Mass, Most(context, limit, m1, SafetyMessages.LimitM1));
            return finding.Say(SafetyMessages.ChargeBelowM1(mass, present.InMessage(m1, DisplayKind.Mass))).Build();
        }

        if (charge.Value > m3)
        {
            Named(finding, present, "m3", SafetyMessages.StepM3, gas.IsA2L ? 260 : 130, lfl, m3);
            finding.Judge(charge, DisplayKind.Mass, Most(context, limit, m3, SafetyMessages.LimitM3));
            return finding.Danger(SafetyMessages.ChargeAboveM3(mass), this.WhenItFails());
        }

        if (rooms.IsEmpty)
            return finding.NotEvaluated(SafetyMessages.ChargeRoomNotWritten(mass, present.InMessage(m1, DisplayKind.Mass)), SafetyMessages.ChargeRoomNotWrittenNext, "safety: {room: {area: …, mounting: …}}");
        if (rooms.FirstOrDefault(r => r.IsReleasedAboveCeiling) is { } above)
        {
            return finding.Decide(false, context.State(limit))
                .Say(SafetyMessages.RoomReleaseAboveCeiling(new TextValue(above.Name), present.InMessage(above.ReleaseHeight!.Value, DisplayKind.Length), present.InMessage(above.Ceiling!.Value, DisplayKind.Length)))
                .Next(SafetyMessages.RoomReleaseAboveCeilingNext).Build();
        }

        if (rooms.FirstOrDefault(r => r.ReleaseHeight is null) is { } unknown)
            return finding.NotEvaluated(SafetyMessages.RoomMountingNotWritten(new TextValue(unknown.Name)), SafetyMessages.RoomMountingNotWrittenNext, "safety: {room: {mounting: wall}}");
        foreach (var room in rooms)
            finding.Step("m_max", SafetyMessages.StepLargestFor(new(room.Name)), FlammableCharge.RoomFormula, $"A = {room.AreaText} = {present.Text(room.Area.Value, DisplayKind.Area)}, h0 = {room.HeightText}", present.Text(Largest(room, lfl).Value, DisplayKind.Mass), Cited.As(FlammableCharge.Source, FlammableCharge.Mark));
        var governing = rooms.MinBy(r => Largest(r, lfl).Value)!;
        var smallest = FlammableCharge.SmallestArea(charge.Value, lfl, governing.ReleaseHeight!.Value, Edition);
        finding.Step("A_min", SafetyMessages.StepSmallestArea, "A_min = max((M / (2.5·LFL^1.25·h0))², M / (0.75·LFL·h0))", $"M = {present.Text(charge.Value, DisplayKind.Mass)}, h0 = {governing.HeightText}", present.Text(smallest, DisplayKind.Area), Cited.As(FlammableCharge.Source, FlammableCharge.Mark));
        var largest = Largest(governing, lfl);
        if (charge.Value > Math.Min(largest.Value, m2) && Measures(context, finding, limit, release, rooms, m3) is { } measured)
            return measured;
        if (m2 < largest.Value)
        {
            Named(finding, present, "m2", SafetyMessages.StepM2, gas.IsA2L ? 52 : 26, lfl, m2);
            finding.Judge(charge, DisplayKind.Mass, Most(context, limit, m2, SafetyMessages.LimitM2));
        }
        else
        {
            Against(finding, charge, largest, Most(context, limit, largest.Value, m => SafetyMessages.LimitForRoom(m, new(governing.Name))));
        }

        if (rooms.Any(r => r.CountsDucts == true) && Circulation.Of(context).IsNotDescribed)
            finding.Reserve(SafetyMessages.RoomSensorNotWritten).Next(SafetyMessages.RoomSensorNotWrittenNext, "safety: {leak sensor: {fitted: yes, test run: yes, fan on: yes, compressor off: yes}}");
        var (least, height, has) = (present.InMessage(smallest, DisplayKind.Area), present.InMessage(governing.ReleaseHeight.Value, DisplayKind.Length), present.InMessage(governing.Area.Value, DisplayKind.Area));
        return finding.ConcludeOrDanger(
            SafetyMessages.RoomEnough(mass, least, height, new(governing.Name), has),
            SafetyMessages.RoomTooSmall(mass, least, height, new(governing.Name), has, present.InMessage(Math.Min(largest.Value, m2), DisplayKind.Mass)),
            this.WhenItFails());
    }

    // What a stated measure allows beyond the plain room; null when it changes nothing.
    private Finding? Measures(CheckContext context, FindingBuilder finding, Limit limit, Release release, ImmutableArray<RoomCase> rooms, double ceiling)
    {
        switch (context.Job.Safety?.Mitigation?.Value)
        {
            case Mitigation.LeakSensorWithFan or Mitigation.ContinuousFan when !Circulation.Of(context).Runs:
                return null;
            case Mitigation.LeakSensorWithFan or Mitigation.ContinuousFan when release.Gas.IsA2L:
                return Dispersed(context, finding, limit, release, rooms, ceiling);
            case Mitigation.LeakSensorWithFan or Mitigation.ContinuousFan:
                return finding.NotEvaluated(SafetyMessages.FanUnknown, SafetyMessages.FanUnknownNext, "limits: {room area: {minimum: …, from: …}}");
            case Mitigation.ShutOffValves when context.Job.Safety.ReleasableCharge is null:
                return finding.NotEvaluated(SafetyMessages.ReleasableNotWritten, SafetyMessages.ReleasableNotWrittenNext);
            default:
                return null;
        }
    }

    private Finding Dispersed(CheckContext context, FindingBuilder finding, Limit limit, Release release, ImmutableArray<RoomCase> rooms, double ceiling = double.PositiveInfinity)
    {
        var (_, charge, lfl) = release;
        var present = context.Present;
        if (rooms.IsEmpty)
            return finding.NotEvaluated(SafetyMessages.RoomNotWritten, SafetyMessages.RoomNotWrittenNext, "safety: {room: {area: …, ceiling height: …}}");
        if (rooms.FirstOrDefault(r => r.Volume is null) is { } unknown)
            return finding.NotEvaluated(SafetyMessages.RoomVolumeNotWritten(new(unknown.Name)), SafetyMessages.RoomVolumeNotWrittenNext);
        Uncertain Allowed(RoomCase room) => Uncertain.Apply(v => ConcentrationCharge.EffectiveDispersal(v, lfl, room.IsInstitutional), room.Dispersal);
        foreach (var room in rooms)
        {
            finding.Step(
                "EDVC",
                SafetyMessages.StepDisperses(new(room.Name)),
                ConcentrationCharge.DispersalFormula,
                string.Create(CultureInfo.InvariantCulture, $"V = {room.DispersalText} = {room.Dispersal.Value:0.0} m³, LFL = {lfl:0.###} kg/m³, F_occ = {ConcentrationCharge.OccupancyFactor(room.IsInstitutional):0.0}"),
                present.Text(Allowed(room).Value, DisplayKind.Mass),
                Cited.As(ConcentrationCharge.Source, ConcentrationCharge.Mark));
        }

        var governing = rooms.MinBy(r => Allowed(r).Value)!;
        var most = Allowed(governing);
        if (most.Value > ceiling)
            most = Uncertain.Exact(ceiling);
        Against(finding, charge, most, Most(context, limit, most.Value, m => SafetyMessages.LimitDispersed(m, new(governing.Name))) with { Source = present.Text(SafetyMessages.SourceDispersal(new(ConcentrationCharge.Source))), Mark = ConcentrationCharge.Mark });
        if (Circulation.Of(context).IsNotDescribed)
            finding.Reserve(SafetyMessages.RoomSensorNotWritten).Next(SafetyMessages.RoomSensorNotWrittenNext, "safety: {leak sensor: {fitted: yes, test run: yes, fan on: yes, compressor off: yes}}");
        var said = SafetyMessages.RoomDisperses(present.InMessage(charge.Value, DisplayKind.Mass), new(governing.Name), present.InMessage(most.Value, DisplayKind.Mass));
        return finding.ConcludeOrDanger(said, said, this.WhenItFails());
    }

    private static Uncertain Largest(RoomCase room, double lfl) =>
        Uncertain.Apply((a, h) => FlammableCharge.LargestFor(lfl, h, a, Edition), room.Area, room.ReleaseHeight!);

    private static void Against(FindingBuilder finding, Uncertain charge, Uncertain most, LimitStatement limit) =>
        finding.Judge(charge, DisplayKind.Mass, limit, most);

    private static LimitStatement Most(CheckContext context, Limit limit, double most, Func<QuantityValue, Message> words) => context.State(limit) with
    {
        Kind = LimitKind.AtMost,
        Text = context.Present.Text(words(context.Present.InMessage(most, DisplayKind.Mass))),
        LowerSi = null,
        UpperSi = most,
    };

    private static void Named(FindingBuilder finding, Presentation present, string symbol, Message name, int cubicMetres, double lfl, double mass) => finding.Step(
        symbol, name, $"{symbol} = V·LFL", string.Create(CultureInfo.InvariantCulture, $"{cubicMetres} m³ × {lfl:0.###} kg/m³"), present.Text(mass, DisplayKind.Mass), Cited.As(FlammableCharge.Source, FlammableCharge.Mark));


    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
