namespace Commission.Checks.Tables;

/// <summary>Which published set of flare-nut torques.</summary>
internal enum FlareTorqueSet
{
    /// <summary>Set A of generic installation manuals for R-410A and R-32.</summary>
    ManualA,

    /// <summary>Set A as the same manuals print it in lbf·in, rounded on its own; ends at 1/2 in.</summary>
    ManualAInches,

    /// <summary>Set B of generic installation manuals; ends at 1/2 in.</summary>
    ManualB,

    /// <summary>The set of JIS B 8607: a centre value ± 10 %.</summary>
    JisB8607,
}
