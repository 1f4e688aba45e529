using System.Globalization;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;
using QuantityValue = Commission.Messages.QuantityValue;

namespace Commission.Checks.Safety;

/// <summary>Carbon monoxide in the flue gas of a burner, and flue gas in the room.</summary>
internal sealed class CombustionCheck : ICheck
{
    public string Id => "safety.combustion";

    public string Phase => Phases.Safety;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.GasHeat is not { } burner)
            yield break;
        if (burner.CarbonMonoxide is { } carbonMonoxide)
            yield return Judge(context, burner, carbonMonoxide);
        if (burner.Spillage is { } spillage)
            yield return Spills(context, spillage);
    }

    private Finding Judge(CheckContext context, GasHeat burner, Given<Measurement.Quantities.Ratio> read)
    {
        var reading = Written.Reading(context, "CO", read, DisplayKind.Concentration);
        var finding = context.Finding(this, context.Present.Text(SafetyMessages.CarbonMonoxideFreeOfAir)).Use(reading).Use(CommonMessages.AsWritten(new("O2")), burner.Oxygen).Use(CommonMessages.AsWritten(new("CO2")), burner.CarbonDioxide).Use(SafetyMessages.ReadingFuel, burner.Fuel);
        if (context.Limits.Find(LimitIds.SafetyCombustionCarbonMonoxide) is not { Upper: not null } limit)
            return finding.Measure(reading.Value, DisplayKind.Concentration).Information(SafetyMessages.CarbonMonoxideRead(Shown(reading.Value)), SafetyMessages.CarbonMonoxideNoLimit);
        var state = context.State(limit);
        if (Of(context, burner, reading.Value) is not var (free, formula, substitution))
        {
            // Diluted by air it is less than it was: what is too much as read is too much.
            if (reading.Value.Value > state.UpperSi)
            {
                finding.Judge(reading.Value, DisplayKind.Concentration, state);
                return finding.Danger(SafetyMessages.CarbonMonoxideTooMuch(Shown(reading.Value)), this.WhenItFails());
            }

            return finding.NotEvaluated(SafetyMessages.CarbonMonoxideDiluted(Shown(reading.Value)), SafetyMessages.CarbonMonoxideDilutedNext, "gas heat: {O2: …}");
        }

        finding.Step("CO_af", SafetyMessages.CarbonMonoxideFreeOfAir, formula, substitution, context.Present.Text(free.Value, DisplayKind.Concentration), AirFree.Source)
            .Judge(free, DisplayKind.Concentration, state);
        return finding.ConcludeOrDanger(SafetyMessages.CarbonMonoxideLittle(Shown(free)), SafetyMessages.CarbonMonoxideTooMuch(Shown(free)), this.WhenItFails());

        QuantityValue Shown(Uncertain y) => context.Present.Value(y.Value, DisplayKind.Concentration, 0);
    }

    // Null where neither oxygen nor carbon dioxide says how much air is in the sample.
    private static (Uncertain Value, Message Formula, string Substitution)? Of(CheckContext context, GasHeat burner, Uncertain read)
    {
        if (burner.Oxygen is { } oxygen && oxygen.Value.Si < AirFree.OxygenOfAir)
        {
            var o2 = Written.Value(context, "O2", oxygen, DisplayKind.Percentage);
            return (Uncertain.Apply(AirFree.ByOxygen, read, o2), AirFree.FromOxygen, string.Create(CultureInfo.InvariantCulture, $"{1e6 * read.Value:0} ppm · 20.9 / (20.9 − {100 * o2.Value:0.0})"));
        }

        if (burner.CarbonDioxide is { } dioxide && dioxide.Value.Si > 0 && burner.Fuel is { } fuel && AirFree.UltimateOf(fuel.Value) is { } ultimate)
        {
            var co2 = Written.Value(context, "CO2", dioxide, DisplayKind.Percentage);
            return (Uncertain.Apply((co, c) => AirFree.ByCarbonDioxide(co, c, ultimate), read, co2), AirFree.FromCarbonDioxide, string.Create(CultureInfo.InvariantCulture, $"{1e6 * read.Value:0} ppm · {100 * ultimate:0.0} / {100 * co2.Value:0.0}"));
        }

        return null;
    }

    private Finding Spills(CheckContext context, Given<Spillage> spillage)
    {
        var finding = context.Finding(this, context.Present.Text(SafetyMessages.ReadingSpillage)).Use(SafetyMessages.ReadingSpillage, spillage);
        return spillage.Value switch
        {
            Spillage.None => finding.Decide(true).Say(SafetyMessages.SpillageNone).Build(),
            Spillage.Some => finding.Danger(SafetyMessages.SpillageSome, this.WhenItFails()),
            _ => finding.NotEvaluated(SafetyMessages.SpillageNotTested, SafetyMessages.SpillageNotTestedNext),
        };
    }
}
