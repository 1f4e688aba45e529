using System.Globalization;
using Commission.Measurement.Uncertainty;
using Commission.Messages;

namespace Commission.Measurement.Corrections;

/// <summary>What an instrument showed where it should show zero. The offset is always removed. Made once for an instrument, so that all its readings share the doubt of the zero.</summary>
/// <remarks>The reading and the zero each carry one step of the indication as a rectangle: their difference is the triangle of d/√6, without anything to add.</remarks>
public sealed class ZeroCheck
{
    private readonly string _name;

    /// <summary>A zero check.</summary>
    /// <param name="name">The instrument, for the budget.</param>
    /// <param name="shown">What it showed, SI difference from zero.</param>
    /// <param name="resolution">One step of its indication, SI; nothing when unknown.</param>
    public ZeroCheck(string name, double shown, double? resolution)
    {
        _name = name;
        Zero = resolution is { } step
            ? Uncertain.From(shown, RootCause.FromResolution(CorrectionsMessages.ZeroReading(new(name)), CorrectionsMessages.SmallestStep, step))
            : Uncertain.Exact(shown);
    }

    /// <summary>The zero as it was shown.</summary>
    public Uncertain Zero { get; }

    /// <summary>Removes the zero from a reading.</summary>
    /// <param name="scope">The scope of the computation.</param>
    /// <param name="reading">The reading, SI.</param>
    /// <param name="print">How numbers are written.</param>
    public Corrected Correct(IUncertaintyScope scope, Uncertain reading, CorrectionPrinter print)
    {
        var after = reading - scope.Input(Zero);
        var text = CorrectionsMessages.ZeroTakenOff(new(_name), print.Difference(Zero.Value), print.Value(reading.Value), print.Value(after.Value));
        return Corrected.Of(reading, after, CorrectionKind.Zero, text);
    }
}

/// <summary>A sensor put in ice water. What it showed too much is taken off every reading; what remains is the bath at that point and a part of the distance from it. Made once for a sensor.</summary>
public sealed class IcePointCheck
{
    /// <summary>Temperature of an ice bath, K. Altitude moves it by less than 0.005 K.</summary>
    public const double IcePoint = 273.15;

    /// <summary>How far a field bath may be from it, K, rectangular.</summary>
    public const double BathHalfWidth = 0.05;

    /// <summary>How much a cold junction follows the instrument's own temperature, K for each K, rectangular. Common practice and memory.</summary>
    public const double ColdJunctionDrift = 0.03;

    private readonly string _name;
    private readonly Uncertain _residual;
    private readonly RootCause? _slope;
    private readonly RootCause? _coldJunction;

    /// <summary>An ice point check.</summary>
    /// <param name="name">The sensor, for the budget.</param>
    /// <param name="shown">What it shows in the bath as it is now used, K: after an adjustment the adjusted reading, else the reading.</param>
    /// <param name="resolution">One step of its indication, K; nothing when unknown.</param>
    /// <param name="slope">How far the sensor may be off for each kelvin from the ice point, half a rectangular width: the proportional part of a thermocouple's class, or a part of the maker's accuracy; nothing when nothing is known of it.</param>
    /// <param name="isThermocouple">Whether a cold junction follows the instrument's own temperature.</param>
    public IcePointCheck(string name, double shown, double? resolution, double? slope, bool isThermocouple)
    {
        _name = name;
        var bath = RootCause.FromHalfWidth(CorrectionsMessages.IceBath(new(name)), CorrectionsMessages.FieldBath(new(string.Create(CultureInfo.InvariantCulture, $"±{BathHalfWidth} K"))), BathHalfWidth);
        _residual = resolution is { } step
            ? Uncertain.From(shown - IcePoint, bath, RootCause.FromResolution(CorrectionsMessages.ReadingInIce(new(name)), CorrectionsMessages.SmallestStep, step))
            : Uncertain.From(shown - IcePoint, bath);
        if (slope is { } perKelvin)
        {
            _slope = RootCause.FromHalfWidth(
                CorrectionsMessages.AwayFromIce(new(name)), isThermocouple ? CorrectionsMessages.SlopeOfClass : CorrectionsMessages.AccuracyAsSlope, perKelvin, kind: CauseKind.ShareOfDistance);
        }

        if (isThermocouple)
            _coldJunction = RootCause.FromHalfWidth(CorrectionsMessages.ColdJunction(new(name)), CorrectionsMessages.ColdJunctionDrift(new(ColdJunctionDrift.ToString(CultureInfo.InvariantCulture))), ColdJunctionDrift, kind: CauseKind.ColdJunction);
    }

