namespace EightOhm.Cells.Tests.Sources;

/// <summary>Variables, expressions, strings.</summary>
internal static class Plain
{
    public static TheoryData<string, string> Cases => new()
    {
        { "P", "d.Compute(\"y\", P);" },
        { "", "d.Compute(\"y\", 3.0);" },
        { "P Q", "d.Compute(\"y\", P * Q);" },
        { "P R", "var a = P + 1; --- var b = a * R; --- d.Compute(\"y\", b);" },
        { "Q", "var a = P; a = Q; d.Compute(\"y\", a);" },
        { "P", "var a = P; d.Compute(\"y\", a); a = Q;" },
        { "P Q", "var a = P; a += Q; d.Compute(\"y\", a);" },
        { "n", "var a = n; a++; d.Compute(\"y\", a);" },
        { "P", "double a, b; a = b = P; d.Compute(\"y\", a);" },
        { "R", "var (a, b) = (P, R); d.Compute(\"y\", b);" },
        { "Q", "double a = P, b = Q; (a, b) = (b, a); d.Compute(\"y\", a);" },
        { "P S", "var t = (x: P, y: (Q, S)); d.Compute(\"y\", t.x + t.y.Item2);" },
        { "P Q", "var s = $\"{P} and {Q}\"; d.Compute(\"y\", s.Length);" },
        { "P", "var s = \"a\" + P; d.Compute(\"y\", s);" },
        { "P", "double.TryParse($\"{P}\", out var z); d.Compute(\"y\", z);" },
        { "P", "if ((object)P is double z) d.Compute(\"y\", z);" },
        { "P", "const double two = 2; d.Compute(\"y\", P * two);" },
        { "P Q", "double? a = P; var b = a ?? Q; d.Compute(\"y\", b);" },
        { "Q", "double? a = null; a ??= Q; d.Compute(\"y\", a.Value);" },
        { "P", "d.Compute(\"y\", (int)Math.Round(P));" },
        { "R", "dynamic a = R; d.Compute(\"y\", (double)a);" },
        { "P", "var v = new Volt(P); var w = v * 2; d.Compute(\"y\", w.Value);" },
        { "P Q", "d.Compute(\"y\", P > Q);" },
        { "S", "var a = S; { var b = a; a = b; } d.Compute(\"y\", a);" },
        { "P", "void F() { ref double a = ref P; d.Compute(\"y\", a); } F();" },
        { "P Q", "var xs = new[] { 1.0, 2 }; void F() { ref var a = ref xs[0]; a = P; } F(); d.Compute(\"y\", xs[0] * Q);" },
        { "P", "var a = P switch { > 5 => 1.0, _ => 2.0 }; d.Compute(\"y\", a);" },
        { "P Q", "var s = new StringBuilder(); s.Append(P); s.Append(Q); d.Compute(\"y\", s.ToString());" },
        { "P", "double a => P * 2; d.Compute(\"y\", a);" },
        { "n", "var xs = new double[n]; d.Compute(\"y\", xs.Length);" },
        { "P", "var a = P; --- var a = Q; --- d.Compute(\"z\", a); --- var b = P; d.Compute(\"y\", b);" },
        { "Q", "var a = P; --- var a = Q; --- d.Compute(\"y\", a);" },
        { "P", "static double k = 0; k = P; --- d.Compute(\"y\", k);" },
        { "P", "checked { d.Compute(\"y\", (double)(decimal)P); }" },
        { "P Q", "void F() { Span<double> s = stackalloc double[2]; s[0] = P; s[1] = Q; d.Compute(\"y\", s[0]); } F();" },
    };
}
