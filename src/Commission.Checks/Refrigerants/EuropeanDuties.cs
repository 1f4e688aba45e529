using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Fluids;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>What the European regulation asks of this charge: by tonnes of Annex I gases, and by kilograms of Annex II gases.</summary>
internal sealed class EuropeanDuties : IAnalysis<EuropeanDuties>
{
    // From this day 2024/573 stands in the place of 517/2014.
    private static readonly DateOnly InForce = new(2024, 3, 11);

    private readonly CheckContext _context;
    private readonly MassNumber? _charge;

    private EuropeanDuties(CheckContext context)
    {
        _context = context;
        _charge = context.Get<CircuitCharge>().Total;
        Edition = context.Job.Identity.Date.Value >= InForce ? FluorinatedGasEdition.Regulation573Of2024 : FluorinatedGasEdition.Regulation517Of2014;
        Warming = context.Get<CircuitRefrigerant>().Info is { } info ? EuropeanWarming.Of(info) : null;
        if (_charge is null || Warming is null)
            return;
        AnnexOneTonnes = _charge.Value.Value * Warming.AnnexOnePart / 1000;
        AnnexTwoKilograms = _charge.Value.Value * Warming.AnnexTwoShare;
        IsHermeticAndLabelled = context.Job.Equipment.HermeticallySealed?.Value == true;
        Plan = FluorinatedGasLeakChecks.IsFreeInResidence(_charge.Value.Value, IsHermeticAndLabelled, context.Job.Equipment.ResidentialBuilding?.Value == true, Edition)
            ? new LeakCheckPlan(null, false, RefrigerantMessages.LeakCheckFreeInResidence)
            : FluorinatedGasLeakChecks.For(AnnexOneTonnes, AnnexTwoKilograms, IsHermeticAndLabelled, context.Job.Equipment.LeakDetectionSystem?.Value == true, Edition);
    }

    /// <summary>The regulation in force on the day of the job.</summary>
    public FluorinatedGasEdition Edition { get; }

    /// <summary>Warming potential as the regulation counts it; null when that of a part is not known here.</summary>
    public EuropeanWarming? Warming { get; }

    /// <summary>Charge of Annex I gases, t CO2e.</summary>
    public double AnnexOneTonnes { get; }

    /// <summary>Charge of Annex II section 1 gases, kg.</summary>
    public double AnnexTwoKilograms { get; }

    /// <summary>Whether the circuit is hermetically sealed.</summary>
    public bool IsHermeticAndLabelled { get; }

    /// <summary>How often the circuit is checked for leaks; null when charge or potential is not known.</summary>
    public LeakCheckPlan? Plan { get; }

    /// <summary>The article, with its mark.</summary>
    public Message Citation => Cited.As(FluorinatedGasLeakChecks.SourceOf(Edition), FluorinatedGasLeakChecks.MarkOf(Edition));

    /// <inheritdoc/>
    public static EuropeanDuties Create(CheckContext context) => new(context);

    /// <summary>Names what the duties rest on and how they came about.</summary>
    public void UseIn(FindingBuilder finding)
    {
        var equipment = _context.Job.Equipment;
        finding.Use(ReadingsMessages.Refrigerant, equipment.Refrigerant).Use(ReadingsMessages.DateOfJob, _context.Job.Identity.Date).Use(ReadingsMessages.HermeticallySealed, equipment.HermeticallySealed)
            .Use(RefrigerantMessages.ReadingResidential, equipment.ResidentialBuilding).Use(RefrigerantMessages.ReadingDetection, equipment.LeakDetectionSystem);
        _charge?.UseIn(finding);
        if (_charge is null || Warming is null)
            return;
        var mass = _context.Present.Text(_charge.Value.Value, DisplayKind.Mass);
        finding.Step("t_I", RefrigerantMessages.Co2eStepAnnexOne, RefrigerantMessages.Co2eStepAnnexOneFormula, CommonMessages.Several(new([_context.Present.InMessage(_charge.Value.Value, DisplayKind.Mass), GasFamilies.Source], ListJoin.Comma)), string.Create(CultureInfo.InvariantCulture, $"{AnnexOneTonnes:0.00} t CO2e"), Citation);
        if (Edition == FluorinatedGasEdition.Regulation573Of2024)
            finding.Step("m_II", RefrigerantMessages.Co2eStepAnnexTwo, RefrigerantMessages.Co2eStepAnnexTwoFormula, string.Create(CultureInfo.InvariantCulture, $"{mass} × {Warming.AnnexTwoShare:0.####}"), string.Create(CultureInfo.InvariantCulture, $"{AnnexTwoKilograms:0.00} kg"), Citation);
    }
}

