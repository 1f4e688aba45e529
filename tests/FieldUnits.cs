using Commission.Measurement.Units;

namespace Commission.Measurement.Quantities;

/// <summary>Quantities in the units in which sources print them, for tests: by the unit table, which is itself checked against sources outside.</summary>
internal static class FieldUnits
{
    extension(Pressure pressure)
    {
        public double Pascals => pressure.Si;

        public double Psia => In("psia", Dimension.Pressure, pressure.Si);

        public double Microns => In("micron", Dimension.Pressure, pressure.Si);

        public double InchesOfMercury => In("inHg abs", Dimension.Pressure, pressure.Si);

        public static Pressure FromMicrons(double value) => Of<Pressure>(value, "micron");
    }

    extension(PressureDifference difference)
    {
        public double Pascals => difference.Si;

        public static PressureDifference FromInchesOfWater(double value) => Of<PressureDifference>(value, "inwc");
    }

    extension(Temperature)
    {
        public static Temperature FromFahrenheit(double value) => Of<Temperature>(value, "°F");
    }

    extension(TemperatureDifference difference)
    {
        public double FahrenheitDegrees => In("°F", Dimension.TemperatureDifference, difference.Si);
    }

    extension(Mass mass)
    {
        public double Kilograms => mass.Si;

        public double Ounces => In("oz", Dimension.Mass, mass.Si);

        public static Mass FromPounds(double value) => Of<Mass>(value, "lb");

        public static Mass FromOunces(double value) => Of<Mass>(value, "oz");
    }

    extension(Length length)
    {
        public double Inches => In("in", Dimension.Length, length.Si);

        public static Length FromFeet(double value) => Of<Length>(value, "ft");

        public static Length FromInches(double value) => Of<Length>(value, "in");

        public static Length FromMillimeters(double value) => Of<Length>(value, "mm");
    }

    extension(Duration)
    {
        public static Duration FromMinutes(double value) => Of<Duration>(value, "min");

        public static Duration FromHours(double value) => Of<Duration>(value, "h");
    }

    extension(Power power)
    {
        public double BtuPerHour => In("Btu/h", Dimension.Power, power.Si);

        public static Power FromTonsOfRefrigeration(double value) => Of<Power>(value, "ton");
    }

    extension(Velocity velocity)
    {
        public double FeetPerMinute => In("fpm", Dimension.Velocity, velocity.Si);
    }

    extension(Ratio)
    {
        public static Ratio FromPercent(double value) => Of<Ratio>(value, "%");
    }

    private static double In(string symbol, Dimension dimension, double si) => UnitTable.Find(symbol, dimension)!.FromSi(si);

    private static T Of<T>(double value, string symbol)
        where T : struct, IQuantity<T> => T.FromSi(UnitTable.Find(symbol, T.Dimension)!.ToSi(value));
}
