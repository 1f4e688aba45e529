using Commission.Checks.Kernel;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Circuit;

/// <summary>The share of its rated load current that a compressor of comfort cooling is likely to draw at full load.</summary>
/// <param name="Share">The share.</param>
/// <param name="Outdoor">The outdoor air it was taken for.</param>
internal sealed record LikelyCurrent(double Share, CorrectedReading Outdoor)
{
    // Three quarters at 33 °C outdoors, and a hundredth more a kelvin (common practice, no source).
    private const double AtReference = 0.75;
    private const double PerKelvin = 0.011;
    private const double Reference = 33 + 273.15;
    private const double FarBelow = 0.87;

    /// <summary>Below this share the current is far below what is likely.</summary>
    public double Least => FarBelow * Share;

    /// <summary>The share at an outdoor temperature; the reference where none was read.</summary>
    /// <param name="outdoorKelvin">Outdoor air, K; null when it was not read.</param>
    public static double At(double? outdoorKelvin) => AtReference + (PerKelvin * ((outdoorKelvin ?? Reference) - Reference));

    /// <summary>For the last settled reading in cooling of a comfort system with a fixed-speed compressor.</summary>
    /// <returns>The share; null where nothing is likely.</returns>
    public static LikelyCurrent? Of(CheckContext context) =>
        context.Get<ChargeAnalysis>() is { IsRefrigeration: false, ByWeightOnly: null } charge
        && charge.Judged(OperatingMode.Cooling, r => r.HasCircuitReading && r.OutdoorDryBulb is not null) is { OutdoorDryBulb: { } outdoor } row
        && RunningCondition.Of(context, row).Block is null
            ? new LikelyCurrent(At(outdoor.Value.Value), outdoor)
            : null;
}
