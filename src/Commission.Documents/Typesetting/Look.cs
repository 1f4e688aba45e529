using Commission.Documents.Fonts;
using PdfSharp.Drawing;

namespace Commission.Documents.Typesetting;

/// <summary>The look of the pages: three sizes, one accent, tints light enough for a printer without colours.</summary>
internal static class Look
{
    /// <summary>Size of tables and notes.</summary>
    public const double Small = 7.8;

    /// <summary>Size of running text.</summary>
    public const double Body = 9.0;

    /// <summary>Size of headings and of the outcome.</summary>
    public const double Large = 13.0;

    public static readonly XColor Ink = XColor.FromArgb(0x1C, 0x1C, 0x1C);
    public static readonly XColor Quiet = XColor.FromArgb(0x56, 0x5B, 0x60);
    public static readonly XColor Accent = XColor.FromArgb(0x1B, 0x4B, 0x72);
    public static readonly XColor Rule = XColor.FromArgb(0xC9, 0xCE, 0xD3);
    public static readonly XColor Hair = XColor.FromArgb(0xE1, 0xE4, 0xE7);
    public static readonly XColor Grey = XColor.FromArgb(0xF1, 0xF2, 0xF3);
    public static readonly XColor CautionTint = XColor.FromArgb(0xFC, 0xF3, 0xE6);
    public static readonly XColor CautionEdge = XColor.FromArgb(0xB8, 0x5A, 0x1E);
    public static readonly XColor FailInk = XColor.FromArgb(0x9A, 0x35, 0x0C);

    public static readonly TextStyle BodyText = new(FontFace.Regular, Body, Ink);
    public static readonly TextStyle SmallText = new(FontFace.Regular, Small, Ink);
    public static readonly TextStyle NoteText = new(FontFace.Regular, Small, Quiet);
    public static readonly TextStyle LeadText = new(FontFace.Regular, Large, Ink);
    public static readonly TextStyle Heading1 = new(FontFace.SemiBold, Large, Accent);
    public static readonly TextStyle Heading2 = new(FontFace.SemiBold, Large, Accent);
    public static readonly TextStyle Heading3 = new(FontFace.SemiBold, Body, Accent);

    /// <summary>Tint of a cell that shows a verdict; null for none.</summary>
    public static XColor? VerdictTint(string verdict) => verdict switch
    {
        "conditional-pass" => XColor.FromArgb(0xE9, 0xF1, 0xF7),
        "conditional-fail" => XColor.FromArgb(0xFB, 0xEE, 0xD8),
        "fail" => XColor.FromArgb(0xF7, 0xDF, 0xD3),
        "not-evaluated" => XColor.FromArgb(0xED, 0xEE, 0xEF),
        _ => null,
    };

    /// <summary>How the word of a verdict is set.</summary>
    public static TextStyle VerdictText(TextStyle style, string verdict) => verdict switch
    {
        "fail" => style.Strong with { Color = FailInk },
        "conditional-fail" => style.Strong,
        "information" => style with { Color = Quiet },
        _ => style,
    };
}
