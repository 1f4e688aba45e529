using QRCoder;

namespace Commission.Documents.Markup;

/// <summary>The dark squares of a QR code (ISO/IEC 18004, error correction level M), without the quiet zone.</summary>
internal static class QrModules
{
    /// <summary>Squares of quiet zone that belong around the code.</summary>
    public const int QuietZone = 4;

    /// <summary>Encodes a text.</summary>
    /// <returns>True is dark; first index the row from the top.</returns>
    public static bool[,] Of(string text)
    {
        using var data = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M, forceUtf8: true);
        var size = data.ModuleMatrix.Count - (2 * QuietZone);
        var modules = new bool[size, size];
        for (var row = 0; row < size; row++)
        {
            for (var column = 0; column < size; column++)
                modules[row, column] = data.ModuleMatrix[row + QuietZone][column + QuietZone];
        }

        return modules;
    }
}
