using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Protection;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using UnitsNet;

namespace EightOhm.Published.Checks;

/// <summary>The invented card's area, ellipses, pairs and limiter: cases that no source prints, computed by dense scans, each with the wrong answers it must not give.</summary>
public class SafeAreaCaseChecks
{
    private static readonly string Card = File.ReadAllText(Path.Combine(Repository.Root, "notebooks", "course", "cards", "output-npn.json"));
    private readonly SafeArea area = Area(0);

    [Fact]
    public void Ellipses_by_a_dense_scan()
    {
        foreach (var row in Reference.Read("safe-area-use.csv").Rows)
        {
            var derated = Area(row["left"]).For(row["T_C"].degC, Pulse(row["pulse"]));
            var use = SafeAreaUtilisation.Of(derated, new LoadEllipse(row["V"].V, row["V_p"].V, row["Z"].Ohm, row["phi"].deg, row["R_E"].Ohm, (int)row["n"]));
            Assert.True(Math.Abs((use.Use / row["use"]) - 1) < 1e-8, $"{row}: ours {use.Use:R}");
            Assert.True(Math.Abs((use.Voltage.Volts / row["V_CE"]) - 1) < 1e-3, $"{row}: ours {use.Voltage.Volts:R}");
            // Into a resistor the worst point is passed at many levels, and full level is the one to name.
            var level = row["phi"] == 0 ? 1 : row["level"];
            Assert.True(Math.Abs(use.Level.DecimalFractions - level) < 1e-3, $"{row}: ours {use.Level.DecimalFractions:R}");
        }
    }

    [Fact]
    public void Limiters_by_a_dense_scan()
    {
        foreach (var row in Reference.Read("limiter-verdict.csv").Rows)
        {
            var limiter = new VoltageCurrentLimiter(row["R_1"].Ohm, row["R_2"].Ohm, row["R_3"].Ohm, row["R_E"].Ohm, row["V_BE"].V);
            var load = new LoadEllipse(row["V"].V, row["V_p"].V, row["Z"].Ohm, row["phi"].deg, row["R_E"].Ohm, (int)row["n"]);
            var verdict = limiter.Against(area.For(row["T_C"].degC, Pulse(row["pulse"])), [load], 25.degC, 25.degC);
            Assert.True(Math.Abs((verdict.Area.Margin / row["area"]) - 1) < 1e-7, $"{row}: ours {verdict.Area.Margin:R}");
            Assert.True(Math.Abs((verdict.Loads[0].Margin / row["load"]) - 1) < 1e-7, $"{row}: ours {verdict.Loads[0].Margin:R}");
        }
    }

    [Fact]
    public void Three_pairs_are_inside_for_a_pulse_and_outside_for_dc()
    {
        Assert.Equal(0.761, Use(3, 45, 100.ms), 0.001);
        Assert.Equal(1.217, Use(3, 45, SafeArea.Dc), 0.001);
        Assert.Equal(1.134, Use(2, 45, 100.ms), 0.001);
        Assert.Equal(0.977, Use(3, 60, 100.ms), 0.001);
        // The emitter resistors' drop forgotten: 0.770 and 1.232, and 1.155 for two pairs.
        Assert.Equal(0.770, SafeAreaUtilisation.Of(area.For(80.degC, 100.ms), Load(3, 45, 0.Ohm)).Use, 0.001);
        Assert.Equal(1.232, SafeAreaUtilisation.Of(area.For(80.degC, SafeArea.Dc), Load(3, 45, 0.Ohm)).Use, 0.001);
        Assert.Equal(1.155, SafeAreaUtilisation.Of(area.For(80.degC, 100.ms), Load(2, 45, 0.Ohm)).Use, 0.001);
    }

    [Fact]
    public void Safe_area_decides_on_three_pairs()
    {
        var pairs = PairCount.Decide(area, Load(1, 45), 80.degC, 100.ms);
        Assert.Equal((1, 3, 1, 3, "safe area"), (pairs.ByDissipation, pairs.BySafeArea, pairs.ByCurrent, pairs.Pairs, pairs.Decides));
        Assert.Equal(1.134, pairs.OnePairFewer!.Use, 0.001);
        Assert.Equal(4, PairCount.Decide(area, Load(1, 45), 80.degC, SafeArea.Dc).Pairs);
        // A pulse that rides on the average heat of the ideal stage's worst level, 25 W each, starts 21 K warmer: three pairs are no longer enough.
        var riding = PairCount.Decide(area, Load(1, 45), 80.degC, 100.ms, rideOnAverage: true);
        Assert.Equal(4, riding.Pairs);
        Assert.Equal(1.087, riding.OnePairFewer!.Use, 0.001);
    }

    [Fact]
    public void A_limiter_between_silicon_and_load()
    {
        var limiter = new VoltageCurrentLimiter(220.Ohm, 390.Ohm, 22.kOhm, 0.22.Ohm);
        Assert.Equal(4.651, limiter.CurrentAt(0.V).Amperes, 0.0005);
        Assert.Equal(2.560, limiter.CurrentAt(46.V).Amperes, 0.0005);
        Assert.Equal(3.792, limiter.CurrentAt(0.V, 85.degC).Amperes, 0.0005);
        Assert.Equal(1.701, limiter.CurrentAt(46.V, 85.degC).Amperes, 0.0005);
        var pulse = area.For(80.degC, 100.ms);
        var cool = limiter.Against(pulse, [Load(3, 0), Load(3, 45)], 25.degC, 25.degC);
        Assert.True(cool.Passes, cool.Says);
        Assert.Equal(1.097, cool.Loads[1].Margin, 0.001);
        Assert.Equal(0.950, 1 / cool.Area.Margin, 0.001);
        Assert.Equal(cool.Area, cool.Tightest);
        var steep = limiter.Against(pulse, [Load(3, 60)], 25.degC, 25.degC);
        Assert.False(steep.Passes);
        Assert.Equal(0.930, steep.TightestMargin, 0.001);
        Assert.StartsWith("Does not pass: the limiter acts within the load line of 4 Ω at 60°", steep.Says, StringComparison.Ordinal);
        // With its sense junction on the hot sink it acts within music at 45° as well.
        var warm = limiter.Against(pulse, [Load(3, 45)], 25.degC, 85.degC);
        Assert.False(warm.Passes);
        Assert.Equal(0.761, warm.TightestMargin, 0.001);
        Assert.False(limiter.Against(area.For(80.degC, SafeArea.Dc), [Load(3, 0)], 25.degC, 25.degC).Passes);
    }

    private static SafeArea Area(double left) => new(Transistor.Parse(Card.Replace("\"secondBreakdownLeft\": \"0 %\"", $"\"secondBreakdownLeft\": \"{left * 100} %\"", StringComparison.Ordinal)));

    private static Duration? Pulse(double seconds) => seconds > 0 ? seconds.s : SafeArea.Dc;

    private static LoadEllipse Load(int n, double phase, ElectricResistance? R_E = null) => new(46.V, 37.95.V, 4.Ohm, phase.deg, R_E ?? 0.22.Ohm, n);

    private double Use(int n, double phase, Duration? pulse) => SafeAreaUtilisation.Of(area.For(80.degC, pulse), Load(n, phase)).Use;
}
