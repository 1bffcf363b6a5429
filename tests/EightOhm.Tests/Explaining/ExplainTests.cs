using EightOhm.Explaining;
using EightOhm.Feedback;
using EightOhm.Noise;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Thermal;
using UnitsNet;
using static EightOhm.Explaining.Workings;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Tests.Explaining;

public class ExplainTests
{
    private readonly Power P = 100.W;
    private readonly ElectricResistance R_L = 8.Ohm;

    [Fact]
    public void Variables_keep_their_names_and_the_numbers_have_their_units() =>
        Shows("√(P · R_L) = √(100 W · 8 Ω) = 28.28 V", Explain(() => Sqrt(P * R_L)));

    [Fact]
    public void Pi_stays_pi_and_a_greek_name_is_its_letter()
    {
        var theta_C = 1.uF;
        Shows("1/(2 · π · R_L · θ_C) = 1/(2 · π · 8 Ω · 1 µF) = 19.89 kHz", Explain(() => 1 / (2 * pi * R_L * theta_C)));
    }

    [Fact]
    public void A_literal_goes_through_its_getter() =>
        Shows("√(100 W · 8 Ω) = 28.28 V", Explain(() => Sqrt(Literals.get_W(100) * Literals.get_Ohm(8))));

    [Fact]
    public void A_thing_times_itself_is_its_square()
    {
        var V = 20.V;
        Shows("V^2/R_L = (20 V)^2/8 Ω = 50 W", Explain(() => V * V / R_L));
    }

    [Fact]
    public void A_temperature_in_a_product_stands_in_kelvin_and_in_a_sum_in_degrees()
    {
        var T = 25.degC;
        var R = 1.kOhm;
        var dT = 10.K;
        Shows("√(4 · k · T · R) = √(4 · 1.381×10⁻²³ J/K · 298.15 K · 1 kΩ) = 4.058 nV/√Hz", Explain(() => Sqrt(4 * k * T * R)));
        Shows("T + dT = 25 °C + 10 K = 35 °C", Explain(() => T + dT));
    }

    [Fact]
    public void A_nested_formula_opens_one_level_down_with_its_own_source()
    {
        var R_s = 1.kOhm;
        var T = 25.degC;
        var B = 20.kHz;
        Shows(
            """
            E_R = e_R(R, T) · √B = 4.058 nV/√Hz · √(20 kHz) = 573.9 nV  [1]
            where R = R_s = 1 kΩ
              e_squared = 4 · k · T · R = 4 · 1.381×10⁻²³ J/K · 298.15 K · 1 kΩ = 1.647×10⁻¹⁷ V²/Hz
              e_R = √e_squared = √(1.647×10⁻¹⁷ V²/Hz) = 4.058 nV/√Hz  [1]
            [1] S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7
            """,
            Explain(() => ThermalNoise.Voltage(R_s, T, B)));
    }

    [Fact]
    public void A_sum_over_a_list_is_written_out()
    {
        var T_a = 25.degC;
        ThermalResistance[] parts = [0.5.K_per_W, 0.2.K_per_W, 1.5.K_per_W];
        Shows(
            """
            θ_JA = Σ[θ in parts] θ = 0.5 K/W + 0.2 K/W + 1.5 K/W = 2.2 K/W
            rise = P · θ_JA = 100 W · 2.2 K/W = 220 K
            T_J = T_a + rise = 25 °C + 220 K = 245 °C  [1]
            [1] Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14
            """,
            Explain(() => HeatPath.Junction(T_a, P, parts)));
    }

    [Fact]
    public void Of_cases_only_the_one_that_holds_is_worked_out()
    {
        var V = 40.V;
        var Z = 8.Ohm;
        var phi = 60.deg;
        Shows(
            """
            P_D = (4/π − cos(φ))/2 · V^2/Z = (4/π − cos(60°))/2 · (40 V)^2/8 Ω = 77.32 W  [1]
            case: if cos(φ) < 2/π; here cos(60°) < 2/π; other cases do not apply
            [1] resistive: Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14; with phase: derived, 2·V·V_p/(π·Z) − V_p²·cos φ/(2·Z) maximised over V_p ≤ V
            """,
            Explain(() => ClassB.Worst(V, Z, phi)));
    }

    [Fact]
    public void A_member_of_an_object_shows_the_objects_own_symbols()
    {
        var rating = new OutputRating(100.W, 8.Ohm);
        var V_in = 1.2.V;
        Shows(
            """
            V_rms = √(P · R_L) = √(100 W · 8 Ω) = 28.28 V  [1]
            where rating: output rating with P = 100 W, R_L = 8 Ω
            [1] Joule's law for rms values; Boylestad & Nashelsky, Electronic Devices and Circuit Theory, 11th ed., ch. 12
            """,
            Explain(() => rating.RmsVoltage));
        Shows(
            """
            A = V_rms/sensitivity = 28.28 V/1.2 V = 23.57 (27.45 dB)  [1]
            where sensitivity = V_in = 1.2 V; rating: output rating with P = 100 W, R_L = 8 Ω
              V_rms = √(P · R_L) = √(100 W · 8 Ω) = 28.28 V  [2]
            [1] National Semiconductor, LM3876 datasheet, application section: gain from sensitivity
            [2] Joule's law for rms values; Boylestad & Nashelsky, Electronic Devices and Circuit Theory, 11th ed., ch. 12
            """,
            Explain(() => rating.GainFrom(V_in)));
    }

