using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Safety;

/// <summary>A room as the charge limits see it: the floor the refrigerant can spread over, the height it comes from, the air it mixes with.</summary>
internal sealed record RoomCase
{
    private RoomCase()
    {
    }

    /// <summary>Which room.</summary>
    public required string Name { get; init; }

    /// <summary>Floor area of the room, or of all rooms its ducts serve, m².</summary>
    public required Uncertain Area { get; init; }

    /// <summary>The area as written.</summary>
    public required string AreaText { get; init; }

    /// <summary>Height from which refrigerant would come out, m; null when the job does not say.</summary>
    public Uncertain? ReleaseHeight { get; private init; }

    /// <summary>That height in words.</summary>
    public string HeightText { get; private init; } = "";

    /// <summary>Volume of air it mixes with, m³; null when the job gives neither a volume nor a ceiling height.</summary>
    public Uncertain? Volume { get; private init; }

    /// <summary>The volume in words.</summary>
    public string VolumeText { get; private init; } = "";

    /// <summary>Volume up to the height in which leaked refrigerant mixes with the air, m³.</summary>
    public required Uncertain Dispersal { get; init; }

    /// <summary>That volume in words.</summary>
    public required string DispersalText { get; init; }

    /// <summary>The ceiling, m; null when the job does not say.</summary>
    public double? Ceiling { get; private init; }

    /// <summary>Whether refrigerant is said to come out above the ceiling.</summary>
    public bool IsReleasedAboveCeiling { get; private init; }

    /// <summary>Whether the areas that ducts serve count together; null when the room serves none through ducts.</summary>
    public bool? CountsDucts { get; private init; }

    /// <summary>Whether people there cannot leave by themselves.</summary>
    public bool IsInstitutional { get; private init; }

    /// <summary>Whether it lies below ground.</summary>
    public bool IsBelowGround { get; private init; }

    /// <summary>What of the job it rests on.</summary>
    public ImmutableArray<ReadingUse> Uses { get; private init; } = [];

    /// <summary>The rooms of a job.</summary>
    public static ImmutableArray<RoomCase> All(CheckContext context) =>
        context.Job.Safety is { Room: { IsEmpty: false } rooms } ? [.. rooms.Select((room, i) => Of(context, room, i, rooms.Length))] : [];

    private static RoomCase Of(CheckContext context, Room room, int index, int count)
    {
        var name = room.Name?.Value ?? context.Present.Text(count == 1 ? SafetyMessages.RoomOnly : SafetyMessages.RoomNumbered(index + 1));
        var uses = ImmutableArray.CreateBuilder<ReadingUse>();
        void Use<T>(Func<TextValue, Message> what, Given<T>? given)
        {
            if (given is not null)
                uses.Add(given.Use(context.Present.Text(what(new(name)))));
        }

        Use(SafetyMessages.RoomArea, room.Area);
        Use(SafetyMessages.RoomMounting, room.Mounting);
        Use(SafetyMessages.RoomReleaseHeight, room.ReleaseHeight);
        Use(SafetyMessages.RoomCeilingHeight, room.CeilingHeight);
        Use(SafetyMessages.RoomVolume, room.Volume);
        Use(SafetyMessages.RoomOccupancy, room.Occupancy);
        Use(SafetyMessages.RoomGroundLevel, room.BelowGround);
        foreach (var served in room.DuctedAreas)
            Use(SafetyMessages.RoomAreaServed, served);
        var counts = !context.Get<FlammableRefrigerant>().Burns || Circulation.Of(context).MixesRooms;
        var (area, areaText) = Floor(context, name, room, counts);
        var (height, heightText) = Height(context, name, room);
        var (volume, volumeText) = Space(context, name, room, area, areaText);
        var (dispersal, dispersalText) = Mixed(context, name, room, area, areaText);
        return new RoomCase
        {
            Name = name,
            Area = area,
            AreaText = areaText,
            ReleaseHeight = height,
            HeightText = heightText,
            Volume = volume,
            VolumeText = volumeText,
            Dispersal = dispersal,
            DispersalText = dispersalText,
            Ceiling = room.CeilingHeight?.Value.Si,
            IsReleasedAboveCeiling = room.ReleaseHeight?.Value.Si > room.CeilingHeight?.Value.Si,
            CountsDucts = room.DuctedAreas.IsEmpty ? null : counts,
            IsInstitutional = room.Occupancy?.Value == Occupancy.Institutional,
            IsBelowGround = room.BelowGround?.Value == true,
            Uses = uses.ToImmutable(),
        };
    }

