using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Tests.Supply;

public class SupplyOfPartsTests
{
    private static readonly MainsTransformer Toroid = MainsTransformer.Parse(Card("mains transformer", """
        "S": "800 VA", "V_pri": "230 V", "f": "50 Hz", "V_sec": "35 V", "regulation": "6 %", "R_pri": "1.98 Ω", "I_inrush": "120 A"
        """));

    private static readonly RectifierBridge Bridge = RectifierBridge.Parse(Card("rectifier bridge", """
        "V_RRM": "200 V", "I_FAV": "25 A", "T_C": "60 °C", "I_FSM": "300 A", "t_FSM": "10 ms", "V_F0": "0.9 V", "r_d": "10 mΩ", "V_D0": "0.6 V", "theta_JC": "1.4 K/W", "T_J": "150 °C"
        """));

    private static readonly ReservoirCapacitor Reservoir = ReservoirCapacitor.Parse(Card("reservoir capacitor", """
        "C": "10 mF", "tolerance": "20 %", "V_R": "63 V", "I_ripple": "6 A", "f_ripple": "100 Hz", "ESR": "24 mΩ", "T_life": "105 °C", "life": "2000 h", "theta": "8 K/W"
        """));

    private static DualRailSupply At(ElectricPotential line) => DualRailSupply.Of(Toroid, Bridge, Reservoir, 3, line, 50.Hz, 10.mOhm);

    [Fact]
    public void The_cards_give_what_the_nameplate_and_the_parts_give()
    {
        var byHand = new DualRailSupply(new DualWinding(35.V, 6.percent, ElectricApparentPower.FromVoltamperes(800)), 50.Hz, 0.9.V, 30.mF) { DiodeResistance = 20.mOhm, CapacitorEsr = 8.mOhm };
        Assert.Equal(byHand.SteadyState(RailCurrent.Constant(3.A)).PositiveMean.Volts, At(230.V).SteadyState(RailCurrent.Constant(3.A)).PositiveMean.Volts, 1e-9);
    }

    [Fact]
    public void Another_mains_moves_the_emf_and_leaves_the_copper()
    {
        var low = At(115.V);
        Assert.Equal(At(230.V).Half.Volts / 2, low.Half.Volts, 1e-12);
        // A nameplate of half the voltage would have a quarter of the resistance.
        Assert.Equal(At(230.V).HalfResistance.Ohms, low.HalfResistance.Ohms, 1e-12);
    }

    [Fact]
    public void Other_reservoirs_leave_the_rest()
    {
        var small = At(230.V).WithReservoir(24.mF);
        Assert.Equal((24e-3, 0.008, 0.02), (small.Reservoir.Farads, small.CapacitorEsr.Ohms, small.DiodeResistance.Ohms));
        Assert.True(small.SteadyState(RailCurrent.Constant(3.A)).Ripple > At(230.V).SteadyState(RailCurrent.Constant(3.A)).Ripple);
        Assert.Contains("reservoir", Assert.ThrowsAny<ArgumentOutOfRangeException>(() => At(230.V).WithReservoir(0.F)).Message, StringComparison.OrdinalIgnoreCase);
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => DualRailSupply.Of(Toroid, Bridge, Reservoir, 0, 230.V, 50.Hz, 10.mOhm));
    }

    private static string Card(string kind, string rest) => $$"""{ "format": "eightohm-card", "version": 1, "kind": "{{kind}}", "name": "x", "source": "invented here", "invented": true, {{rest}} }""";
}
