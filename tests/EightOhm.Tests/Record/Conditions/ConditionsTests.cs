using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Tests.Record;

public class ConditionsTests
{
    private readonly record struct RatedLoad(ElectricResistance Z, Angle Phi);

    private sealed class Silent;

    private static readonly Conditions Use = new Conditions().Cases("Z_L", 8.Ohm, 4.Ohm).Range("phi", 0.deg, 45.deg).Range("x_mains", (-10).percent, 10.percent, "mains")
        .Range("T_a", 10.degC, 35.degC).Cases("duty", Duty.MusicEighthSine, Duty.SineOfMaximumDissipation).Spread("R_E", 5.percent);

    [Fact]
    public void The_worst_reads_as_a_designer_would_say_it()
    {
        var worst = Use.Highest((ElectricResistance Z_L, Angle phi, Ratio x_mains, Duty duty) =>
            Temperature.FromDegreesCelsius(20 + (200 / Z_L.Ohms) + (0.2 * phi.Degrees) + (50 * x_mains.DecimalFractions) + (duty == Duty.MusicEighthSine ? 0 : 30)));
        Assert.Equal("114 °C at 4 Ω ∠45°, mains +10 %, sine of maximum dissipation", worst.ToString());
        Assert.Equal("8 Ω or 4 Ω, ∠0° to ∠45°, mains −10 % to +10 %, sine at 1/8 power or sine of maximum dissipation", worst.Over);
        Assert.Equal(["4 → 8 Ω: 89 °C", "∠45° → ∠0°: 105 °C", "mains +10 → −10 %: 104 °C", "sine of maximum dissipation → sine at 1/8 power: 84 °C"], worst.Relief.Select(r => r.ToString()));
        Assert.Equal($"every combination, {worst.Evaluations} evaluations", worst.How);
    }

    [Fact]
    public void A_value_that_would_not_tell_what_it_is_has_its_name_before_it()
    {
        var worst = Use.Highest((Temperature T_a, double R_E, Ratio x_mains) => T_a.DegreesCelsius * R_E * (1 - Math.Abs(x_mains.DecimalFractions)));
        Assert.Equal("mains nominal", worst.At.Split(", ")[2]);
        Assert.Equal("T_a 35 °C, R_E +5 %, mains nominal", worst.At);
        var two = new Conditions().Cases("R_L", 8.Ohm).Cases("R_S", 1.kOhm).Cases("bridged", false, true).Cases("n", 3).Cases("name", "long line");
        Assert.Equal("R_L 8 Ω, R_S 1 kΩ, bridged no or yes, n 3, long line", two.ToString());
        Assert.Equal("no conditions", new Conditions().ToString());
        Assert.Equal("load 8 Ω or 4 Ω", new Conditions().Cases("Z", [8.Ohm, 4.Ohm], "load").ToString());
        Assert.Equal("phase 0° to 45°", new Conditions().Range("phi", 0.deg, 45.deg, "phase").ToString());
    }

    [Fact]
    public void A_record_is_told_by_its_parts_and_taken_as_its_base()
    {
        var loads = new Conditions().Cases("load", new RatedLoad(8.Ohm, 0.deg), new RatedLoad(4.Ohm, 45.deg));
        var worst = loads.Highest((RatedLoad load) => 40.V / load.Z);
        Assert.Equal("10 A at 4 Ω ∠45°", worst.ToString());
        Assert.Equal("no duty at all", ConditionWords.Value("no duty at all"));
        Assert.Equal(["rest", "sine at 1/8 power", "noise at 1/8 power", "sine of maximum dissipation", "burst from rest", "burst from music", "sustained short"], Enum.GetValues<Duty>().Select(d => ConditionWords.Value(d)));
    }

    [Fact]
    public void What_the_lambda_does_not_ask_for_costs_nothing()
    {
        var looks = 0;
        var worst = Use.Highest((ElectricResistance Z_L) =>
        {
            looks++;
            return 40.V / Z_L;
        });
        Assert.Equal((2, 2), (looks, worst.Evaluations));
        Assert.Equal("10 A at 4 Ω", worst.ToString());
    }

    [Fact]
    public void Equal_cases_and_an_empty_width_count_once()
    {
        // After a change of a target both loads may be the same: that must not end the run.
        var one = new Conditions().Cases("Z", 4.Ohm, 4.Ohm).Range("T", 25.degC, 25.degC).Spread("a", 0.percent);
        var worst = one.Highest((ElectricResistance Z, Temperature T, double a) => Z * a);
        Assert.Equal(1, worst.Evaluations);
        Assert.Equal("4 Ω at 4 Ω, T 25 °C, a nominal", worst.ToString());
    }

