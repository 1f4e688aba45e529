using System.Collections.Immutable;
using Commission.Jobs.Model;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Messages;
using Commission.Source;

namespace Commission.Checks.Limits;

/// <summary>A figure a job gives for a limit.</summary>
/// <param name="Limit">The figure as a limit; its decision rule is set by the resolver.</param>
/// <param name="HasSource">Whether the job says where it is printed. A figure without a source is the crew's own target: it may ask more than the published limit, not less.</param>
internal sealed record MakerFigure(Limit Limit, bool HasSource);

/// <summary>The figures a job gives, under the ids of the limits they set.</summary>
internal sealed class MakerFigures
{
    private readonly ImmutableDictionary<string, MakerFigure>.Builder _figures = ImmutableDictionary.CreateBuilder<string, MakerFigure>(StringComparer.Ordinal);

    private readonly Func<Message, string> _words;

    private MakerFigures(Func<Message, string> words) => _words = words;

    /// <summary>Collects the figures of a job: its maker's limits, its plate, and the crew's own evacuation targets.</summary>
    /// <param name="job">The job.</param>
    /// <param name="words">The text of a source that this program words.</param>
    /// <returns>Figures by limit id.</returns>
    public static ImmutableDictionary<string, MakerFigure> Of(Job job, Func<Message, string> words)
    {
        var figures = new MakerFigures(words);
        figures.AddEvacuationTargets(job.Evacuation);
        figures.AddPlate(job.Equipment.Nameplate);
        if (job.Limits is { } limits)
        {
            figures.AddCharge(limits);
            figures.AddTests(limits);
            figures.AddRest(limits);
        }

        return figures._figures.ToImmutable();
    }

    private void AddCharge(MakerLimits limits)
    {
        Add(LimitIds.ChargeSuperheat, limits.Superheat);
        AddTolerance(LimitIds.ChargeSuperheatTolerance, limits.Superheat);
        AddRange(LimitIds.ChargeMeteringSuperheatRange, limits.Superheat);
        Add(LimitIds.ChargeSubcooling, limits.Subcooling);
        AddTolerance(LimitIds.ChargeSubcoolingTolerance, limits.Subcooling);
        Add(LimitIds.ChargeSuperheatFloor, limits.SuperheatFloor);
        Add(LimitIds.ChargeEvaporatorSuperheatRange, limits.EvaporatorSuperheat);
        Add(LimitIds.ChargeCompressorSuperheatRange, limits.CompressorSuperheat);
        Add(LimitIds.CompressorSuctionSuperheat, limits.CompressorSuperheat);
        Add(LimitIds.CompressorDischargeSuperheat, limits.DischargeSuperheat);
        Add(LimitIds.CompressorSumpSuperheat, limits.SumpSuperheat);
        Add(LimitIds.ChargeApproach, limits.Approach);
        Add(LimitIds.ChargeCondensingOverAmbientRange, limits.CondensingOverAmbient);
        Add(LimitIds.ChargeEvaporatorDifferenceRange, limits.EvaporatorDifference);
        Add(LimitIds.ChargeDrierDrop, limits.DrierDrop);
        Add(LimitIds.ChargeVaporPressure, limits.VaporPressure);
        Add(LimitIds.ChargeLiquidPressure, limits.LiquidPressure);
        Add(LimitIds.ChargeGasCoolerPressure, limits.GasCoolerPressure);
        Add(LimitIds.ChargeGasCoolerOutlet, limits.GasCoolerOutlet);
        Add(LimitIds.ChargeReceiverPressure, limits.ReceiverPressure);
        Add(LimitIds.ChargeTotal, limits.Charge);
        AddHalfWidth(LimitIds.ChargeWeightToleranceMass, limits.ChargeTolerance);
        Add(LimitIds.ChargeStabilisedTime, limits.StabilisedAfter);
        AddValidity(LimitIds.ChargeValidityOutdoor, limits.ValidOutdoor);
        AddValidity(LimitIds.ChargeValidityReturnDryBulb, limits.ValidIndoor);
        AddValidity(LimitIds.ChargeValidityReturnWetBulb, limits.ValidIndoorWetBulb);
    }

