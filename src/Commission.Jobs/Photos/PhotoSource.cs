using System.Security.Cryptography;

namespace Commission.Jobs.Photos;

/// <summary>The bytes of a photo on their way through a decoder: each is read once, hashed and forgotten.</summary>
internal sealed class PhotoSource(Stream stream, long most) : IDisposable
{
    private readonly IncrementalHash _hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private readonly byte[] _buffer = new byte[64 * 1024];
    private int _at;
    private int _end;

    /// <summary>How many bytes came out of the file so far.</summary>
    public long Length { get; private set; }

    /// <summary>The first bytes, without taking them; fewer when the file is shorter.</summary>
    public ReadOnlySpan<byte> Head(int count)
    {
        while (_end - _at < count && Fill(_end) > 0)
        {
        }

        return _buffer.AsSpan(_at, Math.Min(count, _end - _at));
    }

    /// <summary>Takes bytes.</summary>
    /// <returns>How many; 0 at the end of the file.</returns>
    public int Read(Span<byte> into)
    {
        if (into.IsEmpty)
            return 0;
        if (_at == _end)
        {
            _at = _end = 0;
            Fill(0);
        }

        var taken = Math.Min(into.Length, _end - _at);
        _buffer.AsSpan(_at, taken).CopyTo(into);
        _at += taken;
        return taken;
    }

    /// <summary>Takes as many bytes as asked for.</summary>
    /// <exception cref="PhotoStopException">The file ends before.</exception>
    public void ReadAll(Span<byte> into)
    {
        while (!into.IsEmpty)
        {
            var taken = Read(into);
            if (taken == 0)
                throw new PhotoStopException(PhotoFault.Truncated);
            into = into[taken..];
        }
    }

    /// <summary>Reads what the decoder left, such as a camera's own notes behind the picture.</summary>
    /// <returns>SHA-256 of the whole file, lower-case hexadecimal.</returns>
    public string Finish()
    {
        do
            _at = _end = 0;
        while (Fill(0) > 0);
        return Convert.ToHexStringLower(_hash.GetHashAndReset());
    }

    public void Dispose() => _hash.Dispose();

    private int Fill(int from)
    {
        var read = stream.Read(_buffer, from, _buffer.Length - from);
        _end = from + read;
        Length += read;
        // The folder has looked at the length; a file that grows meanwhile is read no further.
        if (Length > most)
            throw new IOException("The file grew while it was read.");
        _hash.AppendData(_buffer, from, read);
        return read;
    }
}
