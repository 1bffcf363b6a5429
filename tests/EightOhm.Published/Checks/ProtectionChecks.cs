using EightOhm.Protection;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>DC-fault detection, a voice coil under dc, hold-up: printed values and integrations.</summary>
[Checks]
public class ProtectionChecks
{
    [Fact]
    public void Trips_that_are_charging_times_of_textbooks()
    {
        ElectricPotential full = 1.V, most = 0.865.V, supply = 9.V, two_thirds = 6.V;
        Duration tau = 8.ms, second = 1.s;
        Check.Check(() => DcDetector.OnePoleTrip(full, most, tau), "16 ms", Source.Secondhand("OpenStax, College Physics for AP Courses, answers at collegephysicsanswers.com", "ch. 21, problem 71"), "80 µF through 100 Ω to 0.865 of the voltage");
        Check.Check(() => DcDetector.OnePoleTrip(supply, two_thirds, second), "1.1 s", Source.Secondhand("555 timer, monostable, a page of theprimecalculator.com", "100 kΩ, 10 µF: the threshold is two thirds of the supply"));
    }

    [Fact]
    public void A_detector_that_passes_music_and_trips_on_a_rail()
    {
        var rows = Reference.Read("dc-detector.csv");
        Check.Computed(rows, r => DcDetector.OnePoleTau(Volts(r["V_p"]), Frequency.FromHertz(r["f"]), Volts(r["V_th"])), "tau_1");
        Check.Computed(rows, r => DcDetector.TwoPoleTau(Volts(r["V_p"]), Frequency.FromHertz(r["f"]), Volts(r["V_th"])), "tau_2");
        Check.Computed(rows, r => DcDetector.OnePoleTrip(Volts(r["V"]), Volts(r["V_th"]), Duration.FromSeconds(r["tau_1"])), "trip_1");
        Check.Computed(rows, r => DcDetector.TwoPoleTrip(Volts(r["V"]), Volts(r["V_th"]), Duration.FromSeconds(r["tau_2"])), "trip_2", 1e-8);
        Check.Computed(rows, r => DcDetector.TwoPoleStep(Duration.FromSeconds(r["trip_2"]), Volts(r["V"]), Volts(r["V_th"]), Duration.FromSeconds(r["tau_2"])).Right, "V_th", 1e-8);
        Check.Computed(Reference.Read("dc-detector-square.csv"), r => DcDetectorFromRest.LowestSquare(Volts(r["V"]), Volts(r["V_th"]), Duration.FromSeconds(r["tau"])), "f", 1e-8);
        foreach (var r in Reference.Read("dc-detector-from-rest.csv").Rows)
        {
            var share = DcDetectorFromRest.Peak(1.V, 1.Hz, Duration.FromSeconds(r["wt"] / (2 * Math.PI)), (int)r["poles"]).Volts;
            Assert.Equal(r["share"], share, 1e-5 * r["share"]);
        }
    }

    [Fact]
    public void Case_28_and_the_corner_that_would_trip_on_music()
    {
        ElectricPotential music = 40.V, V_th = 0.65.V, rail = 46.V, offset = 2.V;
        Frequency f = 10.Hz;
        Duration one = DcDetector.OnePoleTau(music, f, V_th), two = DcDetector.TwoPoleTau(music, f, V_th);
        Assert.Equal(0.979, one.Seconds, 0.0005);
        Assert.Equal(0.124, two.Seconds, 0.0005);
        Assert.Equal(13.9, DcDetector.OnePoleTrip(rail, V_th, one).Milliseconds, 0.05);
        Assert.Equal(385, DcDetector.OnePoleTrip(offset, V_th, one).Milliseconds, 0.5);
        Assert.Equal(22.1, DcDetector.TwoPoleTrip(rail, V_th, two).Milliseconds, 0.05);

        // "A corner at 10 Hz" is 16 ms: 28 V of the note would stand at the threshold of 0.65 V.
        Assert.True(DcDetectorFromRest.Peak(music, f, 15.9.ms, 1) > 40 * V_th);
    }

    [Fact]
    public void A_stuck_output()
    {
        ElectricPotential five = 5.V, three = 3.V;
        ElectricCurrent drain = 10.mA;
        var C = ElectricCapacitance.FromFarads(1);
        Check.Check(() => Mute.HoldUp(C, five, three, drain), "200 s", Source.Secondhand("How fast will a capacitor discharge, qastack, question 4951", "1 F from 5 V to 3 V at 10 mA"));
        ElectricPotential V = 277.V;
        ElectricResistance R = 33.kOhm, low = 5.kOhm;
        var holt = Source.Secondhand("Thread 107437, mikeholt.com", "277 V over 33 kΩ and 5 kΩ");
        Check.Check(() => LoudspeakerFault.Current(V, R), "8.4 mA", holt, "Ohm's law");
        Check.Check(() => LoudspeakerFault.Current(V, low), "55.4 mA", holt, "Ohm's law");
        ElectricResistance nominal = 8.Ohm, two = 4.Ohm;
        var coil = 72.5.percent;
        Check.TradeFact(() => LoudspeakerFault.VoiceCoil(nominal, coil), "5.8 Ω");
        Check.TradeFact(() => LoudspeakerFault.VoiceCoil(two, coil), "2.9 Ω");
        var rows = Reference.Read("dc-fault.csv");
        Check.Computed(rows, r => LoudspeakerFault.Current(Volts(r["V"]), Ohms(r["R_vc"])), "I");
        Check.Computed(rows, r => LoudspeakerFault.Heat(Volts(r["V"]), Ohms(r["R_vc"]), Duration.FromSeconds(r["t"])), "E");
        Check.Computed(Reference.Read("voice-coils.csv"), r => LoudspeakerFault.VoiceCoil(Ohms(r["R_min"]), Ratio.FromDecimalFractions(r["k_vc"])), "R_vc");
        Check.Computed(Reference.Read("available-current.csv"), r => AvailableCurrent.Commanded(ElectricCurrent.FromAmperes(r["I_B"]), r["h_FE"]), "commanded");
        Check.Computed(Reference.Read("available-current.csv"), r => AvailableCurrent.Of((int)r["n"], ElectricCurrent.FromAmperes(r["I_lim"]), ElectricCurrent.FromAmperes(r["I_B"]), r["h_FE"]), "available");
        Check.Computed(rows, r => Mute.HoldUp(ElectricCapacitance.FromFarads(r["C"]), Volts(r["V"]), Volts(r["V_min"]), ElectricCurrent.FromAmperes(r["I_rail"])), "hold");
    }
}
