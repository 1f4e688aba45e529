using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Runtime.InteropServices;
using Commission.Messages;

namespace Commission.Fluids;

/// <summary>A property, or the plain reason why there is none. States that do not exist are results, not exceptions.</summary>
/// <typeparam name="T">What was asked for.</typeparam>
public readonly struct FluidResult<T>
    where T : struct
{
    private readonly T _value;
    private readonly Message? _reason;

    private FluidResult(T value)
    {
        _value = value;
        Ok = true;
    }

    private FluidResult(Message reason) => _reason = reason;

    /// <summary>True when there is a value; false for the default of the struct.</summary>
    [MemberNotNullWhen(false, nameof(Reason))]
    public bool Ok { get; }

    /// <summary>The value; only when <see cref="Ok"/>.</summary>
    /// <exception cref="InvalidOperationException">There is no value: a fault of the caller, who did not ask <see cref="Ok"/>.</exception>
    public T Value => Ok ? _value : throw new InvalidOperationException("No value: " + MessageWriter.Words.Format(Reason, Language.English));

    /// <summary>Why there is no value, without a full stop; null when there is one.</summary>
    public Message? Reason => Ok ? null : _reason ?? FluidsMessages.NothingAsked;

    /// <summary>A result with a value.</summary>
    /// <param name="value">The value.</param>
    public static FluidResult<T> Of(T value) => new(value);

    /// <summary>A result without a value.</summary>
    /// <param name="reason">Why, without a full stop.</param>
    public static FluidResult<T> None(Message reason) => new(reason);
}

/// <summary>Temperatures and pressures as a reason names them.</summary>
internal static class FluidText
{
    public static SymbolsValue Celsius(double kelvin)
    {
        var c = kelvin - 273.15;
        return new(string.Create(CultureInfo.InvariantCulture, $"{c:0.00} °C ({c * 1.8 + 32:0.0} °F)"));
    }

    public static Message Kilopascals(double pascals) => FluidsMessages.Pressure(
        new((pascals / 1000).ToString("0.#####", CultureInfo.InvariantCulture)), new((pascals / 6894.757293168).ToString("0.####", CultureInfo.InvariantCulture)));
}

/// <summary>A thermodynamic state of the refrigerant in its designated composition.</summary>
/// <param name="Phase">What it is.</param>
/// <param name="Temperature">K.</param>
/// <param name="Pressure">Pa absolute.</param>
/// <param name="Density">kg/m³ (of both phases together when two-phase).</param>
/// <param name="Enthalpy">J/kg, on the reference state of <see cref="Refrigerant.ReferenceState"/>.</param>
/// <param name="Entropy">J/(kg K).</param>
/// <param name="VaporFraction">Mass of vapour per mass, 0…1; 0 for liquid, 1 for vapour and above the critical temperature.</param>
/// <param name="IsobaricHeatCapacity">cp, J/(kg K); null when two-phase.</param>
/// <param name="IsochoricHeatCapacity">cv, J/(kg K); null when two-phase.</param>
/// <param name="SpeedOfSound">m/s; null when two-phase.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct FluidState(
    Phase Phase,
    double Temperature,
    double Pressure,
    double Density,
    double Enthalpy,
    double Entropy,
    double VaporFraction,
    double? IsobaricHeatCapacity,
    double? IsochoricHeatCapacity,
    double? SpeedOfSound);

/// <summary>Which branch of the equation of state a density is looked for on, or what a state is.</summary>
public enum Phase
{
    /// <summary>Liquid, also compressed and metastable liquid.</summary>
    Liquid,

    /// <summary>Vapour, also superheated and metastable vapour.</summary>
    Vapor,

    /// <summary>Liquid and vapour together.</summary>
    TwoPhase,

    /// <summary>Above the critical temperature: one fluid.</summary>
    Supercritical,
}
