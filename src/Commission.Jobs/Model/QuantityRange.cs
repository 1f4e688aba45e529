namespace Commission.Jobs.Model;

/// <summary>A range such as <c>208 to 230 V</c>; a single value is a range of no width.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="Low">The lower end.</param>
/// <param name="High">The upper end.</param>
public readonly record struct QuantityRange<T>(T Low, T High);
