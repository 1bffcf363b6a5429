using EightOhm.Devices;
using EightOhm.Noise;
using EightOhm.OutputStages;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.Ratings;
using UnitsNet;
using Xunit.Sdk;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published;

/// <summary>The truth machine itself: what it claims for a printed value, what it covers, what it refuses.</summary>
public class MachineTests
{
    private static readonly Source Somewhere = Source.Companion("A book", "p. 1");
    private readonly OutputRating _rating = new(100.W, 8.Ohm);
    private readonly ElectricPotential _constant = 1.V;

    [Theory]
    [InlineData("1.81 uV", 1.805e-6, 1.815e-6)]
    [InlineData("0.283 V", 0.2825, 0.2835)]
    [InlineData("100 V", 99.5, 100.5)]
    [InlineData("28.0 V", 27.95, 28.05)]
    [InlineData("-12.3 mV", -12.35e-3, -12.25e-3)]
    [InlineData("−12.3 mV", -12.35e-3, -12.25e-3)]
    [InlineData("4.00e-6 V", 3.995e-6, 4.005e-6)]
    public void A_printed_voltage_claims_half_a_unit_of_its_last_digit(string text, double low, double high)
    {
        var printed = Printed.Of(text, typeof(ElectricPotential));
        Assert.Equal(low, printed.Low, Math.Abs(low) * 1e-12);
        Assert.Equal(high, printed.High, Math.Abs(high) * 1e-12);
        Assert.True(printed.Covers(low) && printed.Covers(high));
        Assert.False(printed.Covers(low - (1e-9 * Math.Abs(low))) || printed.Covers(high + (1e-9 * Math.Abs(high))));
    }

    [Fact]
    public void Other_kinds_keep_their_own_meaning()
    {
        Assert.Equal((99.5e3, 100.5e3), Ends("100 kHz", typeof(Frequency)));
        Assert.Equal((124.5, 125.5), Ends("125 degC", typeof(Temperature)));
        Assert.Equal((315.5, 316.5), Ends("316", typeof(Gain)));
        Assert.Equal((1.35, 1.45), Ends("1.4 degC/W", typeof(ThermalResistance)));
        var decibels = Printed.Of("26.0 dB", typeof(Gain));
        Assert.True(decibels.Covers(Math.Pow(10, 26.04 / 20)) && !decibels.Covers(Math.Pow(10, 26.06 / 20)));
    }

    [Theory]
    [InlineData("about 3 V")]
    [InlineData("3 W")]
    [InlineData("")]
    public void What_is_not_a_printed_voltage_is_refused(string text) =>
        Assert.Throws<FormatException>(() => Printed.Of(text, typeof(ElectricPotential)));

    [Fact]
    public void Functions_are_read_from_anywhere_in_the_expression()
    {
        var (R, T, B) = (1.kOhm, 25.degC, 1.kHz);
        Assert.Equal(["OutputRating.RmsVoltage", "ThermalNoise.Voltage"], Covered.By(() => ThermalNoise.Voltage(R, T, B) / _rating.RmsVoltage));
        Assert.Contains("EmitterBias.Current", Covered.All);
        Assert.Contains("EmitterBias.Loop", Covered.All);
    }

    [Fact]
    public void A_check_that_covers_no_function_fails() =>
        Assert.True(Fails(() => Check.Check(() => _constant, "1 V", Somewhere)));

    [Fact]
    public void A_value_outside_the_printed_digits_fails_and_says_both()
    {
        var thrown = Assert.ThrowsAny<XunitException>(() => Check.Check(() => _rating.RmsVoltage, "28.29 V", Somewhere));
        Assert.Contains("28.29 V", thrown.Message, StringComparison.Ordinal);
        Assert.Contains("28.284 V", thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_fails_by_one_wrong_row_and_with_a_single_row()
    {
        (double Watts, string Printed)[] rows = [(100, "28.28 V"), (50, "20.1 V")];
        Assert.True(Fails(() => Check.Table(rows, r => new OutputRating(Power.FromWatts(r.Watts), _rating.Load).RmsVoltage, r => r.Printed, Somewhere)));
        Assert.True(Fails(() => Check.Table(rows[..1], r => new OutputRating(Power.FromWatts(r.Watts), _rating.Load).RmsVoltage, r => r.Printed, Somewhere)));
    }

    [Fact]
    public void A_disagreement_must_disagree_and_must_be_derived()
    {
        Assert.True(Fails(() => Check.Disagrees(() => _rating.RmsVoltage, "28.3 V", "28.284 V", Somewhere, "It agrees.")));
        Assert.True(Fails(() => Check.Disagrees(() => _rating.RmsVoltage, "40 V", "28.1 V", Somewhere, "Derived wrongly.")));
        Check.Disagrees(() => _rating.RmsVoltage, "40 V", "28.284 V", Somewhere, "The peak.");
    }

    [Fact]
    public void A_mistake_that_the_printed_digits_cannot_tell_from_ours_fails() =>
        Assert.True(Fails(() => Check.Against(() => _rating.RmsVoltage, 28.3.V, "a hair", "28 V", Somewhere)));

    [Fact]
    public void A_computed_value_off_by_more_than_the_accuracy_fails() =>
        Assert.True(Fails(() => Check.Computed(Reference.Read("thermal-voltage.csv"), r => Junction.ThermalVoltage(Temperature.FromKelvins(r["t_C"] + 273)), "V_T")));

    [Fact]
    public void The_ledger_counts_once_for_a_function_and_a_source_never_from_memory_and_keeps_failures()
    {
        var entries = Ledger.Collect([typeof(Sample)]);
        Assert.Equal(5, entries.Count);
        Assert.Equal(1, LedgerPage.Pairs(entries.Where(e => e.Counts), e => e.Source));
        Assert.Contains(entries, e => e is { Verdict: Verdict.Failed, Source: "Sample.Wrong" });
        Assert.Contains(entries, e => e.Seen == "memory" && !e.Counts);
        Assert.Equal(["OutputRating.RmsVoltage"], LedgerPage.Checked(entries));
    }

    private static (double Low, double High) Ends(string text, Type type) => (Math.Round(Printed.Of(text, type).Low, 9), Math.Round(Printed.Of(text, type).High, 9));

    private static bool Fails(Action check) => Xunit.Record.Exception(check) is XunitException;

    // Not marked [Checks]: it goes into no ledger but the one made here. Private, so that the test runner leaves it alone.
#pragma warning disable xUnit1000 // it must not be found as a test
    private sealed class Sample
    {
        private readonly OutputRating _rating = new(100.W, 8.Ohm);

        [Fact]
        public void Right()
        {
            Check.Check(() => _rating.RmsVoltage, "28.3 V", Somewhere);
            Check.Check(() => _rating.RmsVoltage, "28.28 V", Somewhere);
            Check.Check(() => _rating.PeakVoltage, "40 V", Source.FromMemory("A book", "p. 2"));
            Check.TradeFact(() => _rating.PeakCurrent, "5 A");
        }

        [Fact]
        public void Wrong() => Check.Check(() => _rating.RmsVoltage, "40 V", Somewhere);
    }
#pragma warning restore xUnit1000
}
