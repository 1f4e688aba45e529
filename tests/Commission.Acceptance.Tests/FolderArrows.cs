using System.Globalization;
using System.Reflection;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Commission.Acceptance.Tests;

/// <summary>
/// Which folder of a project uses which, as the compiler sees it: every name in a file is resolved, whether a using line,
/// a parent namespace or the name in full makes it visible. A type that a file uses without naming it came out of a member
/// of a type that it does name, and that one's file names it: the arrows are there, one behind the other, and so is any circle.
/// </summary>
internal sealed class FolderArrows
{
    private const string Implicit =
        "global using System; global using System.IO; global using System.Linq; global using System.Net.Http; global using System.Threading; "
        + "global using System.Threading.Tasks; global using System.Collections.Generic;";

    private readonly SortedDictionary<(string From, string To), SortedDictionary<string, SortedSet<string>>> _arrows = [];
    private readonly List<string> _misplaced = [];
    private readonly string _folder;
    private readonly string _project;

    private FolderArrows(string folder)
    {
        _folder = folder;
        _project = Path.GetFileName(folder);
    }

    /// <summary>Files whose namespace is not that of their folder.</summary>
    public IReadOnlyList<string> Misplaced => _misplaced;

    /// <summary>Every arrow between two folders, "." being the project's own.</summary>
    public IEnumerable<(string From, string To)> All => _arrows.Keys;

    /// <summary>Resolves every name of a project.</summary>
    /// <param name="folder">The project's folder.</param>
    /// <param name="assembly">Name of its assembly: it decides what others let it see.</param>
    /// <param name="references">Assemblies it may refer to; its own among them is left out.</param>
    /// <param name="generators">The project's own source generators; null for none.</param>
    /// <param name="additional">Files that the generators read.</param>
    public static FolderArrows Of(string folder, string assembly, IEnumerable<string> references, Assembly? generators, IEnumerable<string> additional)
    {
        var arrows = new FolderArrows(folder);
        arrows.Resolve(Compile(folder, assembly, references, generators, additional));
        return arrows;
    }

    /// <summary>The circles in words: the folders of each, its arrows, and the files and types that draw them. Empty when there is none.</summary>
    public string Circles(int filesShown = 6)
    {
        var text = new StringBuilder();
        foreach (var circle in FindCircles())
        {
            text.Append(CultureInfo.InvariantCulture, $"{_project}: {circle.Count} folders form a circle: {string.Join(", ", circle.Order(StringComparer.Ordinal))}\n");
            foreach (var ((from, to), files) in _arrows.Where(a => circle.Contains(a.Key.From) && circle.Contains(a.Key.To)).OrderBy(a => a.Value.Count))
            {
                text.Append(CultureInfo.InvariantCulture, $"  {from} -> {to} ({files.Count} files)\n");
                foreach (var (file, types) in files.Take(filesShown))
                    text.Append(CultureInfo.InvariantCulture, $"    {file}: {string.Join(", ", types)}\n");
            }
        }

        return text.ToString();
    }

