using PdfSharp.Fonts;

namespace Commission.Documents.Fonts;

/// <summary>Gives PDFsharp the typeface that is embedded in this program, so that no font of the machine is ever used.</summary>
internal sealed class EmbeddedFonts : IFontResolver
{
    /// <summary>The family name under which PDFsharp asks.</summary>
    public const string Family = "Source Sans 3";

    private static readonly Lazy<EmbeddedFonts> Registered = new(static () =>
    {
        var fonts = new EmbeddedFonts();
        GlobalFontSettings.FontResolver ??= fonts;
        return fonts;
    });

    private EmbeddedFonts()
    {
    }

    /// <summary>Registers the typeface with PDFsharp; only the first call does anything.</summary>
    public static void Register() => _ = Registered.Value;

    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        new(isBold ? FontFace.SemiBold.Name : isItalic ? FontFace.Italic.Name : FontFace.Regular.Name);

    public byte[]? GetFont(string faceName) =>
        faceName == FontFace.SemiBold.Name ? FontFace.SemiBold.Data : faceName == FontFace.Italic.Name ? FontFace.Italic.Data : FontFace.Regular.Data;

    /// <summary>Reads a font file out of the program.</summary>
    public static byte[] Read(string name)
    {
        using var stream = typeof(EmbeddedFonts).Assembly.GetManifestResourceStream($"Fonts/{name}.ttf")
            ?? throw new InvalidOperationException($"The font {name} is missing from the program.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
