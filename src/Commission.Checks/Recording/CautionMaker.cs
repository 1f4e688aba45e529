using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;

namespace Commission.Checks.Recording;

/// <summary>The cautions that belong to this work and this refrigerant. Every one defers to local code and licensed practice.</summary>
internal static class CautionMaker
{
    // Triple point of carbon dioxide, 517 950 Pa: Span and Wagner 1996 (from memory). Below it there is no liquid.
    private const double DryIce = 517_950;

    public static ImmutableArray<Caution> Make(CheckContext context)
    {
        var job = context.Job;
        var safetyGroup = context.Get<CircuitRefrigerant>().Info?.SafetyGroup?.Value;
        var cautions = ImmutableArray.CreateBuilder<Caution>();
        void Add(Message hazard, Message text) => cautions.Add(new Caution(context.Present.Text(hazard), context.Present.Text(text)));

        var opened = job.PressureTest is not null || job.Evacuation is not null || job.Recovery is not null
            || job.Identity.Work.Value is not (WorkKind.ChargeAdjustment or WorkKind.SeasonalCheck);
        if (safetyGroup is "A2L" or "A2" or "A3" or "B2L" or "B2" or "B3")
            Add(CautionsMessages.FlammableHazard, CautionsMessages.Flammable(new(safetyGroup), safetyGroup.EndsWith('3') ? CautionsMessages.FlammableStatic.Spark : CautionsMessages.FlammableStatic.None));
        if (safetyGroup is null)
            Add(CautionsMessages.UnknownHazard, CautionsMessages.Unknown);
        if (job.PressureTest is not null)
            Add(CautionsMessages.PressureHazard, CautionsMessages.Pressure);
        if (job.Evacuation is not null)
            Add(CautionsMessages.VacuumHazard, CautionsMessages.Vacuum);
        if (opened || job.Charging is not null)
        {
            Add(CautionsMessages.FrostbiteHazard, CautionsMessages.Frostbite);
            Add(CautionsMessages.AsphyxiationHazard, CautionsMessages.Asphyxiation);
        }

        if (safetyGroup?.StartsWith('B') == true)
            Add(CautionsMessages.ToxicHazard, CautionsMessages.Toxic);
        if (job.Equipment.Refrigerant.Value.Contains("744", StringComparison.Ordinal))
            Add(CautionsMessages.CarbonDioxideHazard, CautionsMessages.CarbonDioxide(context.Present.InMessage(DryIce, DisplayKind.AbsolutePressure)));
        Add(CautionsMessages.ElectricityHazard, CautionsMessages.Electricity);
        if (job.Recovery is not null || job.Cylinders.Length > 0)
            Add(CautionsMessages.CylindersHazard, CautionsMessages.Cylinders);
        if (job.PressureTest?.Brazing is not null || job.PressureTest?.Joints.Any(j => j.Kind?.Value == JointKind.Brazed) == true)
            Add(CautionsMessages.FireHazard, CautionsMessages.Fire);
        if (job.Charging is { Readings.IsEmpty: false })
            Add(CautionsMessages.MovingPartsHazard, CautionsMessages.MovingParts);
        Add(CautionsMessages.LawHazard, CautionsMessages.Law);
        return cautions.ToImmutable();
    }
}
