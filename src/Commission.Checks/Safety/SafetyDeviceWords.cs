using System.Globalization;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Safety;

/// <summary>Names of safety devices as the record prints them.</summary>
internal static class SafetyDeviceWords
{
    /// <summary>A name for each device, unlike the others: its own, else its kind with a number where there are several.</summary>
    /// <param name="devices">The devices of the job.</param>
    public static IReadOnlyList<string> Names(IReadOnlyList<SafetyDevice> devices)
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        var names = new List<string>(devices.Count);
        foreach (var device in devices)
        {
            var name = device.Id is { } id ? $"{device.Kind.Text} {id.Value}" : device.Kind.Text;
            seen[name] = seen.GetValueOrDefault(name) + 1;
            names.Add(seen[name] == 1 ? name : string.Create(CultureInfo.InvariantCulture, $"{name} ({seen[name]})"));
        }

        return names;
    }

    /// <summary>Which reading shows where a pressure device trips.</summary>
    /// <param name="kind">The device.</param>
    /// <returns>The reading; null for a device that does not act on a pressure of the circuit.</returns>
    public static ReadingName? PressureOf(SafetyDeviceKind kind) => kind switch
    {
        SafetyDeviceKind.HighPressureSwitch or SafetyDeviceKind.ReliefValve => ReadingName.LiquidPressure,
        SafetyDeviceKind.LowPressureSwitch => ReadingName.VaporPressure,
        _ => null,
    };
}