    private void AddTests(MakerLimits limits)
    {
        Add(LimitIds.PressureTestLevel, limits.TestPressure);
        Add(LimitIds.PressureTestHoldTime, limits.TestHold);
        Add(LimitIds.PressureTestHoldLoss, limits.TestLoss);
        Add(LimitIds.EvacuationLevel, limits.Vacuum);
        AddDecay(limits.DecayLimit);
        Add(LimitIds.EvacuationBreakCount, limits.NitrogenBreaks);
    }

    private void AddRest(MakerLimits limits)
    {
        Add(LimitIds.CompressorDischargeTemperature, limits.DischargeTemperature);
        if (limits.CompressionRatio is { Minimum: not null })
            Add(LimitIds.CompressorRatioRange, limits.CompressionRatio);
        AddMaximum(LimitIds.CompressorRatioMaximum, limits.CompressionRatio);
        Add(LimitIds.CompressorCrankcaseHeaterTime, limits.CrankcaseHeaterBeforeStart);
        Add(LimitIds.AirTemperatureSplit, limits.TemperatureSplit);
        AddTolerance(LimitIds.AirTemperatureSplitTolerance, limits.TemperatureSplit);
        Add(LimitIds.AirHeatRise, limits.HeatRise);
        Add(LimitIds.AirAirflow, limits.Airflow);
        Add(LimitIds.AirStaticExternalMaximum, limits.ExternalStatic);
        Add(LimitIds.AirFilterDrop, limits.FilterDrop);
        Add(LimitIds.AirCoilDrop, limits.CoilDrop);
        Add(LimitIds.AirFanPower, limits.FanPower);
        Add(LimitIds.ElectricalVoltage, limits.Voltage);
        Add(LimitIds.ElectricalVoltageUnbalanceLimit, limits.VoltageUnbalance);
        Add(LimitIds.ElectricalCurrentUnbalance, limits.CurrentUnbalance);
        Add(LimitIds.ElectricalVoltageDropAtStartLimit, limits.VoltageDropAtStart);
        Add(LimitIds.ElectricalCompressorCurrent, limits.CompressorCurrent);
        Add(LimitIds.ElectricalInsulationMinimum, limits.Insulation);
        Add(LimitIds.ElectricalControlVoltageRange, limits.ControlVoltage);
        Add(LimitIds.ElectricalTerminalTorque, limits.TerminalTorque);
        Add(LimitIds.PipingTotalIndex, limits.TotalIndex);
        Add(LimitIds.PipingTotalLength, limits.TotalLength);
        Add(LimitIds.PipingLongestRun, limits.LongestRun);
        Add(LimitIds.PipingFirstBranch, limits.FirstBranch);
        Add(LimitIds.PipingHeightDifference, limits.HeightDifference);
        AddThreshold(LimitIds.PipingLongLineLength, limits.LongLineOver);
        Add(LimitIds.PipingTraps, limits.Traps);
        Add(LimitIds.SafetyRoomArea, limits.RoomArea);
        Add(LimitIds.AirOutsideAirAirflow, limits.OutsideAirflow);
        Add(LimitIds.AirOutsideAirPosition, limits.OutsideAirPosition);
        if (limits.GasHeat is { } burner)
            AddBurner(burner, limits.HeatRise is null);
        if (limits.Water is { } water)
            AddWater(water);
    }

    private void AddWater(WaterLimits water)
    {
        Add(LimitIds.FunctionalWaterFlow, water.Flow);
        Add(LimitIds.FunctionalWaterDifference, water.Difference);
        Add(LimitIds.FunctionalWaterVolume, water.Volume);
        Add(LimitIds.FunctionalWaterPressure, water.Pressure);
        Add(LimitIds.FunctionalWaterStrainerDrop, water.StrainerDrop);
        Add(LimitIds.FunctionalWaterFreezing, water.FreezesAt);
    }

