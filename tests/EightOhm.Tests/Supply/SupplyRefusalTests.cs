using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Tests.Supply;

public class SupplyRefusalTests
{
    private static readonly RectifierSupply Small = new(35.V, 50.Hz, 0.5.Ohm, 1.6.V, 10.mF);
    private static readonly DualRailSupply Dual = new(35.V, 50.Hz, 85.mOhm, 42.5.mOhm, 0.9.V, 30.mF);

    [Fact]
    public void Impossible_parts_are_refused_by_name()
    {
        Refused("reservoir", () => new RectifierSupply(35.V, 50.Hz, 0.5.Ohm, 1.6.V, 0.mF));
        Refused("secondary", () => new RectifierSupply(0.V, 50.Hz, 0.5.Ohm, 1.6.V, 10.mF));
        Refused("mains", () => new RectifierSupply(35.V, 0.Hz, 0.5.Ohm, 1.6.V, 10.mF));
        Refused("sourceResistance", () => new RectifierSupply(35.V, 50.Hz, 0.Ohm, 1.6.V, 10.mF));
        Refused("drop", () => new RectifierSupply(35.V, 50.Hz, 0.5.Ohm, 50.V, 10.mF));
        Refused("CapacitorEsr", () => new RectifierSupply(35.V, 50.Hz, 0.5.Ohm, 1.6.V, 10.mF) { CapacitorEsr = ElectricResistance.FromOhms(-1) });
        Refused("halfResistance", () => new DualRailSupply(35.V, 50.Hz, 0.Ohm, 0.Ohm, 0.9.V, 30.mF));
        Refused("regulation", () => new DualWinding(35.V, 0.percent, 800.VA));
        Refused("current", () => RailCurrent.Constant(ElectricCurrent.FromAmperes(-1)));
        Refused("resistance", () => RailCurrent.Resistive(0.Ohm));
        Refused("signal", () => RailCurrent.HalfWaves(1.A, 0.Hz));
        Refused("emission", () => new ExponentialDiode(1.nA, 0, 25.degC));
    }

    [Theory]
    [InlineData(50)]
    [InlineData(59.8)]
    [InlineData(60)]
    [InlineData(1000)]
    public void A_load_that_the_winding_cannot_feed_is_told_with_what_is_missing(double amperes)
    {
        var shortfall = Assert.Throws<ShortfallException>(() => Small.SteadyState(RailCurrent.Constant(amperes.A)));
        Assert.Contains("stiffer winding", shortfall.Message);
        // Into a rail of 0 V: the mean of √2·35·sin less 1.6 V while positive, over 0.5 Ω.
        double peak = 35 * Math.Sqrt(2), begins = Math.Asin(1.6 / peak), most = 2 / Math.PI * ((peak * Math.Cos(begins)) - (1.6 * ((Math.PI / 2) - begins))) / 0.5;
        if (shortfall.By is ElectricCurrent missing)
            Assert.Equal(amperes - most, missing.Amperes, 1e-9);
        else
            Assert.True(amperes < most && ((ElectricPotential)shortfall.By).Volts > 0);
    }

    [Fact]
    public void A_low_signal_that_shares_no_period_is_refused_with_one_that_does() =>
        Assert.Contains("20 Hz", Refused("signal", () => Small.SteadyState(RailCurrent.HalfWaves(1.A, 20.0001.Hz))).Message);

    [Fact]
    public void Rails_that_play_different_signals_are_refused()
    {
        Refused("negative", () => Dual.SteadyState(RailCurrent.HalfWaves(1.A, 20.Hz), RailCurrent.HalfWaves(1.A, 25.Hz)));
        Refused("negative", () => Dual.SteadyState(RailCurrent.HalfWaves(1.A, 20.Hz), RailCurrent.HalfWaves(1.A, 20.Hz, phase: 90.deg)));
    }

    [Fact]
    public void Bursts_that_cannot_be_are_refused()
    {
        Refused("length", () => Dual.Burst(0.7.A, 1, 10.A, 0.1.ms, 1.kHz));
        Refused("channels", () => Dual.Burst(0.7.A, 0, 10.A, 20.ms, 1.kHz));
        Assert.Contains("below zero", Assert.Throws<ShortfallException>(() => Dual.Burst(0.7.A, 1, 1000.A, 200.ms, 1.kHz)).Message);
        Assert.Contains("leave nothing for the load", Assert.Throws<ShortfallException>(() => Dual.LargestBurst(0.7.A, 8.Ohm, 20.ms, 60.V, 1, 1.kHz)).Message);
        Refused("channels", () => Dual.LargestBurst(0.7.A, 8.Ohm, 20.ms, 5.V, 0, 1.kHz));
    }

    [Fact]
    public void A_search_that_does_not_settle_ends_with_its_last_state()
    {
        // No physical network fails to settle; one whose resistance is not a number does.
        var network = new RailNetwork { Rails = 1, Peak = 50, Omega = 314, Drop = 0, Own = double.NaN, Shared = 0, C = 1e-2, Esr = 0, Load1 = new(1, 0, 0, 1) };
        Assert.Contains("V", Assert.Throws<InvalidOperationException>(() => PeriodicState.Find(network, network.Half, out _)).Message);
    }

    private static RefusedValueException Refused(string name, Func<object> make)
    {
        var refusal = Assert.Throws<RefusedValueException>(() => { make(); });
        Assert.Equal(name, refusal.ParamName);
        return refusal;
    }
}
