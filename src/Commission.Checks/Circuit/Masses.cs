using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Circuit;

/// <summary>A mass of refrigerant with where it comes from.</summary>
/// <param name="Value">kg.</param>
/// <param name="Readings">Readings it rests on.</param>
/// <param name="Uses">What else of the job it rests on.</param>
/// <param name="Steps">How it came about.</param>
internal sealed record MassNumber(Uncertain Value, ImmutableArray<CorrectedReading> Readings, ImmutableArray<ReadingUse> Uses, ImmutableArray<TraceStep> Steps)
{
    /// <summary>Causes of doubt that stand for hoses of which nothing is written.</summary>
    public ImmutableArray<RootCause> Hoses { get; init; } = [];

    /// <summary>Names in a finding what the mass rests on, and adds how it came about.</summary>
    public void UseIn(FindingBuilder finding)
    {
        foreach (var reading in Readings)
            finding.Use(reading);
        foreach (var use in Uses)
            finding.Use(use);
        finding.Add(Steps);
    }
}

/// <summary>One mass that went over a scale or was written down.</summary>
/// <param name="Value">kg, positive.</param>
/// <param name="Text">How it stands in a sum.</param>
/// <param name="Readings">Readings it rests on.</param>
/// <param name="Steps">How it came about.</param>
internal sealed record MassPart(Uncertain Value, string Text, ImmutableArray<CorrectedReading> Readings, ImmutableArray<TraceStep> Steps)
{
    /// <summary>What left a cylinder that stood on the scale.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="weighing">The cylinder before and after.</param>
    /// <param name="cylinder">Which cylinder; empty when there is one.</param>
    /// <param name="with">The scale the phase names.</param>
    public static MassPart Weighed(CheckContext context, ScaleReading weighing, string cylinder, ImmutableArray<Given<string>> with)
    {
        string Named(Message what) => context.Present.Text(cylinder.Length == 0 ? what : CircuitMessages.OfCylinder(what, new(cylinder)));
        var before = context.Readings.Plain(Named(ReadingsMessages.ScaleBefore), ReadingName.Charge, weighing.Before, DisplayKind.Mass, with);
        var after = context.Readings.Plain(Named(ReadingsMessages.After(ReadingsMessages.Scale)), ReadingName.Charge, weighing.After, DisplayKind.Mass, with);
        var net = before.Value - after.Value + context.Get<ScaleLinearity>().Of(weighing, with);
        var step = new TraceStep(
            "m", Named(CircuitMessages.OutOfCylinder), context.Present.Text(CircuitMessages.DifferenceFormula),
            $"{weighing.Before.Text} − {weighing.After.Text}", context.Present.Text(net, DisplayKind.Mass), context.Present.Text(CircuitMessages.Definition));
        return new MassPart(net, context.Present.Text(net.Value, DisplayKind.Mass), [before, after], [step]);
    }

    /// <summary>A mass as written.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="name">What it is.</param>
    /// <param name="given">The mass.</param>
    /// <param name="with">The scale the phase names.</param>
    public static MassPart AsWritten(CheckContext context, string name, Given<Mass> given, ImmutableArray<Given<string>> with)
    {
        var reading = context.Readings.Plain(name, ReadingName.Charge, given, DisplayKind.Mass, with);
        return new MassPart(reading.Value, given.Text, [reading], []);
    }

    // The accuracy of a scale bounds its slope and linearity too, which a difference does not take out: the whole bound counts once, and is one
    // cause for all that went over that scale.
    private sealed class ScaleLinearity : IAnalysis<ScaleLinearity>
    {
        private readonly CheckContext _context;
        private readonly Dictionary<string, RootCause> _causes = new(StringComparer.Ordinal);

        private ScaleLinearity(CheckContext context) => _context = context;

        public static ScaleLinearity Create(CheckContext context) => new(context);