    /// <summary>What the sensor shows too much at the ice point, K.</summary>
    public double Residual => _residual.Value;

    /// <summary>Corrects a reading.</summary>
    /// <param name="scope">The scope of the computation.</param>
    /// <param name="reading">The reading, K, with its resolution and what the place of the sensor adds.</param>
    /// <param name="print">How numbers are written.</param>
    /// <param name="instrumentWarming">Change of the instrument's own temperature since the check, K; zero when it stayed in place.</param>
    public Corrected Correct(IUncertaintyScope scope, Uncertain reading, CorrectionPrinter print, double instrumentWarming = 0)
    {
        var after = reading - scope.Input(_residual);
        if (_slope is not null)
            after += scope.Reading(0, _slope) * (reading.Value - _residual.Value - IcePoint);
        if (_coldJunction is not null)
            after += scope.Reading(0, _coldJunction) * instrumentWarming;
        return Corrected.Of(reading, after, CorrectionKind.IcePoint, CorrectionsMessages.IceTakenOff(new(_name), print.Difference(Residual), print.Value(reading.Value), print.Value(after.Value)));
    }
}

/// <summary>A known value put to an instrument and what it read.</summary>
/// <param name="Applied">The known value, SI, from the instrument's own zero.</param>
/// <param name="Read">What the instrument read, SI, from its own zero.</param>
/// <param name="StandardUncertainty">Standard uncertainty of the known value, SI; nothing when the reference states none.</param>
/// <param name="Reference">What the known value came from.</param>
public sealed record KnownPoint(double Applied, double Read, double? StandardUncertainty, string Reference);

/// <summary>Corrects an instrument along the line through the points where it was checked. The zero is always removed; the gain only where the reference states its uncertainty; beyond the points by a quarter of their span at most, with the uncertainty the longer lever gives. Made once for an instrument.</summary>
public sealed class PointToPointCheck
{
    /// <summary>How far beyond the checked points the line is followed, as a part of their span. Common practice, no source.</summary>
    public const double Reach = 0.25;

    private readonly string _name;
    private readonly ZeroCheck? _zero;
    private readonly KnownPoint[] _silent;
    private readonly Node[] _nodes;
    private readonly double _reachOfOne;

    /// <summary>A check at known points.</summary>
    /// <param name="name">The instrument, for the budget.</param>
    /// <param name="zero">Its zero check; nothing when none was made.</param>
    /// <param name="points">The known points, in any order, of different readings.</param>
    /// <param name="resolution">One step of the indication, SI; nothing when unknown.</param>
    /// <param name="reachOfOne">How far from one known point without a zero a reading is corrected, as a share of it.</param>
    public PointToPointCheck(string name, ZeroCheck? zero, IEnumerable<KnownPoint> points, double? resolution, double reachOfOne)
    {
        _name = name;
        _zero = zero;
        _reachOfOne = reachOfOne;
        var all = points.ToArray();
        _silent = [.. all.Where(p => p.StandardUncertainty is null)];
        _nodes = [.. all.Where(p => p.StandardUncertainty is not null).OrderBy(p => p.Read).Select((p, i) => new Node(p, Applied(p, i), Read(p, i, resolution)))];
    }

    /// <summary>Corrects a reading.</summary>
    /// <param name="scope">The scope of the computation.</param>
    /// <param name="reading">The reading, SI, from the instrument's own zero.</param>
    /// <param name="print">How numbers are written.</param>
    public Corrected Correct(IUncertaintyScope scope, Uncertain reading, CorrectionPrinter print)
    {
        var start = _zero?.Correct(scope, reading, print) ?? new Corrected(reading, []);
        foreach (var point in _silent)
            start = start.Then(value => Corrected.Unchanged(value, CorrectionKind.KnownPoints, Report(point, print)));
        return _nodes.Length == 0 ? start : start.Then(value => Follow(scope, value, print));
    }