    private static (Uncertain? Height, string Text) Height(CheckContext context, string name, Room room)
    {
        if (room.ReleaseHeight is { } written)
        {
            var height = Written.Value(context, context.Present.Text(SafetyMessages.RoomReleaseHeight(new(name))), written, DisplayKind.Length);
            return height.Value >= FlammableCharge.LowestReleaseHeight
                ? (height, written.Text)
                : (Uncertain.Exact(FlammableCharge.LowestReleaseHeight), context.Present.Text(SafetyMessages.HeightLowest(context.Present.InMessage(FlammableCharge.LowestReleaseHeight, DisplayKind.Length))));
        }

        if (room.Mounting is not { } mounting)
            return (null, "");
        var mounted = Math.Min(FlammableCharge.ReleaseHeight(Of(mounting.Value)), room.CeilingHeight?.Value.Si ?? double.PositiveInfinity);
        return (Uncertain.Exact(mounted), context.Present.Text(SafetyMessages.HeightMounted(context.Present.InMessage(mounted, DisplayKind.Length), new(mounting.Text))));
    }

    // Without circulation refrigerant stays in the room it comes out in, and that may be the smallest.
    private static (Uncertain Area, string Text) Floor(CheckContext context, string name, Room room, bool countsDucts)
    {
        var own = (Value: Written.Value(context, context.Present.Text(SafetyMessages.RoomArea(new(name))), room.Area, DisplayKind.Area), room.Area.Text);
        if (room.DuctedAreas.IsEmpty)
            return own;
        var served = room.DuctedAreas.Select(a => (Value: Written.Value(context, context.Present.Text(SafetyMessages.RoomAreaServed(new(name))), a, DisplayKind.Area), a.Text)).ToList();
        return countsDucts
            ? (served.Select(s => s.Value).Aggregate((a, b) => a + b), string.Join(" + ", served.Select(s => s.Text)))
            : served.Append(own).MinBy(s => s.Value.Value);
    }

    // Refrigerant heavier than air does not rise into a high ceiling.
    private static (Uncertain Volume, string Text) Mixed(CheckContext context, string name, Room room, Uncertain area, string areaText)
    {
        var most = context.Limits.Require(LimitIds.SafetyFlammableDispersalHeight).Most.Si;
        var byHeight = room.CeilingHeight is { } ceiling && ceiling.Value.Si < most
            ? (Volume: area * Written.Value(context, context.Present.Text(SafetyMessages.RoomCeilingHeight(new(name))), ceiling, DisplayKind.Length), $"({areaText}) × {ceiling.Text}")
            : (Volume: most * area, $"({areaText}) × {context.Present.Text(most, DisplayKind.Length)}");
        return room.Volume is { } volume && room.DuctedAreas.IsEmpty && volume.Value.Si < byHeight.Volume.Value
            ? (Written.Value(context, context.Present.Text(SafetyMessages.RoomVolume(new(name))), volume, DisplayKind.Volume), volume.Text)
            : byHeight;
    }

    private static (Uncertain? Volume, string Text) Space(CheckContext context, string name, Room room, Uncertain area, string areaText)
    {
        if (room.Volume is { } volume && room.DuctedAreas.IsEmpty)
            return (Written.Value(context, context.Present.Text(SafetyMessages.RoomVolume(new(name))), volume, DisplayKind.Volume), volume.Text);
        return room.CeilingHeight is { } ceiling
            ? (area * Written.Value(context, context.Present.Text(SafetyMessages.RoomCeilingHeight(new(name))), ceiling, DisplayKind.Length), $"({areaText}) × {ceiling.Text}")
            : (null, "");
    }

    private static ReleaseMounting Of(Mounting mounting) => mounting switch
    {
        Mounting.Floor => ReleaseMounting.Floor,
        Mounting.Window => ReleaseMounting.Window,
        Mounting.Wall => ReleaseMounting.Wall,
        _ => ReleaseMounting.Ceiling,
    };
}

/// <summary>Whether a fan mixes leaked refrigerant with the air: one that a leak sensor starts, or one that always runs.</summary>
internal sealed class Circulation
{
    private readonly Jobs.Model.Safety? _safety;

    private Circulation(Jobs.Model.Safety? safety) => _safety = safety;

    /// <summary>Whether the fan runs when refrigerant leaks.</summary>
    public bool Runs => _safety?.Mitigation?.Value switch
    {
        Mitigation.ContinuousFan => true,
        Mitigation.LeakSensorWithFan => !Fails,
        _ => false,
    };

    /// <summary>Whether the rooms that ducts serve share their air then: a fan, and a sensor that is there.</summary>
    public bool MixesRooms => Runs && (_safety!.Mitigation!.Value == Mitigation.LeakSensorWithFan || (_safety.LeakSensor is { Fitted.Value: true } && !Fails));

