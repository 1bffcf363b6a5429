using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Diagnostics;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Mutants;

/// <summary>EightOhm as source, compiled in memory with its generator, with one file changed.</summary>
internal sealed class Library
{
    private readonly CSharpCompilation _whole;
    private readonly Dictionary<string, SyntaxTree> _trees;
    private readonly ISourceGenerator[] _generators;
    private readonly ResourceDescription[] _resources;

    public Library(string root, string configuration, string testFolder)
    {
        var files = Directory.EnumerateFiles(Path.Combine(root, "src", "EightOhm"), "*.cs", SearchOption.AllDirectories)
            .Concat(Directory.EnumerateFiles(Path.Combine(root, "artifacts", "obj", "EightOhm", configuration), "*.cs"));
        _trees = files.ToDictionary(path => path, path => CSharpSyntaxTree.ParseText(SourceText.From(File.ReadAllText(path), System.Text.Encoding.UTF8), Language, path), StringComparer.Ordinal);
        var platform = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(path => Path.GetFileName(path).StartsWith("System", StringComparison.Ordinal) || Path.GetFileName(path) is "mscorlib.dll" or "netstandard.dll" or "Microsoft.CSharp.dll");
        var references = platform.Concat([Path.Combine(testFolder, "UnitsNet.dll"), Path.Combine(testFolder, "MathNet.Numerics.dll")]);
        _whole = CSharpCompilation.Create("EightOhm", _trees.Values, [.. references.Select(path => MetadataReference.CreateFromFile(path))],
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, optimizationLevel: OptimizationLevel.Release, nullableContextOptions: NullableContextOptions.Enable, deterministic: true));
        // What the library carries with it, such as the cards of its parts, as the build put it in.
        var built = Assembly.LoadFrom(Path.Combine(root, "artifacts", "bin", "EightOhm", configuration, "EightOhm.dll"));
        _resources = [.. built.GetManifestResourceNames().Select(name => new ResourceDescription(name, () => built.GetManifestResourceStream(name)!, isPublic: true))];
        string[] generators = [Path.Combine(root, "artifacts", "bin", "EightOhm.Generators", configuration, "EightOhm.Generators.dll"), OfExpressions()];
        _generators = [.. generators.SelectMany(Types)
            .Where(type => type.GetCustomAttribute<GeneratorAttribute>() is not null && !type.IsAbstract).Select(Made)];
    }

    private static CSharpParseOptions Language { get; } = new(LanguageVersion.CSharp14);

    public IEnumerable<Mutant> Mutants(string room) => _trees
        .Where(file => file.Key.Contains($"{Path.DirectorySeparatorChar}EightOhm{Path.DirectorySeparatorChar}{room}{Path.DirectorySeparatorChar}", StringComparison.Ordinal) && !file.Key.EndsWith("Room.cs", StringComparison.Ordinal))
        .OrderBy(file => file.Key, StringComparer.Ordinal)
        .SelectMany(file => Mutant.In(file.Key, file.Value));

    /// <summary>Writes the library with this mutant, or without any; false where that does not compile.</summary>
    public bool Write(Mutant? mutant, string path)
    {
        var changed = _whole;
        if (mutant is not null)
        {
            var tree = _trees[mutant.File];
            changed = changed.ReplaceSyntaxTree(tree, tree.WithChangedText(tree.GetText().WithChanges(new TextChange(mutant.Span, mutant.Is))));
        }
        CSharpGeneratorDriver.Create(_generators, parseOptions: Language).RunGeneratorsAndUpdateCompilation(changed, out var whole, out var said);
        if (said.Any(line => line.Severity == DiagnosticSeverity.Error))
            return false;
        using var file = File.Create(path);
        var emitted = whole.Emit(file, manifestResources: _resources);
        if (mutant is null && !emitted.Success)
            throw new InvalidOperationException("The library itself does not compile here: " + string.Join("; ", emitted.Diagnostics.Where(line => line.Severity == DiagnosticSeverity.Error).Take(3)));
        return emitted.Success;
    }

    // Some of the types are code fixes, which want what an editor has.
    private static IEnumerable<Type> Types(string path)
    {
        try
        {
            return Assembly.LoadFrom(path).GetTypes();
        }
        catch (ReflectionTypeLoadException some)
        {
            return some.Types.OfType<Type>();
        }
    }

    // The generator behind [GeneratedRegex] travels with the SDK's reference pack.
    private static string OfExpressions()
    {
        var packs = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(typeof(object).Assembly.Location)!, "..", "..", "..", "packs", "Microsoft.NETCore.App.Ref"));
        return Directory.EnumerateFiles(packs, "System.Text.RegularExpressions.Generator.dll", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Last();
    }

    private static ISourceGenerator Made(Type type) => Activator.CreateInstance(type) switch
    {
        ISourceGenerator old => old,
        IIncrementalGenerator generator => generator.AsSourceGenerator(),
        _ => throw new InvalidOperationException($"{type} is no generator."),
    };
}
