using System.Globalization;
using Commission.Checks.Findings;
using Commission.Checks.Tables;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Unbalance of three voltages, by the largest deviation from their mean.</summary>
internal sealed class VoltageUnbalanceCheck : ICheck
{
    public string Id => "electrical.voltage-unbalance";

    public string Phase => Phases.Electrical;

    public string Title => "Voltage unbalance";

    public CheckHelp Help { get; } = new(
        "Are the three line voltages equal enough for the motor? A small unbalance heats one winding a lot.",
        "unbalance = 100 · max|V − V̄| / V̄ of the three line-to-line voltages",
        "NEMA MG-1, 12.45 and 14.36 (published figures; clause from memory): no derating up to 1 %, common limit 2 %, do not run above 5 %.",
        "Stop above 5 %. Look for a loose lug, a blown fuse or single-phase loads on one leg; tell the utility when it comes in unbalanced.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var voltages = context.Get<ElectricalReadings>().LineToLine;
        if (voltages.Length == 3)
            yield return Unbalance.Judge(context, this, voltages, "electrical.voltage-unbalance.limit", "voltages", (finding, unbalance) => Explain(context, finding, unbalance));
    }

    private static void Explain(CheckContext context, FindingBuilder finding, double unbalance)
    {
        if (context.Limits.Find("electrical.voltage-unbalance.stop") is { Upper: { } stop } limit && unbalance > stop.Si)
        {
            finding.Show(context.State(limit)).Fail($"more than {stop.Text}, above which no motor may run").Next("Stop the unit and lock it out. Look for a lost phase, a loose lug or a blown fuse; tell the utility when it comes in unbalanced.");
            return;
        }

        if (context.Limits.Find("electrical.voltage-unbalance.good") is { Upper: { } good } && unbalance > good.Si && PhaseUnbalance.Derating(unbalance) is { } factor)
            finding.Remark(string.Create(CultureInfo.InvariantCulture, $"Above {good.Text} a motor is derated: it may give {100 * factor:0} % of its rated output here (NEMA MG-1, from memory)."));
    }
}