    private void AddBurner(GasHeatLimits burner, bool takesRise)
    {
        Add(LimitIds.AirGasHeatInletPressure, burner.InletPressure);
        Add(LimitIds.AirGasHeatManifoldPressure, burner.ManifoldPressure);
        Add(LimitIds.AirGasHeatInput, burner.Input);
        Add(LimitIds.AirGasHeatCarbonDioxide, burner.CarbonDioxide);
        Add(LimitIds.AirGasHeatOxygen, burner.Oxygen);
        Add(LimitIds.AirGasHeatFlueTemperature, burner.FlueTemperature);
        Add(LimitIds.AirGasHeatDraft, burner.Draft);
        Add(LimitIds.AirGasHeatFlameSignal, burner.FlameSignal);
        Add(LimitIds.SafetyCombustionCarbonMonoxide, burner.CarbonMonoxide);
        if (takesRise)
            Add(LimitIds.AirHeatRise, burner.Rise);
    }

    private void AddPlate(Nameplate? plate)
    {
        if (plate?.MaxStatic is { } most)
            Put(LimitIds.AirStaticExternalMaximum, LimitShape.AtMost, new(_words(LimitsMessages.Plate), most.At), upper: Figure(most));
    }

    // The evacuation part holds what the crew aimed for; only with a source is it the maker's.
    private void AddEvacuationTargets(Jobs.Model.Evacuation? evacuation)
    {
        if (evacuation?.Target is { } target)
            Put(LimitIds.EvacuationLevel, LimitShape.AtMost, new(_words(LimitsMessages.OwnTarget), target.At, IsNamed: false), upper: Figure(target));
        AddDecay(evacuation?.DecayLimit);
    }

    private void AddDecay(DecayLimit? decay)
    {
        if (decay is null)
            return;
        const string Id = LimitIds.EvacuationDecay;
        Put(Id, LimitShape.AtMost, new(decay.From?.Value ?? _words(LimitsMessages.OwnTarget), decay.Level.At, decay.From is not null), upper: Figure(decay.Level));
        var entry = _figures[Id];
        var after = LimitDefinitions.Get(Id).Companions[0];
        _figures[Id] = entry with { Limit = entry.Limit with { With = entry.Limit.With.Add(after.Name, Figure(decay.After)) } };
    }

    private void Add<T, TTolerance>(string id, QuantityLimit<T, TTolerance>? limit)
    {
        if (limit is null)
            return;
        var target = limit.Target is { } t ? Figure(t) : null;
        if (target is not null && limit.Tolerance is { } tolerance)
        {
            var half = Figure(tolerance);
            Put(id, LimitShape.Target, new(limit.From.Value, limit.Origin), Moved(target, -half.Si), Moved(target, half.Si), target);
            return;
        }

        Put(id, target, limit.Minimum is { } low ? Figure(low) : null, limit.Maximum is { } high ? Figure(high) : null, limit.From.Value, limit.Origin);
    }

    private void Add(string id, NumberLimit? limit)
    {
        if (limit is null)
            return;
        var target = limit.Target is { } t ? Figure(t) : null;
        if (target is not null && limit.Tolerance is { } tolerance)
        {
            Put(id, LimitShape.Target, new(limit.From.Value, limit.Origin), Moved(target, -tolerance.Value), Moved(target, tolerance.Value), target);
            return;
        }

        Put(id, target, limit.Minimum is { } low ? Figure(low) : null, limit.Maximum is { } high ? Figure(high) : null, limit.From.Value, limit.Origin);
    }

    private void AddTolerance<T>(string id, QuantityLimit<T, TemperatureDifference>? limit)
    {
        if (limit?.Tolerance is { } tolerance)
            PutHalfWidth(id, Figure(tolerance), limit.From.Value, tolerance.At);
    }

