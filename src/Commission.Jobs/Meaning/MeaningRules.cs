namespace Commission.Jobs.Meaning;

/// <summary>Every rule about what a job file means, in the order of the work. A rule finds files that are wrong; what is merely unwise is for the checks.</summary>
internal static class MeaningRules
{
    private static readonly Action<RuleContext>[] All =
    [
        SiteRules.Check,
        EquipmentRules.Check,
        LimitRules.Check,
        InstrumentRules.Check,
        NameRules.Check,
        PressureTestRules.Check,
        EvacuationRules.Check,
        ChargeRules.Check,
        ReadingRules.Check,
        TimeRules.Check,
        ElectricalRules.Check,
        AirRules.Check,
    ];

    public static void Check(RuleContext context)
    {
        foreach (var rule in All) rule(context);
    }
}
