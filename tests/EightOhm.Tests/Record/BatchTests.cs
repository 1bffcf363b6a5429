using EightOhm.Quantities;
using EightOhm.Record;

namespace EightOhm.Tests.Record;

/// <remarks>A cell's batch is one for the process, so these run when nothing else does.</remarks>
[Collection(nameof(Alone))]
public sealed class BatchTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_batch_is_written_once_and_read_meanwhile()
    {
        var files = new CountedFiles();
        var record = DesignRecord.Open(_folder.File, files);
        using (record.Batch())
        {
            record.Target("a", 1.0);
            using (record.Batch())
                record.Derive("b", (double a) => a * 2);
            Assert.Equal(2, record.Get<double>("b"));
            Assert.Equal(0, files.Writes);
        }

        Assert.Equal(1, files.Writes);
        Assert.Equal(2, _folder.Open().Get<double>("b"));
        using (record.Batch())
            record.Target("a", 1.0);
        Assert.Equal(1, files.Writes);
    }

    [Fact]
    public void The_batch_of_a_cell_takes_in_every_record_that_changes()
    {
        using var second = new TestFolder();
        var (files, others) = (new CountedFiles(), new CountedFiles());
        var (record, other) = (DesignRecord.Open(_folder.File, files), DesignRecord.Open(second.File, others));
        using (RecordBatch.Open())
        {
            record.Target("a", 1.0);
            record.Target("b", 1.0);
            other.Target("c", 1.0);
            Assert.Equal((0, 0), (files.Writes, others.Writes));
        }

        Assert.Equal((1, 1), (files.Writes, others.Writes));
        record.Target("d", 1.0);
        Assert.Equal(2, files.Writes);
    }

    [Fact]
    public void When_the_disk_refuses_the_whole_batch_is_as_if_it_had_not_been()
    {
        var files = new CountedFiles();
        var record = DesignRecord.Open(_folder.File, files);
        record.Target("a", 1.0);
        var before = _folder.Text;
        var batch = record.Batch();
        record.Target("a", 2.0);
        record.Target("b", 2.0);
        files.Refuses = true;
        Assert.Throws<IOException>(batch.Dispose);
        Assert.Equal((1.0, 1), (record.Get<double>("a"), record.Entries.Count));
        Assert.Equal(before, _folder.Text);
        files.Refuses = false;
        record.Target("b", 3.0);
        Assert.Equal(3, _folder.Open().Get<double>("b"));
    }

    [Fact]
    public void Two_notebooks_on_one_record_do_not_write_over_each_other_by_batches_either()
    {
        var (one, two) = (_folder.Open(), _folder.Open());
        var batch = two.Batch();
        two.Target("R_L", 8.Ohm);
        one.Target("P", 100.W);
        Assert.Contains("changed by another program", Assert.Throws<RecordException>(batch.Dispose).Message, StringComparison.Ordinal);
        Assert.Empty(two.Entries);
        Assert.Equal(100.W, _folder.Open().Get<UnitsNet.Power>("P"));
    }

    private sealed class CountedFiles : DiskFiles
    {
        public int Writes { get; private set; }

        public bool Refuses { get; set; }

        public override void Write(string path, byte[] bytes)
        {
            if (Refuses)
                throw new IOException("No space left on device.");
            Writes++;
            base.Write(path, bytes);
        }
    }
}

/// <summary>Tests of what is one for the process.</summary>
[CollectionDefinition(nameof(Alone), DisableParallelization = true)]
public static class Alone;
