using System.Globalization;
using Commission.Checks.Charge;
using Commission.Checks.Findings;
using Commission.Checks.Readings;
using Commission.Checks.Tables;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>What the European regulation asks of this charge: by tonnes of Annex I gases, and by kilograms of Annex II gases.</summary>
internal sealed class EuropeanDuties : IAnalysis<EuropeanDuties>
{
    // From this day 2024/573 stands in the place of 517/2014.
    private static readonly DateOnly InForce = new(2024, 3, 11);

    private readonly CheckContext context;
    private readonly MassNumber? charge;

    private EuropeanDuties(CheckContext context)
    {
        this.context = context;
        charge = context.Get<CircuitCharge>().Total;
        Edition = context.Job.Identity.Date.Value >= InForce ? FluorinatedGasEdition.Regulation573Of2024 : FluorinatedGasEdition.Regulation517Of2014;
        Warming = context.Get<CircuitRefrigerant>().Info is { } info ? EuropeanWarming.Of(info) : null;
        if (charge is null || Warming is null)
            return;
        AnnexOneTonnes = charge.Value.Value * Warming.AnnexOnePart / 1000;
        AnnexTwoKilograms = charge.Value.Value * Warming.AnnexTwoShare;
        IsHermeticAndLabelled = context.Job.Equipment.HermeticallySealed?.Value == true;
        Plan = FluorinatedGasLeakChecks.For(AnnexOneTonnes, AnnexTwoKilograms, IsHermeticAndLabelled, context.Job.Equipment.LeakDetectionSystem?.Value == true, Edition);
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
    public string Citation => $"{FluorinatedGasLeakChecks.SourceOf(Edition)} ({FluorinatedGasLeakChecks.Mark})";

    /// <inheritdoc/>
    public static EuropeanDuties Create(CheckContext context) => new(context);

    /// <summary>Names what the duties rest on and how they came about.</summary>
    /// <param name="finding">The finding.</param>
    public void UseIn(FindingBuilder finding)
    {
        var equipment = context.Job.Equipment;
        finding.Use("refrigerant", equipment.Refrigerant).Use("date of the job", context.Job.Identity.Date).Use("hermetically sealed", equipment.HermeticallySealed).Use("leak detection system", equipment.LeakDetectionSystem);
        charge?.UseIn(finding);
        if (charge is null || Warming is null)
            return;
        var mass = context.Present.Text(charge.Value.Value, DisplayKind.Mass);
        finding.Step(Step("t_I", "charge of Annex I gases (HFC)", "charge × Σ share × GWP (AR4) / 1000", $"{mass}, {GasFamilies.Source}", string.Create(CultureInfo.InvariantCulture, $"{AnnexOneTonnes:0.00} t CO2e")));
        if (Edition == FluorinatedGasEdition.Regulation573Of2024)
            finding.Step(Step("m_II", "charge of Annex II section 1 gases (HFO)", "charge × share", string.Create(CultureInfo.InvariantCulture, $"{mass} × {Warming.AnnexTwoShare:0.####}"), string.Create(CultureInfo.InvariantCulture, $"{AnnexTwoKilograms:0.00} kg")));
    }

    private TraceStep Step(string symbol, string name, string formula, string substitution, string result) => new(symbol, name, formula, substitution, result, Citation);
}
