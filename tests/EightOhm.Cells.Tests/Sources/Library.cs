namespace EightOhm.Cells.Tests.Sources;

/// <summary>Calls into libraries: the house's own change nothing but what is made to change, others may change all.</summary>
internal static class Library
{
    public static TheoryData<string, string> Cases => new()
    {
        { "P", "d.Compute(\"y\", Root(P));" },
        { "P Q n", "var s = new Stage(P, n); d.Compute(\"y\", s.Worst(Q));" },
        { "P Q R n", "var s = new Stage(P, n) { Idle = R }; d.Compute(\"y\", s.Worst(Q));" },
        { "P Q n", "var xs = new[] { Q }; Sweep(xs, x => x * P); d.Compute(\"y\", xs[0] * P * n);" },
        { "Q", "var xs = new[] { Q }; Sweep(xs, x => x * P); d.Compute(\"y\", xs[0]);" },
        { "P R", "var s = new Supply(x => x * R); d.Compute(\"y\", s.At(P));" },
        // Whether the supply asks at once or later is not known: both count.
        { "P R S", "var k = R; var s = new Supply(x => x * k); k = S; d.Compute(\"y\", s.At(P));" },
        { "P Q", "double Rail(double x) => x * Q; var s = new Supply(Rail); --- d.Compute(\"y\", s.At(P));" },
        { "P Q", "var net = new Net(); net.Add(P); --- net.Add(Q); --- d.Compute(\"y\", net.Sum());" },
        { "P Q", "var net = new Net(); var a = net.Add(P); --- net.Add(Q); --- d.Compute(\"y\", a.All);" },
        { "P", "var net = new Net(); net.Add(P); var other = new Net(); other.Add(Q); d.Compute(\"y\", net.Sum());" },
        { "P", "var xs = new[] { 1.0 }; Foreign.Fill(xs, P); d.Compute(\"y\", xs[0]);" },
        { "P", "var xs = new List<double>(); var box = new { L = xs }; Foreign.Push(box.L, P); d.Compute(\"y\", xs.Count + xs.Sum());" },
        { "P", "double k = 0; Foreign.Twice(() => k += P); d.Compute(\"y\", k);" },
        { "P", "Foreign.Memory = P; --- d.Compute(\"y\", Foreign.Memory);" },
        { "P", "var f = Foreign.Half; d.Compute(\"y\", f(P));" },
        { "P", "var shown = Explain(() => Root(P)); d.Compute(\"y\", shown);" },
        { "P Q n", "var f = Path.GetTempFileName(); File.WriteAllText(f, $\"{P}\"); --- var back = File.ReadAllText(f); d.Compute(\"y\", back + Q + n);" },
        { "P", "var w = new StringWriter(); w.Write(P); d.Compute(\"y\", w.ToString());" },
        { "P n", "var s = new Stage(P, n); var t = s with { Rail = 5 }; d.Compute(\"y\", t.Worst(1));" },
        { "P", "var xs = new[] { P, P * 2 }; Array.Sort(xs); d.Compute(\"y\", xs[^1]);" },
        { "P Q", "Expression<Func<double, double>> e = x => x * Q; d.Compute(\"y\", e.Compile()(P));" },
        { "P", "var c = new System.Collections.Concurrent.ConcurrentBag<double>(); Parallel.For(0, 3, i => c.Add(P)); d.Compute(\"y\", c.Sum());" },
        { "P Q", "var m = new Dictionary<string, double> { [\"a\"] = P }; m.TryGetValue(\"a\", out var v); d.Compute(\"y\", v + Q);" },
        { "P", "class Up : IComparer<double> { public int Compare(double a, double b) => Math.Sign(a - b) * (int)Sense; public double Sense; } --- var xs = new List<double> { 1, 2 }; xs.Sort(new Up { Sense = P > 10.5 ? 1 : -1 }); d.Compute(\"y\", xs[0]);" },
    };
}
