using Commission.Checks.Charge;
using Commission.Checks.Readings;
using Commission.Jobs.Model.Words;

// A namespace Commission.Checks.Compressor would hide the job's type of that name from the other phases.
namespace Commission.Checks.Compressors;

/// <summary>
/// The two pressures of a compressor as near to it as they were read. In cooling the service valves stand for them; in heating the vapor valve
/// carries discharge gas, and nothing but a pressure at the inlet tells the low side.
/// </summary>
/// <param name="High">Discharge side; null when it was not read.</param>
/// <param name="Low">Suction side; null when it was not read.</param>
/// <param name="HighRemark">What to know of where the high side was read; null when it was read at the compressor.</param>
/// <param name="LowRemark">What to know of where the low side was read; null when it was read at the compressor.</param>
internal sealed record CompressorSides(CorrectedReading? High, CorrectedReading? Low, string? HighRemark, string? LowRemark)
{
    /// <summary>The sides of a row.</summary>
    /// <param name="row">The readings.</param>
    public static CompressorSides Of(ChargeRow row)
    {
        var heating = row.Mode == OperatingMode.Heating;
        var high = row.DischargePressure ?? (heating ? row.VaporPressure : row.LiquidPressure);
        var low = row.TrueSuctionPressure ?? (heating ? null : row.VaporPressure);
        return new CompressorSides(
            high,
            low,
            high is null || row.DischargePressure is not null ? null
                : heating ? "The high side was read at the vapor service valve, a little below the compressor's outlet."
                : "The high side was read at the liquid service valve, below the compressor's outlet by the condenser's pressure drop.",
            low is null || row.TrueSuctionPressure is not null ? null : "The low side was read at the vapor service valve, a little above the compressor's inlet.");
    }

    /// <summary>Whether a row has what tells the high side.</summary>
    /// <param name="row">The readings.</param>
    public static bool HasHigh(ChargeRow row) => row.Written.DischargePressure is not null || (row.Mode == OperatingMode.Heating ? row.Written.VaporPressure is not null : row.Written.LiquidPressure is not null);

    /// <summary>Whether a row has what tells the low side.</summary>
    /// <param name="row">The readings.</param>
    public static bool HasLow(ChargeRow row) => row.Written.TrueSuctionPressure is not null || (row.Mode != OperatingMode.Heating && row.Written.VaporPressure is not null);
}
