using EightOhm.Cells.Compiling;
using EightOhm.Cells.Running;
using EightOhm.Cells.Tests.Running;

namespace EightOhm.Cells.Tests.Compiling;

/// <summary>Compiled cells kept beside their notebook: believed only where this person's own EightOhm wrote them.</summary>
public sealed class KeptImagesTests : IDisposable
{
    private static readonly byte[] Secret = [.. Enumerable.Range(0, 32).Select(i => (byte)i)];

    private readonly string folder = Directory.CreateTempSubdirectory("eightohm-kept-").FullName;

    private string Notebook => Path.Combine(folder, "a.ipynb");

    private string Images => Path.Combine(folder, KeptImages.Folder, "a.cells");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task A_kept_cell_runs_as_the_compiled_one_and_a_new_one_behind_it_sees_it()
    {
        Keep(CellsOf.Package, "var P = 100.W; // kept", "Sqrt(P * 8.Ohm)");
        var kept = new Counted(KeptImages.Open(Notebook, Secret)!);

        var cells = CellsOf.Compile(kept, CellsOf.Package, "var P = 100.W; // kept", "Sqrt(P * 8.Ohm)", "2 * P");

        Assert.Equal(1, kept.Compiled);
        var session = new CellSession();
        await session.TextAsync(cells[0]);
        await session.TextAsync(cells[1]);
        Assert.Equal("28.28 V", await session.TextAsync(cells[2]));
        Assert.Equal("200 W", await session.TextAsync(cells[3]));
    }

    [Fact]
    public void A_changed_cell_and_all_behind_it_are_compiled_anew()
    {
        Keep("var a = 1;", "var b = 2;", "a + b");
        var kept = new Counted(KeptImages.Open(Notebook, Secret)!);

        CellsOf.Compile(kept, "var a = 1;", "var b = 3;", "a + b");

        Assert.Equal(2, kept.Compiled);
    }

    [Fact]
    public void What_nobody_asked_for_goes_at_the_next_save()
    {
        Keep("var a = 1;", "var b = 2;", "a + b");
        var before = new FileInfo(Images).Length;

        Keep("var a = 1;", "var b = 2;");

        Assert.InRange(new FileInfo(Images).Length, 1, before - 1);
    }

    [Fact]
    public void Another_persons_images_are_as_if_they_were_not_there()
    {
        Keep("var a = 1;");

        var kept = new Counted(KeptImages.Open(Notebook, [.. Secret.Select(b => (byte)(b + 1))])!);
        CellsOf.Compile(kept, "var a = 1;");

        Assert.Equal(1, kept.Compiled);
    }

    [Fact]
    public void A_changed_or_cut_file_is_compiled_anew_and_nothing_is_thrown()
    {
        Keep("var a = 1;", "a");
        var whole = File.ReadAllBytes(Images);
        for (var at = 0; at < whole.Length; at += Math.Max(1, whole.Length / 40))
        {
            var changed = whole.ToArray();
            changed[at] ^= 0x10;
            foreach (var bytes in new[] { changed, whole[..at] })
            {
                File.WriteAllBytes(Images, bytes);
                var kept = new Counted(KeptImages.Open(Notebook, Secret)!);
                CellsOf.Compile(kept, "var a = 1;", "a");
                Assert.InRange(kept.Compiled, 1, 2);
            }
        }
    }

    [Fact]
    public void A_cell_reads_back_as_it_was_written_with_what_it_writes_into_a_record()
    {
        var cell = CellsOf.Compile(CellsOf.Package, "var amp = DesignRecord.Open(\"amp.json\");", "var P = amp.Target(\"P\", 100.W);\nvar twice = amp.Compute(\"twice\", 2 * P);")[2];
        Assert.Contains(cell.Writes!, w => w.Entry.Name == "twice" && w.Sources.Any(s => s.Name == "P"));

        var back = CellImage.Read(CellImage.Write(cell))!;

        Assert.Equal(cell.Writes!.Select(w => (w.Entry, w.Line, string.Join(',', w.Sources))), back.Writes!.Select(w => (w.Entry, w.Line, string.Join(',', w.Sources))));
        Assert.Equal((cell.Key, cell.Slot, cell.HasValue, cell.BringsEightOhm), (back.Key, back.Slot, back.HasValue, back.BringsEightOhm));
        Assert.Equal(cell.Image, back.Image);
        Assert.Equal(cell.Symbols, back.Symbols);
    }

    [Fact]
    public void Cells_are_read_from_the_first_that_names_a_record_on_with_what_those_before_it_left()
    {
        string[] before = [CellsOf.Package, "Power Twice(Power p) => 2 * p;"];
        string[] after = ["var amp = DesignRecord.Open(\"amp.json\");", "var P = amp.Target(\"P\", 100.W);", "amp.Compute(\"twice\", Twice(P));"];

        Assert.All(CellsOf.Compile([.. before]), cell => Assert.Null(cell.Writes));
        var cells = CellsOf.Compile([.. before, .. after]);

        Assert.Empty(cells[2].Writes!);
        Assert.Equal(["P"], cells[4].Writes!.Single().Sources.Select(source => source.Name));
        // The same where all before it was kept.
        Keep([.. before, .. after[..2]]);
        Assert.Equal(["P"], CellsOf.Compile(new Counted(KeptImages.Open(Notebook, Secret)!), [.. before, .. after])[4].Writes!.Single().Sources.Select(source => source.Name));
    }

    [Fact]
    public void An_assembly_that_a_cell_names_by_its_file_counts_by_its_content()
    {
        var file = Path.Combine(folder, "other.dll");
        File.Copy(typeof(UnitsNet.IQuantity).Assembly.Location, file);
        string Key() => CellsOf.Compiler(folder: folder).Next("#r \"other.dll\"\nvar a = 1;").Key;
        var before = Key();

        Assert.Equal(before, Key());
        File.Copy(typeof(KeptImages).Assembly.Location, file, overwrite: true);
        Assert.NotEqual(before, Key());
    }

    private void Keep(params string[] cells)
    {
        var kept = KeptImages.Open(Notebook, Secret)!;
        CellsOf.Compile(kept, cells);
        kept.Save();
    }

    private sealed class Counted(IKeptImages kept) : IKeptImages
    {
        public int Compiled { get; private set; }

        public CompiledCell? Find(string key) => kept.Find(key);

        public void Add(CompiledCell cell)
        {
            Compiled++;
            kept.Add(cell);
        }
    }
}
