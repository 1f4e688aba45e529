namespace Commission.Fluids;

/// <summary>Keeps one work space for the next calculation. Two at a time get one each, so that a result never depends on who else calculates.</summary>
/// <param name="make">Makes a work space when none is at hand.</param>
internal sealed class Spare<T>(Func<T> make)
    where T : class
{
    private T? _kept;

    public T Rent() => Interlocked.Exchange(ref _kept, null) ?? make();

    public void Return(T work) => Volatile.Write(ref _kept, work);
}
