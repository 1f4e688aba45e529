using Commission.Checks.Kernel;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;

namespace Commission.Checks.PressureTest;

/// <summary>
/// The design pressure of the part of the circuit that was under test. Where a system heats, its line set and indoor side carry the discharge pressure: they
/// are high side whatever else the plate prints (generic installation manuals of ductless, multi-split and VRF systems, from memory).
/// </summary>
/// <param name="Name">Which figure of the plate it is.</param>
/// <param name="Given">The figure as written.</param>
/// <param name="Gauge">The figure above the atmosphere, Pa.</param>
internal sealed record SectionDesignPressure(Message Name, Given<StatedPressure> Given, double Gauge)
{
    /// <summary>The design pressure of a section; null where the plate's is not written.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="section">The section; null where it is not written.</param>
    public static SectionDesignPressure? Of(CheckContext context, Given<CircuitSection>? section) => context.Job.Equipment.Nameplate?.DesignPressure is { } plate
        ? IsHighSide(context.Job.Equipment.System.Value, section?.Value)
            ? Made(context, CommonMessages.ReadingDesignHigh, plate.High ?? plate.Low)
            : Made(context, PressureTestMessages.ReadingDesignLow, plate.Low ?? plate.High)
        : null;

    /// <summary>The higher design pressure of the plate, beyond which nothing in the circuit is designed; null where it is not written.</summary>
    public static SectionDesignPressure? Highest(CheckContext context) => context.Job.Equipment.Nameplate?.DesignPressure is { } plate
        ? Made(context, plate.High is null ? PressureTestMessages.ReadingDesignLow : CommonMessages.ReadingDesignHigh, plate.High ?? plate.Low)
        : null;

    /// <summary>The lower design pressure of the plate; null where it is not written.</summary>
    public static SectionDesignPressure? Low(CheckContext context) => Made(context, PressureTestMessages.ReadingDesignLow, context.Job.Equipment.Nameplate?.DesignPressure?.Low);

    /// <summary>Whether a section holds the low side of the unit itself, the shell of its compressor for one, which no other part's rating speaks for.</summary>
    /// <param name="section">The section.</param>
    public static bool HoldsLowSideOfUnit(Given<CircuitSection>? section) => section?.Value is CircuitSection.WholeSystem or CircuitSection.LowSide;

    /// <summary>Whether a section lies beyond the closed valves of the unit.</summary>
    /// <param name="section">The section.</param>
    public static bool IsShutOffFromUnit(Given<CircuitSection>? section) => section?.Value is CircuitSection.LineSet or CircuitSection.LineSetAndIndoor or CircuitSection.Indoor;

    /// <summary>Whether a section that is shut off from the unit holds lines of both sides.</summary>
    /// <param name="section">The section.</param>
    public static bool HasBothSides(Given<CircuitSection>? section) => section?.Value is CircuitSection.LineSet or CircuitSection.LineSetAndIndoor;

    // What holds the whole system is bounded by its low side, the shell of the compressor for one.
    private static bool IsHighSide(SystemKind system, CircuitSection? section) => section switch
    {
        CircuitSection.HighSide or CircuitSection.Outdoor => true,
        null or CircuitSection.LineSet or CircuitSection.LineSetAndIndoor or CircuitSection.Indoor =>
            system is SystemKind.DuctlessSplit or SystemKind.MultiSplit or SystemKind.VRF or SystemKind.HeatPump or SystemKind.AirToWaterHeatPump,
        _ => false,
    };

    private static SectionDesignPressure? Made(CheckContext context, Message name, Given<StatedPressure>? given) =>
        given is null ? null : new SectionDesignPressure(name, given, given.Value.ToGauge(context.Get<SiteAtmosphere>().Pressure).Si);
}
