using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Tests.Record;

public sealed class RecallTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Entries_come_into_variables_of_their_names()
    {
        var record = Made();
        record.Recall(out Power P, out ElectricResistance R_L, out int n_ch, out Angle phi_L);
        Assert.Equal((100.W, 8.Ohm, 2, 45.deg), (P, R_L, n_ch, phi_L));
        record.Set("P", "120 W");
        record.Recall(out P);
        Assert.Equal(120.W, P);
    }

    [Fact]
    public void Sixteen_come_at_once_each_by_its_own_name()
    {
        var record = DesignRecord.Scratch();
        for (var letter = 'a'; letter <= 'p'; letter++)
            record.Choose($"{letter}", letter - 'a');
        record.Recall(out int p, out int o, out int n, out int m, out int l, out int k, out int j, out int i, out int h, out int g, out int f, out int e, out int d, out int c, out int b, out int a);
        Assert.Equal("15 14 13 12 11 10 9 8 7 6 5 4 3 2 1 0", $"{p} {o} {n} {m} {l} {k} {j} {i} {h} {g} {f} {e} {d} {c} {b} {a}");
    }

    [Fact]
    public void A_part_comes_as_its_device()
    {
        var record = _folder.Open();
        var part = record.Part("output npn", TestCards.Demo(_folder));
        record.Recall(out Transistor output_npn);
        Assert.Equal(part, output_npn);
    }

    [Fact]
    public void What_cannot_be_read_is_said_with_what_to_write()
    {
        var record = Made();
        Assert.Equal("The record has no R_l. Did you mean R_L? It has P, R_L, n_ch, phi_L.", Refused(() => record.Recall(out ElectricResistance R_l)));
        Assert.Equal("The record has no φ_L. Did you mean phi_L? It has P, R_L, n_ch, phi_L.", Refused(() => record.Recall(out Angle φ_L)));
        Assert.Equal("P is Power, not ElectricPotential. Write record.Recall(out Power P).", Refused(() => record.Recall(out ElectricPotential P)));
        Assert.Equal("n_ch is int, not Power. Write record.Recall(out int n_ch).", Refused(() => record.Recall(out Power n_ch)));
        Assert.Equal("Recall reads an entry into a variable of its name, and \"Power _\" is none. Write record.Recall(out Power NAME), with the entry's name.", Refused(() => record.Recall(out Power _)));
        var many = new Power[1];
        Assert.Equal("Recall reads an entry into a variable of its name, and \"many[0]\" is none. Write record.Recall(out Power NAME), with the entry's name.", Refused(() => record.Recall(out many[0])));

        static string Refused(Action recall) => Assert.Throws<RecordException>(recall).Message;
    }

    [Fact]
    public void An_entry_without_an_answer_says_why()
    {
        var record = Made();
        Assert.Throws<RecordException>(() => record.Derive("P_g", (Power P, int n_ch) => P / (n_ch - 2)));
        var refused = Assert.Throws<RecordException>(() => record.Recall(out Power P_g));
        Assert.StartsWith("P_g has no answer: ", refused.Message, StringComparison.Ordinal);
        Assert.True(refused.IsWithoutAnswer);
    }

    private static DesignRecord Made()
    {
        var record = DesignRecord.Scratch();
        record.Target("P", 100.W);
        record.Target("R_L", 8.Ohm);
        record.Target("n_ch", 2);
        record.Target("phi_L", 45.deg);
        return record;
    }
}
