using System.Text;
using System.Text.Json;

namespace Commission.Records.Json;

/// <summary>Names of enumeration members as the trade writes them: <c>ConditionalPass</c> is <c>conditional pass</c>.</summary>
internal sealed class TradeWords : JsonNamingPolicy
{
    public static TradeWords Policy { get; } = new();

    public override string ConvertName(string name)
    {
        var words = new StringBuilder(name.Length + 4);
        foreach (var c in name)
        {
            if (char.IsUpper(c) && words.Length > 0) words.Append(' ');
            words.Append(char.ToLowerInvariant(c));
        }

        return words.ToString();
    }
}
