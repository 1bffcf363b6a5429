namespace EightOhm.Cells.Tests.Sources;

/// <summary>Branches, loops, exceptions.</summary>
internal static class Control
{
    public static TheoryData<string, string> Cases => new()
    {
        { "P Q", "double a; if (P > Q) a = 1; else a = 2; d.Compute(\"y\", a);" },
        { "P", "double a = 1; if (P > 10.5) a = 2; d.Compute(\"y\", a);" },
        { "P Q R S", "d.Compute(\"y\", P > Q ? R : S);" },
        { "P", "if (P > 10.5) d.Compute(\"y\", 1.0);" },
        { "P Q", "var a = 0.0; for (var i = 0; i < 3; i++) a += P * Q; d.Compute(\"y\", a);" },
        { "n", "var a = 0; for (var i = 0; i < n; i++) a++; d.Compute(\"y\", a);" },
        { "P n", "double a = 0, b = 0, c = P; for (var i = 0; i < n; i++) { a = b; b = c; } d.Compute(\"y\", a);" },
        { "P Q", "var a = 0.0; foreach (var x in new[] { P, Q }) a += x; d.Compute(\"y\", a);" },
        { "P", "var a = 0; while (a < P) a++; d.Compute(\"y\", a);" },
        { "P", "var a = 0; do { a++; } while (a < P); d.Compute(\"y\", a);" },
        { "P Q", "var a = 0; while (true) { if (a > P) break; a++; if (a > 100 * Q) break; } d.Compute(\"y\", a);" },
        { "P", "var a = 0; for (var i = 0; i < 20; i++) { if (i < P) continue; a++; } d.Compute(\"y\", a);" },
        { "P", "double F() { if (P > 10.5) return 1; return 2; } d.Compute(\"y\", F());" },
        { "P", "double a = 0; void F() { if (P > 10.5) return; a = 1; } F(); d.Compute(\"y\", a);" },
        { "P Q", "double a = 0; switch (n > 100) { case true: a = 5; break; default: if (P > 10.5) break; a = Q; break; } d.Compute(\"y\", a);".Replace("n > 100", "false", StringComparison.Ordinal) },
        { "P Q", "double a = 0; try { a = 1; if (P > 10.5) throw new Exception(); a = Q; } catch { } d.Compute(\"y\", a);" },
        { "P", "double a = 0; try { int.Parse(P > 10.5 ? \"x\" : \"1\"); a = 1; } catch { a = 2; } d.Compute(\"y\", a);" },
        { "P Q", "double a = P; try { a = Q; throw new Exception(); } catch { } d.Compute(\"y\", a);" },
        { "Q", "double a = P; double F() { try { return 1; } finally { a = Q; } } F(); d.Compute(\"y\", a);".Replace("a = P", "a = 0", StringComparison.Ordinal) },
        { "P", "if (P > 10.5) throw new Exception(); --- d.Compute(\"y\", 1.0);".Replace("--- ", "", StringComparison.Ordinal) },
        { "P", "void F() { if (P > 10.5) throw new Exception(); } F(); d.Compute(\"y\", 1.0);" },
        { "P Q", "double a = 0; if (P > 10.5) { if (Q > 0) a = 1; } d.Compute(\"y\", a);" },
        { "P Q", "var b = P > 10.5 && Q > 20.5; d.Compute(\"y\", b);" },
        { "P", "var a = P > 10.5; var b = a ? 1 : 0; --- var c = b == 1 ? 2 : 3; --- d.Compute(\"y\", c);" },
        { "P Q", "double F(double x) => x > P ? Q : 0; d.Compute(\"y\", F(5));" },
        { "P R", "var a = 0.0; var i = 0; foreach (var c in $\"{P}\") { i++; a = R; } d.Compute(\"y\", a);" },
        { "P S", "var a = (P, S) switch { ( > 5, var s) => s, _ => 0 }; d.Compute(\"y\", a);" },
        { "P", "var xs = new List<double>(); if (P > 10.5) xs.Add(1); d.Compute(\"y\", xs.Count);" },
        { "P Q R", "double a = 0; for (var i = 0; i < 2; i++) { if (i == 1) { if (P > 10.5) break; a = Q; } else a = R; } d.Compute(\"y\", a);" },
        { "n", "for (var i = 0; i < n; i++) d.Compute(\"y\", i);" },
    };
}
