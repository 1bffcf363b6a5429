using EightOhm.Protection;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Protection;

public class DcProtectionTests
{
    private static readonly DcProtection Tern = new(650.mV, 2.s, 1);

    [Fact]
    public void A_warm_junction_trips_on_music_and_a_cold_one_is_slow()
    {
        Assert.Equal(0.65 - 0.044, Tern.Threshold(47.degC).Volts, 1e-12);
        Assert.Equal(0.65 / DcDetectorFromRest.Peak(40.V, 10.Hz, 2.s, 1).Volts, Tern.NoteMargin(40.V, 10.Hz), 1e-12);
        Assert.Equal(1.034, Tern.NoteMargin(40.V, 10.Hz), 0.001);
        // The margin at rated level and room temperature is gone at the clip level, or with a warm junction.
        Assert.Equal(0.976, Tern.NoteMargin(42.37.V, 10.Hz), 0.001);
        Assert.True(Tern.NoteMargin(40.V, 10.Hz, 40.degC) < 1);
        Assert.True(Tern.Trip(50.V, 0.degC) > Tern.Trip(50.V));
        Assert.Equal(DcDetector.OnePoleTrip(50.V, 0.65.V, 2.s), Tern.Trip(50.V));
        Assert.Equal(DcDetector.TwoPoleTrip(50.V, 0.65.V, 2.s), new DcProtection(650.mV, 2.s, 2).Trip(50.V));
        // A comparator on a reference does not drift.
        Assert.Equal(0.65, (Tern with { Drift = 0.mV_per_K }).Threshold(90.degC).Volts, 1e-12);
    }

    [Fact]
    public void Near_the_threshold_the_beginning_of_a_note_asks_hardly_more_than_the_note()
    {
        // At 9 V of 10 V, ωτ = 0.484: what is left of the beginning after half a period is e^(−6.5).
        var lasting = DcDetector.OnePoleTau(10.V, 10.Hz, 9.V);
        Assert.InRange(DcDetectorFromRest.LeastTau(10.V, 10.Hz, 9.V, 1) / lasting, 1, 1.1);
    }

    [Fact]
    public void The_energy_is_that_of_both_boxes_in_parallel()
    {
        var coil = LoudspeakerFault.VoiceCoil(4.Ohm, 72.5.percent);
        Assert.Equal(2.9, coil.Ohms, 1e-12);
        var energy = Tern.CoilEnergy(55.1.V, coil, 10.ms);
        Assert.Equal(55.1 * 55.1 / 2.9 * (Tern.Trip(55.1.V).Seconds + 0.01), energy.Joules, 1e-9);
        Assert.Equal(19.0, RelayVerdict.Judge(55.1.V, coil, 60.V, 10.A).Current.Amperes, 0.01);
    }

    [Fact]
    public void A_verdict_says_what_is_missing_on_either_side()
    {
        var coil = 2.9.Ohm;
        var verdict = Tern.Against(42.37.V, 10.Hz, 55.1.V, coil, 10.ms, 30.ms, 25.J, 10.degC, 47.degC);
        Assert.False(verdict.Passes);
        Assert.Equal(Tern.NoteMargin(42.37.V, 10.Hz, 47.degC), verdict.NoteMargin, 1e-12);
        Assert.Equal((verdict.Note - verdict.Threshold).Volts, verdict.ShortThreshold.Volts, 1e-12);
        Assert.Equal(Tern.Trip(55.1.V, 10.degC).Seconds + 0.01 - 0.03, verdict.ShortTime.Seconds, 1e-9);
        Assert.Equal(Tern.CoilEnergy(55.1.V, coil, 10.ms, 10.degC).Joules - 25, verdict.ShortEnergy.Joules, 1e-9);
        Assert.Matches("^does not pass: the threshold is short by .* so music trips it, it is late by .* and the voice coils get .* too much$", verdict.ToString());
        var patient = Tern.WithSpread(50.percent).Against(42.37.V, 10.Hz, 55.1.V, coil, 10.ms, 1.s, 1000.J, 10.degC, 47.degC);
        Assert.True(patient.Passes, patient.ToString());
        Assert.Equal((0.0, 0.0, 0.0), (patient.ShortThreshold.Volts, patient.ShortTime.Seconds, patient.ShortEnergy.Joules));
    }

    [Fact]
    public void An_offset_below_the_threshold_is_a_shortfall_and_not_a_wait_for_ever()
    {
        var shortfall = Assert.Throws<ShortfallException>(() => Tern.Trip(0.5.V));
        Assert.Equal(0.15, ((ElectricPotential)shortfall.By).Volts, 1e-12);
        Assert.Throws<RefusedValueException>(() => Tern.Threshold(400.degC));
        Assert.Throws<RefusedValueException>(() => Tern.WithSpread((-100).percent));
        Assert.Throws<RefusedValueException>(() => Tern.Against(40.V, 10.Hz, 50.V, 2.9.Ohm, 10.ms, 1.s, 1000.J, 47.degC, 10.degC));
    }

    [Fact]
    public void A_relay_says_by_how_much_it_is_short()
    {
        var verdict = RelayVerdict.Judge(55.V, 2.9.Ohm, 50.V, 10.A);
        Assert.Equal(5, verdict.ShortVoltage.Volts, 1e-12);
        Assert.Equal((55 / 2.9) - 10, verdict.ShortCurrent.Amperes, 1e-12);
        Assert.Contains("short by 5 V and 8.966 A", verdict.ToString(), StringComparison.Ordinal);
        Assert.Contains("short by 8.966 A", RelayVerdict.Judge(55.V, 2.9.Ohm, 60.V, 10.A).ToString(), StringComparison.Ordinal);
        Assert.Contains("short by 5 V", RelayVerdict.Judge(55.V, 2.9.Ohm, 50.V, 30.A).ToString(), StringComparison.Ordinal);
        var good = RelayVerdict.Judge(55.V, 8.Ohm, 60.V, 10.A);
        Assert.Equal((true, 0.0, 0.0), (good.Breaks, good.ShortVoltage.Volts, good.ShortCurrent.Amperes));
    }

    [Fact]
    public void A_square_that_begins_must_be_higher_than_a_sine()
    {
        var lowest = DcDetectorFromRest.LowestSquare(50.V, 650.mV, 4.s);
        // The step response after half a period, by hand: 50 V·(1 − e^(−52.34 ms/4 s)).
        Assert.Equal(0.65, 50 * (1 - Math.Exp(-1 / (2 * lowest.Hertz * 4))), 1e-12);
        Assert.Equal(9.553, lowest.Hertz, 5e-4);
        // A sine of that height passes from a lower frequency on, by nearly π/2: its half-wave holds 2/π of the square's.
        var sine = new DcProtection(650.mV, 4.s, 1);
        Assert.Equal(Math.PI / 2, sine.NoteMargin(50.V, lowest), 0.01);
        Assert.True(sine.NoteMargin(50.V, lowest / 1.5) > 1);
        Assert.Equal(lowest, sine.LowestSquare(50.V));
        Assert.Contains("Of two poles", Assert.ThrowsAny<ArgumentException>(() => new DcProtection(650.mV, 4.s, 2).LowestSquare(50.V)).Message, StringComparison.Ordinal);
        Assert.ThrowsAny<ArgumentException>(() => DcDetectorFromRest.LowestSquare(0.5.V, 650.mV, 4.s));
    }
}
