using System.Globalization;

namespace Commission.Documents.Markup;

/// <summary>A width as markup gives it: a share of the room there is, or points.</summary>
/// <param name="Amount">Per cent (0 to 100) or points.</param>
/// <param name="IsShare">True for per cent.</param>
internal readonly record struct MarkupWidth(double Amount, bool IsShare)
{
    public static bool TryRead(string text, out MarkupWidth width)
    {
        var isShare = text.EndsWith('%');
        var number = isShare ? text.AsSpan(0, text.Length - 1) : text.EndsWith("pt", StringComparison.Ordinal) ? text.AsSpan(0, text.Length - 2) : text;
        var good = double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount) && amount > 0 && amount <= (isShare ? 100 : 2000);
        width = good ? new MarkupWidth(amount, isShare) : default;
        return good;
    }

    /// <summary>The width in points within the room given.</summary>
    public double Points(double room) => IsShare ? room * Amount / 100 : Math.Min(Amount, room);
}
