using Commission.Checks.Air;
using Commission.Checks.Charge;
using Commission.Checks.Compressors;
using Commission.Checks.Electrical;
using Commission.Checks.Evacuation;
using Commission.Checks.Evidence;
using Commission.Checks.Functional;
using Commission.Checks.Inference;
using Commission.Checks.Instruments;
using Commission.Checks.Kernel;
using Commission.Checks.Piping;
using Commission.Checks.PressureTest;
using Commission.Checks.Refrigerants;
using Commission.Checks.Safety;

namespace Commission.Checks.Recording;

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
        new LeakDetectorCheck(),
        new WickCheck(),
        new AdequacyCheck(),

        new TestGasCheck(),
        new TestLevelCheck(),
        new TestSectionCheck(),
        new StrengthCheck(),
        new NitrogenHoldCheck(),
        new HoldTimeCheck(),
        new SettledCheck(),
        new JointLeakCheck(),
        new BrazingCheck(),

        new VacuumRigCheck(),
        new VacuumSeriesCheck(),
        new EvacuationSectionCheck(),
        new EvacuationConditionsCheck(),
        new NitrogenBreaksCheck(),
        new VacuumLevelCheck(),
        new PumpDwellCheck(),
        new VacuumHoldCheck(),
        new VacuumRiseCheck(),
        new RiseCauseCheck(),
        new EquilibriumHumidityCheck(),
        new LeakRateCheck(),
        new PumpDownCheck(),
        new TightnessNotProvedCheck(),

        new PrerequisitesCheck(),
        new EquipmentMatchCheck(),
        new RunningConditionCheck(),
        new StabilisedCheck(),
        new MethodValidityCheck(),
        new SaturationCheck(),
        new ByWeightCheck(),
        new TotalCheck(),
        new PhaseCheck(),
        new SuperheatCheck(),
        new SuperheatFloorCheck(),
        new MeteringSuperheatCheck(),
        new SubcoolingCheck(),
        new DiagnosisCheck(),
        new MakerChartCheck(),
        new ApproachCheck(),
        new CondensingOverAmbientCheck(),
        new EvaporatorDifferenceCheck(),
        new DrierDropCheck(),
        new NonCondensablesCheck(),
        new ReceiverCheck(),
        new HeatingModeCheck(),
        new ReturnVisitCheck(),
        new CycleCheck(),
        new AsFoundCheck(),

        // air
        new PsychrometricsCheck(),
        new TemperatureSplitCheck(),
        new HeatRiseCheck(),
        new StaticCheck(),
        new FilterDropCheck(),
        new CoilDropCheck(),
        new AirflowCheck(),
        new FanPowerCheck(),
        new CapacityCheck(),
        new EnergyBalanceCheck(),
        new OutsideAirCheck(),
        new GasHeatCheck(),

        // compressor
        new RatioCheck(),
        new DischargeTemperatureCheck(),
        new DischargeSuperheatCheck(),
        new SuctionSuperheatCheck(),
        new SumpSuperheatCheck(),
        new CrankcaseHeaterCheck(),

        new SupplyVoltageCheck(),
        new VoltageUnbalanceCheck(),
        new CurrentUnbalanceCheck(),
        new OvercurrentCheck(),
        new ConductorCheck(),
        new GroundCheck(),
        new ProvedDeadCheck(),
        new PhaseRotationCheck(),
        new CompressorCurrentCheck(),
        new UnitCurrentCheck(),
        new FanCurrentCheck(),
        new HeaterCurrentCheck(),
        new RunCapacitorCheck(),
        new StartVoltageDropCheck(),
        new InsulationCheck(),
        new ControlVoltageCheck(),
        new TerminalTorqueCheck(),

        // piping
        new FlareTorqueCheck(),
        new VelocityCheck(),
        new LiquidLossCheck(),
        new LengthsCheck(),
        new LongLineCheck(),
        new TrapsCheck(),
        new SupportsCheck(),
        new BranchJointsCheck(),
        new TotalIndexCheck(),
        new LineInsulationCheck(),
        new PipeRatingCheck(),
        new ReusedLinesCheck(),
        new PenetrationsCheck(),

        // safety
        new FlammableStepsCheck(),
        new OpeningSequenceCheck(),
        new FlammableChargeCheck(),
        new LeakSensorCheck(),
        new ConcentrationLimitCheck(),
        new DevicesCheck(),
        new CombustionCheck(),

        // refrigerant
        new RecoveryLevelCheck(),
        new LedgerCheck(),
        new RefrigerantIdentityCheck(),
        new UseCheck(),
        new CylinderFillCheck(),
        new AcidCheck(),
        new SuctionDrierCheck(),
        new OilChangeCheck(),
        new AdditivesCheck(),
        new LabelCheck(),
        new AfterStartLeakCheck(),
        new CarbonDioxideCheck(),
        new ThresholdsCheck(),
        new AnnualLeakRateCheck(),
        new RecordsCheck(),

        // functional
        new ThermostatCallsCheck(),
        new ReversingValveCheck(),
        new DefrostCheck(),
        new AuxiliaryHeatCheck(),
        new FanRotationCheck(),
        new CondensateCheck(),
        new FloatSwitchCheck(),
        new EconomizerCheck(),
        new WaterCheck(),
        new WaterControlsCheck(),
        new WaterCapacityCheck(),
        new PressureControlsCheck(),
        new OilCheck(),
        new BoxPullDownCheck(),
        new SensorCheck(),
        new ReliefPortCheck(),
        new TrialRunCheck(),
        new FaultCodesCheck(),

        // evidence
        new ChronologyCheck(),
        new CoverageCheck(),
        new InstrumentsIdentifiedCheck(),
        new RepeatedCheck(),
        new ResolutionCheck(),
        new TerminalDigitsCheck(),
        new PhysicsCheck(),
        new AgreementCheck(),
        new PhotosCheck(),
        new SignatureCheck(),
    ];

    /// <summary>Finds a check by its id.</summary>
    /// <param name="id">The id, <c>charge.superheat</c>.</param>
    /// <returns>The check, or null.</returns>
    public static ICheck? Find(string id) => All.FirstOrDefault(check => string.Equals(check.Id, id, StringComparison.OrdinalIgnoreCase));

    /// <summary>Finds a check by its id or by the part after the point, where no other check ends so: <c>diagnosis</c>.</summary>
    /// <param name="name">What somebody asks for.</param>
    /// <returns>The check, or null.</returns>
    public static ICheck? Named(string name) =>
        Find(name) ?? (All.Where(check => check.Id.EndsWith($".{name}", StringComparison.OrdinalIgnoreCase)).ToArray() is [var only] ? only : null);
}
