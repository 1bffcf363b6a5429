using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Tests.Record;

/// <summary>A rule that comes to no end keeps no record from opening.</summary>
public sealed class PatienceTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void What_does_not_end_is_ended_and_the_next_rule_has_its_time_again()
    {
        using var patience = new Patience(TimeSpan.FromMilliseconds(20));
        for (var i = 0; i < 2; i++)
        {
            var refused = Assert.Throws<InvalidOperationException>(() => patience.Run(NoEnd));
            Assert.Equal("it is not worked out after 0.02 s; one of its inputs is far from anything that is built.", refused.Message);
        }

        using var calm = new Patience(TimeSpan.FromMinutes(1));
        Assert.Equal(7, calm.Run(() => 7));

        static int NoEnd()
        {
            while (true)
                Work.Checkpoint();
        }
    }

    [Fact]
    public void Whoever_stops_the_work_around_it_stops_the_rule()
    {
        using var stop = new CancellationTokenSource();
        using var work = Work.Begin(stop.Token);
        using var patience = new Patience(TimeSpan.FromMinutes(1));
        Assert.Throws<OperationCanceledException>(() => patience.Run(() =>
        {
            stop.Cancel();
            Work.Checkpoint();
            return 0;
        }));
    }

    // The panels of the quadrature began with a width of zero, and tripled it without end.
    [Fact]
    public void A_thermal_voltage_of_next_to_nothing_is_refused_in_words()
    {
        var record = _folder.Open();
        record.Target("I_p", 1e-12.A);
        record.Target("I_Q", 353.94.A);
        record.Target("R", 193425.5.Ohm);
        record.Target("V_T", ElectricPotential.FromVolts(double.Epsilon));
        var refused = Assert.Throws<RecordException>(() => record.Derive("I_sq", (ElectricCurrent I_p, ElectricCurrent I_Q, ElectricResistance R, ElectricPotential V_T) => ClassAB.MeanOfSquares(I_p, I_Q, R, V_T)));
        Assert.StartsWith("I_sq has no answer: V_T must be from 1×10⁻¹⁵⁰ V", refused.Message, StringComparison.Ordinal);
        Assert.Equal(EntryState.NoAnswer, _folder.Open().EntryOf("I_sq").State);
    }
}
