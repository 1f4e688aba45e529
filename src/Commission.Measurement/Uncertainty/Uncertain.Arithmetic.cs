namespace Commission.Measurement.Uncertainty;

/// <content>Arithmetic, with exact partial derivatives.</content>
public sealed partial class Uncertain
{
    /// <summary>Sum.</summary>
    public static Uncertain operator +(Uncertain left, Uncertain right) => WithPartials(left.Value + right.Value, (left, 1), (right, 1));

    /// <summary>Sum with a number without doubt.</summary>
    public static Uncertain operator +(Uncertain left, double right) => new(left.Value + right, left.contributions);

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

    /// <summary>Quotient of a number without doubt.</summary>
    public static Uncertain operator /(double left, Uncertain right) =>
        WithPartials(left / right.Value, (right, -left / (right.Value * right.Value)));

    /// <summary>Square root of a positive number.</summary>
    /// <param name="value">The number.</param>
    public static Uncertain Sqrt(Uncertain value)
    {
        var root = Math.Sqrt(value.Value);
        return WithPartials(root, (value, 0.5 / root));
    }

    /// <summary>Natural logarithm of a positive number.</summary>
    /// <param name="value">The number.</param>
    public static Uncertain Log(Uncertain value) => WithPartials(Math.Log(value.Value), (value, 1 / value.Value));

    /// <summary>Exponential.</summary>
    /// <param name="value">The exponent.</param>
    public static Uncertain Exp(Uncertain value)
    {
        var result = Math.Exp(value.Value);
        return WithPartials(result, (value, result));
    }
}
