using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Circuit;

/// <summary>The charge that the maker's figures ask for: factory charge, and the adjustment for lines and extras.</summary>
internal sealed record RequiredCharge
{
    private RequiredCharge()
    {
    }

    /// <summary>Adjustment beyond the factory charge, kg; negative when refrigerant has to be recovered. Null when it cannot be worked out.</summary>
    public MassNumber? Adjustment { get; private init; }

    /// <summary>Why there is no adjustment, without a full stop; null when there is one.</summary>
    public Message? WhyNot { get; private init; }

    /// <summary>What to write so that there is one; null when there is one.</summary>
    public Message? Todo { get; private init; }

    /// <summary>Where the figures are from.</summary>
    public string Source { get; private init; } = "";

    /// <summary>Works it out.</summary>
    public static RequiredCharge Of(CheckContext context)
    {
        var equipment = context.Job.Equipment;
        var charging = context.Job.Charging;
        var uses = ImmutableArray.CreateBuilder<ReadingUse>();
        var steps = ImmutableArray.CreateBuilder<TraceStep>();
        var sources = new List<string>();
        var terms = new List<Uncertain>();
        if (charging?.LineAdjustment is { } adjustment)
        {
            sources.Add(adjustment.From.Value);
            if (adjustment.DeductForShorterLines is { } deduct)
                sources.Add(deduct.Value);
            if (Lines(context, adjustment, uses, steps) is not { } lines)
                return new RequiredCharge { WhyNot = CircuitMessages.LineLengthMissing, Todo = ChargeMessages.LineLengthNotKnownNext };
            terms.Add(lines);
        }
        else if (NeedsFigure(context, charging, uses) is { } why)
        {
            return new RequiredCharge { WhyNot = why, Todo = charging?.Scale.IsEmpty == false ? CircuitMessages.FigureNext : CircuitMessages.FigureAndScaleNext };
        }

        foreach (var extra in charging?.Extra ?? [])
        {
            if (Extra(context, extra, uses, steps) is not { } mass)
                return new RequiredCharge { WhyNot = extra.What is { } what ? CircuitMessages.ExtraWithoutMass(new(what.Value)) : CircuitMessages.SomeExtraWithoutMass, Todo = CircuitMessages.ExtraNext };
            if (extra.From is { } from)
                sources.Add(from.Value);
            terms.Add(mass);
        }

        var sum = terms.Count == 0 ? Uncertain.Exact(0) : terms.Aggregate((a, b) => a + b);
        if (terms.Count != 1)
            steps.Add(new TraceStep("m_adj", context.Present.Text(CircuitMessages.Adjustment), context.Present.Text(CircuitMessages.AdjustmentFormula), terms.Count == 0 ? context.Present.Text(CircuitMessages.NoLongerLine) : string.Join(" + ", terms.Select(t => context.Present.Text(t.Value, DisplayKind.Mass))), context.Present.Text(sum, DisplayKind.Mass), context.Present.Text(CircuitMessages.Definition)));
        return new RequiredCharge
        {
            Adjustment = new MassNumber(sum, [], uses.ToImmutable(), steps.ToImmutable()),
            Source = sources.Count == 0 ? context.Present.Text(CircuitMessages.FactoryChargeAlone) : string.Join("; ", sources.Distinct(StringComparer.Ordinal)),
        };
    }

