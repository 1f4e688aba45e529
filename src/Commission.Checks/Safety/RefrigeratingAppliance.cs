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

namespace Commission.Checks.Safety;

/// <summary>
/// A refrigerating appliance that comes with its whole circuit: a plug-in case, a bottle cooler, a freezer. The charge it is marked with
/// and the floor it stands on count, not how high it is mounted.
/// </summary>
internal sealed class RefrigeratingAppliance
{
    private readonly CheckContext _context;

    private RefrigeratingAppliance(CheckContext context)
    {
        _context = context;
        Total = context.Get<CircuitCharge>().Total;
        Plate = context.Get<PlateRefrigerant>().FactoryCharge;
    }

    /// <summary>The charge that counts, kg: the plate's, unless the scale shows more beyond its doubt. Null when what the circuit holds is not known.</summary>
    public Uncertain? Charge => Total is null ? null
        : Plate is { } plate && Total.Value.Value - Total.Value.Expanded <= plate.Value.Si ? Uncertain.Exact(plate.Value.Si) : Total.Value;

    private MassNumber? Total { get; }

    private Given<Measurement.Quantities.Mass>? Plate { get; }

    /// <summary>The appliance of a job; null for any other system.</summary>
    /// <remarks>Nobody builds a capillary circuit in the field: a refrigeration circuit with one, and neither indoor unit nor piping, is an appliance though no label is written.</remarks>
    public static RefrigeratingAppliance? Of(CheckContext context)
    {
        var equipment = context.Job.Equipment;
        if (equipment.System.Value != SystemKind.Refrigeration)
            return null;
        var isSealed = equipment.HermeticallySealed?.Value ?? (equipment is { Metering.Kind.Value: MeteringKind.Capillary, Indoor.IsEmpty: true, Piping.IsEmpty: true });
        return isSealed ? new RefrigeratingAppliance(context) : null;
    }

    /// <summary>Judges the charge and the room.</summary>
    /// <param name="finding">The finding; what the charge rests on is named here.</param>
    /// <param name="limit">The limit in force.</param>
    /// <param name="gas">The refrigerant.</param>
    /// <param name="lfl">Its lower flammability limit, kg/m³.</param>
    /// <param name="rooms">The rooms written.</param>
    public Finding Judge(FindingBuilder finding, Limit limit, FlammableRefrigerant gas, double lfl, ImmutableArray<RoomCase> rooms)
    {
        var charge = Charge!;
        Total!.UseIn(finding);
        finding.Use(ReadingsMessages.HermeticallySealed, _context.Job.Equipment.HermeticallySealed).Use(ReadingsMessages.Metering, _context.Job.Equipment.Metering?.Kind).Use(ReadingsMessages.FactoryCharge, Plate);
        var present = _context.Present;
        var mass = present.InMessage(charge.Value, DisplayKind.Mass);
        var isA3 = gas.Group!.Value == "A3";
        var most = ApplianceCharge.Largest(lfl, isA3);
        if (isA3)
            finding.Step("m_max", SafetyMessages.StepApplianceLargest, ApplianceCharge.LargestFormula, string.Create(CultureInfo.InvariantCulture, $"13 m³ × {lfl:0.###} kg/m³"), present.Text(most, DisplayKind.Mass), Source);
        var smallest = ApplianceCharge.SmallestArea(charge.Value, lfl);
        if (charge.Value > ApplianceCharge.Anywhere)
            finding.Step("A_min", SafetyMessages.StepSmallestArea, ApplianceCharge.RoomFormula, string.Create(CultureInfo.InvariantCulture, $"{present.Text(charge.Value, DisplayKind.Mass)}, LFL = {lfl:0.###} kg/m³"), present.Text(smallest, DisplayKind.Area), Source);
        finding.Judge(charge, DisplayKind.Mass, AtMost(limit, most));
        if (!finding.Passes)
            return finding.Danger(SafetyMessages.ApplianceTooMuch(mass, present.InMessage(most, DisplayKind.Mass)), SafetyMessages.ApplianceTooMuchNext);
        if (charge.Value <= ApplianceCharge.Anywhere)
            return finding.Say(SafetyMessages.ApplianceAnywhere(mass, present.InMessage(ApplianceCharge.Anywhere, DisplayKind.Mass))).Build();
        var area = present.InMessage(smallest, DisplayKind.Area);
        if (rooms.IsEmpty)
        {
            return _context.Job.Identity.Work.Value is WorkKind.NewInstallation or WorkKind.RefrigerantChange
                ? finding.NotEvaluated(SafetyMessages.ApplianceRoomNotWritten(mass, area), SafetyMessages.ApplianceRoomNotWrittenNext, "safety: {room: {area: …}}")
                : finding.Information(SafetyMessages.ApplianceNeeds(mass, area), SafetyMessages.ApplianceNeedsKind);
        }

        var room = rooms.MinBy(r => r.Area.Value)!;
        var allowed = Uncertain.Apply(a => ApplianceCharge.LargestFor(lfl, a), room.Area);
        if (allowed.Value < most)
            finding.Judge(charge, DisplayKind.Mass, AtMost(limit, allowed.Value), allowed);
        return finding.ConcludeOrDanger(
            SafetyMessages.ApplianceRoomEnough(mass, area, new TextValue(room.Name), present.InMessage(room.Area.Value, DisplayKind.Area)),
            SafetyMessages.ApplianceRoomTooSmall(mass, area, new TextValue(room.Name), present.InMessage(room.Area.Value, DisplayKind.Area)),
            SafetyMessages.ApplianceRoomTooSmallNext);
    }

    private static Message Source => Cited.As(ApplianceCharge.Source, ApplianceCharge.Mark);

    private LimitStatement AtMost(Limit limit, double most) => _context.State(limit) with
    {
        Kind = LimitKind.AtMost,
        Text = _context.Present.Text(CommonMessages.LimitAtMost(new(_context.Present.Text(most, DisplayKind.Mass)))),
        LowerSi = null,
        UpperSi = most,
    };
}
