namespace Commission.Fluids.Data;

/// <summary>How a value of the index is known. A class, not a tuple: a dictionary of references needs no code generated at start.</summary>
internal sealed record SourceNote(string Mark, string Source);
