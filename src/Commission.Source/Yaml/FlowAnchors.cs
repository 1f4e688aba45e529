using YamlDotNet.Core;
using YamlDotNet.Core.Tokens;

namespace Commission.Source.Yaml;

/// <summary>
/// Hands the scanner's tokens to the parser without the anchors that stand before a scalar in brackets, and remembers whose they are.
/// The library's parser loses the comma behind such a scalar: <c>{a: &amp;x 1, b: *x}</c> is YAML and it refuses it.
/// </summary>
internal sealed class FlowAnchors(Scanner scanner) : IScanner
{
    private readonly Dictionary<long, string> _byScalar = [];
    private Token? _held;
    private int _depth;

    public Mark CurrentPosition => scanner.CurrentPosition;

    public Token? Current { get; private set; }

    /// <summary>The anchor of the scalar that begins here; null when it has none, or when the parser knows it.</summary>
    public string? Of(Mark scalar) => _byScalar.GetValueOrDefault(scalar.Index);

    public bool MoveNext() => MoveNextWithoutConsuming();

    public bool MoveNextWithoutConsuming()
    {
        Current = Next();
        return Current is not null;
    }

    // What is handed on was taken from the scanner for good: a look ahead needs the next token.
    public void ConsumeCurrent() => Current = null;

    private Token? Next()
    {
        var token = _held ?? Scan();
        _held = null;
        if (token is not Anchor anchor || _depth == 0)
            return token;
        var next = Scan();
        if (next is Scalar scalar)
        {
            _byScalar[scalar.Start.Index] = anchor.Value.Value;
            return scalar;
        }

        _held = next;
        return anchor;
    }

    private Token? Scan()
    {
        if (!scanner.MoveNext())
            return null;
        switch (scanner.Current)
        {
            case FlowMappingStart or FlowSequenceStart:
                _depth++;
                break;
            case FlowMappingEnd or FlowSequenceEnd:
                _depth--;
                break;
        }

        return scanner.Current;
    }
}
