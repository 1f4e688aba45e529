using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Circuit;

/// <summary>
/// Superheat that goes up and down by more than a valve's few degrees between settled readings: no single reading shows where the valve holds. A
/// steady drift, as of a room that comes down, is not hunting, and a fixed orifice has nothing that could hunt.
/// </summary>
internal sealed class Hunting
{
    private Hunting(double low, double high)
    {
        Low = low;
        High = high;
    }

    /// <summary>Lowest superheat, K.</summary>
    public double Low { get; }

    /// <summary>Highest superheat, K.</summary>
    public double High { get; }

    /// <summary>The swing of the job's readings; null when the superheat stands still or nobody can tell.</summary>
    public static Hunting? In(CheckContext context)
    {
        var charge = context.Get<ChargeAnalysis>();
        var most = context.Limits.Require(LimitIds.ChargeHuntingSwing).Upper!.Si;
        // A log sees what lies between readings by hand.
        if (!charge.HasFixedMetering && context.Get<RunningLog>().Superheat is { } course && course.High - course.Low > most)
            return new Hunting(course.Low, course.High);
        var rows = charge.Rows.Where(r => r.Mode == OperatingMode.Cooling && r.Settling.Block is null && Superheat(r) is not null).ToArray();
        if (rows.Length < 2 || charge.HasFixedMetering)
            return null;
        var values = rows.Select(r => Superheat(r)!.Value).ToArray();
        var (low, high) = (values.Min(), values.Max());
        var drifts = rows.Length > 2 && (IsOrdered(values, 1) || IsOrdered(values, -1));
        return drifts || high - low <= most ? null : new Hunting(low, high);
    }

    /// <summary>The swing in words, without a full stop.</summary>
    public Message Said(CheckContext context) =>
        ChargeMessages.SuperheatSwung(context.Present.InMessage(Low, DisplayKind.TemperatureDifference), context.Present.InMessage(High, DisplayKind.TemperatureDifference));

    /// <summary>Ends a finding that would rest on one of the readings: while superheat swings none of them counts.</summary>
    public Finding Unsettled(CheckContext context, FindingBuilder finding)
    {
        NameIn(context, finding);
        return finding.NotEvaluated(Said(context), DiagnosisMessages.HuntingNext);
    }

    /// <summary>Names in a finding the readings that a swing would show in, whether there is one or not.</summary>
    public static void NameIn(CheckContext context, FindingBuilder finding)
    {
        foreach (var use in context.Get<RunningLog>().Uses)
            finding.Use(use);
        foreach (var row in context.Get<ChargeAnalysis>().Rows.Where(r => r.Mode == OperatingMode.Cooling))
        {
            row.Settling.NameIn(finding);
            finding.Name((row.EvaporatorSuperheat.Value is null ? row.Superheat : row.EvaporatorSuperheat).Readings);
        }
    }

    private static double? Superheat(ChargeRow row) => (row.EvaporatorSuperheat.Value ?? row.Superheat.Value)?.Value;

    private static bool IsOrdered(double[] values, int sign)
    {
        for (var i = 1; i < values.Length; i++)
        {
            if (sign * (values[i] - values[i - 1]) < 0)
                return false;
        }

        return true;
    }
}
