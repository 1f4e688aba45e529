namespace Commission.Jobs.Model.Words;

/// <summary>How the airflow was found.</summary>
public enum AirflowMethod
{
    /// <summary>From the maker's fan table and the static pressure.</summary>
    FanTable,

    /// <summary>From a known heat and the temperature rise.</summary>
    HeatRise,

    /// <summary>From velocities across a duct.</summary>
    Traverse,

    /// <summary>From a flow hood at the grilles.</summary>
    Hood,

    /// <summary>From the maker's table for a coil or grid.</summary>
    PressureDrop,

    /// <summary>From the unit's own display.</summary>
    UnitDisplay,
}
