using EightOhm.Quantities;
using EightOhm.Record;
using EightOhm.Tests.Saver;

namespace EightOhm.Tests.Record;

/// <summary>A process that dies while it saves loses at most the change it was saving.</summary>
public sealed class KilledSaveTests : IDisposable
{
    private const int Kills = 50;
    private readonly TestFolder _folder = new();

    public KilledSaveTests() => _folder.Open().Target("n", 1, NumberedState.Note(1));

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Killed_between_temporary_write_and_rename_the_old_state_stays()
    {
        for (var i = 0; i < Kills; i++)
        {
            Die("stop-before-rename");
            Assert.Equal(["tern.json", "tern.json.part"], _folder.Names);
            Assert.Equal(i + 1, WholeState());
            Assert.Equal(["tern.json"], _folder.Names);
            _folder.Open().Target("n", i + 2, NumberedState.Note(i + 2));
        }
    }

    [Fact]
    public void Killed_in_the_temporary_write_the_old_state_stays()
    {
        for (var i = 0; i < 5; i++)
        {
            Die("stop-in-write");
            Assert.Contains("tern.json.part", _folder.Names);
            Assert.Equal(1, WholeState());
            Assert.Equal(["tern.json"], _folder.Names);
        }
    }

    [Fact]
    public void Killed_at_random_the_record_is_one_of_the_whole_states()
    {
        var random = new Random(1);
        var last = 1;
        for (var i = 0; i < Kills; i++)
        {
            using var victim = SaverProcess.Start("loop", _folder.File);
            var reported = int.Parse(victim.StandardOutput.ReadLine()!, System.Globalization.CultureInfo.InvariantCulture);
            Thread.Sleep(TimeSpan.FromMilliseconds(random.NextDouble() * 30));
            victim.Kill();
            while (victim.StandardOutput.ReadLine() is { } line)
                reported = int.TryParse(line, out var n) ? Math.Max(reported, n) : reported;
            victim.WaitForExit();
            var found = WholeState();
            // What the process reported as saved is there; at most the next one is too.
            Assert.True(found >= last && found - reported is 0 or 1, $"after {last}, reported {reported}, found {found}");
            Assert.Equal(["tern.json"], _folder.Names);
            last = found;
        }
    }

    [Fact]
    public void A_disk_that_refuses_leaves_file_and_memory_as_they_were()
    {
        var files = new RefusingFiles();
        var record = DesignRecord.Open(_folder.File, files);
        var before = _folder.Text;
        for (var i = 0; i < Kills; i++)
        {
            files.InWrite = i % 2 == 0;
            files.Refuses = true;
            Assert.Throws<IOException>(() => record.Target("n", 99 + i));
            Assert.Equal(1, record.Get<int>("n"));
            Assert.Equal(before, _folder.Text);
            files.Refuses = false;
        }

        Assert.Equal(99, record.Target("n", 99));
        Assert.Equal(["tern.json"], _folder.Names);
    }

    [Fact]
    public void Another_process_recomputes_the_rules_without_their_lambdas()
    {
        var record = _folder.Open();
        record.Target("P", 100.W);
        record.Target("R_L", 8.Ohm);
        record.Derive("V", (UnitsNet.Power P, UnitsNet.ElectricResistance R_L) => Maths.Sqrt(P * R_L));
        using var other = SaverProcess.Start("set", _folder.File, "P", "120.1 W");
        var lines = other.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        other.WaitForExit();
        Assert.Equal(0, other.ExitCode);
        Assert.Contains($"V={KeptValue.Fingerprint(QuantityKinds.Of(typeof(UnitsNet.ElectricPotential)), Maths.Sqrt(120.1.W * 8.Ohm))}", lines);
    }

    private int WholeState()
    {
        var entry = _folder.Open().EntryOf("n");
        Assert.Equal(NumberedState.Note((int)entry.Value!), entry.Note);
        return (int)entry.Value;
    }

    private void Die(string how)
    {
        using var victim = SaverProcess.Start(how, _folder.File);
        victim.WaitForExit();
        Assert.NotEqual(0, victim.ExitCode);
        Assert.Equal("", victim.StandardError.ReadToEnd());
    }

    private sealed class RefusingFiles : DiskFiles
    {
        public bool Refuses { get; set; }

        public bool InWrite { get; set; }

        public override void Write(string path, byte[] bytes)
        {
            if (Refuses && InWrite)
            {
                base.Write(path, bytes[..(bytes.Length / 3)]);
                throw new IOException("No space left on device.");
            }

            base.Write(path, bytes);
        }

        public override void Rename(string from, string to)
        {
            if (Refuses)
                throw new IOException("The folder cannot be written.");
            base.Rename(from, to);
        }
    }
}
