using Commission.Checks.Tables;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>Inside diameter of a line: outside diameter less its wall, which without being written is that of refrigeration tube of this size.</summary>
/// <param name="Metres">m; null when it is not known.</param>
/// <param name="Source">Where the wall comes from.</param>
/// <param name="Uses">What of the job it rests on.</param>
internal sealed record LineBore(double? Metres, string Source, IReadOnlyList<ReadingUse> Uses)
{
    /// <summary>The bore of a tube.</summary>
    /// <param name="name">What the line is called.</param>
    /// <param name="tube">The tube.</param>
    public static LineBore Of(string name, Tube tube)
    {
        var uses = new List<ReadingUse> { new($"{name}: diameter", tube.Od.Text, tube.Od.At, null) };
        if (tube.Wall is { } wall)
        {
            uses.Add(new ReadingUse($"{name}: wall", wall.Text, wall.At, null));
            var bore = tube.Od.Value.Si - (2 * wall.Value.Si);
            return new LineBore(bore > 0 ? bore : null, "wall as written", uses);
        }

        Length? standard = AcrTube.Bore(tube.Od.Value);
        return new LineBore(standard?.Si, AcrTube.Source, uses);
    }
}
