using EightOhm.Cells.Compiling;
using EightOhm.Cells.Sources;
using EightOhm.Cells.Tests.Running;
using EightOhm.Cells.Tests.Sources;

namespace EightOhm.Cells.Tests.Compiling;

/// <summary>What cells hang on, kept beside their notebook: it answers as what was read, and only for what was read.</summary>
[Collection("stub library")]
public sealed class KeptGraphTests : IDisposable
{
    private static readonly byte[] Secret = [.. Enumerable.Range(0, 32).Select(i => (byte)i)];

    private readonly string folder = Directory.CreateTempSubdirectory("eightohm-graph-").FullName;

    private string Notebook => Path.Combine(folder, "a.ipynb");

    private string File => Path.Combine(folder, KeptImages.Folder, "a.graph");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void It_answers_every_question_as_the_one_that_was_read(int seed)
    {
        var cells = new Case(new RandomNotebook(seed).Cells(12)).Cells;
        var read = CellGraph.Read(cells, Case.References, Case.Before);
        Assert.True(KeptGraph.Open(Notebook, Secret)!.Keep(cells, read));

        var kept = KeptGraph.Open(Notebook, Secret)!.Find(cells)!;

        Assert.Equal(read.Cells.Select(Words), kept.Cells.Select(Words));
        Assert.Contains(read.Cells, cell => cell.Writes.Any(write => write.Sources.Count > 0));
        for (var i = 0; i < read.Cells.Count; i++)
        {
            Assert.Equal(read.NeededBefore(i), kept.NeededBefore(i));
            Assert.Equal(read.LinkedTo(i), kept.LinkedTo(i));
        }

        foreach (var name in read.Cells.SelectMany(cell => cell.Reads.Concat(cell.Writes.Select(write => write.Entry))).Distinct())
        {
            var (one, other) = (read.CellsToRun([name]), kept.CellsToRun([name]));
            Assert.Equal(one.Moved, other.Moved);
            Assert.Equal(one.NeededBefore, other.NeededBefore);
            Assert.Equal(one.MovedEntries.Order(ByWords), other.MovedEntries.Order(ByWords));
        }
    }

    [Fact]
    public void What_could_not_be_followed_and_what_changes_the_process_is_still_said()
    {
        string[] cells = ["this is no code", "System.Globalization.CultureInfo.CurrentCulture = null!;", "var a = 1;"];
        var read = CellGraph.Read(cells, Case.References, Case.Before);
        KeptGraph.Open(Notebook, Secret)!.Keep(cells, read);

        var kept = KeptGraph.Open(Notebook, Secret)!.Find(cells)!;

        Assert.NotNull(kept.Cells[0].Unknown);
        Assert.True(kept.Cells[1].ChangesWorld);
        Assert.False(kept.Cells[2].ChangesWorld);
        Assert.Equal(read.Cells.Select(Words), kept.Cells.Select(Words));
    }

    [Fact]
    public void Other_texts_and_another_person_find_nothing()
    {
        string[] cells = ["var a = 1;", "var b = a + 1;"];
        KeptGraph.Open(Notebook, Secret)!.Keep(cells, CellGraph.Read(cells, Case.References, Case.Before));

        Assert.NotNull(KeptGraph.Open(Notebook, Secret)!.Find(cells));
        Assert.Null(KeptGraph.Open(Notebook, Secret)!.Find(["var a = 1;", "var b = a + 2;"]));
        Assert.Null(KeptGraph.Open(Notebook, Secret)!.Find(["var a = 1;"]));
        Assert.Null(KeptGraph.Open(Path.Combine(folder, "b.ipynb"), Secret)!.Find(cells));
        Assert.Null(KeptGraph.Open(Notebook, [.. Secret.Select(b => (byte)(b + 1))])!.Find(cells));
        Assert.Null(KeptGraph.Open(Notebook, null));
    }

    [Fact]
    public void A_changed_or_cut_file_is_as_if_it_were_not_there()
    {
        string[] cells = ["var a = 1;", "int Twice(int x) => a * x;", "Twice(2)"];
        KeptGraph.Open(Notebook, Secret)!.Keep(cells, CellGraph.Read(cells, Case.References, Case.Before));
        var whole = System.IO.File.ReadAllBytes(File);
        for (var at = 0; at < whole.Length; at += 3)
        {
            var changed = whole.ToArray();
            changed[at] ^= 0x10;
            foreach (var bytes in new[] { changed, whole[..at] })
            {
                System.IO.File.WriteAllBytes(File, bytes);
                Assert.Null(KeptGraph.Open(Notebook, Secret)!.Find(cells));
            }
        }
    }

