namespace Commission.Checks.Tables;

/// <summary>One tube size of the flare table; lengths in m, torques in N·m, angles in degrees.</summary>
/// <param name="Outside">Outside diameter of the tube, m.</param>
/// <param name="Wrench">Width across flats of the nut for R-410A and R-32, m.</param>
/// <param name="Flare">Outside diameter of the finished flare for R-410A and R-32, m; null where no figure was found.</param>
/// <param name="Angle">Turn after the knee when there is no torque wrench, degrees.</param>
internal sealed record FlareNut(double Outside, double Wrench, (double Least, double Most)? Flare, (double Least, double Most) Angle)
{
    /// <summary>Torque by set, N·m; null where the set ends before this size.</summary>
    public required IReadOnlyDictionary<FlareTorqueSet, (double Least, double Most)> Torque { get; init; }

    /// <summary>How sure a torque of this size is.</summary>
    /// <param name="set">The set.</param>
    /// <returns>The mark the record prints.</returns>
    public string MarkOf(FlareTorqueSet set) => set == FlareTorqueSet.ManualA && Outside > 0.019 ? "common practice" : "published";
}
