using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Units;

/// <summary>What a maker says of an instrument: <c>0.5 % of full scale</c>, <c>1.5 % of reading + 3 digits</c>, <c>0.9 °F</c>, <c>±0.5 K (k=2)</c>, <c>1.1 °C or 0.4 % of reading</c> (the greater). A bound that is never exceeded unless it gives k (GUM 4.3.7).</summary>
public sealed class AccuracyStatement
{
    private readonly AccuracyTerm[][] alternatives;

    internal AccuracyStatement(AccuracyTerm[][] alternatives, double? coverageFactor, string canonical)
    {
        this.alternatives = alternatives;
        CoverageFactor = coverageFactor;
        Canonical = canonical;
    }

    /// <summary>The canonical spelling.</summary>
    public string Canonical { get; }

    /// <summary>Coverage factor when the statement gives one; otherwise the statement is a rectangular bound.</summary>
    public double? CoverageFactor { get; }

    /// <summary>Whether a part of it is of the full scale, which must then be known.</summary>
    public bool NeedsFullScale => Has(AccuracyTermKind.FullScale);

    /// <summary>Whether a part of it is in digits: the resolution must be known, and is already inside the bound.</summary>
    public bool IncludesDigits => Has(AccuracyTermKind.Digits);

    /// <summary>Reads a statement.</summary>
    /// <param name="text">The text as written.</param>
    /// <param name="dimension">What the instrument reads.</param>
    public static ParseResult<AccuracyStatement> Parse(string text, Dimension dimension) => AccuracyReader.Read(text, dimension);

    /// <summary>Half the width of the bound at a reading, SI; nothing when the full scale or the resolution it needs is not given.</summary>
    /// <param name="reading">The reading in the instrument's own unit: a percentage of 50 °F is not that of 10 °C.</param>
    /// <param name="unit">The instrument's unit.</param>
    /// <param name="fullScaleSi">Full scale as an SI difference from the instrument's zero.</param>
    /// <param name="resolutionSi">One step of the indication as an SI difference.</param>
    public double? HalfWidthAt(double reading, Unit unit, double? fullScaleSi = null, double? resolutionSi = null)
    {
        if ((NeedsFullScale && fullScaleSi is null) || (IncludesDigits && resolutionSi is null))
            return null;
        return alternatives.Max(terms => terms.Sum(term => term.Kind switch
        {
            AccuracyTermKind.FullScale => term.Amount * Math.Abs(fullScaleSi.GetValueOrDefault()),
            AccuracyTermKind.Reading => term.Amount * Math.Abs(reading) * unit.Factor,
            AccuracyTermKind.Digits => term.Amount * resolutionSi.GetValueOrDefault(),
            _ => term.Amount,
        }));
    }

    /// <summary>The root cause of an instrument with this statement. Made once for an instrument and shared by all its readings, each with its own <see cref="HalfWidthAt"/> as sensitivity, so that a difference of two readings knows they came from one instrument.</summary>
    /// <param name="name">What it is, in words for the budget.</param>
    /// <param name="source">Where the statement comes from.</param>
    public RootCause ToRootCause(string name, string source) => CoverageFactor is { } k
        ? new RootCause(name, source, 1 / k, kind: CauseKind.Accuracy)
        : RootCause.FromHalfWidth(name, source, 1, kind: CauseKind.Accuracy);

    /// <summary>What makes one reading doubtful: the instrument's cause at this reading and, unless it is already inside the statement, one step of the indication.</summary>
    /// <param name="cause">The instrument's cause, from <see cref="ToRootCause"/>.</param>
    /// <param name="name">The reading, in words for the budget.</param>
    /// <param name="reading">The reading in the instrument's own unit.</param>
    /// <param name="unit">The instrument's unit.</param>
    /// <param name="fullScaleSi">Full scale as an SI difference.</param>
    /// <param name="resolutionSi">One step of the indication as an SI difference.</param>
    /// <returns>The terms; nothing when a figure the statement needs is not given.</returns>
    public RootTerm[]? TermsAt(RootCause cause, string name, double reading, Unit unit, double? fullScaleSi = null, double? resolutionSi = null)
    {
        if (HalfWidthAt(reading, unit, fullScaleSi, resolutionSi) is not { } halfWidth)
            return null;
        return resolutionSi is { } step && !IncludesDigits
            ? [cause * halfWidth, RootCause.FromResolution($"{name}: resolution", "smallest step of the indication", step)]
            : [cause * halfWidth];
    }

    /// <inheritdoc/>
    public override string ToString() => Canonical;

    private bool Has(AccuracyTermKind kind) => alternatives.Any(terms => terms.Any(term => term.Kind == kind));
}