    [Fact]
    public void A_file_beyond_all_measure_is_not_read()
    {
        string[] cells = ["var a = 1;"];
        KeptGraph.Open(Notebook, Secret)!.Keep(cells, CellGraph.Read(cells, Case.References, Case.Before));
        using (var file = new FileStream(File, FileMode.Open))
            file.SetLength(64 << 20);
        Assert.NotNull(KeptGraph.Open(Notebook, Secret)!.Find(cells));
        using (var file = new FileStream(File, FileMode.Open))
            file.SetLength((64 << 20) + 1);
        Assert.Null(KeptGraph.Open(Notebook, Secret)!.Find(cells));
    }

    [Fact]
    public void What_holds_nothing_is_not_waited_for()
    {
        Directory.CreateDirectory(Path.GetDirectoryName(File)!);
        // A link to a pipe to which nobody writes; where a system has none, a file without anything in it.
        if (OperatingSystem.IsWindows())
            System.IO.File.WriteAllText(File, "");
        else
        {
            var pipe = Path.Combine(folder, "pipe");
            using (var made = System.Diagnostics.Process.Start("mkfifo", [pipe]))
                made.WaitForExit();
            System.IO.File.CreateSymbolicLink(File, pipe);
        }

        Assert.Null(KeptGraph.Open(Notebook, Secret)!.Find(["var a = 1;"]));
    }

    [Fact]
    public void Where_nothing_can_be_written_nothing_is_kept_and_nothing_thrown()
    {
        System.IO.File.WriteAllText(Path.Combine(folder, KeptImages.Folder), "a file in the folder's place");

        Assert.False(KeptGraph.Open(Notebook, Secret)!.Keep(["var a = 1;"], CellGraph.Read(["var a = 1;"], Case.References, Case.Before)));
        Assert.Null(KeptGraph.Open(Notebook, Secret)!.Find(["var a = 1;"]));
    }

    [Theory]
    [InlineData("var amp = DesignRecord.Open(\"amp.json\");", "var P = amp.Target(\"P\", 100.W);\nvar R_L = amp.Target(\"R_L\", 8.Ohm);", "ElectricPotential Peak(Power p) => Sqrt(2 * p * R_L);", "var list = new List<Power>();", "list.Add(P);", "amp.Compute(\"V_pk\", Peak(list[0]));", "Console.Write(Peak(1.W));")]
    [InlineData("var first = 1;", "using System.Numerics;", "class Pair { public int A; }", "var pair = new Pair { A = first };", "var amp = DesignRecord.Open(\"amp.json\");\namp.Target(\"n\", 2);", "pair.A = amp.Get<int>(\"n\");", "amp.Require(\"n\", \"n\").AtMost(3);", "pair.A + first")]
    public void What_is_read_on_the_way_through_the_compiler_is_what_reading_alone_finds(params string[] cells)
    {
        string[] all = [CellsOf.Package, .. cells];
        var compiler = CellsOf.Compiler();
        Assert.All(all.Select(compiler.Next), cell => Assert.Empty(cell.Faults));

        var (compiled, read) = (compiler.Graph()!, CellGraph.Read(all, CellsOf.References, CellUsings.Script));

        Assert.Equal(read.Cells.Select(Words), compiled.Cells.Select(Words));
        Assert.All(Enumerable.Range(0, all.Length), i => Assert.Equal(read.NeededBefore(i), compiled.NeededBefore(i)));
        Assert.All(Enumerable.Range(0, all.Length), i => Assert.Equal(read.LinkedTo(i), compiled.LinkedTo(i)));
    }

    [Fact]
    public void The_compiler_gives_no_graph_where_it_has_not_read_every_cell()
    {
        const string Record = "var amp = DesignRecord.Open(\"amp.json\");";
        var kept = KeptImages.Open(Notebook, Secret)!;

        Assert.Null(Graph(null, CellsOf.Package, "1 + 1"));
        Assert.NotNull(Graph(kept, CellsOf.Package, Record));
        Assert.Null(Graph(null, CellsOf.Package, Record, "this is no code"));
        // All were kept, the last of them too: nobody has read them.
        Assert.Null(Graph(kept, CellsOf.Package, Record));
        Assert.NotNull(Graph(kept, CellsOf.Package, Record, "1 + 1"));
        Assert.Null(Graph(null, $"#r \"{typeof(UnitsNet.IQuantity).Assembly.Location}\"", CellsOf.Package, Record));

        static CellGraph? Graph(IKeptImages? kept, params string[] cells)
        {
            var compiler = CellsOf.Compiler(kept);
            foreach (var cell in cells)
                compiler.Next(cell);
            return compiler.Graph();
        }
    }

    private static readonly Comparer<EntryName> ByWords = Comparer<EntryName>.Create((a, b) => string.CompareOrdinal(a.ToString(), b.ToString()));

    private static string Words(CellReading cell) =>
        $"{cell.Position} {cell.Unknown} reads {string.Join(' ', cell.Reads)} writes {string.Join(' ', cell.Writes.Select(w => $"{w.Entry} {w.Line} {string.Join(' ', w.Sources)}"))} " +
        $"defines {string.Join(' ', cell.Defines)} warns {string.Join(' ', cell.Warnings)} {cell.ChangesWorld}";
}