    /// <summary>Whether the measure rests on a sensor of which nothing is written.</summary>
    public bool IsNotDescribed => _safety is { Mitigation.Value: Mitigation.LeakSensorWithFan, LeakSensor: null };

    private bool Fails => _safety?.LeakSensor is { } sensor
        && (!sensor.Fitted.Value || sensor.Connected?.Value == false || sensor.FanOn?.Value == false);

    /// <summary>What a job says of it.</summary>
    public static Circulation Of(CheckContext context) => new(context.Job.Safety);

    /// <summary>Names what it rests on.</summary>
    public void UseIn(FindingBuilder finding) => finding.Use(SafetyMessages.ReadingMitigation, _safety?.Mitigation).Use(SafetyMessages.ReadingSensorFitted, _safety?.LeakSensor?.Fitted)
        .Use(SafetyMessages.ReadingSensorConnected, _safety?.LeakSensor?.Connected).Use(SafetyMessages.SensorBlowerOn, _safety?.LeakSensor?.FanOn);
}

/// <summary>How much of a refrigerant that does not burn would be in the room's air. The limits known here are from memory: above one stands a condition and no failure.</summary>
internal sealed class ConcentrationLimitCheck : ICheck
{
    public string Id => "safety.concentration-limit";

    public string Phase => Phases.Safety;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var circuit = context.Get<CircuitRefrigerant>();
        if (circuit.Info?.SafetyGroup?.Value is not ("A1" or "B1") || RoomCase.All(context) is not { IsEmpty: false } rooms)
            yield break;
        var charge = context.Get<CircuitCharge>();
        var finding = context.Finding(this).Use(ReadingsMessages.Refrigerant, context.Job.Equipment.Refrigerant);
        foreach (var use in rooms.SelectMany(r => r.Uses))
            finding.Use(use);
        if (rooms.FirstOrDefault(r => r.Volume is null) is { } unknown)
        {
            yield return finding.NotEvaluated(SafetyMessages.RoomVolumeNotWritten(new(unknown.Name)), SafetyMessages.RoomVolumeNotWrittenNext);
            yield break;
        }

        if (charge.Total is not { } total)
        {
            yield return finding.NotEvaluated(SafetyMessages.ChargeUnknown(charge.WhyNot!), SafetyMessages.ChargeUnknownNext);
            yield break;
        }

        total.UseIn(finding);
        var smallest = rooms.MinBy(r => r.Volume!.Value)!;
        var concentration = total.Value / smallest.Volume!;
        finding.Measure(concentration, DisplayKind.Density).Step(
            "c", SafetyMessages.StepConcentration, SafetyMessages.StepConcentrationFormula,
            string.Create(CultureInfo.InvariantCulture, $"{context.Present.Text(total.Value.Value, DisplayKind.Mass)} / ({smallest.VolumeText})"), Grams(concentration.Value), SafetyMessages.StepDefinition);
        var (room, found, gas) = (new TextValue(smallest.Name), new TextValue(Grams(concentration.Value)), new TextValue(circuit.Designation));
        if (context.Limits.Find(LimitIds.SafetyConcentration) is { } rule)
            finding.Show(context.State(rule));
        if (circuit.Info.ConcentrationLimit is not { } limit)
        {
            yield return finding.Information(SafetyMessages.ConcentrationLimitUnknown(room, found, gas), SafetyMessages.ConcentrationLimitUnknownKind);
            yield break;
        }

        var allowed = limit.Value * ConcentrationCharge.OccupancyFactor(smallest.IsInstitutional);
        finding.Step("RCL", SafetyMessages.StepConcentrationLimit, "RCL × F_occ", string.Create(CultureInfo.InvariantCulture, $"{Grams(limit.Value)} × {ConcentrationCharge.OccupancyFactor(smallest.IsInstitutional):0.0}"), Grams(allowed), Cited.As(limit.Source, limit.Mark));
        finding.Decide(true).Remark(SafetyMessages.ConcentrationFromMemory);
        yield return concentration.Value > allowed
            ? finding.Reserve(SafetyMessages.ConcentrationReserve(found, new(Grams(allowed)))).Say(SafetyMessages.ConcentrationMore(room, found, gas, new(Grams(allowed)))).Next(this.WhenItFails()).Build()
            : finding.Say(SafetyMessages.ConcentrationLess(room, found, gas, new(Grams(allowed)))).Build();
    }

    private static string Grams(double kilogramsPerCubicMetre) => string.Create(CultureInfo.InvariantCulture, $"{1000 * kilogramsPerCubicMetre:0} g/m³");
}
