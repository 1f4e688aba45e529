using System.Collections;

namespace Commission.Checks.Limits;

/// <summary>
/// The packs of a job in the order they are asked: the named ones, each followed by what it builds on, then common practice and what
/// that builds on; every pack once. A pack is read when the enumeration reaches it and not before.
/// </summary>
internal sealed class PackChain(Func<string, LimitPack?> find, IEnumerable<string> named) : IEnumerable<LimitPack>
{
    private readonly List<LimitPack> _read = [];
    private readonly Stack<string> _next = new(named.Append(LimitPack.CommonPractice).Reverse());
    private readonly Lock _lock = new();

    /// <inheritdoc/>
    public IEnumerator<LimitPack> GetEnumerator()
    {
        for (var at = 0; At(at) is { } pack; at++) yield return pack;
    }

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private LimitPack? At(int index)
    {
        lock (_lock)
        {
            while (_read.Count <= index)
            {
                if (!_next.TryPop(out var name)) return null;
                if (_read.Exists(pack => string.Equals(pack.Name, name, StringComparison.Ordinal))) continue;
                var pack = find(name) ?? throw new ArgumentException($"There is no pack \"{name}\".", nameof(index));
                _read.Add(pack);
                foreach (var below in pack.BuildsOn.Reverse()) _next.Push(below.Name);
            }

            return _read[index];
        }
    }
}
