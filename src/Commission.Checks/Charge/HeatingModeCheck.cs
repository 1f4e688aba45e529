using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Readings in heating: judged by the maker's heating chart, else information beside the weight.</summary>
internal sealed class HeatingModeCheck : ICheck
{
    public string Id => "charge.heating-mode";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Spoken(OperatingMode.Heating, r => r.HasCircuitReading) is not { } row)
            yield break;
        var gates = new ChargeGates(row.Settling, HeatingGate.Of(context, row.Written));
        if (!analysis.IsLeftSealed)
            yield return Tell(context, row, gates);
    }

    private Finding Tell(CheckContext context, ChargeRow row, ChargeGates gates)
    {
        var present = context.Present;
        var finding = context.Finding(this, row.Time);
        gates.NameIn(finding);
        if (gates.Blocked is var (why, todo))
            return finding.NotEvaluated(why, todo);
        var parts = new List<string>();
        if (row.VaporPressure is { } pressure && context.Get<CircuitSaturation>().Bubble(pressure).Value is { } bubble)
        {
            finding.Use(pressure);
            parts.Add($"bubble point {present.Text(bubble, DisplayKind.Temperature)} at the vapor pressure");
            if (row.IndoorCoilOutlet is { } outlet)
            {
                var subcooling = bubble - outlet.Value;
                finding.Use(outlet)
                    .Step("SC_heat", "subcooling at the indoor coil", "T_bubble(p_vapor) − T_coil outlet", $"{present.Text(bubble.Value, DisplayKind.Temperature, 2)} − {present.Text(outlet.Value.Value, DisplayKind.Temperature, 2)}", present.Text(subcooling, DisplayKind.TemperatureDifference), "definition")
                    .Measure(subcooling, DisplayKind.TemperatureDifference);
                parts.Add($"subcooling at the indoor coil {present.Text(subcooling, DisplayKind.TemperatureDifference)}");
            }
        }

        if (row.DischargeLine is { } discharge)
        {
            finding.Use(discharge);
            parts.Add($"discharge line {present.Text(discharge.Value, DisplayKind.Temperature)}");
        }

        if (parts.Count == 0)
            return finding.NotEvaluated("no heating reading of the circuit is written", "Read vapor pressure, discharge line and indoor coil outlet, or weigh the charge in.");
        finding.Remark(gates.Open is { } open ? $"{char.ToUpperInvariant(open[0])}{open[1..]}." : null);
        return finding.Information($"Heating at {row.Time}: {string.Join(", ", parts)}.", "a heating chart of the maker is judged beside; without one the charge stands on its weight");
    }
}

/// <summary>Whether a heating reading may be judged: long enough after a defrost, coil clear of frost, auxiliary heat off.</summary>
internal sealed class HeatingGate : IChargeGate
{
    private readonly Reading _reading;

    private HeatingGate(Reading reading) => _reading = reading;

    /// <inheritdoc/>
    public string? Block { get; private init; }

    /// <inheritdoc/>
    public string? Todo => Block is null ? null : "Let it heat steadily with the coil clear and the auxiliary heat off, then read again.";

    /// <inheritdoc/>
    public string? Reservation { get; private init; }

    /// <summary>Looks at a heating reading.</summary>
    public static HeatingGate Of(CheckContext context, Reading reading)
    {
        var least = context.Limits.Find(LimitIds.ChargeHeatingSinceDefrost)?.Lower;
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
        .Use<Duration>("since defrost", _reading.SinceDefrost)
        .Use("coil clear of frost", _reading.CoilClearOfFrost)
        .Use("auxiliary heat", _reading.AuxiliaryHeat);
}
