namespace Commission.Documents.Typesetting;

/// <summary>What the flow needs to know beside the markup.</summary>
/// <param name="Figures">Figures of the record.</param>
/// <param name="PageHeight">Room for text on a page, in points.</param>
internal sealed record FlowContext(FigureShelf Figures, double PageHeight);
