using System.Text;
using Commission.Documents.Archive;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;
using UglyToad.PdfPig.Tokens;
using Xunit;

namespace Commission.Documents.Tests.Archive;

/// <summary>Every kind of object as PdfPig, which knows nothing of the writer, reads it back.</summary>
public sealed class PdfFileWriterTests
{
    [Fact]
    public void Values_come_back_as_they_were()
    {
        using var document = new PdfDocument();
        document.AddPage();
        var values = new PdfDictionary(document);
        document.Internals.AddObject(values);
        values.Elements.SetInteger("/Below", -7);
        values.Elements["/Real"] = new PdfReal(0.00004);
        values.Elements["/Truth"] = new PdfBoolean(true);
        values.Elements["/Nothing"] = PdfNull.Value;
        values.Elements.SetName("/Name", "/Source Sans 3 #1 (ä)");
        values.Elements["/Plain"] = new PdfString(@"a ) \ ( endobj");
        values.Elements["/Bytes"] = new PdfString("\u0000\u00ff", PdfStringEncoding.RawEncoding);
        values.Elements["/Words"] = new PdfString("Ω ± 日", PdfStringEncoding.Unicode);
        values.Elements.SetRectangle("/Box", new PdfRectangle(new PdfSharp.Drawing.XPoint(1.23456, 2), new PdfSharp.Drawing.XPoint(3, 4)));
        values.Elements["/List"] = new PdfArray(document, new PdfInteger(1), new PdfInteger(-2), new PdfName("/N"), new PdfInteger(3), new PdfLiteral("[4 5]"), new PdfDictionary(document));
        document.Internals.Catalog.Elements.SetReference("/Values", values);
        document.Save(Stream.Null);
        document.Info.Elements.Clear();

        using var read = UglyToad.PdfPig.PdfDocument.Open(PdfFileWriter.Write(document, document.Info, new byte[16]));
        var reference = (IndirectReferenceToken)read.Structure.Catalog.CatalogDictionary.Data["Values"];
        var data = ((DictionaryToken)read.Structure.GetObject(reference.Data).Data).Data;
        Assert.Equal(-7, ((NumericToken)data["Below"]).Int);
        Assert.Equal(0.00004, ((NumericToken)data["Real"]).Double, 1e-12);
        Assert.True(((BooleanToken)data["Truth"]).Data);
        Assert.IsType<NullToken>(data["Nothing"]);
        Assert.Equal("Source Sans 3 #1 (ä)", ((NameToken)data["Name"]).Data);
        Assert.Equal(@"a ) \ ( endobj", ((StringToken)data["Plain"]).Data);
        Assert.Equal([0, 255], ((HexToken)data["Bytes"]).Bytes.ToArray());
        Assert.Equal("Ω ± 日", ((HexToken)data["Words"]).Data);
        Assert.Equal([1.235m, 2, 3, 4], ((ArrayToken)data["Box"]).Data.Select(edge => Math.Round((decimal)((NumericToken)edge).Double, 3)));
        Assert.Equal([typeof(NumericToken), typeof(NumericToken), typeof(NameToken), typeof(NumericToken), typeof(ArrayToken), typeof(DictionaryToken)], ((ArrayToken)data["List"]).Data.Select(token => token.GetType()));
    }

    // ISO 32000-1, 7.4.1: Filter and Length describe the bytes that follow; a stream that came packed is packed once.
    [Fact]
    public void A_stream_is_packed_once_whatever_it_was_before()
    {
        using var document = new PdfDocument();
        document.AddPage();
        var content = new byte[5000];
        var packed = new PdfDictionary(document);
        packed.CreateStream(content);
        packed.Stream.Zip();
        document.Internals.AddObject(packed);
        document.Internals.Catalog.Elements.SetReference("/Packed", packed);
        document.Save(Stream.Null);
        document.Info.Elements.Clear();

        var bytes = PdfFileWriter.Write(document, document.Info, new byte[16]);
        Assert.All(Encoding.Latin1.GetString(bytes).Split("endobj"), part => Assert.InRange(part.Split("stream\n")[0].Split("/Filter").Length, 1, 2));
        using var read = UglyToad.PdfPig.PdfDocument.Open(bytes);
        var reference = (IndirectReferenceToken)read.Structure.Catalog.CatalogDictionary.Data["Packed"];
        var stream = (StreamToken)read.Structure.GetObject(reference.Data).Data;
        Assert.Equal("FlateDecode", ((NameToken)stream.StreamDictionary.Data["Filter"]).Data);
        Assert.Equal(stream.Data.Length, ((NumericToken)stream.StreamDictionary.Data["Length"]).Int);
        using var inflate = new System.IO.Compression.ZLibStream(new MemoryStream(stream.Data.ToArray()), System.IO.Compression.CompressionMode.Decompress);
        using var plain = new MemoryStream();
        inflate.CopyTo(plain);
        Assert.Equal(content, plain.ToArray());
    }

    [Fact]
    public void An_object_it_does_not_know_is_named()
    {
        using var document = new PdfDocument();
        document.AddPage();
        document.Internals.Catalog.Elements["/When"] = new PdfDate(DateTime.UnixEpoch);
        document.Save(Stream.Null);
        document.Info.Elements.Clear();
        Assert.Contains("PdfDate", Assert.Throws<InvalidOperationException>(() => PdfFileWriter.Write(document, document.Info, new byte[16])).Message, StringComparison.Ordinal);
    }
}
