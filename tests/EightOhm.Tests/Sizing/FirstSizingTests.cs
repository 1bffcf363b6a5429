using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Sizing;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Tests.Sizing;

/// <summary>A first sizing always answers, its answers hang together, and what is not enough is said.</summary>
public class FirstSizingTests
{
    private static readonly Lazy<FirstSizing> Mono = new(() => FirstSizing.Of(new() { Power = 60.W, Load = 4.Ohm, Channels = 1, Line = 120.V, Mains = 60.Hz }, DeviceSet.Shipped));
    private static readonly Lazy<FirstSizing> LessAtInput = new(() => FirstSizing.Of(Mono.Value.Targets with { Sensitivity = 0.775.V }, DeviceSet.Shipped, new() { Pairs = 4 }));
    private static readonly Lazy<FirstSizing> Stereo = new(() => FirstSizing.Of(new() { Power = 25.W, Load = 8.Ohm, Line = 100.V, Mains = 50.Hz }, DeviceSet.Shipped));
    private static readonly Lazy<FirstSizing> Impossible = new(() => FirstSizing.Of(new() { Power = 5000.W, Load = 2.Ohm }, DeviceSet.Shipped));
    private static readonly Lazy<FirstSizing> Small = new(() => FirstSizing.Of(new() { Power = 15.W, Load = 4.Ohm }, DeviceSet.Shipped));
    private static readonly Lazy<FirstSizing> Middle = new(() => FirstSizing.Of(new() { Power = 80.W, Load = 6.Ohm, Line = 100.V, Mains = 60.Hz }, DeviceSet.Shipped));
    private static readonly Lazy<FirstSizing> Large = new(() => FirstSizing.Of(new() { Power = 200.W, Load = 8.Ohm, Channels = 1, Line = 120.V, Mains = 60.Hz }, DeviceSet.Shipped));

    [Fact]
    public void A_small_amplifier_finds_all_its_parts()
    {
        Assert.Empty(Mono.Value.Missing);
        Assert.Empty(Stereo.Value.Missing);
        string[] roles = ["bridge", "reservoir", "transformer", "output npn", "output pnp", "driver npn", "driver pnp", "predriver npn", "predriver pnp", "sink", "relay", "input npn", "mirror pnp"];
        Assert.All(roles, role => Assert.Contains(Mono.Value.Parts, p => p.Role == role));
    }

    [Fact]
    public void What_other_targets_imply_follows()
    {
        Assert.Equal((4, 60), (Mono.Value.Targets.MinimumLoad!.Value.Ohms, (double)Mono.Value.Targets.MinimumLoadPower!.Value.Watts));
        Assert.Equal(4, Stereo.Value.Targets.MinimumLoad!.Value.Ohms);
        // Twice the current sags the same rail: less than twice the power, and not much less.
        Assert.InRange((double)Stereo.Value.Targets.MinimumLoadPower!.Value.Watts, 1.3 * 25, 1.9 * 25);
    }

    [Fact]
    public void The_transformer_is_wound_for_the_mains_asked_and_its_rail_holds_with_small_reservoirs()
    {
        var sized = Mono.Value;
        var transformer = Part<MainsTransformer>(sized, "transformer");
        Assert.Equal((120, 60), (transformer.Primary.Volts, transformer.Mains.Hertz));
        var reservoir = Part<ReservoirCapacitor>(sized, "reservoir");
        var dual = DualRailSupply.Of(transformer, Part<RectifierBridge>(sized, "bridge"), reservoir, (int)Choice(sized, "n_res"), 120.V, 60.Hz, 10.mOhm)
            .WithReservoirs(1 - reservoir.Tolerance.DecimalFractions);
        var peak = Math.Sqrt(2 * 60 * 4.0);
        var rail = dual.LowestVoltageAtLoadPeak(1, (peak / 4).A, 20.Hz, 26.mA).Volts;
        // Above the peak by what an output stage drops, and not by much more: the least voltage was asked for.
        Assert.InRange(rail - peak, 4, 9);
        Assert.True(Part<ReservoirCapacitor>(sized, "reservoir").RatedVoltage.Volts * 0.95 >= Transformer.NoLoadRail(transformer.Secondary, transformer.Regulation, 10.percent, 0.6.V).Volts);
    }

