using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace EightOhm.Cells.Tests.Sources;

/// <summary>A small library in the house's namespaces, with the record's verbs over plain numbers, so that a case is a few lines and can be run.</summary>
internal static class StubLibrary
{
    private const string Code =
        """
        using System;
        using System.Collections.Generic;
        using System.Linq;
        using System.Linq.Expressions;
        using System.Runtime.CompilerServices;

        namespace EightOhm.Record
        {
            public sealed class DesignRecord
            {
                public static readonly Dictionary<string, double> Moved = new();
                public static readonly List<DesignRecord> All = new();
                public readonly Dictionary<string, object> Values = new();
                private DesignRecord(string path) { Path = path; All.Add(this); }
                public string Path { get; }
                public IEnumerable<string> Entries => Values.Select(v => $"{v.Key}={v.Value}");
                public static DesignRecord Open(string path) => All.FirstOrDefault(r => r.Path == path) ?? new(path);
                public static DesignRecord Scratch(string name = "scratch") => new(name);

                public T Target<T>(string name, T value, string note = "") => InForce(name, value);
                public T Choose<T>(string name, T value, string because = "", params string[] considered) => InForce(name, value);
                public T Assume<T>(string name, T value, string basis = "") => InForce(name, value);
                public T Given<T>(string name, T value, string note = "") => InForce(name, value);
                public EightOhm.Parts.Card Part(string role, string file) => new(InForce(role.Replace(' ', '_'), 1.0));
                public T Compute<T>(string name, T value) { Values[name] = value; return value; }
                public double Compute(string name, Func<double, double> rule) => Compute(name, rule(Get<double>(rule.Method.GetParameters()[0].Name)));
                public T Found<T>(string name, T value, string[] from) => Compute(name, value);
                public double Derive(string name, Expression<Func<double, double>> rule) => Compute(name, rule.Compile()(Get<double>(rule.Parameters[0].Name)));
                public double Derive(string name, Expression<Func<double, double, double>> rule) => Compute(name, rule.Compile()(Get<double>(rule.Parameters[0].Name), Get<double>(rule.Parameters[1].Name)));
                public double Let(string name, Expression<Func<double, double>> rule) => Derive(name, rule);
                public T Get<T>(string name) => (T)Values[name];
                public void Recall<T1>(out T1 a, [CallerArgumentExpression("a")] string nameOfA = "") => a = Get<T1>(Last(nameOfA));
                public void Recall<T1, T2>(out T1 a, out T2 b, [CallerArgumentExpression("a")] string nameOfA = "", [CallerArgumentExpression("b")] string nameOfB = "") { a = Get<T1>(Last(nameOfA)); b = Get<T2>(Last(nameOfB)); }
                private static string Last(string argument) => argument.Split(' ').Last();
                public double[] EntriesOf(params string[] names) => names.Select(Get<double>).ToArray();
                public string[] Compliance(params string[] names) => names.Select(n => $"{Values["?" + n]}").ToArray();
                public string Explain(string name) => $"{Values[name]}";
                public Requirement Require(string label, string entry) => new(this, label, Get<double>(entry));
                public Requirement Require(string label, Conditions over, Func<double, double> rule) => new(this, label, over.Worst(rule));
                public Requirement Require(string entry, EntryLimit limit, string says = "") => new Requirement(this, entry, Get<double>(entry)).AtMost(limit.Value);
                public Conditions Conditions() => new(this, Array.Empty<(string, double)>());
                public void Set(string name, string text) => Values[name] = double.Parse(text);
                public void Shake() { }

                private T InForce<T>(string name, T value)
                {
                    var moved = Moved.GetValueOrDefault(name);
                    object now = value is double d ? d + moved : value is int i ? i + (int)moved : value;
                    Values[name] = now;
                    return (T)now;
                }
            }

            public sealed class EntryLimit { internal EntryLimit(double value) => Value = value; public double Value { get; } }
            public static class Limits { public static EntryLimit AtMost(double most) => new(most); }

            public sealed class Requirement
            {
                private readonly DesignRecord _record; private readonly string _label; private readonly double _value;
                internal Requirement(DesignRecord record, string label, double value) { _record = record; _label = label; _value = value; record.Values["?" + label] = $"{value}"; }
                public Requirement AtMost(double limit) { _record.Values["?" + _label] = $"{_value} <= {limit}"; return this; }
                public Requirement AtMost(string entry) => AtMost(_record.Get<double>(entry));
                public Requirement AtLeast(Func<double, double> limit) => AtMost(limit(_record.Get<double>(limit.Method.GetParameters()[0].Name)));
            }

            public sealed class Conditions
            {
                private readonly DesignRecord _record; private readonly (string Name, double Value)[] _values;
                internal Conditions(DesignRecord record, (string, double)[] values) { _record = record; _values = values; }
                public Conditions Range(string name, double low, double high, string word = null) => new(_record, _values.Append((name, high)).ToArray());
                public Conditions Cases(string name, params double[] cases) => new(_record, _values.Append((name, cases.Max())).ToArray());
                public Conditions Spread(string name, double ratio, string word = null) => new(_record, _values.Append((name, _record.Get<double>(name) * (1 + ratio))).ToArray());
                public double Highest(Func<double, double> rule) => Worst(rule);
                public double Highest(Func<double, double, double> rule) { double At(int i) => _values.Where(v => v.Name == rule.Method.GetParameters()[i].Name).Select(v => v.Value).DefaultIfEmpty(_record.Get<double>("P")).First(); return rule(At(0), At(1)); }
                internal double Worst(Func<double, double> rule) { var name = rule.Method.GetParameters()[0].Name; var at = _values.Where(v => v.Name == name).ToArray(); return rule(at.Length > 0 ? at[0].Value : _record.Get<double>(name)); }
            }
        }

        namespace EightOhm.Parts { public sealed class Card { internal Card(double theta) => Theta = theta; public double Theta { get; } } }

        namespace EightOhm.Rooms
        {
            public readonly struct Volt { public Volt(double v) => Value = v; public double Value { get; } public static Volt operator *(Volt a, double b) => new(a.Value * b); }
            public sealed record Stage(double Rail, int Pairs) { public double Idle { get; init; } public double Worst(double load) => Rail * Rail / load * Pairs + Idle; }
            public sealed class Supply
            {
                private readonly Func<double, double> _rail;
                public Supply(Func<double, double> rail) => _rail = rail;
                public double At(double level) => Rooms.Call(_rail, level);
            }
            public sealed class Net
            {
                private readonly List<double> _parts = new();
                public Node Add(double part) { _parts.Add(part); return new Node(this, _parts.Count - 1); }
                public double Sum() => _parts.Sum();
            }
            public sealed class Node { private readonly Net _net; internal Node(Net net, int at) { _net = net; At = at; } public int At { get; } public double All => _net.Sum(); }
            public static class Rooms
            {
                public static string Explain<T>(Expression<Func<T>> shown) => $"{shown.Compile()()}";
                public static double Mix(double a, double b) => (a * 1.37 + b * 0.61) % 97;
                [ThreadStatic] private static int _depth;
                public static double Call(Func<double, double> f, double x) { if (_depth > 3) return x; _depth++; try { return f(x); } finally { _depth--; } }
                public static double Root(double x) => Math.Sqrt(x);
                public static double Sweep(double[] xs, Func<double, double> f) => xs.Select(f).Sum();
                public static string Table(EightOhm.Record.DesignRecord record) => string.Join(";", record.Entries);
            }
        }

        namespace Other
        {
            public static class Foreign
            {
                public static double Memory { get; set; }
                public static void Fill(double[] into, double with) => Array.Fill(into, with);
                public static void Push(List<double> into, double with) => into.Add(with);
                public static void Twice(Action run) { run(); run(); }
                public static Func<double, double> Half { get; } = x => x / 2;
                public static void Keep(EightOhm.Record.DesignRecord record, double x) => record.Compute("z", x);
            }
        }
        """;

