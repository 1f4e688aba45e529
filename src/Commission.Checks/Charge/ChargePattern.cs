namespace Commission.Checks.Charge;

/// <summary>What superheat and subcooling say together.</summary>
/// <param name="Meaning">What it looks like, as part of a sentence.</param>
/// <param name="Next">What to do.</param>
internal sealed record ChargePattern(string Meaning, string Next)
{
    /// <summary>The pattern of both sides.</summary>
    /// <param name="superheat">Superheat against its target or range.</param>
    /// <param name="subcooling">Subcooling against its target or what is usual.</param>
    /// <param name="condensing">Condensing over ambient against its range; null when it is not known.</param>
    /// <param name="hasValve">Whether a valve holds the superheat.</param>
    public static ChargePattern Of(ChargeLevel superheat, ChargeLevel subcooling, ChargeLevel? condensing, bool hasValve) => (superheat, subcooling) switch
    {
        (_, ChargeLevel.High) when condensing == ChargeLevel.High => new(
            "too much refrigerant or something that does not condense",
            "Make the standing test for non-condensables and clean the condenser before anything is removed."),
        (ChargeLevel.High, ChargeLevel.Low) => new(
            "too little refrigerant",
            "Find out where it went, repair the leak, then add by weight in small steps, letting the system settle after each."),
        (ChargeLevel.High, _) => new(
            "a restriction, a starved valve or low load, not a low charge",
            "Do not add refrigerant. Check drier, strainer, distributor and the valve's bulb, then load and airflow."),
        (ChargeLevel.Low, ChargeLevel.High) => new(
            "too much refrigerant",
            "Recover by weight in small steps, letting the system settle after each."),
        (ChargeLevel.Low, _) => new(
            hasValve ? "a valve that overfeeds or low airflow, not a wrong charge" : "too large an orifice or low airflow, not a wrong charge",
            hasValve ? "Do not remove refrigerant. Check that the bulb is tight and insulated, then the airflow." : "Do not remove refrigerant. Check the airflow and the size of the orifice against the plate."),
        (ChargeLevel.Normal, ChargeLevel.High) => new(
            hasValve ? "too much refrigerant behind a valve that still holds its superheat" : "a condenser that holds more liquid than usual",
            "Make the standing test for non-condensables first; then recover by weight in small steps."),
        (ChargeLevel.Normal, ChargeLevel.Low) => new(
            hasValve ? "too little refrigerant that the valve still makes up for" : "little liquid in the condenser",
            "Look for a leak first; then add by weight in small steps, letting the system settle after each."),
        _ when condensing == ChargeLevel.High => new("a condenser that gets rid of its heat badly", "Clean the condenser, check its fan and that hot air does not come back."),
        _ => new("nothing wrong with the charge", ""),
    };
}