    [Fact]
    public void The_windings_carry_both_ratings_at_high_mains()
    {
        var sized = Stereo.Value;
        var transformer = Part<MainsTransformer>(sized, "transformer");
        var dual = DualRailSupply.Of(transformer, Part<RectifierBridge>(sized, "bridge"), Part<ReservoirCapacitor>(sized, "reservoir"), (int)Choice(sized, "n_res"), 100.V, 50.Hz, 10.mOhm).AtMains(10.percent);
        var power = (double)sized.Targets.MinimumLoadPower!.Value.Watts;
        Assert.True(dual.Playing(2, Math.Sqrt(2 * power / 4).A, 1.kHz, 52.mA).HalfWindingRms <= new DualWinding(transformer).RatedCurrent);
    }

    [Fact]
    public void Gain_and_slew_rate_follow_from_power_and_sensitivity()
    {
        // √(60·4)/0.775 is 19.99, and 20.13 with the 0.72 % that the input network takes; the servo's 1.65 kΩ lie across the lower arm. Two preferred values meet it within a third of the half step of 192 a decade.
        double Ohms(string name) => ((ElectricResistance)Choice(LessAtInput.Value, name)).Ohms;
        var arm = 1 / ((1 / Ohms("R_g")) + (1 / 1650.0));
        Assert.InRange(1 + (Ohms("R_f") / arm), 20.13 * 0.996, 20.13 * 1.004);
        // √(60·4)² V² over it, and half a watt that one may bear.
        Assert.Equal((int)Math.Ceiling(60 * 4 / Ohms("R_f") / 0.5), Choice(LessAtInput.Value, "n_f"));
    }

    [Fact]
    public void The_input_s_filter_the_coil_s_heat_and_the_mute_follow_from_the_targets()
    {
        // A corner twenty times above 20 kHz with the 97 Ω before it is 4.10 nF, and at most a step of twelve a decade less.
        Assert.InRange(((ElectricCapacitance)Choice(Mono.Value, "C_in")).Nanofarads, 4.102 / 1.25, 4.102);
        // 0.8 J a watt (a choice): 48 J for 60 W, 20 J for 25 W, rounded up to two digits.
        Assert.InRange(((Energy)Choice(Mono.Value, "E_vcmax")).Joules, 48, 48 * 1.1);
        Assert.InRange(((Energy)Choice(Stereo.Value, "E_vcmax")).Joules, 20, 20 * 1.1);
        // 0.45 (a choice) of √(2·60 W·4 Ω), rounded down to two digits.
        Assert.InRange(((ElectricPotential)Choice(Mono.Value, "V_mute")).Volts, 9.859 / 1.1, 9.859);
    }

    [Fact]
    public void The_input_s_transistors_bear_a_rail_at_high_mains()
    {
        var sized = Large.Value;
        var transformer = Part<MainsTransformer>(sized, "transformer");
        var rail = Transformer.NoLoadRail(transformer.Secondary, transformer.Regulation, 10.percent, 0.6.V);
        // The one of most gain, of 80 V, bears four fifths of it.
        Assert.True(rail.Volts > 0.8 * 80, $"{rail} asks for nothing");
        Assert.True(0.8 * Part<Transistor>(sized, "input npn").MaxCollectorEmitterVoltage.Volts >= rail.Volts);
    }

