using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Tests.Record;

/// <summary>Several chapters work on one record, one after the other.</summary>
public sealed class TakeUpTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void What_another_has_written_is_taken_up_and_can_be_gone_on_with()
    {
        var first = _folder.Open();
        first.Target("P", 100.W);
        first.Target("R_L", 8.Ohm);
        var second = _folder.Open();
        second.Derive("V_rms", (Power P, ElectricResistance R_L) => Sqrt(P * R_L));
        second.Set("P", "200 W");
        Assert.Throws<RecordException>(() => first.Target("R_L", 4.Ohm));

        first.TakeUp();

        Assert.Equal(200, first.Get<Power>("P").Watts);
        first.Target("R_L", 4.Ohm);
        second.TakeUp();
        Assert.Equal(Math.Sqrt(800), second.Get<ElectricPotential>("V_rms").Volts, 9);
    }

    [Fact]
    public void Where_nobody_has_written_nothing_is_read_and_what_a_batch_gathers_stays()
    {
        var record = _folder.Open();
        record.Target("P", 100.W);
        using (record.Batch())
        {
            record.Target("P", 120.W);
            record.TakeUp();
            Assert.Equal(120, record.Get<Power>("P").Watts);
        }

        Assert.Equal(120, _folder.Open().Get<Power>("P").Watts);
    }

    [Fact]
    public void A_batch_whose_changes_would_be_lost_is_refused()
    {
        var record = _folder.Open();
        record.Target("P", 100.W);
        var other = _folder.Open();
        var batch = record.Batch();
        other.Set("P", "50 W");

        Assert.Contains("Close the batch first", Assert.Throws<RecordException>(record.TakeUp).Message, StringComparison.Ordinal);

        batch.Dispose();
        record.TakeUp();
        Assert.Equal(50, record.Get<Power>("P").Watts);
    }
}