    // For a mass "maximum" is how far off the charge may be, either way.
    private void AddHalfWidth(string id, QuantityLimit<Mass, Mass>? limit)
    {
        if ((limit?.Tolerance ?? limit?.Maximum) is { } half)
            PutHalfWidth(id, Figure(half), limit!.From.Value, half.At);
    }

    private void AddRange(string id, QuantityLimit<TemperatureDifference, TemperatureDifference>? limit)
    {
        if (limit is { Minimum: not null } or { Maximum: not null })
            Put(id, null, limit.Minimum is { } low ? Figure(low) : null, limit.Maximum is { } high ? Figure(high) : null, limit.From.Value, limit.Origin);
    }

    private void AddMaximum(string id, NumberLimit? limit)
    {
        if (limit?.Maximum is { } most)
            Put(id, LimitShape.AtMost, new(limit.From.Value, most.At), upper: Figure(most));
    }

    // "Rules hold from this length" may be written as a least, a most or a target: it is one number.
    private void AddThreshold(string id, QuantityLimit<Length, Length>? limit)
    {
        if ((limit?.Minimum ?? limit?.Maximum ?? limit?.Target) is { } from)
            Put(id, LimitShape.AtMost, new(limit!.From.Value, from.At), upper: Figure(from));
    }

    private void AddValidity(string id, Given<Jobs.Model.QuantityRange<Temperature>>? range)
    {
        if (range is null)
            return;
        Put(id, LimitShape.Within, new(_words(LimitsMessages.OwnLimits), range.At), Figure(range.Value.Lower), Figure(range.Value.Upper));
    }

    private void Put(string id, LimitFigure? target, LimitFigure? lower, LimitFigure? upper, string source, SourceLocation at)
    {
        // "vacuum: {target: 500 micron}" is a bound all the same.
        var shapes = LimitDefinitions.Get(id).Shapes;
        if (target is not null && lower is null && upper is null)
        {
            if (shapes.Contains(LimitShape.AtMost))
                upper = target;
            else if (shapes.Contains(LimitShape.AtLeast))
                lower = target;
        }

        var shape = (lower, upper) switch
        {
            (not null, not null) => LimitShape.Within,
            (not null, null) => LimitShape.AtLeast,
            (null, not null) => LimitShape.AtMost,
            _ => LimitShape.Target,
        };
        if (target is not null || lower is not null || upper is not null)
            Put(id, shape, new(source, at), lower, upper, target);
    }

    private void PutHalfWidth(string id, LimitFigure half, string source, SourceLocation at) =>
        Put(id, LimitShape.Tolerance, new(source, at), half with { Si = -half.Si, Text = "-" + half.Text }, half);

    // Where a figure is written and whose it is; not named where the job says no "from".
    private readonly record struct Origin(string Source, SourceLocation At, bool IsNamed = true);

    private void Put(
        string id, LimitShape shape, Origin origin, LimitFigure? lower = null, LimitFigure? upper = null, LimitFigure? target = null)
    {
        var definition = LimitDefinitions.Get(id);
        _figures[id] = new MakerFigure(
            new Limit
            {
                Definition = definition,
                Shape = shape,
                Tier = LimitTier.Maker,
                Pack = "",
                Basis = "maker",
                Source = origin.Source,
                Mark = "job",
                Rule = DecisionRule.Simple,
                At = origin.At,
                HasSource = origin.IsNamed,
                Lower = lower,
                Upper = upper,
                Target = target,
            },
            origin.IsNamed);
    }

    private static LimitFigure Moved(LimitFigure figure, double by) => figure with { Si = figure.Si + by, Text = "" };

    private static LimitFigure Figure<T>(Given<T> given) =>
        given.Number is { } number ? new LimitFigure(number.Si, given.Text, number.Unit, number.Decimals) : throw new InvalidOperationException($"\"{given.Text}\" is no number.");
}
