namespace Commission.Documents.Typesetting;

/// <summary>
/// Decides where pages end. What must stay together (a heading and what follows, the lines of a short paragraph) moves as a whole;
/// only a group taller than a page is cut. A figure that no longer fits waits for the next page while text of the same heading
/// fills this one.
/// </summary>
internal sealed class Paginator
{
    private readonly PageFormat _format;
    private readonly List<PlacedSlab> _placed = [];
    private readonly Queue<(List<Slab> Group, int Depth)> _waiting = new();
    private List<Slab> _carried = [];
    private int _page;
    private int _depth;
    private double _y;
    private Slab? _above;

    private Paginator(PageFormat format, int firstPage)
    {
        _format = format;
        _page = firstPage;
        _y = PageFormat.Top(firstPage);
    }

    private bool IsAtTop => _above is null;

    /// <summary>Places slabs.</summary>
    /// <param name="slabs">The slabs, in order.</param>
    /// <param name="format">The paper.</param>
    /// <param name="firstPage">Number of the page they begin on, from 0.</param>
    public static List<PlacedSlab> Place(IReadOnlyList<Slab> slabs, PageFormat format, int firstPage)
    {
        var paginator = new Paginator(format, firstPage);
        for (var i = 0; i < slabs.Count;)
        {
            var end = i;
            while (end < slabs.Count - 1 && slabs[end].KeepWithNext && !slabs[end + 1].BreakBefore)
                end++;
            var next = end + 1 < slabs.Count ? slabs[end + 1] : null;
            paginator.Take([.. slabs.Skip(i).Take(end - i + 1)], next);
            i = end + 1;
        }

        paginator.PlaceWaiting();
        return paginator._placed;
    }

    private void Take(List<Slab> group, Slab? next)
    {
        if (_waiting.Count > 0 && StartsSomethingNew(group))
            PlaceWaiting();

        // A heading whose text does not fit either goes to the next page together with its figure.
        if (_carried.Count > 0 && !Fits([.. _carried, .. group]))
            PlaceWaiting();
        group = [.. _carried, .. group];
        _carried = [];
        var figure = group.FindIndex(slab => slab is FigureSlab);
        if (figure >= 0 && !IsAtTop && !Fits(group) && CanWait(group, figure, next))
        {
            // The heading before the figure goes on with whatever comes next.
            var depth = _depth + Nesting(group[..figure]);
            Release(group, figure);
            _waiting.Enqueue((group[figure..], depth));
            _carried = group[..figure];
            return;
        }

        if (_waiting.Count > 0 && !IsInsideTable(group[0]))
        {
            while (_waiting.TryPeek(out var first) && Fits(first.Group))
                PlaceFigure(_waiting.Dequeue());
            if (!Fits(group) && _waiting.Count > 0)
                PlaceWaiting();
        }

        PlaceGroup(group);
    }

    private void PlaceWaiting()
    {
        if (_carried.Count > 0)
        {
            // A heading that only figures follow after all: it goes with the first of them.
            var (group, depth) = _waiting.Dequeue();
            group.InsertRange(0, _carried);
            _carried = [];
            PlaceFigure((group, depth));
        }

        while (_waiting.TryDequeue(out var figure))
            PlaceFigure(figure);
    }

    // A figure that waited belongs to the section it was written in: what ended before it ends after it.
    private void PlaceFigure((List<Slab> Group, int Depth) figure)
    {
        var before = figure.Group[..figure.Group.FindIndex(slab => slab is FigureSlab)];
        var ended = figure.Depth - _depth - Nesting(before);
        var above = before.Count > 0 ? before[^1] : _placed.Count > 0 ? _placed[^1].Slab : null;
        if (ended > 0 && above is not null && above.Closes >= ended)
        {
            above.Closes -= ended;
            if (before.Count == 0)
                _depth += ended;
            figure.Group[^1].Closes += ended;
        }

        PlaceGroup(figure.Group);
    }

    private static int Nesting(List<Slab> slabs)
    {
        var depth = 0;
        foreach (var slab in slabs)
            depth += slab.Opens.Count - slab.Closes;
        return depth;
    }

    private void PlaceGroup(List<Slab> group)
    {
        if (group[0].BreakBefore && !IsAtTop)
            NewPage();
        if (!IsAtTop && !Fits(group) && HeightOf(group, null) <= _format.TextHeight)
            NewPage();
        foreach (var slab in group)
            PlaceOne(slab);
    }

    private void PlaceOne(Slab slab)
    {
        var gap = Stack.Gap(_above, slab);
        if (!IsAtTop && _y + gap + slab.Height > _format.Floor)
        {
            NewPage();
            gap = 0;
        }

        var repeatsHead = IsAtTop && slab.Head is not null && _placed.Count > 0;
        if (repeatsHead)
            _y += slab.Head!.Height;
        _y += gap;
        _placed.Add(new PlacedSlab(slab, _page, _y, repeatsHead));
        _y += slab.Height;
        _depth += slab.Opens.Count - slab.Closes;
        _above = slab;
    }

    private bool Fits(List<Slab> group) => _y + HeightOf(group, _above) <= _format.Floor;

    private void NewPage()
    {
        _page++;
        _y = PageFormat.Top(_page);
        _above = null;
    }

    private static double HeightOf(List<Slab> group, Slab? above)
    {
        var height = 0.0;
        foreach (var slab in group)
        {
            height += Stack.Gap(above, slab) + slab.Height;
            above = slab;
        }

        return height;
    }

    private static bool StartsSomethingNew(List<Slab> group) => group.Exists(slab => slab.Outline is not null || slab.BreakBefore);

    private static bool IsInsideTable(Slab slab) => slab.Head is not null;

    // Nothing may follow but a heading; and the elements that end with the figure must be able to end before it.
    private bool CanWait(List<Slab> group, int figure, Slab? next) =>
        next is not null && next.Outline is null && !next.BreakBefore && next is not RuleSlab
        && group[figure].Opens.Count == 0 && (figure > 0 || _placed.Count > 0);

    // Elements that end with the figure but did not begin with it end with what stands before it instead.
    private void Release(List<Slab> group, int figure)
    {
        var extra = 0;
        for (var i = figure; i < group.Count; i++)
            extra += group[i].Closes - group[i].Opens.Count;
        if (extra <= 0)
            return;
        group[^1].Closes -= extra;
        (figure > 0 ? group[figure - 1] : _placed[^1].Slab).Closes += extra;
    }
}

/// <summary>A slab and where it goes.</summary>
/// <param name="Slab">The slab.</param>
/// <param name="Page">Page, from 0.</param>
/// <param name="Y">Upper edge, from the upper edge of the paper.</param>
/// <param name="RepeatsHead">True when the table's head is drawn again above it.</param>
internal readonly record struct PlacedSlab(Slab Slab, int Page, double Y, bool RepeatsHead);
