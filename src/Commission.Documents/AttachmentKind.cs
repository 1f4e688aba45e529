namespace Commission.Documents;

/// <summary>How an attached file relates to the pages (AFRelationship of ISO 32000-2 and PDF/A-3).</summary>
public enum AttachmentKind
{
    /// <summary>The pages were made from it: the job file, a log.</summary>
    Source,

    /// <summary>It says the same as the pages in a form for programs: the record as JSON.</summary>
    Data,
}
