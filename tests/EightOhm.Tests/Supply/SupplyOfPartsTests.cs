using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Supply;
using EightOhm.Tests.Devices;
using UnitsNet;

namespace EightOhm.Tests.Supply;

public class SupplyOfPartsTests
{
    private static readonly MainsTransformer Toroid = Cards.Of<MainsTransformer>("transformer");

    private static readonly RectifierBridge Bridge = Cards.Of<RectifierBridge>("bridge");

    private static readonly ReservoirCapacitor Reservoir = Cards.Of<ReservoirCapacitor>("reservoir");

    private static DualRailSupply At(ElectricPotential line) => DualRailSupply.Of(Toroid, Bridge, Reservoir, 3, line, 50.Hz, 10.mOhm);

    [Fact]
    public void The_cards_give_what_the_nameplate_and_the_parts_give()
    {
        var byHand = new DualRailSupply(new DualWinding(Toroid.Secondary, Toroid.Regulation, Toroid.Rating), 50.Hz, Bridge.Threshold, 3 * Reservoir.Capacitance)
        {
            DiodeResistance = Bridge.SlopeResistance + 10.mOhm,
            CapacitorEsr = Reservoir.SeriesResistance / 3,
        };
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
        var small = At(230.V).WithReservoirs(24.mF);
        Assert.Equal((24e-3, At(230.V).CapacitorEsr, At(230.V).DiodeResistance), (small.Reservoir.Farads, small.CapacitorEsr, small.DiodeResistance));
        Assert.Equal(0.8 * At(230.V).Reservoir.Farads, At(230.V).WithReservoirs(0.8).Reservoir.Farads, 1e-15);
        Assert.True(small.SteadyState(RailCurrent.Constant(3.A)).Ripple > At(230.V).SteadyState(RailCurrent.Constant(3.A)).Ripple);
        Assert.Contains("reservoir", Assert.ThrowsAny<ArgumentOutOfRangeException>(() => At(230.V).WithReservoirs(0.mF)).Message, StringComparison.OrdinalIgnoreCase);
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => DualRailSupply.Of(Toroid, Bridge, Reservoir, 0, 230.V, 50.Hz, 10.mOhm));
    }
}
