using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Unbalance of three compressor currents.</summary>
internal sealed class CurrentUnbalanceCheck : ICheck
{
    public string Id => "electrical.current-unbalance";

    public string Phase => Phases.Electrical;

    public string Title => "Current unbalance";

    public CheckHelp Help { get; } = new(
        "Do the three phases of the compressor draw alike?",
        "unbalance = 100 · max|I − Ī| / Ī of the three currents",
        "10 %: common practice, no source.",
        "Check the voltages first: one per cent of voltage unbalance makes several of current. With balanced voltages, swap the leads round: an unbalance that stays with the motor is in the motor.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var currents = context.Get<ElectricalReadings>().Compressor;
        if (currents.Length == 3)
            yield return Unbalance.Judge(context, this, currents, "electrical.current-unbalance", "currents");
    }
}
