namespace Commission.Documents.Archive;

/// <summary>What a document says about itself.</summary>
/// <param name="Title">Title.</param>
/// <param name="Subject">Subject in one line.</param>
/// <param name="Author">Who made the record; empty for nobody named.</param>
/// <param name="Language">Language tag.</param>
/// <param name="Program">Program and version.</param>
/// <param name="Moment">The moment the record speaks for.</param>
/// <param name="Digest">Digest of the record.</param>
internal sealed record DocumentFacts(string Title, string Subject, string Author, string Language, string Program, DateTimeOffset Moment, string Digest);