    [Fact]
    public void A_range_of_decades_has_its_middle_in_equal_ratios()
    {
        List<double> seen = [];
        new Conditions().Range("f", 20.Hz, 20.kHz).Highest((Frequency f) =>
        {
            seen.Add(f.Hertz);
            return f;
        });
        Assert.Equal(632.46, seen[0], 0.01);
        var peak = new Conditions().Range("f", 20.Hz, 20.kHz).Highest((Frequency f) => -Math.Abs(Math.Log(f.Hertz / 100)));
        Assert.Equal(100, ((Frequency)peak.Where[0].Value!).Hertz, 0.1);
    }

    [Fact]
    public void A_point_without_a_value_makes_the_whole_answer_untold()
    {
        // Only the corner of low mains and 4 Ω has none; the highest value lies elsewhere.
        var over = new Conditions().Cases("Z_L", 8.Ohm, 4.Ohm).Range("x_mains", (-10).percent, 10.percent, "mains");
        var short3 = over.Highest((ElectricResistance Z_L, Ratio x_mains) => x_mains.Percent < -9 && Z_L < 5.Ohm
            ? throw new ShortfallException("The rail", 3.V, "it sags", "Take a larger transformer.")
            : Z_L * (1 + x_mains.DecimalFractions));
        Assert.Null(short3.Value);
        Assert.Equal("cannot tell at 4 Ω, mains −10 %: The rail is short by 3 V: it sags. Take a larger transformer.", short3.ToString());
        Assert.Equal("4 Ω, mains −10 %", short3.At);
        Assert.Empty(short3.Relief);
        var refused = over.Lowest((ElectricResistance Z_L) => Guard.AtLeast(Z_L, 6.Ohm));
        Assert.StartsWith("at 4 Ω: Z_L must be 6 Ω or more (was 4 Ω).", refused.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Neither_infinity_nor_the_root_of_less_than_nothing_is_shown()
    {
        var over = new Conditions().Range("x", 0.0, 1.0);
        foreach (var worst in new WorstCase[] { over.Highest((double x) => 1 / x), over.Lowest((double x) => Math.Sqrt(x - 0.5)), over.Highest((double x) => ElectricPotential.FromVolts(1 / x)), over.Highest((double x) => Power.FromWatts(1 / x)) })
        {
            Assert.Null(worst.Value);
            Assert.StartsWith("at x 0: ", worst.Reason, StringComparison.Ordinal);
            Assert.DoesNotContain("NaN", worst.Reason, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_fault_in_the_lambda_itself_is_not_taken_for_a_missing_value() =>
        Assert.Throws<NullReferenceException>(() => new Conditions().Cases("n", 1).Highest((int n) => ((string?)null)!.Length * n));

    [Fact]
    public void What_cannot_be_a_condition_is_refused_in_words()
    {
        Assert.Equal("x must run from the low end to the high one (was 10 % to −10 %). Exchange the two.", Refused(() => new Conditions().Range("x", 10.percent, (-10).percent)));
        Assert.Equal("The ends of x must be finite numbers.", Refused(() => new Conditions().Range("x", 0, double.PositiveInfinity)));
        Assert.Equal("The spread of R must be 0 % or more and less than 100 % (was −5 %). Write 5.percent for ±5 %.", Refused(() => new Conditions().Spread("R", (-5).percent)));
        Assert.Contains("Name single values with Cases(\"n\", …)", Told(() => new Conditions().Range("n", 1, 3)), StringComparison.Ordinal);
        Assert.Contains("n has no cases", Told(() => new Conditions().Cases<int>("n")), StringComparison.Ordinal);
        Assert.Contains("Silent has no ToString of its own", Told(() => new Conditions().Cases("s", new Silent())), StringComparison.Ordinal);
        Assert.Equal("There is a condition phi already (∠0° to ∠45°). Give the other one a name of its own.", Told(() => Use.Spread("phi", 1.percent)));
        Assert.Contains("\"4R\" cannot be the name of a condition", Told(() => new Conditions().Range("4R", 0.0, 1.0)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_parameter_must_be_a_condition_of_its_type()
    {
        Assert.Equal("The lambda asks for Z_1, which is no condition: there are the conditions Z_L, phi, x_mains, T_a, duty, R_E. Add it with Range, Cases or Spread, or name the parameter after one of them.", Told(() => Use.Highest((ElectricResistance Z_1) => Z_1)));
        Assert.Equal("Z_L is ElectricResistance, but the lambda takes Double. Write (ElectricResistance Z_L, …) => ….", Told(() => Use.Highest((double Z_L) => Z_L)));
        Assert.Equal("R_E is a spread, a factor about 1, but the lambda takes ElectricResistance. Take a double or a Ratio.", Told(() => Use.Highest((ElectricResistance R_E) => R_E)));
        Assert.Equal(105, Use.Highest((Ratio R_E) => R_E).Value!.Value.Percent, 1e-9);
        Assert.Contains("must give a quantity or a number", Told(() => Use.Highest((double R_E) => R_E > 1)), StringComparison.Ordinal);
    }

    private static string Refused(Action act) => Assert.ThrowsAny<ArgumentOutOfRangeException>(act).Message;

    private static string Told(Action act) => Assert.Throws<RecordException>(act).Message;
}
