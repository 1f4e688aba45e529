using Commission.Documents.Fonts;
using Commission.Documents.Pictures;

namespace Commission.Documents.Typesetting;

/// <summary>The look of the pages: three sizes, one accent, tints light enough for a printer without colours.</summary>
internal static class Look
{
    /// <summary>Size of tables and notes.</summary>
    public const double Small = 8.5;

    /// <summary>Size of running text.</summary>
    public const double Body = 9.5;

    /// <summary>Size of headings and of the outcome.</summary>
    public const double Large = 13.0;

    public static readonly Rgb Ink = new(0x1C1C1C);
    public static readonly Rgb Quiet = new(0x565B60);
    public static readonly Rgb Accent = new(0x1B4B72);
    public static readonly Rgb Rule = new(0xC9CED3);
    public static readonly Rgb Hair = new(0xE1E4E7);
    public static readonly Rgb Zone = new(0xD6E4EE);
    public static readonly Rgb Grey = new(0xF1F2F3);
    public static readonly Rgb CautionTint = new(0xFCF3E6);
    public static readonly Rgb CautionEdge = new(0xB85A1E);
    public static readonly Rgb FailInk = new(0x9A350C);

    public static readonly TextStyle BodyText = new(FontFace.Regular, Body, Ink);
    public static readonly TextStyle SmallText = new(FontFace.Regular, Small, Ink);
    public static readonly TextStyle NoteText = new(FontFace.Regular, Small, Quiet);
    public static readonly TextStyle LeadText = new(FontFace.Regular, Large, Ink);
    public static readonly TextStyle Heading1 = new(FontFace.SemiBold, Large, Accent);
    public static readonly TextStyle Heading2 = new(FontFace.SemiBold, Large, Accent);
    public static readonly TextStyle Heading3 = new(FontFace.SemiBold, Body, Accent);

    /// <summary>Tint of a cell that shows a verdict; null for none.</summary>
    public static Rgb? VerdictTint(string verdict) => verdict switch
    {
        "pass-within-uncertainty" => new Rgb(0xE9F1F7),
        "conditional" => new Rgb(0xFBEED8),
        "fail" => new Rgb(0xF7DFD3),
        "cannot-decide" or "not-evaluated" => new Rgb(0xEDEEEF),
        _ => null,
    };

    /// <summary>Ground and edge of the box that tells the outcome: in grey the edges still differ, and the mark in the words tells them apart.</summary>
    public static (Rgb Ground, Rgb Edge) OutcomeColors(string outcome) => outcome switch
    {
        "accepted" => (new Rgb(0xE4F0F5), new Rgb(0x1B4B72)),
        "accepted-with-conditions" => (new Rgb(0xFBF0D9), new Rgb(0x8A6100)),
        "not-accepted" => (new Rgb(0xF8E1D6), new Rgb(0x9A350C)),
        "incomplete" => (new Rgb(0xECEDEE), new Rgb(0x565B60)),
        _ => (Grey, Accent),
    };

    /// <summary>How the word of a verdict is set.</summary>
    public static TextStyle VerdictText(TextStyle style, string verdict) => verdict switch
    {
        "fail" => style.Strong with { Color = FailInk },
        "conditional" => style.Strong,
        "information" => style with { Color = Quiet },
        _ => style,
    };
}