        public Uncertain Of(ScaleReading weighing, ImmutableArray<Given<string>> with)
        {
            if (weighing.Before.Stated is not null || _context.Get<InstrumentKit>().For(ReadingName.Charge, with) is not { } scale || scale.HalfWidth(weighing.Before.Value.Si) is not { } half)
                return Uncertain.Exact(0);
            if (!_causes.TryGetValue(scale.Id, out var cause))
                _causes[scale.Id] = cause = _context.Causes.Enter(RootCause.FromHalfWidth(CircuitMessages.ScaleLinearity(new(scale.Id)), CircuitMessages.ScaleLinearitySource, half), DisplayKind.Mass);
            return _context.Scope.Reading(0, 1.0 * cause);
        }
    }
}

/// <summary>Adds up what went through scales and hoses.</summary>
internal sealed class MassSum
{
    private readonly CheckContext _context;
    // Common practice, no source.
    private const double MostOfCharge = 0.1;

    private readonly List<Uncertain> _terms = [];
    private readonly List<string> _words = [];
    private readonly List<RootCause> _hoses = [];
    private readonly ImmutableArray<CorrectedReading>.Builder _readings = ImmutableArray.CreateBuilder<CorrectedReading>();
    private readonly ImmutableArray<ReadingUse>.Builder _uses = ImmutableArray.CreateBuilder<ReadingUse>();
    private readonly ImmutableArray<TraceStep>.Builder _steps = ImmutableArray.CreateBuilder<TraceStep>();

    /// <summary>An empty sum.</summary>
    public MassSum(CheckContext context) => _context = context;

    /// <summary>Adds a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="sign">Plus one for what went in, minus one for what came out.</param>
    public void Add(MassPart part, int sign)
    {
        _readings.AddRange(part.Readings);
        _steps.AddRange(part.Steps);
        Take(sign > 0 ? part.Value : -1 * part.Value, sign > 0 ? part.Text : $"−{part.Text}");
    }

    /// <summary>What stayed in the hoses. A written mass brings its own doubt, a written nothing too; where none is written each hose is allowed for.</summary>
    /// <param name="left">The mass as written; null takes none, with its doubt.</param>
    /// <param name="hoses">Number of hoses; null takes one.</param>
    public void Hoses(Given<Mass>? left, Given<int>? hoses)
    {
        if (left is not null)
        {
            var name = _context.Present.Text(CircuitMessages.LeftInHoses);
            _uses.Add(left.Use(name));
            Take(-1 * Written.Value(_context, name, left, DisplayKind.Mass), _context.Present.Text(CircuitMessages.HoseTerm(new($"−{left.Text}"))));
            return;
        }

        if (hoses is not null)
            _uses.Add(hoses.Use(_context.Present.Text(CircuitMessages.Hoses)));
        var count = Math.Max(hoses?.Value ?? 1, 0);
        // A hose holds so much of what went through it at most: a cabinet's charge is drawn in to the last.
        var allowance = Math.Min(_context.Assume(LimitIds.AssumptionHoseCharge), MostOfCharge * _terms.Sum(t => Math.Abs(t.Value)));
        for (var i = 0; i < count; i++)
        {
            _hoses.Add(_context.Causes.Enter(
                RootCause.FromHalfWidth(count == 1 ? CircuitMessages.LeftInHose : CircuitMessages.LeftInHoseNumbered(i + 1), CircuitMessages.EachHose, allowance), DisplayKind.Mass));
        }

        Take(-1 * _context.Scope.Reading(0, [.. _hoses.Select(h => 1.0 * h)]), _context.Present.Text(CircuitMessages.HoseNotWritten));
    }

    /// <summary>The sum.</summary>
    /// <param name="symbol">Its symbol.</param>
    /// <param name="name">What it is.</param>
    public MassNumber Sum(string symbol, Message name)
    {
        var total = _terms.Aggregate((a, b) => a + b);
        _steps.Add(new TraceStep(
            symbol, _context.Present.Text(name), _context.Present.Text(CircuitMessages.SumFormula), string.Join(" + ", _words), _context.Present.Text(total, DisplayKind.Mass), _context.Present.Text(CircuitMessages.Definition)));
        return new MassNumber(total, _readings.ToImmutable(), _uses.ToImmutable(), _steps.ToImmutable()) { Hoses = [.. _hoses] };
    }

    private void Take(Uncertain term, string text)
    {
        _terms.Add(term);
        _words.Add(text);
    }
}
