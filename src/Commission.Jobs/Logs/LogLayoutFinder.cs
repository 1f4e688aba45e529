using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Jobs.Problems;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Source;

namespace Commission.Jobs.Logs;

/// <summary>Finds out how a log is laid out. What the job file states is taken; where the log leaves two answers open, the job file is asked.</summary>
internal sealed class LogLayoutFinder(LogRequest request, LogCalendar calendar, ProblemList problems)
{
    private readonly TextValue _file = ValueText.Short(request.Log.File.Value);

    public LogLayout? Find(LogSource source)
    {
        var delimiter = request.Log.Delimiter?.Value switch
        {
            Delimiter.Comma => ',',
            Delimiter.Semicolon => ';',
            Delimiter.Tab => '\t',
            _ => GuessDelimiter(source.Head(20_000)),
        };
        var rows = LogSample.Of(source, delimiter);
        var first = FirstReadingRow(rows);
        if (rows.Take(first ?? rows.Count).FirstOrDefault(r => r.SwallowsRows(delimiter)) is { } swallowing)
        {
            problems.Add(new SourceLocation(request.Log.File.Value, swallowing.Line, 0), LogReader.Swallowed(swallowing.Line, swallowing.Lines), null, LogMessages.SwallowedNext, "log-row");
            return null;
        }

        if (first is null)
        {
            Complain(request.Log.File.At, LogMessages.NoRows(_file), LogMessages.NoRowsNext);
            return null;
        }

        var data = rows.Skip(first.Value).ToArray();
        var header = LogHeader.Of(rows, first.Value);
        var decimalComma = request.Log.Decimal?.Value switch
        {
            DecimalMark.Comma => true,
            DecimalMark.Point => false,
            _ => GuessDecimalComma(source, delimiter, data[0].Line),
        };
        if (decimalComma is not { } comma)
            return null;
        var times = new LogTimeFinder(request, calendar, header, comma, Complain);
        if (times.Columns(data) is not { } columns || ValueColumn(header, data, comma, columns) is not { } valueColumn || FindUnit(header, valueColumn) is not { } unit || times.Clock(data, columns) is not { } clock)
            return null;
        return new LogLayout
        {
            Delimiter = delimiter,
            DecimalComma = comma,
            FirstLine = data[0].Line,
            Width = header.Width,
            DateColumn = columns.Date,
            TimeColumn = columns.Time,
            ValueColumn = valueColumn,
            TimeHeading = header.Names[columns.Time],
            ValueHeading = header.Names[valueColumn],
            Unit = unit,
            UnitIsGuessed = request.Log.Unit is null && header.Value(valueColumn, request.Dimension).Kind is not LogHeadingKind.Unit,
            Clock = clock,
        };
    }

    private static char GuessDelimiter(string head)
    {
        var lines = head.Split('\n').Where(l => l.Trim().Length > 0).Take(20).ToArray();
        foreach (var candidate in new[] { '\t', ';', ',' })
        {
            // A preamble may have none; most lines decide.
            if (lines.Count(l => l.Contains(candidate, StringComparison.Ordinal)) * 2 > lines.Length)
                return candidate;
        }

        return ',';
    }

    // Where no cell is a time that is read, the row below the headings is the first: its times are refused by their heading.
    private int? FirstReadingRow(List<LogSample> rows)
    {
        for (var i = 0; i < rows.Count; i++)
        {
            var cells = rows[i].Cells;
            if (cells.Count >= 2 && cells.Any(LogTimeFinder.IsTimeLike) && cells.Count(c => LogTimeFinder.IsTimeLike(c) || IsReadingLike(c)) >= 2)
                return i;
        }

        for (var i = 1; i < rows.Count; i++)
        {
            if (rows[i].Cells.Count >= 2 && rows[i].Cells.Any(IsReadingLike) && rows[i - 1].Cells.Count == rows[i].Cells.Count && !rows[i - 1].Cells.Any(IsReadingLike))
                return i;
        }

        return null;
    }

    private bool IsReadingLike(string cell) =>
        cell.Length > 0 && (LogCell.Read(cell, true, request.Log.OverRange?.Value, out _) is LogCell.Kind.Number or LogCell.Kind.Over || LogCell.TryNumber(cell, false, out _));

    private bool? GuessDecimalComma(LogSource source, char delimiter, int firstLine)
    {
        var mark = LogDecimalMark.Of(source, delimiter, firstLine);
        if (mark is { Comma: { } comma, Point: { } point })
        {
            Complain(request.Log.File.At, LogMessages.TwoMarks(_file, comma.Words, point.Words), LogMessages.StateDecimalNext);
            return null;
        }

        if (mark.Comma is not null || mark.Point is not null || mark.Either is not { } either)
            return mark.Comma is not null;

        // Where commas part the cells, one inside quotes stands between thousands unless it says otherwise.
        if (delimiter == ',')
            return false;
        Complain(request.Log.File.At, LogMessages.EitherMark(_file, either.Words), LogMessages.StateDecimalNext);
        return null;
    }

