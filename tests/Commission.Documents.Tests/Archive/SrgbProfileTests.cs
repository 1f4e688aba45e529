using System.Buffers.Binary;
using System.Text;
using Commission.Documents.Archive;
using Xunit;

namespace Commission.Documents.Tests.Archive;

public sealed class SrgbProfileTests
{
    private static readonly byte[] Profile = SrgbProfile.Write();

    // ICC.1:2001-04, 6.1: size, class, colour spaces, signature and illuminant of the header.
    [Fact]
    public void The_header_is_that_of_a_display_profile()
    {
        Assert.Equal(Profile.Length, BinaryPrimitives.ReadInt32BigEndian(Profile));
        Assert.Equal("mntrRGB XYZ ", Encoding.ASCII.GetString(Profile, 12, 12));
        Assert.Equal("acsp", Encoding.ASCII.GetString(Profile, 36, 4));
        Assert.All(Xyz(68).Zip([0.9642, 1.0, 0.8249]), pair => Assert.Equal(pair.Second, pair.First, 1e-4));
    }

    // ICC.1:2001-04, 6.2 and 6.3.1.1: the tags a display profile must have, each inside the file and on a multiple of four.
    [Fact]
    public void Every_required_tag_lies_inside_the_file()
    {
        var tags = Tags();
        Assert.Equal(["bTRC", "bXYZ", "cprt", "desc", "gTRC", "gXYZ", "rTRC", "rXYZ", "wtpt"], tags.Keys.Order(StringComparer.Ordinal));
        Assert.All(tags.Values, tag =>
        {
            Assert.Equal(0, tag.Offset % 4);
            Assert.InRange(tag.Offset, 132 + (12 * tags.Count), Profile.Length);
            Assert.True(tag.Offset + tag.Length <= Profile.Length);
        });
    }

    // The three primaries together are the white of the profile connection space, D50.
    [Fact]
    public void Primaries_add_up_to_white()
    {
        var tags = Tags();
        var sum = new double[3];
        foreach (var name in new[] { "rXYZ", "gXYZ", "bXYZ" })
        {
            var xyz = Xyz(tags[name].Offset + 8);
            for (var i = 0; i < 3; i++) sum[i] += xyz[i];
        }

        Assert.Equal(0.9642, sum[0], 0.0003);
        Assert.Equal(1.0, sum[1], 0.0003);
        Assert.Equal(0.8249, sum[2], 0.0003);
    }

    // IEC 61966-2-1: signal 0.5 is light 0.2140 (from memory: middle grey of sRGB, 21.4 %).
    [Fact]
    public void Half_the_signal_is_a_fifth_of_the_light()
    {
        var curve = Tags()["rTRC"].Offset;
        var count = BinaryPrimitives.ReadInt32BigEndian(Profile.AsSpan(curve + 8));
        var below = BinaryPrimitives.ReadUInt16BigEndian(Profile.AsSpan(curve + 12 + (2 * ((count - 1) / 2)))) / 65535.0;
        var above = BinaryPrimitives.ReadUInt16BigEndian(Profile.AsSpan(curve + 12 + (2 * (((count - 1) / 2) + 1)))) / 65535.0;
        Assert.Equal(0.2140, (below + above) / 2, 0.0005);
    }

    private static Dictionary<string, (int Offset, int Length)> Tags()
    {
        var tags = new Dictionary<string, (int, int)>(StringComparer.Ordinal);
        var count = BinaryPrimitives.ReadInt32BigEndian(Profile.AsSpan(128));
        for (var i = 0; i < count; i++)
        {
            var entry = Profile.AsSpan(132 + (12 * i), 12);
            tags.Add(Encoding.ASCII.GetString(entry[..4]), (BinaryPrimitives.ReadInt32BigEndian(entry[4..]), BinaryPrimitives.ReadInt32BigEndian(entry[8..])));
        }

        return tags;
    }

    private static double[] Xyz(int at) => [.. Enumerable.Range(0, 3).Select(i => BinaryPrimitives.ReadInt32BigEndian(Profile.AsSpan(at + (4 * i))) / 65536.0)];
}
