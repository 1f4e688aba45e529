namespace Commission.Measurement.Quantities;

/// <summary>A quantity whose zero is a true zero, so that two may be added and one may be doubled. Temperature and absolute pressure are not: they are points on a scale.</summary>
/// <typeparam name="TSelf">The quantity itself.</typeparam>
public interface ILinearQuantity<TSelf> : IQuantity<TSelf>
    where TSelf : struct, ILinearQuantity<TSelf>;
