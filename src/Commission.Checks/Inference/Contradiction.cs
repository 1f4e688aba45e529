using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using static Commission.Messages.DiagnosisMessages;

namespace Commission.Checks.Inference;

/// <summary>Readings of one row that cannot be right together, beyond their uncertainty: heat flows from warm to cold, and two phases share one temperature.</summary>
internal static class Contradiction
{
    // A clamp in the sun, a sensor at the edge of a stream: so much is a reading's own affair, no contradiction (common practice, no source).
    private const double Allowance = 1.5;

    /// <summary>The first contradiction, without a full stop; null when the readings fit together.</summary>
    public static Message? In(CheckContext context, ChargeAnalysis charge, ChargeRow row)
    {
        if (row.Mode != OperatingMode.Cooling || row.Settling.Block is not null)
            return null;
        return Cold(context, ContradictionWhat.OutdoorOverCondensing, row.LiquidDew?.Value, row.OutdoorDryBulb?.Value)
            ?? Cold(context, ContradictionWhat.LiquidOverCondensing, row.LiquidDew?.Value, row.LiquidLine?.Value)
            ?? Cold(context, ContradictionWhat.VaporUnderBoiling, row.VaporLine?.Value, row.VaporBubble?.Value)
            ?? Cold(context, ContradictionWhat.SupplyUnderBoiling, row.SupplyDryBulb?.Value, row.VaporBubble?.Value)
            ?? (charge.DriesAir ? null : Cold(context, ContradictionWhat.SupplyOverReturn, row.ReturnDryBulb?.Value, row.SupplyDryBulb?.Value))
            ?? (charge.IsRefrigeration ? null : Cold(context, ContradictionWhat.LiquidUnderOutdoor, row.LiquidLine?.Value, row.OutdoorDryBulb?.Value));
    }

    private static Message? Cold(CheckContext context, ContradictionWhat what, Uncertain? warmer, Uncertain? colder)
    {
        if (warmer is null || colder is null)
            return null;
        var wrong = colder - warmer;
        return wrong.Value > wrong.Expanded + Allowance ? DiagnosisMessages.Contradiction(what, context.Present.InMessage(wrong, DisplayKind.TemperatureDifference)) : null;
    }
}
