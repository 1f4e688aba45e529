using System.Diagnostics.CodeAnalysis;

namespace Commission.Fluids;

/// <summary>A property, or the plain reason why there is none. States that do not exist are results, not exceptions.</summary>
/// <typeparam name="T">What was asked for.</typeparam>
public readonly struct FluidResult<T>
    where T : struct
{
    private readonly T _value;

    private FluidResult(T value, string? reason)
    {
        _value = value;
        Reason = reason;
    }

    /// <summary>True when there is a value. The default of the struct has neither value nor success.</summary>
    [MemberNotNullWhen(false, nameof(Reason))]
    public bool Ok => Reason is null;

    /// <summary>The value; only when <see cref="Ok"/>.</summary>
    /// <exception cref="InvalidOperationException">There is no value: a fault of the caller, who did not ask <see cref="Ok"/>.</exception>
    public T Value => Ok ? _value : throw new InvalidOperationException("No value: " + Reason);

    /// <summary>Why there is no value, as a sentence for people; null when there is one.</summary>
    public string? Reason { get; }

    /// <summary>A result with a value.</summary>
    /// <param name="value">The value.</param>
    public static FluidResult<T> Of(T value) => new(value, null);

    /// <summary>A result without a value.</summary>
    /// <param name="reason">A sentence for people.</param>
    public static FluidResult<T> None(string reason) => new(default, reason);
}
