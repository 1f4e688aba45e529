namespace Commission.Records;

/// <summary>Something that is still to be done before the job stands without conditions.</summary>
/// <param name="Text">What is to be done.</param>
/// <param name="Finding">Number of the finding it comes from; null when it comes from the job file.</param>
/// <param name="Owner">Who does it; null when nobody is named.</param>
public sealed record PunchItem(string Text, int? Finding = null, string? Owner = null);
