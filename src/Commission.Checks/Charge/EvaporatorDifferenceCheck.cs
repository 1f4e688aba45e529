using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Air onto the evaporator over the mid-point evaporating temperature.</summary>
internal sealed class EvaporatorDifferenceCheck : ICheck
{
    public string Id => "charge.evaporator-difference";

    public string Phase => Phases.Charge;

    public string Title => "Evaporator difference";

    public CheckHelp Help { get; } = new(
        "How far does the refrigerant evaporate below the air that comes onto the coil?",
        "TD = T_return or box − T_mid(p_vapor, absolute); T_mid is the middle of bubble and dew point",
        "Comfort cooling 35 ± 5 °F at 400 cfm/ton, walk-in coils 8 to 12 °F, reach-in coils about 20 °F: common practice, no source; the maker's range comes first.",
        "High: low airflow, dirty filter or coil, frost, low charge or a starved valve. Low: high airflow, overfeeding or a compressor that does not pump.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Spoken(OperatingMode.Cooling, r => r.Written.VaporPressure is not null && r.EvaporatorAir is not null) is not { } row)
            yield break;
        var judged = analysis.ByWeightOnly is null;
        var gates = judged ? new ChargeGates(row.Settling, RunningCondition.Of(context, row)) : new ChargeGates(row.Settling);
        yield return RowDifference.Judge(
            context, this, row, row.EvaporatorDifference, judged ? context.Limits.Find("charge.evaporator-difference.range") : null, "The evaporator difference", gates,
            "Check airflow, filter and coil first, then the pattern of both sides.",
            "Check the airflow and whether the compressor pumps, then the pattern of both sides.",
            unlimited: analysis.ByWeightOnly);
    }
}
