using System.Linq.Expressions;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Tests.Quantities;

public class AlgebraTests
{
    [Fact]
    public void What_a_designer_writes_on_paper_has_the_right_type_and_the_number_worked_by_hand()
    {
        Is<ElectricPotential>(28.284271247461902, Sqrt(100.W * 8.Ohm));
        Is<ElectricCurrent>(3.5355339059327378, Sqrt(100.W / 8.Ohm));
        Is<Power>(50, 20.V * 20.V / 8.Ohm);
        Is<Power>(32, 2.A * 2.A * 8.Ohm);
        Is<Power>(20, 10.V * 2.A);
        Is<SquaredVoltageDensity>(1.60155284e-17, 4 * k * 16.85.degC * 1.kOhm);
        Is<VoltageNoiseDensity>(4.0019406e-9, Sqrt(4 * k * 16.85.degC * 1.kOhm), 1e-7);
        Is<SquaredCurrentDensity>(1.60155284e-23, 4 * k * 16.85.degC / 1.kOhm);
        Is<SquaredCurrentDensity>(3.204353268e-22, 2 * q * 1.mA);
        Is<ElectricPotential>(4.2426406871192851e-7, 3.nV_rtHz * Sqrt(20.kHz));
        Is<Frequency>(159.15494309189535, 1 / (2 * pi * 1.kOhm * 1.uF));
        Is<Frequency>(159154.94309189535, 1.mOhm / 1.nH / (2 * pi));
        Is<ElectricPotentialChangeRate>(4e7, 4.mA / 100.pF);
        Is<ElectricPotentialChangeRate>(5026548.2457436692, 2 * pi * 20.kHz * 40.V);
        Is<TemperatureDelta>(75, 50.W * 1.5.K_per_W);
        Is<ThermalResistance>(1.5, 75.K / 50.W);
        Is<Power>(50, 75.K / 1.5.K_per_W);
        Is<Temperature>(100, 25.degC + (50.W * 1.5.K_per_W), 1e-12);
        Is<ElectricPotential>(0.025852, k * (300.0 - 273.15).degC / q, 1e-5);
        Is<ElectricPotential>(24, 1.2.V * 20.ratio);
        Is<ElectricPotential>(1.2, 24.V / 20.ratio);
        Is<ElectricResistance>(750, Parallel(1.kOhm, 3.kOhm));
        Is<Duration>(1.4142135623730951e-6, Sqrt(1.uH * 2.uF));
        Is<ElectricResistance>(258.19888974716110, Sqrt(40.uH / 600.pF));
        Is<Frequency>(1027340.7, 1 / (2 * pi * Sqrt(40.uH * 600.pF)), 1e-7);
        Is<ElectricResistance>(0.12566370614359174, 2 * pi * 20.kHz * 1.uH);
        Is<ElectricConductance>(0.0062831853071795866, 2 * pi * 10.kHz * 100.nF);
        Is<Frequency>(6366197.7236758135, 4.mS / 100.pF / (2 * pi));
        Is<ElectricCapacitance>(1e-10, 4.mA / 40.V_per_us);
        Is<ElectricCurrent>(4e-3, 40.V_per_us * 100.pF);
        Is<SquaredVoltageDensity>(2.136235512e-20, 2 * q * (2.mA / 30) * 31.622776601683793.Ohm * 31.622776601683793.Ohm, 1e-12);
        Is<ElectricPotential>(-0.0203, -2.1.mV_per_K * 9.666666666666666.K, 1e-12);
        Is<Energy>(36.015, 0.5 * (30.mF * 49.V) * 49.V, 1e-12);
        Is<Energy>(8.1, 3.A * 3.A * 900.ms * 1.Ohm, 1e-12);
        Is<Duration>(500, 0.4.K_per_W * 1250.J_per_K);
        Is<Power>(121, 100.W * (1 + 10.percent) * (1 + 10.percent), 1e-12);
        Is<double>(0.5, Cos(60.deg), 1e-15);
        Is<ThermalResistance>(2.2, Sum([0.5.K_per_W, 0.2.K_per_W, 1.5.K_per_W], r => r));
    }

    [Fact]
    public void The_same_holds_inside_an_expression_tree()
    {
        Power P = 100.W;
        ElectricResistance R = 8.Ohm;
        Temperature T = 16.85.degC;
        VoltageNoiseDensity e_n = 3.nV_rtHz;
        Frequency B = 20.kHz;
        ElectricCapacitance C = 1.uF;
        Is<ElectricPotential>(28.284271247461902, Tree(() => Sqrt(P * R)));
        Is<SquaredVoltageDensity>(1.281242272e-19, Tree(() => 4 * k * T * R));
        Is<ElectricPotential>(4.2426406871192851e-7, Tree(() => e_n * Sqrt(B)));
        Is<Frequency>(19894.367886486918, Tree(() => 1 / (2 * pi * R * C)));
    }

    [Fact]
    public void Roots_of_negatives_are_refused_with_the_value_and_its_unit()
    {
        var refused = Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Sqrt(new SquaredVoltage(-4)));
        Assert.Contains("0 V² or more (was −4 V²)", refused.Message, StringComparison.Ordinal);
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Sqrt(-1.0));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Ln(0));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Log10(-1));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Parallel(0.Ohm, 1.Ohm));
    }

    private static T Tree<T>(Expression<Func<T>> tree) => tree.Compile()();

    private static void Is<T>(double expected, object value, double tolerance = 1e-14)
    {
        Assert.IsType<T>(value);
        Assert.InRange(QuantityKinds.Of(typeof(T)).ToSi(value) / expected, 1 - tolerance, 1 + tolerance);
    }
}
