namespace Commission.Checks.Tests.Coverage;

/// <summary>How the errors of an instrument hang together.</summary>
internal enum ErrorModel
{
    /// <summary>One offset for an instrument, the same in every reading: rectangular within the maker's bound (GUM 4.3.7).</summary>
    Offset,

    /// <summary>Half of the variance common to the instrument, half of its own in every place that is read: offset, gain and bow. Return and supply air are two places of one probe.</summary>
    OneProbe,

    /// <summary>The same, return and supply air read with two probes.</summary>
    TwoProbes,
}

/// <summary>Random numbers of one job: the same for the same seed, error model and number of the job, whatever was drawn before and on whichever thread.</summary>
internal sealed class Draws
{
    private readonly Random _random;
    private double? _spare;

    public Draws(int seed, ErrorModel model, int job)
    {
        // Seeds that follow one another give Random kindred first draws; the finalizer of SplitMix64 (Steele and others 2014, from memory) parts them.
        var z = unchecked(((ulong)(uint)seed << 32) + ((ulong)model << 28) + (ulong)job + 0x9E3779B97F4A7C15UL);
        z = unchecked((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL);
        z = unchecked((z ^ (z >> 27)) * 0x94D049BB133111EBUL);
        _random = new Random((int)((z ^ (z >> 31)) & 0x7FFFFFFF));
    }

    public double Uniform(double low, double high) => low + (high - low) * _random.NextDouble();

    /// <summary>Between minus and plus one.</summary>
    public double Either() => Uniform(-1, 1);

    public bool Chance(double share) => _random.NextDouble() < share;

    public T Pick<T>(params ReadOnlySpan<T> of) => of[_random.Next(of.Length)];

    public int Whole(int least, int most) => _random.Next(least, most + 1);

    /// <summary>Standard normal by Box and Muller (1958).</summary>
    public double Normal()
    {
        if (_spare is { } kept)
        {
            _spare = null;
            return kept;
        }

        var r = Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble()));
        var a = 2 * Math.PI * _random.NextDouble();
        _spare = r * Math.Sin(a);
        return r * Math.Cos(a);
    }
}