    private Corrected Follow(IUncertaintyScope scope, Uncertain value, CorrectionPrinter print)
    {
        var offset = _zero is null ? Uncertain.Exact(0) : scope.Input(_zero.Zero);
        List<(Uncertain Read, Uncertain Applied)> line = [.. _nodes.Select(n => (scope.Input(n.Read) - offset, scope.Input(n.Applied)))];
        if (_zero is not null)
            line.Add((Uncertain.Exact(0), Uncertain.Exact(0)));
        line = [.. line.OrderBy(n => n.Read.Value)];

        var where = Describe(print);
        if (line.Count == 1)
        {
            if (Math.Abs(value.Value - line[0].Read.Value) > _reachOfOne * Math.Abs(line[0].Applied.Value))
                return Corrected.Unchanged(value, CorrectionKind.KnownPoints, CorrectionsMessages.TooFar(where, print.Value(value.Value)));
            var shifted = value + line[0].Applied - line[0].Read;
            return Corrected.Of(value, shifted, CorrectionKind.KnownPoints, CorrectionsMessages.Shifted(where, print.Value(value.Value), print.Value(shifted.Value)));
        }

        double low = line[0].Read.Value, high = line[^1].Read.Value, reach = Reach * (high - low);
        if (value.Value < low - reach || value.Value > high + reach)
            return Corrected.Unchanged(value, CorrectionKind.KnownPoints, CorrectionsMessages.TooFarBeyond(where, print.Value(value.Value)));

        var right = line.FindIndex(1, n => n.Read.Value >= value.Value);
        if (right < 0)
            right = line.Count - 1;
        var (read0, applied0) = line[right - 1];
        var (read1, applied1) = line[right];
        if (read0.Value.Equals(read1.Value))
            return Corrected.Unchanged(value, CorrectionKind.KnownPoints, CorrectionsMessages.SameReading(where));
        var after = applied0 + ((value - read0) * ((applied1 - applied0) / (read1 - read0)));
        var place = value.Value < low || value.Value > high ? CorrectionsMessages.StretchedPlace.Beyond : CorrectionsMessages.StretchedPlace.Between;
        return Corrected.Of(value, after, CorrectionKind.KnownPoints, CorrectionsMessages.Stretched(where, print.Value(value.Value), print.Value(after.Value), place));
    }

    private Message Describe(CorrectionPrinter print) => CorrectionsMessages.KnownPoints(new(_name), new([.. _nodes.Select(n => At(n.Point, print))], ListJoin.Comma));

    private static Message At(KnownPoint point, CorrectionPrinter print) => CorrectionsMessages.KnownPoint(print.Value(point.Read), print.Value(point.Applied), new(point.Reference));

    private Message Report(KnownPoint point, CorrectionPrinter print)
    {
        var deviation = point.Read - (_zero?.Zero.Value ?? 0) - point.Applied;
        return CorrectionsMessages.ReportedOnly(new(_name), At(point, print), print.Difference(deviation), _zero is null ? CorrectionsMessages.ReportedOnlyZero.None : CorrectionsMessages.ReportedOnlyZero.Removed);
    }

    private Uncertain Applied(KnownPoint point, int index) => Uncertain.From(
        point.Applied, new RootCause(CorrectionsMessages.KnownPointCause(new(_name), index + 1), CommonMessages.AsWritten(new(point.Reference)), point.StandardUncertainty.GetValueOrDefault()));

    private Uncertain Read(KnownPoint point, int index, double? resolution) => resolution is { } step
        ? Uncertain.From(point.Read, RootCause.FromResolution(CorrectionsMessages.ReadingAtKnownPoint(new(_name), index + 1), CorrectionsMessages.SmallestStep, step))
        : Uncertain.Exact(point.Read);

    private sealed record Node(KnownPoint Point, Uncertain Applied, Uncertain Read);
}
