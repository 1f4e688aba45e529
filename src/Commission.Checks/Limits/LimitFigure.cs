using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Checks.Limits;

/// <summary>One number of a limit.</summary>
/// <param name="Si">Value in SI; of a gauge pressure above the atmosphere, in Pa; of a calendar span in months.</param>
/// <param name="Text">The canonical spelling, with the digits as written.</param>
/// <param name="Unit">The unit it was written in; null for a calendar span.</param>
/// <param name="Decimals">Decimals as written.</param>
internal sealed record LimitFigure(double Si, string Text, Unit? Unit, int Decimals)
{
    /// <summary>What a pressure is counted from; null for everything else.</summary>
    public PressureReference? Reference => Unit?.Reference;

    /// <summary>The pressure under an atmosphere. Only for pressures.</summary>
    /// <param name="atmosphere">Atmospheric pressure at the site.</param>
    /// <returns>Absolute pressure.</returns>
    /// <exception cref="InvalidOperationException">The figure is not a pressure: a fault of this program.</exception>
    public Pressure ToAbsolute(Pressure atmosphere) =>
        new StatedPressure(Si, Reference ?? throw new InvalidOperationException($"{Text} is not a pressure.")).ToAbsolute(atmosphere);
}
