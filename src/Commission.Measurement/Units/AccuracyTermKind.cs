namespace Commission.Measurement.Units;

/// <summary>What a term of an accuracy statement is a part of.</summary>
internal enum AccuracyTermKind
{
    FullScale,
    Reading,
    Digits,
    Amount,
}