/// <summary>
/// Warming potential of a refrigerant as Regulation (EU) 2024/573 counts it: hydrofluorocarbons of Annex I by AR4, perfluorocarbons and the gases of
/// Annex II section 1 by AR6, anything else by Annex VI; a blend by the mass shares of its parts (published).
/// </summary>
/// <param name="Potential">GWP over 100 years of the whole refrigerant.</param>
/// <param name="AnnexOnePart">Part of it from gases of Annex I, for a kilogram of refrigerant.</param>
/// <param name="AnnexTwoShare">Mass share of gases of Annex II section 1.</param>
/// <param name="Formula">The sum with its numbers.</param>
internal sealed record EuropeanWarming(double Potential, double AnnexOnePart, double AnnexTwoShare, string Formula)
{
    /// <summary>Where the rule comes from.</summary>
    public const string Source = "Regulation (EU) 2024/573, annexes I, II and VI";

    /// <summary>Whether the regulation counts the refrigerant at all.</summary>
    public bool IsFluorinated => AnnexOnePart > 0 || AnnexTwoShare > 0;

    /// <summary>Works it out.</summary>
    /// <returns>The potential; null when that of a part is not known here.</returns>
    public static EuropeanWarming? Of(RefrigerantInfo refrigerant)
    {
        double whole = 0, annexOne = 0, annexTwo = 0;
        var words = ImmutableArray.CreateBuilder<string>();
        foreach (var part in refrigerant.Composition)
        {
            if (RefrigerantCatalogue.Find(part.Designation) is not { } substance)
                return null;
            var family = GasFamilies.Of(part.Designation);
            if (GasFamilies.EuropeanPotential(substance) is not { } potential)
                return null;
            whole += part.MassFraction * potential;
            annexOne += family == GasFamily.AnnexOne ? part.MassFraction * potential : 0;
            annexTwo += family == GasFamily.AnnexTwo ? part.MassFraction : 0;
            words.Add(string.Create(CultureInfo.InvariantCulture, $"{part.MassFraction:0.####} × {potential:0.###} ({part.Designation})"));
        }

        return new EuropeanWarming(whole, annexOne, annexTwo, string.Join(" + ", words));
    }
}

/// <summary>The charge as tonnes of carbon dioxide, and what the European regulation makes of it where its pack is named.</summary>
internal sealed class CarbonDioxideCheck : ICheck
{
    public string Id => "refrigerant.co2e";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var circuit = context.Get<CircuitRefrigerant>();
        var charge = context.Get<CircuitCharge>();
        if (circuit.Info is not { } info || (charge.Total is null && IsSilent(context)))
            yield break;
        yield return Tonnes(context, info, charge);
        if (context.Limits.Find(LimitIds.RefrigerantLeakCheckInterval) is { } limit && context.Get<EuropeanDuties>() is { Plan: { } plan } duties)
            yield return Checks(context, limit, duties, plan);
    }

    // An adjustment of a circuit that nobody weighed as a whole has no total, and need not have one unless the law asks.
    private static bool IsSilent(CheckContext context) => context.Job.Charging is not { } charging
        || (charging.UnitArrived is null && context.Job.Identity.Work.Value is WorkKind.ChargeAdjustment or WorkKind.SeasonalCheck && context.Limits.Find(LimitIds.RefrigerantLeakCheckInterval) is null);

    private Finding Tonnes(CheckContext context, RefrigerantInfo info, CircuitCharge charge)
    {
        var finding = context.Finding(this).Use(ReadingsMessages.Refrigerant, context.Job.Equipment.Refrigerant);
        if (charge.Total is not { } total)
            return finding.NotEvaluated(RefrigerantMessages.Co2eNoCharge(charge.WhyNot!), RefrigerantMessages.Co2eNoChargeNext);
        total.UseIn(finding);
        if (info.GwpAr4 is not { } potential)
            return finding.NotEvaluated(RefrigerantMessages.Co2eNoPotential(new(info.Designation)), RefrigerantMessages.Co2eNoPotentialNext);
        var (mass, gas, listed) = (context.Present.InMessage(total.Value.Value, DisplayKind.Mass), new NameValue(info.Designation), WarmingPotentials.Printed(potential.Value));
        var tonnes = Equivalent(Of(total.Value, potential.Value), charge);
        finding.Step("CO2e", RefrigerantMessages.Co2eStep, CarbonDioxideEquivalent.Formula, string.Create(CultureInfo.InvariantCulture, $"{total.Value.Value:0.000} kg × {potential.Value:0.#} / 1000"), tonnes, Cited.As(potential.Source, potential.Mark));
        var said = RefrigerantMessages.Co2eTold(mass, gas, tonnes, listed);
        if (context.Get<EuropeanDuties>().Warming is { IsFluorinated: false })
        {
            said = RefrigerantMessages.Co2eToldNatural(mass, gas, tonnes, listed);
        }
        else if (context.Get<EuropeanDuties>().Warming is { } warming)
        {
            var counted = Equivalent(Of(total.Value, warming.Potential), charge);
            finding.Step("GWP_EU", RefrigerantMessages.Co2eStepPotential, RefrigerantMessages.Co2eStepPotentialFormula, warming.Formula, warming.Potential.ToString("0.0", CultureInfo.InvariantCulture), EuropeanWarming.Source)
                .Step("CO2e_EU", RefrigerantMessages.Co2eStepEuropean, CarbonDioxideEquivalent.Formula, string.Create(CultureInfo.InvariantCulture, $"{total.Value.Value:0.000} kg × {warming.Potential:0.0} / 1000"), counted, EuropeanWarming.Source);
            if (context.Present.Text(counted) != context.Present.Text(tonnes))
                said = RefrigerantMessages.Co2eToldEuropean(mass, gas, tonnes, listed, counted, new NumberValue(warming.Potential, 1));
        }

        return finding.Information(said, charge.IsWeighed ? RefrigerantMessages.Co2eKind : RefrigerantMessages.Co2eKindAsWritten);
    }

    private Finding Checks(CheckContext context, Limits.Limit limit, EuropeanDuties duties, LeakCheckPlan plan)
    {
        var finding = context.Finding(this, context.Present.Text(RefrigerantMessages.SubjectLeakChecks)).Show(context.State(limit));
        duties.UseIn(finding);
        if (plan.Months is not { } months)
            return finding.Information(RefrigerantMessages.LeakCheckNotPrescribed(plan.Because), RefrigerantMessages.LeakCheckBelowTriggers);
        var detection = context.Job.Equipment.LeakDetectionSystem?.Value == true;
        if (plan.DetectionObligatory)
            finding.Remark(RefrigerantMessages.LeakCheckDetectionPrescribed);
        if (plan.DetectionObligatory && !detection)
            finding.Next(RefrigerantMessages.LeakCheckDetectionNext);
        return finding.Information(
            RefrigerantMessages.LeakCheckDue(months, detection ? RefrigerantMessages.LeakCheckDueDetection.With : RefrigerantMessages.LeakCheckDueDetection.Without, plan.Because),
            RefrigerantMessages.LeakCheckTriggers);
    }

    private static Uncertain Of(Uncertain kilograms, double potential) => CarbonDioxideEquivalent.Tonnes(1, potential) * kilograms;

    // A charge that nobody weighed has the doubt of a plate, which no last digit tells; propane and carbon dioxide make kilograms.
    private static Message Equivalent(Uncertain tonnes, CircuitCharge charge) => charge.IsWeighed && tonnes.Expanded >= 0.005
        ? RefrigerantMessages.TonnesDoubtful(new NumberValue(tonnes.Value, 2), new NumberValue(tonnes.Expanded, 2))
        : tonnes.Value >= 0.1 ? RefrigerantMessages.Tonnes(new NumberValue(tonnes.Value, 2))
        : RefrigerantMessages.Kilograms(WarmingPotentials.Printed(1000 * tonnes.Value));
}

