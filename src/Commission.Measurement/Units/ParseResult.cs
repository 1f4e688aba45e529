using System.Diagnostics.CodeAnalysis;

namespace Commission.Measurement.Units;

/// <summary>Something that was read, or why it could not be.</summary>
/// <typeparam name="T">What is read.</typeparam>
public sealed class ParseResult<T>
    where T : class
{
    private ParseResult(T? value, ParseFault? fault)
    {
        Value = value;
        Fault = fault;
    }

    /// <summary>Whether it could be read.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    [MemberNotNullWhen(false, nameof(Fault))]
    public bool Ok => Value is not null;

    /// <summary>What was read; nothing when it could not be.</summary>
    public T? Value { get; }

    /// <summary>Why it could not be read; nothing when it was.</summary>
    public ParseFault? Fault { get; }

    /// <summary>It was read.</summary>
    public static implicit operator ParseResult<T>(T value) => new(value, null);

    /// <summary>It could not be read.</summary>
    public static implicit operator ParseResult<T>(ParseFault fault) => new(null, fault);

    internal ParseResult<TOther> Then<TOther>(Func<T, ParseResult<TOther>> next)
        where TOther : class => Ok ? next(Value) : Fault;
}
