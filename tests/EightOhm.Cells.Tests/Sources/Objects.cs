namespace EightOhm.Cells.Tests.Sources;

/// <summary>Collections, objects of cells' own types, objects of libraries.</summary>
internal static class Objects
{
    public static TheoryData<string, string> Cases => new()
    {
        { "P", "var xs = new List<double>(); xs.Add(P); d.Compute(\"y\", xs[0]);" },
        { "P Q", "var a = new List<double>(); var b = a; b.Add(P); --- a.Add(Q); --- d.Compute(\"y\", b.Sum());" },
        { "P", "var a = new List<double>(); var b = new List<double>(); a.Add(P); b.Add(Q); d.Compute(\"y\", a.Sum());" },
        { "P", "var m = new Dictionary<string, List<double>> { [\"k\"] = new() }; m[\"k\"].Add(P); d.Compute(\"y\", m[\"k\"].Sum());" },
        { "P", "var inner = new List<double>(); var m = new Dictionary<string, List<double>> { [\"k\"] = inner }; m[\"k\"].Add(P); d.Compute(\"y\", inner.Count * 1.0 + inner.Sum());" },
        { "P Q", "double[] xs = [P, 1]; double[] zs = [.. xs, Q]; d.Compute(\"y\", zs.Sum());" },
        { "P", "var xs = new double[2, 2]; xs[1, 0] = P; d.Compute(\"y\", xs[0, 0] + xs[1, 0]);" },
        { "P Q", "var o = new { A = P, B = Q }; d.Compute(\"y\", o.A + o.B);" },
        { "Q", "var o = new { A = P, B = Q }; d.Compute(\"y\", o.B);" },
        { "P", "record Box(double A, double B); --- var b = new Box(P, Q); d.Compute(\"y\", b.A);" },
        { "R", "record Box(double A, double B); --- var b = new Box(P, Q) with { A = R }; d.Compute(\"y\", b.A);" },
        { "Q", "record Box(double A, double B) { public double C => B * 2; } --- var b = new Box(P, Q) with { A = R }; d.Compute(\"y\", b.C);" },
        { "P Q", "record Box(double A, double B) { public double C { get; } = A + B; } --- d.Compute(\"y\", new Box(P, Q).C);" },
        { "P R", "class Acc { double sum; public void Add(double x) => sum += x; public double Sum => sum; } --- var a = new Acc(); a.Add(P); --- a.Add(R); d.Compute(\"y\", a.Sum);" },
        { "P", "class Holder { public double X; public double Z { get; set; } } --- var h = new Holder { X = P, Z = Q }; d.Compute(\"y\", h.X);" },
        { "Q", "class Holder(double k) { public double Twice() => k * 2; } --- d.Compute(\"y\", new Holder(Q).Twice());" },
        { "P S", "struct V { public double X, Y; } --- var v = new V { X = P, Y = Q }; v.X += S; d.Compute(\"y\", v.X);" },
        { "P Q", "class C { public C Next; public double V; } --- var a = new C { V = P }; var b = new C { V = Q, Next = a }; d.Compute(\"y\", b.Next.V * b.V);" },
        { "P R", "class C { public double V; } --- var a = new C { V = P }; var b = a; b.V = R; d.Compute(\"y\", a.V);" },
        { "P", "interface IF { double F(); } class A(double x) : IF { public double F() => x; } --- IF f = new A(P); d.Compute(\"y\", f.F());" },
        { "P Q", "abstract class B { public abstract double F(); } class A(double x) : B { public override double F() => x; } class C(double z) : B { public override double F() => z; } --- var all = new B[] { new A(P), new C(Q) }; d.Compute(\"y\", all.Sum(b => b.F()));" },
        { "Q R", "var rows = new[] { (\"a\", Q), (\"b\", R) }; double a = 0; foreach (var (name, v) in rows) a += v; d.Compute(\"y\", a);" },
        { "Q", "var rows = new[] { (P, Q), (R, Q) }; d.Compute(\"y\", rows.Sum(r => r.Item2));" },
        { "P Q", "var z = new[] { P }.Zip(new[] { Q }, (a, b) => a * b).ToArray(); d.Compute(\"y\", z[0]);" },
        { "P Q R", "var z = new[] { P }.Zip(new[] { Q }).ToList(); z.Add((R, R)); d.Compute(\"y\", z[0].Second);" },
        { "P", "var xs = new[] { 3.0, 1 }; Array.Fill(xs, P); d.Compute(\"y\", xs[0]);" },
        { "P Q", "var q = new Queue<double>(); q.Enqueue(P); q.Enqueue(Q); d.Compute(\"y\", q.Dequeue());" },
        { "P", "double[] xs = { 1, 2 }; void Set(double[] a) => a[0] = P; Set(xs); d.Compute(\"y\", xs[0]);" },
        { "R", "(double a, double b) F() => (P, R); var (a, b) = F(); d.Compute(\"y\", b);" },
        { "P", "var xs = new List<double> { P }; var l = xs.ToList(); l.Add(Q); d.Compute(\"y\", xs.Sum());" },
        { "P Q", "var xs = new List<double> { P }; IList<double> l = xs; l.Add(Q); d.Compute(\"y\", xs.Sum());" },
        { "P R", "class Pt { public double X { get; init; } public void Deconstruct(out double a, out double b) { a = X; b = R0; } public static double R0; } --- Pt.R0 = R; var (u, v) = new Pt { X = P }; d.Compute(\"y\", u + v);" },
        { "P", "class K { public static double V; } --- K.V = P; --- d.Compute(\"y\", K.V);" },
        { "P Q", "var t = (A: new List<double>(), B: 1.0); t.A.Add(P); t.B = Q; d.Compute(\"y\", t.A.Sum() + t.B);" },
        { "P Q", "struct M { public double V; public static M operator +(M a, M b) => new M { V = a.V + b.V }; } --- var m = new M { V = P } + new M { V = Q }; d.Compute(\"y\", m.V);" },
        { "P", "class E { public event Action<double> Hit; public void Go() => Hit?.Invoke(P0); public double P0; } --- double got = 0; var e = new E { P0 = P }; e.Hit += x => got = x; e.Go(); d.Compute(\"y\", got);" },
        { "P Q", "class B(double x) { public double X => x; } class D(double x, double z) : B(z) { public double Z => x; } --- var o = new D(P, Q); d.Compute(\"y\", o.X * o.Z);" },
        { "P", "class S { double[] v = new double[3]; public double this[int i] { get => v[i]; set => v[i] = value; } } --- var s = new S(); s[1] = P; d.Compute(\"y\", s[0] + s[1]);" },
        { "P Q", "var xs = new SortedDictionary<double, double> { { P, Q } }; foreach (var (k, v) in xs) d.Compute(\"y\", v + k);" },
    };
}
