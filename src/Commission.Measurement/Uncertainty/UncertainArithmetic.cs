namespace Commission.Measurement.Uncertainty;

/// <content>Arithmetic, with exact partial derivatives.</content>
public sealed partial class Uncertain
{
    /// <summary>Sum.</summary>
    public static Uncertain operator +(Uncertain left, Uncertain right) => WithPartials(left.Value + right.Value, (left, 1), (right, 1));

    /// <summary>Sum with a number without doubt.</summary>
    public static Uncertain operator +(Uncertain left, double right) => new(left.Value + right, left._contributions);

    /// <summary>Sum with a number without doubt.</summary>
    public static Uncertain operator +(double left, Uncertain right) => right + left;

    /// <summary>Difference; shared causes cancel.</summary>
    public static Uncertain operator -(Uncertain left, Uncertain right) => WithPartials(left.Value - right.Value, (left, 1), (right, -1));

    /// <summary>Difference with a number without doubt.</summary>
    public static Uncertain operator -(Uncertain left, double right) => left + -right;

    /// <summary>Difference from a number without doubt.</summary>
    public static Uncertain operator -(double left, Uncertain right) => WithPartials(left - right.Value, (right, -1));

    /// <summary>The opposite.</summary>
    public static Uncertain operator -(Uncertain value) => 0.0 - value;

    /// <summary>The size of a value, with the whole of its doubt: near zero the slope of |x| says nothing, and an error of about nothing is known no better than any other.</summary>
    /// <param name="value">The value.</param>
    public static Uncertain Abs(Uncertain value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return value.Value < 0 ? -value : value;
    }

    /// <summary>Product.</summary>
    public static Uncertain operator *(Uncertain left, Uncertain right) =>
        WithPartials(left.Value * right.Value, (left, right.Value), (right, left.Value));

    /// <summary>Product with a number without doubt.</summary>
    public static Uncertain operator *(Uncertain left, double right) => WithPartials(left.Value * right, (left, right));

    /// <summary>Product with a number without doubt.</summary>
    public static Uncertain operator *(double left, Uncertain right) => right * left;

    /// <summary>Quotient. A zero divisor gives an infinite or undefined result as in IEEE 754.</summary>
    public static Uncertain operator /(Uncertain left, Uncertain right) =>
        WithPartials(left.Value / right.Value, (left, 1 / right.Value), (right, -left.Value / (right.Value * right.Value)));

    /// <summary>Quotient with a number without doubt.</summary>
    public static Uncertain operator /(Uncertain left, double right) => left * (1 / right);

    // Small enough that curvature does not matter, large enough that the noise of an iterative function does not.
    private const double StepOfUncertainty = 0.1;
    private const double LeastRelativeStep = 1e-8;

    /// <summary>A function of one input.</summary>
    /// <param name="f">The function; may return NaN outside its range.</param>
    /// <param name="x">The input.</param>
    public static Uncertain Apply(Func<double, double> f, Uncertain x)
    {
        var value = f(x.Value);
        return WithPartials(value, (x, Partial(f, x, value)));
    }

    /// <summary>A function of two inputs.</summary>
    /// <param name="f">The function; may return NaN outside its range.</param>
    /// <param name="x">First input.</param>
    /// <param name="y">Second input.</param>
    public static Uncertain Apply(Func<double, double, double> f, Uncertain x, Uncertain y)
    {
        var value = f(x.Value, y.Value);
        return WithPartials(
            value,
            (x, Partial(v => f(v, y.Value), x, value)),
            (y, Partial(v => f(x.Value, v), y, value)));
    }

    /// <summary>A function of three inputs.</summary>
    /// <param name="f">The function; may return NaN outside its range.</param>
    /// <param name="x">First input.</param>
    /// <param name="y">Second input.</param>
    /// <param name="z">Third input.</param>
    public static Uncertain Apply(Func<double, double, double, double> f, Uncertain x, Uncertain y, Uncertain z)
    {
        var value = f(x.Value, y.Value, z.Value);
        return WithPartials(
            value,
            (x, Partial(v => f(v, y.Value, z.Value), x, value)),
            (y, Partial(v => f(x.Value, v, z.Value), y, value)),
            (z, Partial(v => f(x.Value, y.Value, v), z, value)));
    }

    /// <summary>A function of any number of inputs.</summary>
    /// <param name="f">The function of the inputs in order; may return NaN outside its range; must not keep or change the array.</param>
    /// <param name="inputs">The inputs.</param>
    public static Uncertain Apply(Func<double[], double> f, IReadOnlyList<Uncertain> inputs)
    {
        var point = inputs.Select(x => x.Value).ToArray();
        var value = f(point);
        var partials = new (Uncertain Input, double Partial)[inputs.Count];
        for (var i = 0; i < inputs.Count; i++)
        {
            var at = i;
            partials[i] = (inputs[i], Partial(v => f([.. point[..at], v, .. point[(at + 1)..]]), inputs[i], value));
        }

        return WithPartials(value, partials);
    }

    // One-sided where the function ends on the other side; NaN where it exists on neither, so that the result cannot look certain.
    private static double Partial(Func<double, double> f, Uncertain x, double value)
    {
        if (x.StandardUncertainty == 0)
            return 0;
        var step = Math.Max(StepOfUncertainty * x.StandardUncertainty, LeastRelativeStep * Math.Abs(x.Value));
        double high = x.Value + step, low = x.Value - step;
        double above = f(high), below = f(low);
        return (double.IsFinite(above), double.IsFinite(below)) switch
        {
            (true, true) => (above - below) / (high - low),
            (true, false) => (above - value) / (high - x.Value),
            (false, true) => (value - below) / (x.Value - low),
            _ => double.NaN,
        };
    }
}
