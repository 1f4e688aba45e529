namespace Commission.Jobs.Meaning;

/// <summary>The nameplate and the lines.</summary>
internal static class EquipmentRules
{
    public static void Check(RuleContext context)
    {
        if (context.Job.Equipment is not { } equipment) return;
        if (equipment.Nameplate is { } plate)
        {
            if (plate.Phases is { } phases && phases.Value is not (1 or 3))
                context.Complain(phases, $"A unit does not have {phases.Text} phases.", "", "Write 1 or 3.", "impossible");
            if (plate.DesignPressure is { Low: { } low, High: { } high } && low.Value.Reference == high.Value.Reference && low.Value.Pascals > high.Value.Pascals)
                context.Complain(low, $"The low side's design pressure {low.Text} is above the high side's {high.Text}.", "", "Check whether they are swapped.", "impossible");
            if (plate.FactoryCharge is { Value.Si: < 0 } charge)
                context.Complain(charge, $"A charge of {charge.Text} is below zero.", "", "Write it without the minus sign.", "impossible");
        }

        foreach (var tube in equipment.Piping.SelectMany(run => new[] { run.Liquid, run.Vapor }))
        {
            if (tube?.Od is { } od && od.Value.Si is < 0.002 or > 0.25)
                context.Complain(od, $"No refrigerant line has an outside diameter of {od.Text}.", "", "Check the number and the unit.", "impossible");
            if (tube?.Length is { Value.Si: <= 0 } length)
                context.Complain(length, $"A line of {length.Text} is no line.", "", "Write its length, or delete the line.", "impossible");
            if (tube is { Length: { } full, Rise: { } rise } && Math.Abs(rise.Value.Si) > full.Value.Si)
                context.Complain(rise, $"The line rises {rise.Text} and is only {full.Text} long.", "", "Check both.", "impossible");
        }
    }
}
