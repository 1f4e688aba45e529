using Commission.Documents.Fonts;
using Commission.Documents.Pictures;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Records;

namespace Commission.Documents.Plots.Sheets;

/// <summary>A verdict as people see it: always a word and a drawn mark together, colour only as a third sign.</summary>
internal static class VerdictSign
{
    /// <summary>The word.</summary>
    public static string Word(Verdict verdict) => RecordWords.Text(RecordWords.Of(verdict), Language.English);

    /// <summary>The colour of its lines.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <returns>One of <see cref="Palette"/>.</returns>
    public static Rgb Color(Verdict verdict) => verdict switch
    {
        Verdict.Pass or Verdict.PassWithinUncertainty or Verdict.Conditional => Palette.BlueText,
        Verdict.Fail => Palette.VermilionText,
        _ => Palette.Quiet,
    };

    /// <summary>How its word is set.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <returns>The style; a fail is semibold, so that it stands out in grey too.</returns>
    public static TextStyle Style(Verdict verdict) => new(verdict is Verdict.Fail ? FontFace.SemiBold : FontFace.Regular, 7.6, Color(verdict));

    /// <summary>Draws the sign that the pages set before the word too: tick, tick with a bar, open triangle, cross, crossed square, open square, nothing.</summary>
    public static void Draw(Canvas canvas, double x, double y, Verdict verdict)
    {
        var stroke = new Stroke(Color(verdict), 1.2);
        var thin = stroke with { Width = 0.9 };
        ReadOnlySpan<Point> triangle = [new(x, y - 2.6), new(x + 2.8, y + 2.1), new(x - 2.8, y + 2.1)];
        switch (verdict)
        {
            case Verdict.Pass or Verdict.PassWithinUncertainty:
                if (verdict == Verdict.PassWithinUncertainty)
                    canvas.Line(x - 2.6, y + 3.4, x + 2.6, y + 3.4, thin);
                canvas.Polyline([new(x - 2.4, y + 0.2), new(x - 0.8, y + 2), new(x + 2.4, y - 2.2)], stroke);
                break;
            case Verdict.Conditional:
                canvas.Polygon(triangle, Palette.Paper, thin);
                break;
            case Verdict.Fail:
                canvas.Line(x - 2.1, y - 2.1, x + 2.1, y + 2.1, stroke);
                canvas.Line(x - 2.1, y + 2.1, x + 2.1, y - 2.1, stroke);
                break;
            case Verdict.CannotDecide or Verdict.NotEvaluated:
                canvas.Rectangle(new Box(x - 2.1, y - 2.1, x + 2.1, y + 2.1), Palette.Paper, thin);
                if (verdict == Verdict.CannotDecide)
                    canvas.Line(x - 2.1, y + 2.1, x + 2.1, y - 2.1, thin);
                break;
            default:
                break;
        }
    }
}
