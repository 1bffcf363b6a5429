namespace EightOhm.Notebook.Tests.Sources;

/// <summary>The record's verbs, of today and those that they replace.</summary>
internal static class Records
{
    public static TheoryData<string, string> Cases => new()
    {
        { "P", "var a = d.Get<double>(\"P\"); d.Compute(\"y\", a);" },
        { "P", "const string name = \"P\"; d.Compute(\"y\", d.Get<double>(name));" },
        { "P Q", "foreach (var name in new[] { \"P\", \"Q\" }) d.Compute(\"y\", d.Get<double>(name));" },
        { "*", "foreach (var name in new[] { \"P\", \"Q\" }.Select(x => x + \"\")) d.Compute(\"y\", d.Get<double>(name));" },
        { "*", "d.Compute(\"y\", string.Join(\";\", d.Entries));" },
        { "*", "d.Compute(\"y\", Table(d));" },
        { "P Q", "d.Compute(\"y\", d.EntriesOf(\"P\", \"Q\").Sum());" },
        { "P T", "d.Given(\"T\", 2.0); d.Compute(\"y\", d.Get<double>(\"T\") + P);" },
        { "P T", "var t = d.Target(\"T\", P * 2); d.Compute(\"y\", t);" },
        { "output_npn", "var card = d.Part(\"output npn\", \"cards/npn.json\"); d.Compute(\"y\", card.Theta);" },
        { "P output_npn", "var card = d.Part(\"output npn\", \"cards/npn.json\"); double f(double x) => card.Theta * x; d.Compute(\"y\", f(P));" },
        { "V", "var v = d.Derive(\"V\", P => P * 2); d.Compute(\"y\", v);" },
        { "P Q", "d.Derive(\"y\", (P, Q) => P * Q);" },
        { "P", "d.Let(\"y\", (double P) => Root(P));" },
        { "P R", "var t = d.Compute(\"t\", P * R); d.Compute(\"y\", t);" },
        { "t", "d.Compute(\"t\", P * R); --- d.Compute(\"y\", d.Get<double>(\"t\"));" },
        { "P", "d.Found(\"y\", P, [\"Q\", \"R\"]);" },
        { "P", "d.Compute(\"y\", (double P) => Root(P));" },
        { "P", "double F(double P) => P * 2; d.Compute(\"y\", F);" },
        { "P", "d.Require(\"y\", \"P\").AtMost(12);" },
        { "P Q", "d.Require(\"y\", \"P\").AtMost(Q * 2);" },
        { "P S", "d.Require(\"y\", \"P\").AtMost(\"S\");" },
        { "P S", "d.Require(\"y\", \"P\").AtLeast(S => S / 2);" },
        { "P Q y", "d.Compute(\"y\", P); --- d.Require(\"y\", AtMost(Q), \"says\");" },
        { "P Q R", "var use = d.Conditions().Range(\"x\", P, Q); d.Require(\"y\", use, x => x * R);" },
        { "Q R", "var use = d.Conditions().Cases(\"z\", Q, 1).Spread(\"R\", 0.05); d.Require(\"y\", use, z => z).AtMost(9);" },
        { "P Q", "var use = d.Conditions().Cases(\"z\", Q); d.Require(\"y\", over: use, rule: P => P * 2);" },
        { "P", "var e = DesignRecord.Open(\"b.json\"); e.Target(\"P\", 1.0); d.Compute(\"y\", P);" },
        { "A", "var e = DesignRecord.Open(\"b.json\"); var a = e.Target(\"A\", 1.0); d.Compute(\"y\", a);" },
        { "A", "var e = DesignRecord.Scratch(); var a = e.Target(\"A\", 1.0); d.Compute(\"y\", e.Get<double>(\"A\"));" },
        { "P Q", "var e = P > 10.5 ? d : DesignRecord.Open(\"a.json\"); e.Compute(\"y\", Q);" },
        { "* P", "d.Shake(); d.Compute(\"y\", P);" },
        { "P R", "void Keep(DesignRecord r, string name) => r.Compute(name, P * R); Keep(d, \"y\");" },
        { "Q", "var names = new List<string> { \"x\", \"y\" }; foreach (var name in names) d.Compute(name, Q);" },
        { "P Q", "(string, double)[] rows = [(\"x\", P), (\"y\", Q)]; foreach (var (name, v) in rows) d.Compute(name, v);" },
        { "P n", "for (var i = 0; i < n; i++) d.Compute($\"x{i}\", P); d.Compute(\"y\", P * n);" },
        { "P", "d.Set(\"z\", $\"{Q}\"); d.Compute(\"y\", P);" },
        { "* P", "Foreign.Keep(d, P); d.Compute(\"y\", P);" },
    };
}
