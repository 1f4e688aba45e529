namespace Commission.Records;

/// <summary>A place to sign: who, in which role, stating what.</summary>
/// <param name="Name">Name; empty leaves a line to fill in.</param>
/// <param name="Role">Role, for example <c>technician</c>.</param>
/// <param name="Statement">What is stated, for example <c>I performed this work</c>.</param>
/// <param name="Licence">Licence or certificate number; empty for none.</param>
/// <param name="Date">Date as printed; empty leaves a line to fill in.</param>
public sealed record SignatureLine(string Name, string Role, string Statement, string Licence, string Date);
