using Commission.Messages;

namespace Commission.Checks.Formulas;

/// <summary>Heat that liquid water carries: density times specific heat at atmospheric pressure, J/(m³·K), from handbook tables of water (from memory).</summary>
internal static class WaterHeat
{
    /// <summary>The formula, as a trace prints it.</summary>
    public static Message Formula => FormulasMessages.WaterHeat;

    /// <summary>Where the numbers come from.</summary>
    public static Message Source => FormulasMessages.WaterHeatSource;

    // Every 10 K from 0 °C: kg/m³ and J/(kg·K).
    private static readonly (double Density, double Heat)[] Table =
    [
        (999.8, 4219), (999.7, 4195), (998.2, 4184), (995.6, 4180), (992.2, 4179), (988.0, 4181), (983.2, 4185), (977.8, 4190), (971.8, 4197), (965.3, 4206), (958.4, 4216),
    ];

    /// <summary>Density times specific heat.</summary>
    /// <param name="temperature">K; between 0 and 100 °C, outside the nearest end.</param>
    public static double PerVolume(double temperature)
    {
        var at = Math.Clamp((temperature - 273.15) / 10, 0, Table.Length - 1);
        var low = Math.Min((int)at, Table.Length - 2);
        return Of(low) + ((at - low) * (Of(low + 1) - Of(low)));
    }

    private static double Of(int row) => Table[row].Density * Table[row].Heat;
}