    [Fact]
    public void The_loop_lies_between_what_slew_rate_asks_for_and_what_its_margin_allows()
    {
        // Six times 2π·20 kHz·√(2·60·4) V is 16.5 V/µs, with a tail a tenth low and a capacitor a twentieth high 19.3 V/µs. At the other end a quarter turn less 60° for two poles and 20 ns:
        // 30° at f·(1/(0.7·8 MHz) + 1/40 MHz + 2π·20 ns), all small angles, is some 1.6 MHz, before the loop around the second stage and the spread of the capacitor take theirs.
        foreach (var sized in new[] { Mono.Value, Stereo.Value, LessAtInput.Value })
        {
            double Ohms(string name) => ((ElectricResistance)Choice(sized, name)).Ohms;
            var slew = ((ElectricPotentialChangeRate)Choice(sized, "SR")).VoltsPerMicroseconds;
            Assert.True(slew >= 6 * 2 * Math.PI * 0.02 * Math.Sqrt(2 * (double)sized.Targets.Power.Watts * sized.Targets.Load.Ohms) * 1.05 / 0.9, $"{slew} V/µs");
            var fraction = 1 / (1 + (Ohms("R_f") * ((1 / Ohms("R_g")) + (1 / 1650.0))));
            Assert.InRange(slew * 1e6 * fraction / (2 * Math.PI * (Ohms("R_deg") + 9.1) * 6e-3), 0.6e6, 1.4e6);
        }
    }

    [Fact]
    public void A_tighter_promise_of_noise_or_margin_gives_a_slower_loop_or_is_said_to_be_beyond_it()
    {
        var targets = Mono.Value.Targets;
        var pairs = new SizingBasis { Pairs = (int)Choice(Mono.Value, "n") };
        double Capacitor(FirstSizing s) => 6e-3 / ((ElectricPotentialChangeRate)Choice(s, "SR")).VoltsPerSeconds;
        double Crossover(FirstSizing s) => 1 / (Capacitor(s) * (((ElectricResistance)Choice(s, "R_deg")).Ohms + 9.1));
        var steadier = FirstSizing.Of(targets, DeviceSet.Shipped, pairs with { PhaseMargin = 72.deg });
        Assert.True(Crossover(steadier) < 0.8 * Crossover(Mono.Value));
        Assert.Contains(steadier.Missing, m => m.StartsWith("Distortion at the highest frequency asks for a faster loop than its margin allows", StringComparison.Ordinal));
        Assert.Contains(FirstSizing.Of(targets, DeviceSet.Shipped, pairs with { SignalToNoise = 120.dB }).Missing, m => m.StartsWith("Signal to noise over the whole band", StringComparison.Ordinal));
        Assert.Contains(LessAtInput.Value.Missing, m => m.StartsWith("Signal to noise over the whole band", StringComparison.Ordinal));
    }

    [Fact]
    public void No_reason_holds_a_number()
    {
        foreach (var sized in new[] { Mono.Value, Stereo.Value, Impossible.Value })
        {
            Assert.All(sized.Choices, c => Assert.DoesNotMatch("[0-9]", c.Because));
            Assert.All(sized.Parts, p => Assert.DoesNotMatch("[0-9]", p.Because));
        }
    }

    [Fact]
    public void Impossible_targets_get_the_nearest_and_what_is_missing_is_said()
    {
        var sized = Impossible.Value;
        Assert.Contains(sized.Missing, m => m.StartsWith("No transformer of the set carries 2 channels at rated power", StringComparison.Ordinal));
        Assert.Contains(sized.Missing, m => m.StartsWith("No sink of the set", StringComparison.Ordinal));
        Assert.Contains(sized.Missing, m => m.Contains("are not enough: dissipation of the npn", StringComparison.Ordinal));
        Assert.Equal(DeviceSet.Shipped.Of<TransformerSize>().Max(s => s.Rating.Voltamperes), Part<MainsTransformer>(sized, "transformer").Rating.Voltamperes);
        Assert.Equal(DeviceSet.Shipped.Of<HeatSinkCard>().Min(s => s.ToAir.Si), Part<HeatSinkCard>(sized, "sink").ToAir.Si);
        Assert.All(sized.Choices.Where(c => c.Value is Temperature), c => Assert.True(((Temperature)c.Value).DegreesCelsius > 35, c.ToString()));
    }

