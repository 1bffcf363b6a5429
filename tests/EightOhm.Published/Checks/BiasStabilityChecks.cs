using EightOhm.Devices;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using static EightOhm.Published.Checks.Columns;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>How a bias moves with leakage, V_BE and gain, and how leakage grows.</summary>
[Checks]
public class BiasStabilityChecks
{
    [Fact]
    public void Stability_of_a_textbooks_biases()
    {
        ElectricResistance large = 240.kOhm, none = 0.Ohm, small = 1.kOhm;
        var warmer = -0.17.V;
        Check.Check(() => BiasStability.ForBaseEmitterVoltage(100, large, none), "-0.417 mS", Boylestad("Ex 4.36 a, p. 223"));
        Check.Check(() => BiasStability.ForBaseEmitterVoltage(100, large, none) * warmer, "70.8 uA", Boylestad("Ex 4.36 a, p. 223: 70.9 from the rounded slope"));
        Check.Disagrees(() => BiasStability.ForBaseEmitterVoltage(100, large, small), "-0.294 mS", "-0.293 mS", Boylestad("Ex 4.36 b, p. 223"), "The book takes β for β + 1 in the emitter's current: 240 kΩ + 100·1 kΩ where it is 101·1 kΩ.");
    }

    [Fact]
    public void Stability_by_solving_the_loop()
    {
        var rows = Reference.Read("bias-stability.csv");
        Check.Computed(rows, r => BiasStability.ForLeakage(r["h_FE"], Ohms(r["R_B"]), Ohms(r["R_E"])), "S");
        Check.Computed(rows, r => BiasStability.ForBaseEmitterVoltage(r["h_FE"], Ohms(r["R_B"]), Ohms(r["R_E"])), "S_V");
        Check.Computed(rows, r => BiasStability.CurrentForGain(r["h_FE"], Amperes(r["I_C"]), r["h_2"], Ohms(r["R_B"]), Ohms(r["R_E"])), "I_C2");
    }

    [Fact]
    public void Leakage_doubles()
    {
        var rows = Reference.Read("leakage.csv");
        Check.Computed(rows, r => Leakage.At(Amperes(r["I_0"]), Celsius(r["T_0"]), TemperatureDelta.FromKelvins(r["dT_2"]), Celsius(r["T"])), "I");
        // Two values of one leakage tell the rise that doubles it; what it was at 0 K of difference does not matter.
        Check.Computed(Reference.Read("leakage-two.csv"), r => Leakage.Doubling(Amperes(r["I_1"]), Celsius(r["T_1"]), Amperes(r["I_2"]), Celsius(r["T_2"])), "dT_2");
    }

    [Fact]
    public void A_junction_over_current_and_temperature()
    {
        var rows = Reference.Read("base-emitter.csv");
        Check.Computed(rows, r => Junction.Voltage(Volts(r["V_0"]), Amperes(r["I_0"]), Celsius(r["T_0"]), new VoltageDrift(r["tc"]), Amperes(r["I"]), Celsius(r["T"])), "V_BE");
        Check.Computed(rows, r => Junction.Voltage(Amperes(r["I"]), Volts(r["V_T"]), Amperes(r["I_s"])), "V_BE");
        Check.Computed(rows, r => Junction.SaturationCurrent(Volts(r["V_BE"]), Amperes(r["I"]), Celsius(r["T"])), "I_s");
        Check.Computed(rows, r => Junction.Drift(Amperes(r["I"]), new VoltageDrift(r["tc"]), Amperes(r["I_0"])), "fall");
    }

    private static Temperature Celsius(double t) => Temperature.FromDegreesCelsius(t);
}
