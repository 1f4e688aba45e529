using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;
using PdfSharp.Pdf.Annotations;
using PdfSharp.Pdf.Structure;

namespace Commission.Documents.Archive;

/// <summary>
/// An empty signature field with its place on a page (ISO 32000-1, 12.7.4.5): whoever signs on a screen signs on the line that others sign with
/// a pen. Nothing is signed and nothing is locked, so that any kind of signature fits, PAdES (ETSI EN 319 142) among them.
/// </summary>
internal sealed class SignatureWidget : PdfAnnotation
{
    /// <param name="document">The document.</param>
    /// <param name="page">The page it stands on.</param>
    /// <param name="name">Name of the field, unique within the document.</param>
    /// <param name="statement">Who signs, and what is attested, for people who do not see the page.</param>
    /// <param name="place">Where, as PDF counts.</param>
    public SignatureWidget(PdfDocument document, PdfPage page, string name, string statement, PdfRectangle place)
        : base(document)
    {
        Elements.SetName("/Subtype", "/Widget");
        Elements.SetName("/FT", "/Sig");
        Elements.SetString("/T", name);
        Elements.SetString("/TU", statement);
        Elements.SetReference("/P", page);
        Elements.SetRectangle("/Rect", place);

        // Printed with the page; and a clock and a random name have no place in a file that must come out the same again.
        Elements.SetInteger("/F", 4);
        Elements.Remove("/M");
        Elements.Remove("/NM");
        Elements.SetObject("/AP", new PdfDictionary(document) { Elements = { ["/N"] = Blank(document, place) } });
    }

    /// <summary>The structure element that holds it; set when it is known.</summary>
    public PdfStructureElement? Form { get; set; }

    // Every annotation has a look of its own (ISO 19005-3, 6.3.3); that of a field nobody signed is blank.
    private static PdfReference Blank(PdfDocument document, PdfRectangle place)
    {
        var look = new PdfDictionary(document);
        look.Elements.SetName("/Type", "/XObject");
        look.Elements.SetName("/Subtype", "/Form");
        look.Elements.SetRectangle("/BBox", new PdfRectangle(new PdfSharp.Drawing.XPoint(0, 0), new PdfSharp.Drawing.XPoint(place.Width, place.Height)));
        look.Elements.SetObject("/Resources", new PdfDictionary(document));
        look.CreateStream([(byte)'\n']);
        document.Internals.AddObject(look);
        return look.Reference!;
    }
}

/// <summary>Makes the fields of a document known to it: the form, and the way from each field back to its structure element.</summary>
internal static class SignatureForm
{
    /// <summary>Adds the form, where there is a field.</summary>
    /// <param name="document">A document that PDFsharp has saved, so that its tree of parents is complete.</param>
    public static void Add(PdfDocument document)
    {
        var widgets = document.Internals.GetAllObjects().OfType<SignatureWidget>().ToList();
        if (widgets.Count == 0)
            return;
        var fields = new PdfArray(document);
        foreach (var widget in widgets)
            fields.Elements.Add(widget.Reference!);
        var form = new PdfDictionary(document);
        form.Elements.SetObject("/Fields", fields);
        document.Internals.Catalog.Elements.SetObject("/AcroForm", form);

        var root = document.Internals.Catalog.Elements.GetDictionary("/StructTreeRoot") ?? throw new InvalidOperationException("PDFsharp made a document without a structure tree.");
        var parents = root.Elements.GetDictionary("/ParentTree")?.Elements.GetArray("/Nums") ?? throw new InvalidOperationException("PDFsharp made a structure tree without its tree of parents.");

        // Pairs of a number and what it leads to, in order (ISO 32000-1, 7.9.7).
        var next = parents.Elements.Count == 0 ? 0 : parents.Elements.GetInteger(parents.Elements.Count - 2) + 1;
        foreach (var widget in widgets)
        {
            widget.Elements.SetInteger("/StructParent", next);
            parents.Elements.Add(new PdfInteger(next++));
            parents.Elements.Add(widget.Form!.Reference!);
        }

        root.Elements.SetInteger("/ParentTreeNextKey", next);
    }
}
