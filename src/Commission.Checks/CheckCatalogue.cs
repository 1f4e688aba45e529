using Commission.Checks.Electrical;
using Commission.Checks.Instruments;
using Commission.Checks.PressureTest;

namespace Commission.Checks;

/// <summary>Every check, one line each, in the order of the record. A check is added here and nowhere else.</summary>
public static class CheckCatalogue
{
    /// <summary>All checks.</summary>
    public static IReadOnlyList<ICheck> All { get; } =
    [
        new CalibrationCurrentCheck(),
        new IcePointCheck(),
        new WarmPointCheck(),
        new BoilingPointCheck(),
        new ZeroPressureCheck(),
        new KnownPressureCheck(),
        new RestedCylinderCheck(),
        new PairAgreementCheck(),
        new ScaleCheck(),
        new VacuumGaugeCheck(),
        new AdequacyCheck(),

        new TestGasCheck(),
        new TestLevelCheck(),
        new TestSectionCheck(),
        new StrengthCheck(),
        new JointLeakCheck(),
        new BrazingCheck(),

        new SupplyVoltageCheck(),
        new VoltageUnbalanceCheck(),
        new CurrentUnbalanceCheck(),
        new OvercurrentCheck(),
        new ConductorCheck(),
        new GroundCheck(),
        new ProvedDeadCheck(),
        new PhaseRotationCheck(),
        new CompressorCurrentCheck(),
        new FanCurrentCheck(),
        new RunCapacitorCheck(),
        new StartVoltageDropCheck(),
        new InsulationCheck(),
        new ControlVoltageCheck(),
    ];

    /// <summary>Finds a check by its id.</summary>
    /// <param name="id">The id, <c>charge.superheat</c>.</param>
    /// <returns>The check, or null.</returns>
    public static ICheck? Find(string id) => All.FirstOrDefault(check => string.Equals(check.Id, id, StringComparison.OrdinalIgnoreCase));
}
