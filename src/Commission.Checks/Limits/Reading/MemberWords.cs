namespace Commission.Checks.Limits.Reading;

/// <summary>Names of enumeration members as they are written in YAML.</summary>
internal static class MemberWords
{
    /// <summary>The words of a member: <c>TemperatureDifference</c> is written <c>temperature difference</c>.</summary>
    /// <param name="member">Name of the member.</param>
    /// <returns>Its words.</returns>
    public static string Of(string member) =>
        string.Concat(member.Select((c, at) => char.IsUpper(c) && at > 0 ? $" {char.ToLowerInvariant(c)}" : char.ToLowerInvariant(c).ToString()));
}
