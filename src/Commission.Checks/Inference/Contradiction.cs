using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;

namespace Commission.Checks.Inference;

/// <summary>Readings of one row that cannot be right together, beyond their uncertainty: heat flows from warm to cold, and two phases share one temperature.</summary>
internal static class Contradiction
{
    // A clamp in the sun, a sensor at the edge of a stream: so much is a reading's own affair, no contradiction (common practice, no source).
    private const double Allowance = 1.5;

    /// <summary>The first contradiction, without a full stop; null when the readings fit together.</summary>
    public static string? In(CheckContext context, ChargeAnalysis charge, ChargeRow row)
    {
        if (row.Mode != OperatingMode.Cooling || row.Settling.Block is not null)
            return null;
        return Cold(context, "the outdoor air is warmer than the refrigerant condenses", row.LiquidDew?.Value, row.OutdoorDryBulb?.Value)
            ?? Cold(context, "the liquid line is warmer than the refrigerant condenses", row.LiquidDew?.Value, row.LiquidLine?.Value)
            ?? Cold(context, "the vapor line is colder than the refrigerant boils", row.VaporLine?.Value, row.VaporBubble?.Value)
            ?? Cold(context, "the supply air is colder than the refrigerant boils", row.SupplyDryBulb?.Value, row.VaporBubble?.Value)
            ?? Cold(context, "the supply air is warmer than the return air", row.ReturnDryBulb?.Value, row.SupplyDryBulb?.Value)
            ?? (charge.IsRefrigeration ? null : Cold(context, "the liquid line is colder than the outdoor air that cools it", row.LiquidLine?.Value, row.OutdoorDryBulb?.Value));
    }

    private static string? Cold(CheckContext context, string sentence, Uncertain? warmer, Uncertain? colder)
    {
        if (warmer is null || colder is null)
            return null;
        var wrong = colder - warmer;
        return wrong.Value > wrong.Expanded + Allowance ? $"{sentence}, by {context.Present.Text(wrong, DisplayKind.TemperatureDifference)}" : null;
    }
}