    [Fact]
    public void A_solver_shows_its_balance_both_sides_what_is_left_and_its_steps()
    {
        var V_drive = 0.7.V;
        var R_E = 0.22.Ohm;
        var I_s = 1e-12.A;
        var V_T = 25.mV;
        var shown = Explain(() => EmitterBias.Current(V_drive, R_E, I_s, V_T));
        var lines = shown.ToString().Split('\n');
        Assert.Equal("V = V_T · ln(I/I_s) + I · R", lines[0]);
        var I = EmitterBias.Current(V_drive, R_E, I_s, V_T);
        Assert.Equal($"700 mV = 25 mV · ln({QuantityFormat.Short(I)}/1 pA) + {QuantityFormat.Short(I)} · 220 mΩ", lines[1]);
        Assert.Equal($"I = {QuantityFormat.Short(I)}  [1]", lines[2]);
        Assert.Matches(@"^solved: left 700 mV, right 700 mV, left over \S+( [pfnµm]?V)?, \d+ iterations$", lines[3]);
        Assert.Equal("where V = V_drive = 700 mV; R = R_E = 220 mΩ", lines[4]);
        Assert.StartsWith("[1] Sedra & Smith", lines[5], StringComparison.Ordinal);
        Assert.Equal(6, lines.Length);
        Assert.Equal(0.7, (0.025 * Math.Log(I.Amperes / 1e-12)) + (I.Amperes * 0.22), 12);
    }

    [Fact]
    public void An_input_that_the_formula_refuses_is_refused_when_it_is_explained()
    {
        var T = 25.degC;
        var R = (-1).kOhm;
        Assert.Equal("R must be 0 Ω or more (was −1 kΩ).", Assert.Throws<RefusedValueException>(() => Explain(() => ThermalNoise.VoltageDensity(R, T))).Message);
        var heat = (-5).W;
        ThermalResistance[] parts = [1.K_per_W];
        Assert.Throws<RefusedValueException>(() => Explain(() => HeatPath.Junction(T, heat, parts)));
        Assert.Throws<RefusedValueException>(() => FormulaSteps.Of(typeof(ThermalNoise).GetMethod(nameof(ThermalNoise.VoltageDensity))!)!.Compute(R, T));
    }

    [Fact]
    public void An_item_of_a_list_has_its_index_below_it()
    {
        ThermalResistance[] theta = [0.5.K_per_W, 0.2.K_per_W];
        var list = new List<ThermalResistance>(theta);
        Shows("P · θ_1 = 100 W · 0.2 K/W = 20 K", Explain(() => P * theta[1]));
        Shows("P · list_0 = 100 W · 0.5 K/W = 50 K", Explain(() => P * list[0]));
    }

    [Fact]
    public void Functions_and_parallel_resistances_read_as_on_paper()
    {
        var R_1 = 1.kOhm;
        var R_2 = 3.kOhm;
        var x = 2.0;
        Shows("R_1 ∥ R_2 = 1 kΩ ∥ 3 kΩ = 750 Ω", Explain(() => Parallel(R_1, R_2)));
        Shows("ln(x) + log₁₀(x) = ln(2) + log₁₀(2) = 0.9942", Explain(() => Ln(x) + Log10(x)));
        Shows("−x + (−x) = −2 + (−2) = −4", Explain(() => -x + -x));
        Shows("x^3 = 2^3 = 8", Explain(() => Math.Pow(x, 3)));
    }

    [Fact]
    public void A_slew_rate_reads_in_volts_a_microsecond()
    {
        var f = 20.kHz;
        var V_p = 40.V;
        Shows(
            """
            SR_need = 2 · π · f · V_p = 2 · π · 20 kHz · 40 V = 5.027 V/µs  [1]
            [1] S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 6
            """,
            Explain(() => SlewRate.Needed(f, V_p)));
    }

    [Fact]
    public void A_lambda_over_named_values_shows_the_same()
    {
        System.Linq.Expressions.Expression<Func<Power, ElectricResistance, ElectricPotential>> rule = (P, R_L) => Sqrt(P * R_L);
        Shows("√(P · R_L) = √(50 W · 4 Ω) = 14.14 V", Explain(rule, 50.W, 4.Ohm));
    }

    private static void Shows(string text, Explanation explanation) =>
        Assert.Equal(text.ReplaceLineEndings("\n"), explanation.ToString());
}
