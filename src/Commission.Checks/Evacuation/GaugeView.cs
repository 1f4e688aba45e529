using Commission.Jobs.Model.Words;

namespace Commission.Checks.Evacuation;

/// <summary>What the gauge could see from where it sat, while pumping and after the valve was closed.</summary>
/// <param name="LevelBlock">Why the level at isolation says nothing of the system; null when it does.</param>
/// <param name="LevelReservation">What the level rests on and was not shown; null when nothing.</param>
/// <param name="HoldBlock">Why the hold says nothing of the system; null when it does.</param>
/// <param name="HoldReservation">What the hold rests on and was not shown; null when nothing.</param>
/// <param name="HoldRemark">What was inside the hold beside the system, a sentence; null when nothing.</param>
internal sealed record GaugeView(string? LevelBlock, string? LevelReservation, string? HoldBlock, string? HoldReservation, string? HoldRemark)
{
    private const string NotWritten = "where the gauge sat is not written";

    /// <summary>The view of an evacuation.</summary>
    /// <param name="evacuation">The evacuation.</param>
    public static GaugeView Of(Jobs.Model.Evacuation evacuation)
    {
        var closed = evacuation.IsolatedAt?.Value;
        var hoses = closed switch
        {
            IsolationPlace.Manifold => "The hoses from the system to the manifold are inside the hold.",
            IsolationPlace.PumpValve => "Hoses and manifold are inside the hold.",
            _ => null,
        };
        return evacuation.Gauge?.Value switch
        {
            GaugePlace.AtTheSystem => new GaugeView(null, null, null, null, hoses),
            GaugePlace.OnTheManifold => new GaugeView(
                null,
                "the gauge sat on the manifold, where the pressure is lower than in the system while the pump runs",
                closed == IsolationPlace.ValveOnTheServicePort ? "the gauge sat on the manifold, cut off from the system by the valve that was closed" : null,
                closed is null ? "which valve was closed is not written, and the gauge sat on the manifold" : null,
                hoses),
            GaugePlace.AtThePump => new GaugeView(
                "the gauge sat at the pump: while the pump runs it shows the pump and not the system",
                null,
                closed is IsolationPlace.ValveOnTheServicePort or IsolationPlace.Manifold ? "the gauge sat at the pump, cut off from the system by the valve that was closed" : null,
                closed is null ? "which valve was closed is not written, and the gauge sat at the pump" : null,
                hoses),
            _ => new GaugeView(null, NotWritten, null, NotWritten, hoses),
        };
    }
}
