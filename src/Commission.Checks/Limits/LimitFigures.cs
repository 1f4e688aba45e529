using Commission.Measurement.Quantities;

namespace Commission.Checks.Limits;

/// <summary>What a difference of two figures is measured in.</summary>
internal static class LimitFigures
{
    /// <summary>The quantity of a tolerance around a figure: a temperature's is a difference, a pressure's too.</summary>
    /// <param name="quantity">What the figure is measured in.</param>
    /// <returns>What its tolerance is measured in.</returns>
    public static Dimension DifferenceOf(Dimension quantity) => quantity switch
    {
        Dimension.Temperature => Dimension.TemperatureDifference,
        Dimension.Pressure or Dimension.VacuumLevel or Dimension.AtmosphericPressure => Dimension.PressureDifference,
        _ => quantity,
    };
}
