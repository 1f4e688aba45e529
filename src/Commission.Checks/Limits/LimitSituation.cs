using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Limits;

/// <summary>What decides which case of a limit applies. A value that is not known matches no condition.</summary>
internal sealed record LimitSituation
{
    /// <summary>Kind of work.</summary>
    public string? Work { get; init; }

    /// <summary>Kind of system.</summary>
    public string? System { get; init; }

    /// <summary>Kind of metering device.</summary>
    public string? Metering { get; init; }

    /// <summary>What the cold is for.</summary>
    public string? Application { get; init; }

    /// <summary>Kind of compressor.</summary>
    public string? Compressor { get; init; }

    /// <summary>Cooling or heating.</summary>
    public string? Mode { get; init; }

    /// <summary>Designation of the refrigerant.</summary>
    public string? Refrigerant { get; init; }

    /// <summary>Safety class of the refrigerant, such as <c>A2L</c>.</summary>
    public string? RefrigerantClass { get; init; }

    /// <summary>Number of phases of the supply.</summary>
    public int? Phases { get; init; }

    /// <summary>Whether the circuit has a receiver.</summary>
    public bool? Receiver { get; init; }

    /// <summary>Whether the air runs through ducts.</summary>
    public bool? Ducted { get; init; }

    /// <summary>Whether the refrigerant depletes ozone.</summary>
    public bool? OzoneDepleting { get; init; }

    /// <summary>Whether the circuit is hermetically sealed and labelled so.</summary>
    public bool? HermeticallySealed { get; init; }

    /// <summary>Whether the unit has a leak sensor.</summary>
    public bool? LeakSensor { get; init; }

    /// <summary>Where the indoor unit stands; the attic when one of several stands there, and not known when they differ otherwise.</summary>
    public string? Place { get; init; }

    /// <summary>Rated cooling capacity, W.</summary>
    public double? Capacity { get; init; }

    /// <summary>Full charge, kg.</summary>
    public double? FullCharge { get; init; }

    /// <summary>Temperature around the circuit, K.</summary>
    public double? Ambient { get; init; }

    /// <summary>
    /// What a job says. Not said and still known: outside refrigeration a circuit is for comfort and has no receiver, and a split, a
    /// heat pump or a packaged unit blows into ducts. The refrigerant's class, the full charge and the ambient temperature are
    /// computed elsewhere and added.
    /// </summary>
    /// <param name="job">The job.</param>
    /// <returns>The situation.</returns>
    public static LimitSituation Of(Job job)
    {
        var equipment = job.Equipment;
        var system = equipment.System.Value;
        return new LimitSituation
        {
            Work = job.Identity.Work.Value.ToString(),
            System = system.ToString(),
            Metering = equipment.Metering?.Kind.Value.ToString(),
            Application = (equipment.Application?.Value ?? (system == SystemKind.Refrigeration ? null : Jobs.Model.Words.Application.AC))?.ToString(),
            Compressor = equipment.Compressor?.Kind.Value.ToString(),
            Refrigerant = equipment.Refrigerant.Value,
            Phases = equipment.Nameplate?.Phases?.Value,
            Receiver = equipment.Receiver?.Value ?? (system == SystemKind.Refrigeration ? null : false),
            Ducted = equipment.Ducted?.Value ?? (system is SystemKind.Split or SystemKind.HeatPump or SystemKind.Packaged ? true : null),
            HermeticallySealed = equipment.HermeticallySealed?.Value,
            LeakSensor = job.Safety?.LeakSensor?.Fitted.Value ?? (job.Safety?.Mitigation?.Value is { } mitigation ? mitigation == Mitigation.LeakSensorWithFan : null),
            Place = PlaceOf(equipment),
            Capacity = equipment.Capacity?.Value.Si,
        };
    }

    // Water does its harm from the attic, whatever stands elsewhere.
    private static string? PlaceOf(Equipment equipment)
    {
        var places = equipment.Indoor.Select(unit => unit.Place?.Value).Distinct().ToList();
        return places.Contains(UnitPlace.Attic) ? nameof(UnitPlace.Attic) : places is [{ } only] ? only.ToString() : null;
    }
}