    private static Uncertain? Lines(CheckContext context, LineAdjustment adjustment, ImmutableArray<ReadingUse>.Builder uses, ImmutableArray<TraceStep>.Builder steps)
    {
        uses.Add(adjustment.Figure.Use(context.Present.Text(CircuitMessages.LineAdjustment)));
        var perMetre = adjustment.Figure.Value.Si;
        Uncertain length;
        Uncertain covered;
        string text;
        if (adjustment.Length is { } counted)
        {
            length = Measured(context, CircuitMessages.LengthOfFigure, counted, uses);
            covered = Uncertain.Exact(0);
            text = counted.Text;
        }
        else
        {
            var runs = context.Job.Equipment.Piping;
            if (runs.IsEmpty || runs.Any(r => r.Liquid is null) || runs.All(r => r.CoveredByFactoryCharge is null))
                return null;
            length = runs.Select(r => Measured(context, Named(ReadingsMessages.LiquidLine, r), r.Liquid!.Length, uses)).Aggregate((a, b) => a + b);
            var allowances = runs.Where(r => r.CoveredByFactoryCharge is not null).ToList();
            covered = Uncertain.Exact(allowances.Sum(r => r.CoveredByFactoryCharge!.Value.Si));
            foreach (var run in allowances)
                uses.Add(run.CoveredByFactoryCharge!.Use(context.Present.Text(Named(CircuitMessages.CoveredByFactory, run))));
            text = $"({string.Join(" + ", runs.Select(r => r.Liquid!.Length.Text))} − {string.Join(" − ", allowances.Select(r => r.CoveredByFactoryCharge!.Text))})";
        }

        // A charge that covers lines up to a length covers shorter ones: it is taken out only where the maker says so.
        var isCovered = length.Value <= covered.Value && covered.Value > 0 && adjustment.DeductForShorterLines is null;
        if (adjustment.DeductForShorterLines is { } deduct)
            uses.Add(deduct.Use(context.Present.Text(CircuitMessages.DeductForShorter)));
        var mass = isCovered ? Uncertain.Exact(0) : Uncertain.WithPartials(
            LineCharge.Adjustment(perMetre, length.Value, LineCharge.Allowance(perMetre, covered.Value)), (length, perMetre), (covered, -perMetre));
        steps.Add(new TraceStep(
            "m_line", context.Present.Text(CircuitMessages.AdjustmentForLines),
            context.Present.Text(adjustment.DeductForShorterLines is null ? CircuitMessages.AdjustmentForLinesCovered : CircuitMessages.AdjustmentForLinesFormula),
            $"{adjustment.Figure.Text} × {text}", context.Present.Text(mass, DisplayKind.Mass), adjustment.From.Value));
        return mass;
    }

    private static Uncertain? Extra(CheckContext context, ChargeExtra extra, ImmutableArray<ReadingUse>.Builder uses, ImmutableArray<TraceStep>.Builder steps)
    {
        var present = context.Present;
        var name = extra.What?.Value ?? present.Text(extra.Line is { } line ? CircuitMessages.ExtraLine(new(line.Text)) : CircuitMessages.Extra);
        if (extra.Mass is { } mass)
        {
            uses.Add(mass.Use(name));
            steps.Add(new TraceStep("m_extra", name, present.Text(CircuitMessages.AsMakerGivesIt), mass.Text, mass.Text, extra.From?.Value ?? ""));
            return Uncertain.Exact(mass.Value.Si);
        }

        if (extra is not { Figure: { } figure, Length: { } length })
            return null;
        uses.Add(figure.Use(present.Text(CircuitMessages.FigureOf(new(name)))));
        var value = figure.Value.Si * Measured(context, CircuitMessages.LengthOf(new(name)), length, uses);
        steps.Add(new TraceStep("m_extra", name, present.Text(CircuitMessages.FigureTimesLength), $"{figure.Text} × {length.Text}", context.Present.Text(value, DisplayKind.Mass), extra.From?.Value ?? ""));
        return value;
    }

    // Without a figure the charge is the factory's only where the lines are no longer than it covers, or where there are none.
    private static Message? NeedsFigure(CheckContext context, Charging? charging, ImmutableArray<ReadingUse>.Builder uses)
    {
        var equipment = context.Job.Equipment;
        if (equipment.ComesWhole() || charging?.Extra.IsEmpty == false)
            return null;
        var runs = equipment.Piping.Where(r => r.Liquid is not null).ToList();
        if (runs.Count == 0 && equipment.HermeticallySealed is { Value: true } closed)
        {
            // A circuit that was closed in the factory has no lines of the site.
            uses.Add(closed.Use(context.Present.Text(ReadingsMessages.HermeticallySealed)));
            return null;
        }

        if (runs.Count == 0)
            return CircuitMessages.NoLinesNoFigure;
        foreach (var run in runs)
        {
            uses.Add(run.Liquid!.Length.Use(context.Present.Text(Named(ReadingsMessages.LiquidLine, run))));
            if (run.CoveredByFactoryCharge is { } covered)
                uses.Add(covered.Use(context.Present.Text(Named(CircuitMessages.CoveredByFactory, run))));
        }

        var length = runs.Sum(r => r.Liquid!.Length.Value.Si);
        var allowance = runs.Sum(r => r.CoveredByFactoryCharge?.Value.Si ?? 0);
        return length > allowance ? CircuitMessages.LinesLonger : null;
    }

    private static Uncertain Measured(CheckContext context, Message what, Given<Length> given, ImmutableArray<ReadingUse>.Builder uses)
    {
        var name = context.Present.Text(what);
        uses.Add(given.Use(name));
        return Written.Value(context, name, given, DisplayKind.Length);
    }

    private static Message Named(Message what, PipingRun run) => run.To is { } to ? CircuitMessages.LineTo(what, new(to.Value)) : what;
}
