namespace Commission.Measurement.Uncertainty;

/// <summary>Adds contributions by cause and keeps the order of first appearance.</summary>
internal ref struct ContributionSum(int capacity)
{
    // A budget has a dozen causes as a rule: looking through them is faster than hashing, until it is not.
    private const int IndexFrom = 24;
    private readonly List<Contribution> items = new(capacity);
    private Dictionary<RootCause, int>? index;

    public void Add(RootCause cause, double amount)
    {
        if (amount == 0)
            return;
        var at = Find(cause);
        if (at >= 0)
        {
            items[at] = new Contribution(cause, items[at].Amount + amount);
            return;
        }

        items.Add(new Contribution(cause, amount));
        if (index is not null)
            index[cause] = items.Count - 1;
    }

    public readonly Contribution[] ToArray()
    {
        items.RemoveAll(c => c.Amount == 0);
        return [.. items];
    }

    private int Find(RootCause cause)
    {
        if (items.Count < IndexFrom)
        {
            for (var i = 0; i < items.Count; i++)
            {
                if (ReferenceEquals(items[i].Cause, cause))
                    return i;
            }

            return -1;
        }

        if (index is null)
        {
            index = new Dictionary<RootCause, int>(ReferenceEqualityComparer.Instance);
            for (var i = 0; i < items.Count; i++)
                index[items[i].Cause] = i;
        }

        return index.GetValueOrDefault(cause, -1);
    }
}
