namespace Commission.Checks;

/// <summary>The phases of a job in the order in which the work and the record go.</summary>
public static class Phases
{
    /// <summary>Instruments and their field checks.</summary>
    public const string Instruments = "instruments";

    /// <summary>Pressure test with nitrogen.</summary>
    public const string PressureTest = "pressure-test";

    /// <summary>Evacuation and the isolated hold.</summary>
    public const string Evacuation = "evacuation";

    /// <summary>Charge and refrigerant circuit.</summary>
    public const string Charge = "charge";

    /// <summary>Air side.</summary>
    public const string Air = "air";

    /// <summary>Compressor.</summary>
    public const string Compressor = "compressor";

    /// <summary>Electrical supply and motors.</summary>
    public const string Electrical = "electrical";

    /// <summary>Piping.</summary>
    public const string Piping = "piping";

    /// <summary>Safety of people and room.</summary>
    public const string Safety = "safety";

    /// <summary>Refrigerant ledger, label, leak check and the law.</summary>
    public const string Refrigerant = "refrigerant";

    /// <summary>Function of the system and its controls.</summary>
    public const string Functional = "functional";

    /// <summary>Whether the record is worth relying on.</summary>
    public const string Evidence = "evidence";

    /// <summary>All phases in record order.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        Instruments, PressureTest, Evacuation, Charge, Air, Compressor, Electrical, Piping, Safety, Refrigerant, Functional, Evidence,
    ];
}
