namespace Commission.Documents.Typesetting;

/// <summary>Where something stands in the finished document.</summary>
/// <param name="Page">Page, from 0.</param>
/// <param name="TopFromBelow">Height of its upper edge above the lower edge of the page, as PDF counts.</param>
internal readonly record struct PagePlace(int Page, double TopFromBelow);
