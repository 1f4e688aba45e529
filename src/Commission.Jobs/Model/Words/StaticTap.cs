namespace Commission.Jobs.Model.Words;

/// <summary>Where a static pressure was read.</summary>
public enum StaticTap
{
    /// <summary>Before the unit, after the filter.</summary>
    AfterFilter,

    /// <summary>Before the filter.</summary>
    BeforeFilter,

    /// <summary>After the coil.</summary>
    AfterCoil,

    /// <summary>After the blower, before the coil.</summary>
    BeforeCoil,

    /// <summary>In the plenum.</summary>
    Plenum,
}
