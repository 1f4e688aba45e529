using System.Collections.Immutable;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>The burner of a furnace or a packaged gas unit, reading by reading against the maker's range.</summary>
internal sealed class GasHeatCheck : ICheck
{
    public string Id => "air.gas-heat";

    public string Phase => Phases.Air;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.GasHeat is not { } burner)
            yield break;
        foreach (var (figure, next) in Figures(context, burner))
            yield return figure.Judge(context, this, next);
    }

    private static List<(FigureOfMaker Figure, Message Next)> Figures(CheckContext context, GasHeat burner)
    {
        var figures = new List<(FigureOfMaker, Message)>();
        void Add<T>(Message what, Given<T>? given, DisplayKind kind, string limit, Message next)
            where T : struct, IQuantity<T>
        {
            var subject = context.Present.Text(what);
            if (given is not null)
                figures.Add((new FigureOfMaker(subject, Written.Reading(context, subject, given, kind), kind, limit), next));
        }

        Add(AirMessages.GasInlet, burner.InletPressure, DisplayKind.StaticPressure, LimitIds.AirGasHeatInletPressure, AirMessages.GasInletNext);
        Add(AirMessages.GasManifold, burner.ManifoldPressure, DisplayKind.StaticPressure, LimitIds.AirGasHeatManifoldPressure, AirMessages.GasManifoldNext);
        Add(AirMessages.GasRise, burner.Rise, DisplayKind.TemperatureDifference, LimitIds.AirHeatRise, AirMessages.GasRiseNext);
        Add(AirMessages.GasInput, burner.Input, DisplayKind.Capacity, LimitIds.AirGasHeatInput, AirMessages.GasInputNext);
        Add(CommonMessages.AsWritten(new("CO2")), burner.CarbonDioxide, DisplayKind.Percentage, LimitIds.AirGasHeatCarbonDioxide, AirMessages.GasFlameNext);
        Add(CommonMessages.AsWritten(new("O2")), burner.Oxygen, DisplayKind.Percentage, LimitIds.AirGasHeatOxygen, AirMessages.GasFlameNext);
        Add(AirMessages.GasFlue, burner.FlueTemperature, DisplayKind.Temperature, LimitIds.AirGasHeatFlueTemperature, AirMessages.GasFlueNext);
        Add(AirMessages.GasDraft, burner.Draft, DisplayKind.StaticPressure, LimitIds.AirGasHeatDraft, AirMessages.GasDraftNext);
        Add(AirMessages.GasSignal, burner.FlameSignal, DisplayKind.FlameSignal, LimitIds.AirGasHeatFlameSignal, AirMessages.GasSignalNext);
        return figures;
    }
}

/// <summary>Outside air at the minimum position of its damper, against what the ventilation schedule asks for.</summary>
internal sealed class OutsideAirCheck : ICheck
{
    public string Id => "air.outside-air";

    public string Phase => Phases.Air;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Air?.OutsideAir is not { } outside)
            yield break;
        if (outside.Airflow is { } flow)
            yield return new FigureOfMaker(context.Present.Text(AirMessages.OutsideAirflow), Written.Reading(context, context.Present.Text(AirMessages.ReadingOutsideAirflow), flow, DisplayKind.AirFlow), DisplayKind.AirFlow, LimitIds.AirOutsideAirAirflow).Judge(context, this, this.WhenItFails());
        if (outside.MinimumPosition is { } position)
            yield return new FigureOfMaker(context.Present.Text(AirMessages.OutsidePosition), Written.Reading(context, context.Present.Text(AirMessages.ReadingOutsidePosition), position, DisplayKind.Percentage), DisplayKind.Percentage, LimitIds.AirOutsideAirPosition).Judge(context, this, this.WhenItFails());
    }
}