/// <summary>Whether the circuit falls under a leak-repair rule of the United States, where their pack is named.</summary>
internal sealed class ThresholdsCheck : ICheck
{
    public string Id => "refrigerant.thresholds";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Limits.Find(LimitIds.RefrigerantLeakRateThreshold) is not { } limit)
            yield break;
        var rule = context.Get<UnitedStatesRule>();
        var equipment = context.Job.Equipment;
        var finding = context.Finding(this).Show(context.State(limit)).Use(ReadingsMessages.Refrigerant, equipment.Refrigerant).Use(CommonMessages.ReadingSystem, equipment.System)
            .Use(RefrigerantMessages.ReadingApplication, equipment.Application).Use(ReadingsMessages.DateOfJob, context.Job.Identity.Date);
        if (context.Get<CircuitCharge>().Full is not { } full)
        {
            yield return finding.NotEvaluated(RefrigerantMessages.FullChargeNotWritten, RefrigerantMessages.FullChargeNotWrittenNext);
            yield break;
        }

        full.UseIn(finding);
        if (rule.Rule is not { } applies || rule.Potential is not { } potential)
        {
            yield return finding.NotEvaluated(RefrigerantMessages.PotentialUnknown, RefrigerantMessages.PotentialUnknownNext);
            yield break;
        }

        List<MessageValue> facts =
        [
            RefrigerantMessages.FactFullCharge(context.Present.InMessage(full.Value.Value, DisplayKind.Mass)), RefrigerantMessages.FactPotential(WarmingPotentials.Printed(potential)),
            rule.IsOzoneDepleting ? RefrigerantMessages.FactOzone : RefrigerantMessages.FactNoOzone,
        ];
        if (rule.IsExemptSubsector)
            facts.Add(RefrigerantMessages.FactSubsector);
        var told = new ListValue([.. facts], ListJoin.Comma);
        yield return finding.Measure(full.Value, DisplayKind.Mass).Information(
            UnitedStatesRule.Citation(applies) is { } citation ? RefrigerantMessages.ThresholdsRule(new(citation), told) : RefrigerantMessages.ThresholdsNone(told),
            RefrigerantMessages.ThresholdsKind);
    }
}

/// <summary>Warming potentials and small masses as records print them.</summary>
internal static class WarmingPotentials
{
    /// <summary>A number as lists print it: whole, or with one decimal where it has one.</summary>
    /// <param name="number">The number.</param>
    public static NumberValue Printed(double number)
    {
        var tenths = Math.Round(number, 1, MidpointRounding.AwayFromZero);
        return new NumberValue(tenths, tenths == Math.Floor(tenths) ? 0 : 1);
    }
}
