using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
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
        var parts = new List<MessageValue>();
        if (row.VaporPressure is { } pressure && context.Get<CircuitSaturation>().Bubble(pressure).Value is { } bubble)
        {
            finding.Use(pressure);
            parts.Add(OperatingStateMessages.HeatingBubble(present.InMessage(bubble, DisplayKind.Temperature)));
            if (row.IndoorCoilOutlet is { } outlet)
            {
                var subcooling = bubble - outlet.Value;
                finding.Use(outlet)
                    .Step("SC_heat", OperatingStateMessages.StepSubcoolingIndoorCoil, "T_bubble(p_vapor) − T_coil", $"{present.Text(bubble.Value, DisplayKind.Temperature, 2)} − {present.Text(outlet.Value.Value, DisplayKind.Temperature, 2)}", present.Text(subcooling, DisplayKind.TemperatureDifference), OperatingStateMessages.Definition)
                    .Measure(subcooling, DisplayKind.TemperatureDifference);
                parts.Add(OperatingStateMessages.HeatingSubcooling(present.InMessage(subcooling, DisplayKind.TemperatureDifference)));
            }
        }

        if (row.DischargeLine is { } discharge)
        {
            finding.Use(discharge);
            parts.Add(OperatingStateMessages.HeatingDischarge(present.InMessage(discharge.Value, DisplayKind.Temperature)));
        }

        if (parts.Count == 0)
            return finding.NotEvaluated(OperatingStateMessages.HeatingNothingRead, OperatingStateMessages.HeatingNothingReadNext);
        finding.Remark(gates.Open is { } open ? OperatingStateMessages.HeatingOpen(open) : null);
        return finding.Information(OperatingStateMessages.HeatingWas(new(row.Time), new([.. parts], ListJoin.Comma)), OperatingStateMessages.HeatingNotJudged);
    }
}

/// <summary>Whether a heating reading may be judged: long enough after a defrost, coil clear of frost, auxiliary heat off.</summary>
internal sealed class HeatingGate : IChargeGate
{
    private readonly Reading _reading;

    private HeatingGate(Reading reading) => _reading = reading;

    /// <inheritdoc/>
    public Message? Block { get; private init; }

    /// <inheritdoc/>
    public Message? Todo => Block is null ? null : OperatingStateMessages.HeatingSteadyNext;

    /// <inheritdoc/>
    public Message? Reservation { get; private init; }

    /// <summary>Looks at a heating reading.</summary>
    public static HeatingGate Of(CheckContext context, Reading reading)
    {
        var least = context.Limits.Find(LimitIds.ChargeHeatingSinceDefrost)?.Lower;
        Message? block = null;
        if (reading.SinceDefrost is { } since && since.Value.Si < least?.Si)
            block = OperatingStateMessages.HeatingAfterDefrost(new(since.Value.Si), new(least!.Si));
        else if (reading.CoilClearOfFrost is { Value: false })
            block = DiagnosisMessages.Frosted;
        else if (reading.AuxiliaryHeat?.Value == OnOff.On)
            block = OperatingStateMessages.HeatingAuxiliaryOn;
        var missing = new List<MessageValue>();
        if (reading.SinceDefrost is null)
            missing.Add(OperatingStateMessages.HeatingNoDefrostTime);
        if (reading.CoilClearOfFrost is null)
            missing.Add(OperatingStateMessages.HeatingNoCoil);
        if (reading.AuxiliaryHeat is null)
            missing.Add(OperatingStateMessages.HeatingNoAuxiliary);
        return new HeatingGate(reading)
        {
            Block = block,
            Reservation = missing.Count == 0 ? null : OperatingStateMessages.HeatingNotTold(new([.. missing], ListJoin.Or)),
        };
    }

    /// <inheritdoc/>
    public void NameIn(FindingBuilder finding) => finding
        .Use<Duration>(OperatingStateMessages.ReadingSinceDefrost, _reading.SinceDefrost)
        .Use(OperatingStateMessages.ReadingCoilClear, _reading.CoilClearOfFrost)
        .Use(OperatingStateMessages.ReadingAuxiliaryHeat, _reading.AuxiliaryHeat);
}
