using Commission.Checks.Formulas;
using Commission.Fluids.Air;
using Commission.Measurement.Quantities;

namespace Commission.Checks.Tests.Coverage;

/// <summary>The true air of a job. K, Pa, m³/s, W.</summary>
internal sealed class AirWorld
{
    private const double IcePoint = 273.15;

    /// <summary>How far real moist air lies from the perfect-gas relations in humidity ratio, rectangular (ASHRAE RP-1485 against the handbook's form, computed).</summary>
    private const double Form = 0.0055;

    private double _form;

    public double Atmosphere { get; private init; }

    public double Outdoor { get; private set; }

    public double Return { get; private set; }

    public double ReturnWet { get; private set; }

    public double Supply { get; private set; }

    public double SupplyWet { get; private set; }

    public double SplitTarget { get; private set; }

    /// <summary>Volume flow of the air that the blower draws in.</summary>
    public double Flow { get; private set; }

    /// <summary>Heat that the air gives up, W.</summary>
    public double Capacity => Mass * (Enthalpy(Return, ReturnWet) - Enthalpy(Supply, SupplyWet));

    /// <summary>The same air at the grilles, m³/s.</summary>
    public double SupplyFlow => Mass * Volume(Supply, SupplyWet);

    public double Split => Return - Supply;

    private double Mass => Flow / Volume(Return, ReturnWet);

    public static AirWorld Draw(Draws draws, double atmosphere)
    {
        while (true)
        {
            var air = new AirWorld
            {
                Atmosphere = atmosphere,
                _form = Form * draws.Either(),
                Outdoor = IcePoint + draws.Uniform(19, 40),
                Return = IcePoint + draws.Uniform(21.5, 28.5),
                Flow = draws.Uniform(0.3, 0.95),
            };
            air.ReturnWet = MoistAir.FromRelativeHumidity(air.Return, draws.Uniform(0.35, 0.65), atmosphere).Value.WetBulb;
            var table = CaliforniaSplitTable.At(Temperature.FromSi(air.Return), Temperature.FromSi(air.ReturnWet));
            if (!table.HasValue)
                continue;
            air.SplitTarget = table.Value.Si;
            air.Supply = air.Return - Math.Max(3, air.SplitTarget + 4 * draws.Either());

            // The coil dries the air or leaves its water as it is.
            var entering = MoistAir.FromWetBulb(air.Return, air.ReturnWet, atmosphere).Value.HumidityRatio;
            var wet = MoistAir.FromRelativeHumidity(air.Supply, draws.Uniform(0.7, 0.87), atmosphere).Value;
            air.SupplyWet = wet.HumidityRatio <= entering ? wet.WetBulb : MoistAir.FromHumidityRatio(air.Supply, entering, atmosphere).Value.WetBulb;
            return air;
        }
    }

    /// <summary>Rise of the return air when a known heat goes into the same volume flow at another temperature, K.</summary>
    /// <param name="watts">Heat of heater and blower.</param>
    /// <param name="entering">Return dry bulb in that test.</param>
    /// <param name="relativeHumidity">Its humidity.</param>
    public double Rise(double watts, double entering, double relativeHumidity)
    {
        var state = MoistAir.FromRelativeHumidity(entering, relativeHumidity, Atmosphere).Value;
        // 1006 J/(kg K) of dry air and 1860 of its vapor, ASHRAE Handbook, chapter 1 (from memory).
        return watts / (Flow / state.SpecificVolume * (1006 + 1860 * state.HumidityRatio));
    }

    private MoistAirState State(double dry, double wet) => MoistAir.FromWetBulb(dry, wet, Atmosphere).Value;

    private double Ratio(double dry, double wet) => State(dry, wet).HumidityRatio * (1 + _form);

    private double Enthalpy(double dry, double wet) => 1000 * (1.006 * (dry - IcePoint) + Ratio(dry, wet) * (2501 + 1.86 * (dry - IcePoint)));

    private double Volume(double dry, double wet) => 287.042 * dry * (1 + 1.607858 * Ratio(dry, wet)) / Atmosphere;
}
