using System.Collections.Immutable;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Records;

namespace Commission.Checks.Recording;

/// <summary>The cautions that belong to this work and this refrigerant. Every one defers to local code and licensed practice.</summary>
internal static class CautionMaker
{
    public static ImmutableArray<Caution> Make(Job job, string? safetyGroup)
    {
        var cautions = ImmutableArray.CreateBuilder<Caution>();
        var opened = job.PressureTest is not null || job.Evacuation is not null || job.Recovery is not null
            || job.Identity.Work.Value is not (WorkKind.ChargeAdjustment or WorkKind.SeasonalCheck);
        if (safetyGroup is "A2L" or "A2" or "A3" or "B2L" or "B2" or "B3")
        {
            cautions.Add(new Caution(
                "flammable refrigerant",
                $"The refrigerant burns (safety group {safetyGroup}). Keep flames, sparks and switched loads away, ventilate, watch the air near the floor with a detector made for this gas, keep a dry-powder or carbon-dioxide extinguisher at hand, recover and purge before any brazing, and never search for leaks with a flame.{(safetyGroup.EndsWith('3') ? " It lights from a spark of static: bond cylinders, hoses and machines before the valves are opened." : "")}"));
        }

        if (safetyGroup is null)
            cautions.Add(new Caution("unknown refrigerant", "The safety group of the refrigerant is not known here. Until cylinder or nameplate say otherwise, treat it as flammable and toxic."));
        if (job.PressureTest is not null)
        {
            cautions.Add(new Caution(
                "pressure",
                "Test gas under pressure can burst a coil or throw a fitting. Use dry nitrogen only, through a regulator with a relief device set below the weakest part; never oxygen, acetylene or compressed air: with oil they explode. Raise the pressure in steps, stand clear of joints, vent outdoors."));
        }

        if (job.Evacuation is not null)
            cautions.Add(new Caution("vacuum", "Never energise a compressor or test its insulation while the circuit is under vacuum: its terminals arc. Break a vacuum with dry nitrogen, not with refrigerant. Keep the pump's exhaust outdoors, and away from ignition where the refrigerant burns."));
        if (opened || job.Charging is not null)
        {
            cautions.Add(new Caution("frostbite and eyes", "Liquid refrigerant freezes skin and eyes. Wear goggles and gloves; open valves slowly; keep caps on ports that are not in use."));
            cautions.Add(new Caution("asphyxiation", "Refrigerant and nitrogen displace air and collect low. Ventilate pits, cellars and plant rooms before and during the work, and leave at the first dizziness."));
        }

        if (safetyGroup?.StartsWith('B') == true)
            cautions.Add(new Caution("toxic refrigerant", "The refrigerant is toxic. Work with the breathing protection, detection and second person that the local code asks for."));
        if (job.Equipment.Refrigerant.Value.Contains("744", StringComparison.Ordinal))
            cautions.Add(new Caution("carbon dioxide", "Standing pressure exceeds that of other refrigerants by far, and liquid below 5.2 bar absolute turns to dry ice that can block a line. Charge vapour first, never trap liquid between closed valves, watch the concentration in the room."));
        cautions.Add(new Caution("electricity", "Mains voltage and charged capacitors kill. Disconnect, lock out, prove dead with a meter proved live before and after, and discharge capacitors before touching terminals; some readings here are taken live by qualified people only."));
        if (job.Recovery is not null || job.Cylinders.Length > 0)
            cautions.Add(new Caution("cylinders", "A cylinder full of liquid bursts when it warms. Fill recovery cylinders to 80 % of their water capacity at most, by weight, never mix refrigerants, and keep cylinders upright, in date, and out of the sun."));
        if (job.PressureTest?.Brazing is not null || job.PressureTest?.Joints.Any(j => j.Kind?.Value == JointKind.Brazed) == true)
            cautions.Add(new Caution("burns and fire", "Brazing and compressor discharge lines burn. Flow nitrogen while brazing, let no refrigerant near the flame (it decomposes into corrosive and toxic gases), shield what can burn, keep an extinguisher at hand, watch the place afterwards."));
        if (job.Charging is { Readings.IsEmpty: false })
            cautions.Add(new Caution("hot and moving parts", "Discharge lines burn skin, and fans start without warning. Keep hands, sleeves and hoses clear, and put guards and panels back before the unit is left."));
        cautions.Add(new Caution("law and licence", "This record does not replace the local code, the maker's instructions or the judgement of a licensed person. Where they differ from a limit shown here, they govern."));
        return cautions.ToImmutable();
    }
}
