using Commission.Measurement.Quantities;

namespace Commission.Measurement.Units;

/// <summary>A unit: how it is written and what one of it is in SI, SI = (value + offset) × factor.</summary>
public sealed class Unit
{
    internal Unit(string symbol, Dimension dimension, double factor, double offset, PressureReference? reference, IReadOnlyList<string> aliases)
    {
        Symbol = symbol;
        Dimension = dimension;
        Factor = factor;
        Offset = offset;
        Reference = reference;
        Aliases = aliases;
    }

    /// <summary>Canonical spelling, as the record prints it. The unit of a pure number is written <c>1</c> and not printed.</summary>
    public string Symbol { get; }

    /// <summary>Other spellings that are understood.</summary>
    public IReadOnlyList<string> Aliases { get; }

    /// <summary>What it measures.</summary>
    public Dimension Dimension { get; }

    /// <summary>SI units in one of it.</summary>
    public double Factor { get; }

    /// <summary>Added to the value before the factor; zero except for temperatures.</summary>
    public double Offset { get; }

    /// <summary>What a pressure in this unit is counted from; nothing for anything else, and for pressure differences.</summary>
    public PressureReference? Reference { get; }

    /// <summary>SI value of a number in this unit. A depth below atmosphere stays a positive depth in Pa.</summary>
    /// <param name="value">Number in this unit.</param>
    public double ToSi(double value) => (value + Offset) * Factor;

    /// <summary>Number in this unit of an SI value.</summary>
    /// <param name="si">SI value.</param>
    public double FromSi(double si) => (si / Factor) - Offset;

    /// <inheritdoc/>
    public override string ToString() => Symbol;
}
