using System.Buffers.Binary;
using System.Text;

namespace Commission.Documents.Archive;

/// <summary>
/// A display profile (ICC.1:2001-04, version 2.4) of the sRGB colour space, for the output intent that PDF/A asks for: primaries adapted
/// to D50 and the transfer curve of IEC 61966-2-1 in 1024 steps.
/// </summary>
internal static class SrgbProfile
{
    private const int CurveSteps = 1024;

    public static byte[] Write()
    {
        var curve = Curve();
        var tags = new (string Signature, byte[] Data)[]
        {
            ("desc", Description("sRGB IEC61966-2.1")),
            ("cprt", Text("No copyright, use freely")),
            ("wtpt", Xyz(0.9642, 1.0, 0.8249)),
            ("rXYZ", Xyz(0.43607, 0.22249, 0.01392)),
            ("gXYZ", Xyz(0.38515, 0.71687, 0.09708)),
            ("bXYZ", Xyz(0.14307, 0.06061, 0.71410)),
            ("rTRC", curve),
            ("gTRC", curve),
            ("bTRC", curve),
        };
        return Assemble(tags);
    }

    private static byte[] Assemble((string Signature, byte[] Data)[] tags)
    {
        var offset = 128 + 4 + (12 * tags.Length);
        var places = new Dictionary<byte[], int>();
        foreach (var (_, data) in tags)
        {
            if (places.TryAdd(data, offset)) offset += (data.Length + 3) & ~3;
        }

        var profile = new byte[offset];
        Header(profile);
        BinaryPrimitives.WriteInt32BigEndian(profile.AsSpan(128), tags.Length);
        for (var i = 0; i < tags.Length; i++)
        {
            var entry = profile.AsSpan(132 + (12 * i));
            Encoding.ASCII.GetBytes(tags[i].Signature, entry);
            BinaryPrimitives.WriteInt32BigEndian(entry[4..], places[tags[i].Data]);
            BinaryPrimitives.WriteInt32BigEndian(entry[8..], tags[i].Data.Length);
            tags[i].Data.CopyTo(profile, places[tags[i].Data]);
        }

        return profile;
    }

    private static void Header(byte[] profile)
    {
        BinaryPrimitives.WriteInt32BigEndian(profile, profile.Length);
        profile[8] = 2;
        profile[9] = 0x40;
        Encoding.ASCII.GetBytes("mntrRGB XYZ ", profile.AsSpan(12));
        short[] created = [2001, 4, 1, 0, 0, 0];
        for (var i = 0; i < created.Length; i++) BinaryPrimitives.WriteInt16BigEndian(profile.AsSpan(24 + (2 * i)), created[i]);
        Encoding.ASCII.GetBytes("acsp", profile.AsSpan(36));
        WriteXyz(profile.AsSpan(68), 0.9642, 1.0, 0.8249);
    }

    private static byte[] Description(string text)
    {
        // textDescriptionType: ASCII part with its length, then empty Unicode and Macintosh parts of fixed size.
        var data = new byte[12 + text.Length + 1 + 78];
        Encoding.ASCII.GetBytes("desc", data);
        BinaryPrimitives.WriteInt32BigEndian(data.AsSpan(8), text.Length + 1);
        Encoding.ASCII.GetBytes(text, data.AsSpan(12));
        return data;
    }

    private static byte[] Text(string text)
    {
        var data = new byte[8 + text.Length + 1];
        Encoding.ASCII.GetBytes("text", data);
        Encoding.ASCII.GetBytes(text, data.AsSpan(8));
        return data;
    }

    private static byte[] Xyz(double x, double y, double z)
    {
        var data = new byte[20];
        Encoding.ASCII.GetBytes("XYZ ", data);
        WriteXyz(data.AsSpan(8), x, y, z);
        return data;
    }

    private static void WriteXyz(Span<byte> at, double x, double y, double z)
    {
        BinaryPrimitives.WriteInt32BigEndian(at, (int)Math.Round(x * 65536));
        BinaryPrimitives.WriteInt32BigEndian(at[4..], (int)Math.Round(y * 65536));
        BinaryPrimitives.WriteInt32BigEndian(at[8..], (int)Math.Round(z * 65536));
    }

    private static byte[] Curve()
    {
        var data = new byte[12 + (2 * CurveSteps)];
        Encoding.ASCII.GetBytes("curv", data);
        BinaryPrimitives.WriteInt32BigEndian(data.AsSpan(8), CurveSteps);
        for (var i = 0; i < CurveSteps; i++)
        {
            var signal = i / (CurveSteps - 1.0);
            var light = signal <= 0.04045 ? signal / 12.92 : Math.Pow((signal + 0.055) / 1.055, 2.4);
            BinaryPrimitives.WriteUInt16BigEndian(data.AsSpan(12 + (2 * i)), (ushort)Math.Round(light * 65535));
        }

        return data;
    }
}
