using Commission.Measurement.Quantities;

namespace Commission.Measurement.Units;

/// <summary>Refuses values that cannot be.</summary>
internal static class Possibility
{
    // The highest sea-level pressure ever recorded is about 108 kPa: no depth reaches further.
    private const double DeepestVacuum = 110e3;

    public static ParseResult<WrittenValue> Check(WrittenValue value, Dimension dimension)
    {
        var written = value.Excerpt.Written;
        var at = value.Excerpt.Start;
        if (!double.IsFinite(value.Si))
            return FaultText.TooLarge(written, at);
        if (dimension == Dimension.Temperature && value.Si < 0)
            return FaultText.Impossible(written, "is below absolute zero (−273.15 °C, −459.67 °F)", "Check the sign and the unit.", at);
        switch (value.Unit.Reference)
        {
            case PressureReference.Absolute when value.Si < 0:
                return FaultText.Impossible(written, "is an absolute pressure below zero", "Check the sign; a reading of a service gauge is gauge pressure.", at);
            case PressureReference.Gauge when value.Si < -DeepestVacuum:
                return FaultText.Impossible(written, "is lower than a perfect vacuum", "Check the sign and the unit.", at);
            case PressureReference.BelowAtmosphere when value.Si < 0:
                return FaultText.Impossible(written, "is a depth with a minus sign", "Write the depth without the sign.", at);
            case PressureReference.BelowAtmosphere when value.Si > DeepestVacuum:
                return FaultText.Impossible(written, "is deeper than a perfect vacuum", "Check the number and the unit.", at);
        }

        return value.Si < 0 && NeverNegative(dimension)
            ? FaultText.Impossible(written, $"is {DimensionName.WithArticle(dimension)} below zero", "Write it without the minus sign.", at)
            : value;
    }

    private static bool NeverNegative(Dimension dimension) => dimension is
        Dimension.Area or Dimension.Volume or Dimension.Duration or Dimension.VolumeFlow or Dimension.Velocity or Dimension.Torque
        or Dimension.ElectricCurrent or Dimension.Capacitance or Dimension.Resistance or Dimension.Frequency or Dimension.MassPerLength
        or Dimension.Density or Dimension.PowerPerFlow or Dimension.FlowPerPower;
}
