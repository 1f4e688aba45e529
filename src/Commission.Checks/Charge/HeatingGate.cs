using Commission.Checks.Findings;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Checks.Charge;

/// <summary>Whether a heating reading may be judged: long enough after a defrost, coil clear of frost, auxiliary heat off.</summary>
internal sealed class HeatingGate : IChargeGate
{
    private readonly Reading reading;

    private HeatingGate(Reading reading) => this.reading = reading;

    /// <inheritdoc/>
    public string? Block { get; private init; }

    /// <inheritdoc/>
    public string? Todo => Block is null ? null : "Let it heat steadily with the coil clear and the auxiliary heat off, then read again.";

    /// <inheritdoc/>
    public string? Reservation { get; private init; }

    /// <summary>Looks at a heating reading.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="reading">The reading.</param>
    public static HeatingGate Of(CheckContext context, Reading reading)
    {
        var least = context.Limits.Find("charge.heating.since-defrost")?.Lower;
        string? block = null;
        if (reading.SinceDefrost is { } since && since.Value.Si < least?.Si)
            block = $"the last defrost ended {since.Text} before the reading, at least {least!.Text} are asked for";
        else if (reading.CoilClearOfFrost is { Value: false })
            block = "the outdoor coil was not clear of frost";
        else if (reading.AuxiliaryHeat?.Value == OnOff.On)
            block = "the auxiliary heat was on";
        var missing = new List<string>();
        if (reading.SinceDefrost is null)
            missing.Add("the time since the last defrost");
        if (reading.CoilClearOfFrost is null)
            missing.Add("whether the coil was clear of frost");
        if (reading.AuxiliaryHeat is null)
            missing.Add("whether the auxiliary heat was off");
        return new HeatingGate(reading) { Block = block, Reservation = missing.Count == 0 ? null : $"not written: {string.Join(", ", missing)}" };
    }

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding) => finding
        .Use<Duration>("since defrost", reading.SinceDefrost)
        .Use("coil clear of frost", reading.CoilClearOfFrost)
        .Use("auxiliary heat", reading.AuxiliaryHeat);
}