    private static CSharpCompilation Compile(string folder, string assembly, IEnumerable<string> references, Assembly? generators, IEnumerable<string> additional)
    {
        var options = new CSharpParseOptions(LanguageVersion.Preview);
        var trees = Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories)
            .Where(f => !Path.GetRelativePath(folder, f).Replace('\\', '/').Split('/').Any(part => part is "obj" or "bin"))
            .Order(StringComparer.Ordinal)
            .Select(f => CSharpSyntaxTree.ParseText(SourceText.From(File.ReadAllText(f)), options, f))
            .Append(CSharpSyntaxTree.ParseText(SourceText.From(Implicit), options));
        var compilation = CSharpCompilation.Create(
            assembly,
            trees,
            references.Where(r => Path.GetFileNameWithoutExtension(r) != assembly).Select(r => MetadataReference.CreateFromFile(r)),
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, allowUnsafe: true, nullableContextOptions: NullableContextOptions.Enable));
        if (generators is null)
            return compilation;
        var driver = CSharpGeneratorDriver.Create(
            generators.GetTypes().Where(t => t.GetCustomAttribute<GeneratorAttribute>() is not null).Select(t => ((IIncrementalGenerator)Activator.CreateInstance(t)!).AsSourceGenerator()),
            additional.Select(f => (AdditionalText)new FileOnDisk(f)),
            options);
        driver.RunGeneratorsAndUpdateCompilation(compilation, out var generated, out _);
        return (CSharpCompilation)generated;
    }

    private void Resolve(CSharpCompilation compilation)
    {
        // Only words that can be a type or an extension of the project: asking for every word takes half as long again.
        var words = new HashSet<string>(StringComparer.Ordinal);
        foreach (var node in compilation.SyntaxTrees.SelectMany(t => t.GetRoot().DescendantNodes()))
        {
            if (node is BaseTypeDeclarationSyntax type)
                words.Add(type.Identifier.ValueText);
            else if (node is DelegateDeclarationSyntax call)
                words.Add(call.Identifier.ValueText);
            else if (node is MethodDeclarationSyntax method && method.ParameterList.Parameters.Any(p => p.Modifiers.Any(SyntaxKind.ThisKeyword)))
                words.Add(method.Identifier.ValueText);
        }

        foreach (var tree in compilation.SyntaxTrees)
        {
            var root = tree.GetRoot();
            var written = root.DescendantNodes(n => n is CompilationUnitSyntax or BaseNamespaceDeclarationSyntax).OfType<BaseNamespaceDeclarationSyntax>().FirstOrDefault()?.Name.ToString();
            if (written is null)
                continue;
            var from = FolderOf(tree, written);
            var file = Path.IsPathRooted(tree.FilePath) ? Path.GetRelativePath(_folder, tree.FilePath).Replace('\\', '/') : "generated " + Path.GetFileName(tree.FilePath);
            if (written != (from == "." ? _project : $"{_project}.{from.Replace('/', '.')}"))
                _misplaced.Add($"{file}: {written}");
            var model = compilation.GetSemanticModel(tree);
            foreach (var name in root.DescendantNodes(n => n is not UsingDirectiveSyntax).OfType<SimpleNameSyntax>().Where(n => words.Contains(n.Identifier.ValueText)))
            {
                var found = model.GetSymbolInfo(name);
                foreach (var symbol in found.Symbol is { } one ? [one] : found.CandidateSymbols)
                    Note(compilation, from, file, symbol);
            }
        }
    }

    private void Note(CSharpCompilation compilation, string from, string file, ISymbol symbol)
    {
        // Code generated for a type stands beside it: where it was declared by hand counts, else its namespace.
        var type = symbol as INamedTypeSymbol ?? (symbol is IMethodSymbol { ReducedFrom: { } extension } ? extension : symbol).ContainingType;
        if (symbol is INamespaceSymbol or ILocalSymbol or IParameterSymbol or ITypeParameterSymbol or ILabelSymbol or IRangeVariableSymbol || type is null)
            return;
        type = type.OriginalDefinition;
        if (!SymbolEqualityComparer.Default.Equals(type.ContainingAssembly, compilation.Assembly) || type.DeclaringSyntaxReferences.IsEmpty)
            return;
        var declared = type.DeclaringSyntaxReferences.Select(r => FolderOf(r.SyntaxTree, type.ContainingNamespace.ToDisplayString())).Distinct().ToArray();
        if (declared.Contains(from))
            return;
        var to = declared.Order(StringComparer.Ordinal).First();
        if (!_arrows.TryGetValue((from, to), out var files))
            _arrows.Add((from, to), files = new(StringComparer.Ordinal));
        if (!files.TryGetValue(file, out var types))
            files.Add(file, types = new(StringComparer.Ordinal));
        types.Add(type.Name);
    }

    private string FolderOf(SyntaxTree tree, string space)
    {
        if (!Path.IsPathRooted(tree.FilePath))
            return space.Length > _project.Length ? space[(_project.Length + 1)..].Replace('.', '/') : ".";
        var folder = Path.GetRelativePath(_folder, Path.GetDirectoryName(tree.FilePath)!).Replace('\\', '/');
        return folder.Length == 0 ? "." : folder;
    }

    // Tarjan, "Depth-first search and linear graph algorithms" (1972): groups of more than one node are the circles.
    private List<HashSet<string>> FindCircles()
    {
        var next = All.ToLookup(a => a.From, a => a.To, StringComparer.Ordinal);
        var order = new Dictionary<string, int>(StringComparer.Ordinal);
        var low = new Dictionary<string, int>(StringComparer.Ordinal);
        var stack = new Stack<string>();
        var circles = new List<HashSet<string>>();
        foreach (var folder in next.Select(g => g.Key).Where(f => !order.ContainsKey(f)))
            Visit(folder);
        return circles;

        void Visit(string folder)
        {
            order[folder] = low[folder] = order.Count;
            stack.Push(folder);
            foreach (var other in next[folder])
            {
                if (!order.TryGetValue(other, out var met))
                {
                    Visit(other);
                    low[folder] = Math.Min(low[folder], low[other]);
                }
                else if (stack.Contains(other))
                {
                    low[folder] = Math.Min(low[folder], met);
                }
            }

            if (low[folder] != order[folder])
                return;
            var group = new HashSet<string>(StringComparer.Ordinal);
            string member;
            do
                group.Add(member = stack.Pop());
            while (member != folder);
            if (group.Count > 1)
                circles.Add(group);
        }
    }

    private sealed class FileOnDisk(string path) : AdditionalText
    {
        public override string Path => path;

        public override SourceText GetText(CancellationToken cancellationToken = default) => SourceText.From(File.ReadAllText(path));
    }
}
