namespace Commission.Checks.PressureTest.Analysis;

/// <summary>What a nitrogen hold shows against an allowed loss R.</summary>
public enum NitrogenVerdict
{
    /// <summary>L + U ≤ R and L ≥ −U: the loss is within what is allowed, its uncertainty included.</summary>
    Held,

    /// <summary>L − U &gt; R: lost more than allowed, beyond doubt.</summary>
    Lost,

    /// <summary>Neither: the hold is too short, or temperature and gauge too uncertain, for this R.</summary>
    NotShown,

    /// <summary>L &lt; −U: gas seems to have come in. Temperature or gauge is at fault; not a pass.</summary>
    TemperatureOrGauge,
}
