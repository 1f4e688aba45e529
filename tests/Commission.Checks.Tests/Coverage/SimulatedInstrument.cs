namespace Commission.Checks.Tests.Coverage;

/// <summary>What a maker states of an instrument, and where its errors begin.</summary>
/// <param name="Text">As the job file has it, without resolution.</param>
/// <param name="HalfWidth">The bound of the statement at a reading, SI.</param>
/// <param name="Zero">The reading from which gain and bow count: nothing applied, or the ice point.</param>
/// <param name="Span">The distance over which they are spread: full scale, or 50 K for thermometers.</param>
internal sealed record Statement(string Text, Func<double, double> HalfWidth, double Zero, double Span)
{
    /// <summary>Growth of the tolerance for each kelvin from the ice point, for a sensor of a class: it bounds gain and bow of the wire or element (IEC 60584-1 and IEC 60751, from memory).</summary>
    public double? Slope { get; init; }

    /// <summary>Whether the part that every place has of its own is how the sensor sits there, which a stirred bath does not show.</summary>
    public bool IsPlaced { get; init; }
}

/// <summary>
/// An instrument with the true errors of one day. <see cref="ErrorModel.Offset"/>: e = A·c, c rectangular. Otherwise e = A·(√½·c + √½·p): c of the
/// instrument, p of the place, p = a·o + b·g·ξ + b·q·(1.5ξ² − 0.5) with o, g, q rectangular and ξ the distance from zero over the span; a² = ½ and
/// b² = 15/16, so that over ξ from −1 to 1 the variance of p is ⅓ (Legendre: ⅓ for ξ, ⅕ for the bow) and half of it is offset. A gauge's statement
/// holds linearity, hysteresis and repeatability in one figure (ASME B40.100, EN 837-1, from memory), which is why not all of it is an offset.
/// </summary>
/// <remarks>Short-term repeatability comes on top: normal, 2 % of A or a tenth of a digit, whichever is more (assumed).</remarks>
internal sealed class SimulatedInstrument(Draws draws, ErrorModel model, Statement statement, Display display)
{
    private const double Repeatability = 0.02;
    private const double RepeatabilityOfDigit = 0.1;
    private static readonly double Share = Math.Sqrt(0.5);
    private static readonly double Gain = Math.Sqrt(15.0 / 16);

    private readonly Dictionary<string, double> _common = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (double Offset, double Gain, double Bow)> _places = new(StringComparer.Ordinal);
    private double _shift;

    public Statement Statement => statement;

    public Display Display => display;

    /// <summary>What it would show of a true value, before rounding.</summary>
    /// <param name="place">Where it reads; every place has errors of its own.</param>
    /// <param name="si">The true value at its sensor.</param>
    /// <param name="probe">The sensor, where one instrument has several.</param>
    /// <param name="inBath">Whether the sensor is in a bath rather than at its place.</param>
    public double Raw(string place, double si, string probe = "", bool inBath = false) =>
        Quiet(place, si, probe, inBath) + Math.Max(Repeatability * statement.HalfWidth(si), RepeatabilityOfDigit * display.Digit) * draws.Normal();

    /// <summary>The same without short-term repeatability, where that is drawn row by row.</summary>
    public double Quiet(string place, double si, string probe = "", bool inBath = false) => si + Error(place, si, probe, inBath) + _shift;

    /// <summary>A reading as written.</summary>
    public string Read(string place, double si, string probe = "", bool inBath = false) => display.Text(Raw(place, si, probe, inBath));

    /// <summary>Sets it to a value it ought to show, by what it shows at that moment.</summary>
    public void Adjust(string place, double si, bool inBath = false) => _shift += si - Raw(place, si, inBath: inBath);

    private double Error(string place, double si, string probe, bool inBath)
    {
        var half = statement.HalfWidth(si);
        var c = Of(_common, probe, () => draws.Either());
        if (model == ErrorModel.Offset)
            return half * c;
        var (offset, gain, bow) = Of(_places, $"{probe} {place}", () => (draws.Either(), draws.Either(), draws.Either()));
        var here = inBath && statement.IsPlaced ? 0 : offset;
        var far = (si - statement.Zero) / statement.Span;
        return statement.Slope is { } slope
            ? Share * (statement.HalfWidth(statement.Zero) * (c + here) + slope * (si - statement.Zero) * (gain + bow * Math.Abs(far)))
            : Share * half * (c + Share * here + Gain * (gain * far + bow * (1.5 * far * far - 0.5)));
    }

    private static T Of<T>(Dictionary<string, T> known, string key, Func<T> draw)
    {
        if (!known.TryGetValue(key, out var value))
            known[key] = value = draw();
        return value;
    }
}