    private int? ValueColumn(LogHeader header, LogSample[] data, bool comma, LogTimeColumns times)
    {
        if (request.Log.ValueColumn is { } stated)
        {
            if (header.Find(stated.Value) is { } column)
                return column;
            NoColumn(stated, header.Names);
            return null;
        }

        var candidates = Enumerable.Range(0, header.Names.Length).Where(i => i != times.Time && i != times.Date
            && data.Any(r => r.Cells.Count > i && LogCell.Read(r.Cells[i], comma, null, out _) is LogCell.Kind.Number or LogCell.Kind.Over)).ToArray();
        int[] Of(params LogHeadingKind[] kinds) => [.. candidates.Where(i => kinds.Contains(header.Value(i, request.Dimension).Kind) && (kinds[0] == LogHeadingKind.Unit || header.Time(i) is not ({ IsTime: true } or { IsDate: true } or { IsCount: true })))];

        // The better a heading says what is asked, the sooner it is taken; two that say it alike are one too many.
        var kinds = new[] { Of(LogHeadingKind.Unit), Of(LogHeadingKind.Quantity, LogHeadingKind.NoReference), Of(LogHeadingKind.Reading, LogHeadingKind.Unknown) };
        var best = kinds.FirstOrDefault(k => k.Length > 0) ?? [];
        if (best.Length == 1)
            return best[0];
        if (best.Length == 0 && candidates.Length == 1)
            return candidates[0];
        Complain(request.Log.File.At, best.Length == 0 ? LogMessages.NoValueColumn(_file, ValueText.AnyOf(header.Names), DimensionName.WithArticle(request.Dimension)) : LogMessages.SeveralValueColumns(_file, ValueText.AnyOf(header.Names)),
            LogMessages.ValueColumnNext);
        return null;
    }

    private Unit? FindUnit(LogHeader header, int column)
    {
        var (name, heading) = (header.Names[column], header.Value(column, request.Dimension));
        if (heading.Kind == LogHeadingKind.Other)
        {
            Complain(request.Log.ValueColumn?.At ?? request.Log.File.At, LogMessages.OtherQuantity(_file, new(name), DimensionName.WithArticle(request.Dimension)),
                LogMessages.OtherQuantityNext);
            return null;
        }

        if (request.Log.Unit is { } stated)
            return Stated(stated, name, heading);
        if (heading.Kind == LogHeadingKind.Unit)
            return heading.Unit;
        if (heading.Kind is LogHeadingKind.Quantity or LogHeadingKind.Reading && request.UsualUnit is not null)
            return request.UsualUnit;
        var advice = LogMessages.StateUnitNext(ValueText.AnyOf(Units()));
        var found = heading.Kind switch
        {
            LogHeadingKind.NoReference => LogMessages.NoReference(_file, new(name), new(heading.Unit!.Symbol)),
            LogHeadingKind.Unknown => LogMessages.UnknownUnit(_file, new(name)),
            _ => LogMessages.NoUnit(_file, new(name)),
        };
        if (heading is { Kind: LogHeadingKind.NoReference, Unit.Symbol: var symbol })
        {
            var whole = new[] { " gauge", " abs" }.Select(w => UnitTable.Find(symbol + w, request.Dimension)).OfType<Unit>().Select(u => u.Symbol).ToArray();
            if (whole.Length > 0)
                advice = request.Dimension == Dimension.VacuumLevel ? LogMessages.StateVacuumUnitNext(ValueText.AnyOf(whole)) : LogMessages.StateUnitNext(ValueText.AnyOf(whole));
        }

        Complain(request.Log.ValueColumn?.At ?? request.Log.File.At, found, advice);
        return null;
    }

    private Unit? Stated(Given<string> stated, string name, LogValueHeading heading)
    {
        if (UnitTable.Find(stated.Value, request.Dimension) is not { } unit || unit.Reference == PressureReference.BelowAtmosphere)
        {
            Complain(stated.At, LogMessages.NotAUnit(ValueText.Short(stated.Value), DimensionName.WithArticle(request.Dimension)), LogMessages.WriteUnitNext(ValueText.AnyOf(Units())));
            return null;
        }

        if (heading.Unit is not { } written || (written.Factor.Equals(unit.Factor) && written.Offset.Equals(unit.Offset) && (heading.Kind == LogHeadingKind.NoReference || written.Reference == unit.Reference)))
            return unit;
        Complain(stated.At, LogMessages.OtherUnit(_file, new(name), new(written.Symbol), new(unit.Symbol)), LogMessages.OtherUnitNext);
        return null;
    }

    private string[] Units() => [.. UnitTable.OfferedFor(request.Dimension, request.IsSi).Where(u => u.Reference != PressureReference.BelowAtmosphere).Select(u => u.Symbol).Take(6)];

    private void NoColumn(Given<string> stated, string[] headings)
    {
        var nearest = NearestName.Of(stated.Value, headings);
        Complain(stated.At, LogMessages.NoColumn(_file, ValueText.Short(stated.Value)), nearest is null ? LogMessages.ItsColumns(ValueText.AnyOf(headings)) : ValueText.DidYouMean(nearest));
    }

    private void Complain(SourceLocation at, Message found, Message advice) => problems.Add(at, found, null, advice, "log");
}

/// <summary>How a log is laid out: stated in the job file, or found from the log itself.</summary>
internal sealed record LogLayout
{
    public required char Delimiter { get; init; }

    public required bool DecimalComma { get; init; }

    /// <summary>Line of the first row with readings.</summary>
    public required int FirstLine { get; init; }

    /// <summary>How many cells have a heading.</summary>
    public required int Width { get; init; }

    /// <summary>Column with the date when date and time of day are in two columns.</summary>
    public int? DateColumn { get; init; }

    public required int TimeColumn { get; init; }

    public required int ValueColumn { get; init; }

    public required string TimeHeading { get; init; }

    public required string ValueHeading { get; init; }

    public required Unit Unit { get; init; }

    public required bool UnitIsGuessed { get; init; }

    public required LogClock Clock { get; init; }
}