    [Fact]
    public void Targets_that_do_not_fit_each_other_are_refused_with_what_would()
    {
        AmplifierTargets of = new() { Power = 100.W, Load = 8.Ohm };
        Assert.StartsWith("P_Lmin must be at most 200 W, where the peak is that of P into R_L (was 250 W)", Refused(of with { MinimumLoad = 4.Ohm, MinimumLoadPower = 250.W }), StringComparison.Ordinal);
        Assert.StartsWith("R_Lmin must be at most R_L, 8 Ω (was 16 Ω)", Refused(of with { MinimumLoad = 16.Ohm }), StringComparison.Ordinal);
        Assert.StartsWith("P_Lmin must be P, 100 W, where R_Lmin is R_L (was 90 W)", Refused(of with { MinimumLoad = 8.Ohm, MinimumLoadPower = 90.W }), StringComparison.Ordinal);
        Assert.StartsWith("f_min must be below f_max", Refused(of with { Lowest = 30.kHz }), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_gain_is_asked_for_slew_rate_alone_sets_the_loop()
    {
        // As many volts at the input as at the load. Seven times and a fifth the steepest slope, 7.2·2π·20 kHz·√(2·60·4) V, is 19.8 V/µs: two digits, up.
        var sized = FirstSizing.Of(Mono.Value.Targets with { Sensitivity = 16.V }, DeviceSet.Shipped, new() { Pairs = 2 });
        Assert.Equal(20, ((ElectricPotentialChangeRate)Choice(sized, "SR")).VoltsPerMicroseconds, 1e-9);
    }

    [Fact]
    public void The_input_transistors_are_known_at_the_current_that_they_carry()
    {
        foreach (var sized in new[] { Mono.Value, Stereo.Value, LessAtInput.Value })
        {
            foreach (var role in new[] { "input npn", "mirror pnp" })
            {
                var table = Part<Transistor>(sized, role).GainTable;
                Assert.InRange(3e-3, table[0].Current.Amperes, table[^1].Current.Amperes);
            }
        }
    }

    [Fact]
    public void A_number_of_pairs_is_said_as_one_or_as_many()
    {
        Assert.Contains(Impossible.Value.Missing, m => System.Text.RegularExpressions.Regex.IsMatch(m, "^([2-9]|[1-9][0-9]+) pairs of .* are not enough"));
        var one = FirstSizing.Of(new() { Power = 200.W, Load = 4.Ohm, Channels = 1 }, DeviceSet.Shipped, new() { Pairs = 1 });
        Assert.Contains(one.Missing, m => m.StartsWith("One pair of", StringComparison.Ordinal));
    }

    [Fact]
    public void Low_rails_hold_until_the_relay_is_open_and_what_idle_current_does_to_them_is_told()
    {
        var sized = Small.Value;
        var reservoir = Part<ReservoirCapacitor>(sized, "reservoir");
        var dual = Supply(sized, 230.V, 50.Hz);
        // Half of a sine of each channel, and the idle heat over both rails.
        var idle = 2 * ((Power)Choice(sized, "P_idlemax")) / 1.3 / (2 * dual.AtMains(10.percent).SteadyState(RailCurrent.Constant(2.A)).PositiveMean);
        var drawn = (2 * Math.Sqrt(2 * 15 / 4.0) / Math.PI).A + idle;
        var fall = dual.AtMains(-10.percent).SteadyState(RailCurrent.Constant(drawn)).Positive.Minimum - (ElectricPotential)Choice(sized, "V_mute");
        var held = (int)Choice(sized, "n_res") * reservoir.Capacitance.Farads * (1 - reservoir.Tolerance.DecimalFractions) * fall.Volts / drawn.Amperes;
        // 30 ms until somebody notices, 12 ms of the relay; ripple alone would be content with 31 ms.
        Assert.InRange(held, 42e-3, 70e-3);
        // So much idle current asks for a smaller limiter, whose peak stays what a socket bears: √2 · 253 V over it, the line's own resistance beside it.
        var limiter = ((ElectricResistance)Choice(sized, "R_soft")).Ohms;
        Assert.InRange(Math.Sqrt(2) * 253 / (limiter + 0.5), 20, 60);
        Assert.All(new[] { sized, Mono.Value }, s => Assert.DoesNotContain(s.Missing, m => m.Contains("soft start", StringComparison.Ordinal)));
        Assert.Contains(Impossible.Value.Missing, m => m.StartsWith("At idle the rails do not fill before the soft start's bypass", StringComparison.Ordinal));
    }

    [Fact]
    public void The_servo_of_a_small_amplifier_outweighs_its_offset()
    {
        double Ohms(string name) => ((ElectricResistance)Choice(Small.Value, name)).Ohms;
        // The worst offset of the input stage is some 118 mV, a quarter more 148 mV: what 12 V of the servo leave at the summing node must be that.
        Assert.InRange(12 / Ohms("R_sv") / ((1 / Ohms("R_f")) + (1 / Ohms("R_g"))), 0.148, 0.165);
        Assert.Equal(1650, ((ElectricResistance)Choice(Mono.Value, "R_sv")).Ohms);
        Assert.Equal(55, ((Temperature)Choice(Mono.Value, "T_out")).DegreesCelsius);
    }

    [Fact]
    public void A_servo_that_cannot_outweigh_the_offset_at_a_gain_near_one_is_told()
    {
        // 15 W into 4 Ω are 7.75 V: 6 V at the input leave a gain of 1.3, and of 12 V of the servo, through 1.2 kΩ into some 25 Ω, too little.
        var sized = FirstSizing.Of(new() { Power = 15.W, Load = 4.Ohm, Sensitivity = 6.V }, DeviceSet.Shipped, new() { Pairs = 2 });
        double Ohms(string name) => ((ElectricResistance)Choice(sized, name)).Ohms;
        var reach = 12 / Ohms("R_sv") / ((1 / Ohms("R_f")) + (1 / Ohms("R_g")) + (1 / Ohms("R_sv")));
        Assert.True(reach < 0.1, $"{reach}");
        Assert.Contains(sized.Missing, m => m.StartsWith("With so little gain the servo does not outweigh", StringComparison.Ordinal));
        Assert.DoesNotContain(Small.Value.Missing, m => m.Contains("servo", StringComparison.Ordinal));
    }

    [Fact]
    public void The_second_stage_bears_the_output_at_ground_on_its_small_sink()
    {
        var card = Part<Transistor>(Large.Value, "second stage");
        var rail = Supply(Large.Value, 120.V, 60.Hz).AtMains(10.percent).SteadyState(RailCurrent.Constant(1.A)).PositiveMean;
        double Junction(double sink) => 45 + (rail.Volts * 0.65 / 22 * (card.JunctionToCase.Si + sink));
        var chosen = ((ThermalResistance)Choice(Large.Value, "theta_2")).Si;
        Assert.InRange(Junction(chosen), 100, 125);
        // The next larger one would not do; for a smaller amplifier it does.
        Assert.True(Junction(25) > 125 && chosen < 25);
        Assert.Equal(25, ((ThermalResistance)Choice(Mono.Value, "theta_2")).Si);
    }

    [Fact]
    public void The_bridge_keeps_its_junction_by_the_currents_of_the_supply_that_it_feeds()
    {
        var sized = Middle.Value;
        var bridge = Part<RectifierBridge>(sized, "bridge");
        var heat = Supply(sized, 100.V, 60.Hz).AtMains(10.percent).Playing(2, Math.Sqrt(2 * (double)sized.Targets.MinimumLoadPower!.Value.Watts / sized.Targets.MinimumLoad!.Value.Ohms).A, 20.Hz, 52.mA).BridgeDissipation;
        // 25 K below its rating, on 2 K/W to the air in the case.
        Assert.True(45 + ((double)heat.Watts * (bridge.JunctionToCase.Si + 2)) <= bridge.MaxJunctionTemperature.DegreesCelsius - 25, $"{bridge.Name}: {heat}");
    }

    [Fact]
    public void What_distortion_costs_in_pairs_and_idle_heat_is_told()
    {
        Assert.Matches("^One pair of outputs would bear load and heat, at 1[0-9] W a channel at idle; 4 are for the sake of distortion .*, and idle at 4[0-9] W", Assert.Single(Stereo.Value.Remarks));
        // Where safe area and heat ask for all of them there is nothing to tell.
        Assert.Empty(Large.Value.Remarks);
        Assert.Contains(Stereo.Value.Remarks[0], Stereo.Value.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_bound_on_the_heat_at_idle_is_kept_and_distortion_said_to_be_beyond_it()
    {
        const double most = 20;
        var sized = FirstSizing.Of(Stereo.Value.Targets with { MinimumLoadPower = null }, DeviceSet.Shipped, new() { IdleHeat = most.W });
        var (n, resistor, card) = ((int)Choice(sized, "n"), (ElectricResistance)Choice(sized, "R_E"), Part<Transistor>(sized, "output npn"));
        var rail = Supply(sized, 100.V, 50.Hz).AtMains(10.percent).SteadyState(RailCurrent.Constant(1.A)).PositiveMean;
        // kT/q at 55 °C over the resistance in an emitter: where two followers in class AB have as much gain as one.
        var idle = 28.28e-3 / (resistor + card.InternalEmitterResistance).Ohms;
        Assert.InRange(2 * n * rail.Volts * idle, 0.5 * most, most);
        Assert.Equal(most, (double)((Power)Choice(sized, "P_idlemax")).Watts);
        Assert.Contains("more dissipation at idle", Assert.Single(sized.Missing, m => m.StartsWith("Distortion at the highest frequency", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_larger_emitter_resistor_than_the_bias_needs_is_taken_where_it_spares_pairs()
    {
        var sized = FirstSizing.Of(new() { Power = 40.W, Load = 4.Ohm, Channels = 1, Line = 120.V, Mains = 60.Hz }, DeviceSet.Shipped);
        Assert.Empty(sized.Missing);
        var chosen = sized.Choices.First(c => c.Name == "R_E");
        Assert.StartsWith("more than keeps the bias from running away", chosen.Because, StringComparison.Ordinal);
        // The resistor below would keep the bias as well: the thermal loop gain at any current, V·θ·tc over its resistance, is less than a half there.
        var card = Part<Transistor>(sized, "output npn");
        var rail = Part<MainsTransformer>(sized, "transformer").Secondary.Volts * Math.Sqrt(2) * 1.2;
        Assert.True(rail * (card.JunctionToCase.Si + 0.35) * 2.1e-3 / (0.1 + card.InternalEmitterResistance.Ohms) < 0.5);
        Assert.Equal(0.15, ((ElectricResistance)chosen.Value).Ohms);
    }

    [Fact]
    public void Pre_drivers_are_the_least_of_capacitance_that_bear_the_rails_and_their_heat_without_a_sink()
    {
        foreach (var sized in new[] { Mono.Value, Large.Value })
        {
            var rail = Part<MainsTransformer>(sized, "transformer");
            // No load at high mains, and both rails: what the card may bear at four fifths.
            var between = 2 * Math.Sqrt(2) * rail.Secondary.Volts * (1 + rail.Regulation.DecimalFractions) * 1.1;
            foreach (var (role, polarity) in new[] { ("predriver npn", Polarity.Npn), ("predriver pnp", Polarity.Pnp) })
            {
                var chosen = Part<Transistor>(sized, role);
                Assert.True(0.8 * chosen.MaxCollectorEmitterVoltage.Volts >= between - 3, $"{chosen.Name} at {between} V");
                // 9.5 mA from a rail, and a fifth more for the crests, over 60 K/W and the junction's own, from 45 °C.
                double Junction(Transistor t) => 45 + (1.2 * between / 2 * 9.5e-3 * (60 + t.JunctionToCase.Si));
                Assert.InRange(Junction(chosen), 45, 126);
                var others = DeviceSet.Shipped.Of<Transistor>().Where(t => t.Polarity == polarity && 0.8 * t.MaxCollectorEmitterVoltage.Volts >= between && Junction(t) <= 124);
                Assert.True(chosen.OutputCapacitance <= others.MinBy(t => t.OutputCapacitance.Farads)!.OutputCapacitance);
            }
        }
    }

    [Fact]
    public void The_second_stage_stands_at_half_as_much_again_as_tail_and_slope_ask()
    {
        // 6 mA of the tail, 80 V/µs into 20 pF, a tenth of a milliampere for the followers: 7.7 mA.
        Assert.Equal(11.6e-3, SizedLoop.SecondStageFor(6.mA, 80.V_per_us, 20.pF).Amperes, 1e-9);
        Assert.Equal(11e-3, SizedLoop.SecondStageFor(6.mA, 30.V_per_us, 20.pF).Amperes, 1e-9);
    }

    [Fact]
    public void Pairs_that_bring_next_to_nothing_are_not_taken_where_distortion_is_beyond_all_of_them()
    {
        // More of them idle within the bound on larger emitter resistors alone, and leave nearly as much as two of 0.15 Ω.
        var sized = FirstSizing.Of(new() { Power = 25.W, Load = 8.Ohm }, DeviceSet.Shipped, new() { IdleHeat = 30.W });
        Assert.Equal(2, Choice(sized, "n"));
        Assert.Equal(0.15, ((ElectricResistance)Choice(sized, "R_E")).Ohms);
        Assert.Contains("within a tenth", sized.Choices.First(c => c.Name == "n").Because, StringComparison.Ordinal);
        Assert.Contains(sized.Missing, m => m.StartsWith("Distortion at the highest frequency", StringComparison.Ordinal));
    }

    [Fact]
    public void A_bound_that_no_emitter_resistor_keeps_is_told_and_one_with_room_changes_nothing()
    {
        var sized = FirstSizing.Of(new() { Power = 150.W, Load = 8.Ohm }, DeviceSet.Shipped, new() { IdleHeat = 5.W });
        Assert.Contains(sized.Missing, m => m.Contains("a channel at idle, whatever the emitter resistor", StringComparison.Ordinal));
        // A third above what came out.
        var wide = FirstSizing.Of(Middle.Value.Targets with { MinimumLoadPower = null }, DeviceSet.Shipped, new() { IdleHeat = (Power)Choice(Middle.Value, "P_idlemax") });
        Assert.Equal(Middle.Value.Missing, wide.Missing);
        Assert.All(Middle.Value.Choices.Where(c => c.Name != "P_idlemax"), c => Assert.Equal(c.Value, Choice(wide, c.Name)));
    }

    private static DualRailSupply Supply(FirstSizing sized, ElectricPotential line, Frequency mains) => DualRailSupply.Of(
        Part<MainsTransformer>(sized, "transformer"), Part<RectifierBridge>(sized, "bridge"), Part<ReservoirCapacitor>(sized, "reservoir"), (int)Choice(sized, "n_res"), line, mains, 10.mOhm);

    private static string Refused(AmplifierTargets targets) => Assert.Throws<RefusedValueException>(() => FirstSizing.Of(targets, DeviceSet.Shipped)).Message;

    private static T Part<T>(FirstSizing sized, string role)
        where T : DeviceCard => Assert.IsType<T>(sized.Parts.First(p => p.Role == role).Card);

    private static object Choice(FirstSizing sized, string name) => sized.Choices.First(c => c.Name == name).Value;
}
