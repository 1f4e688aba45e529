namespace Commission.Checks.Charge;

/// <summary>By which number of the running system the charge is judged.</summary>
internal enum ChargeCriterion
{
    /// <summary>Superheat, with a fixed orifice or a capillary.</summary>
    Superheat,

    /// <summary>Subcooling, with a valve that holds the superheat.</summary>
    Subcooling,
}