    /// <summary>The usings that a case begins with.</summary>
    public static readonly string[] Usings =
        ["System", "System.IO", "System.Text", "System.Collections.Generic", "System.Linq", "System.Linq.Expressions", "System.Threading.Tasks", "EightOhm.Record", "EightOhm.Rooms", "EightOhm.Parts", "Other"];

    /// <summary>The file of the compiled library.</summary>
    public static string File { get; } = Compile();

    /// <summary>What cases are compiled against.</summary>
    public static IReadOnlyList<MetadataReference> References { get; } =
        [.. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator).Where(f => Path.GetFileName(f).StartsWith("System.", StringComparison.Ordinal) || Path.GetFileName(f) is "mscorlib.dll" or "netstandard.dll" or "Microsoft.CSharp.dll")
            .Append(File).Select(f => MetadataReference.CreateFromFile(f))];

    private static string Compile()
    {
        var platform = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator).Where(f => Path.GetFileName(f).StartsWith("System.", StringComparison.Ordinal)).Select(f => MetadataReference.CreateFromFile(f));
        var file = Path.Combine(Directory.CreateTempSubdirectory("eightohm-stub-").FullName, "EightOhm.Stub.dll");
        var made = CSharpCompilation.Create("EightOhm.Stub", [CSharpSyntaxTree.ParseText(Code)], platform, new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary)).Emit(file);
        Assert.True(made.Success, string.Join('\n', made.Diagnostics));
        return file;
    }
}
