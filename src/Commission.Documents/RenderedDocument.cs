namespace Commission.Documents;

/// <summary>A finished PDF, in memory.</summary>
/// <param name="Bytes">The file.</param>
/// <param name="Pages">How many pages it has.</param>
public sealed record RenderedDocument(byte[] Bytes, int Pages);
