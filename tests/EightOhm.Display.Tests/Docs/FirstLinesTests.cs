using System.Globalization;

namespace EightOhm.Display.Tests.Docs;

/// <summary>What a designer writes first: each line compiles in a plain program, and <c>$"{line}"</c> is the value worked out by hand, in any culture.</summary>
[Collection(nameof(ConsoleOutput))]
public class FirstLinesTests
{
    private const string Given = """
        var P = 100.W; var R_L = 8.Ohm; var V = 28.28.V; var I = 3.A;
        var R = 10.kOhm; var C = 100.nF; var L = 10.mH; var f = 1.kHz;

        """;

    // The values beside them come from a pocket calculator, not from the library.
    private static readonly (string Line, string Value)[] Lines =
    [
        ("Sqrt(P * R_L)", "28.28 V"),
        ("Sqrt(2 * P * R_L)", "40 V"),
        ("Sqrt(2 * P / R_L)", "5 A"),
        ("V * V / R_L", "99.9698 W"),
        ("V / R_L", "3.535 A"),
        ("I * I * R_L", "72 W"),
        ("V * I", "84.84 W"),
        ("P / 40.V", "2.5 A"),
        ("V * V / P", "7.998 Ω"),
        ("12.V / 3", "4 V"),
        ("1.V + 200.mV", "1.2 V"),
        ("50.V - 3.V", "47 V"),
        ("0.22.Ohm * 5.A", "1.1 V"),
        ("1.5.A / 50", "30 mA"),
        ("26.mV / 100.mA", "260 mΩ"),
        ("100.mA / 26.mV", "3.846 S"),
        ("4.mS * 10.kOhm", "40"),
        ("1 / R", "100 µS"),
        ("Parallel(10.kOhm, 15.kOhm)", "6 kΩ"),
        ("R / 4 + 470.Ohm", "2.97 kΩ"),
        ("40.V * 10.kOhm / (10.kOhm + 22.kOhm)", "12.5 V"),
        ("1 + 22.kOhm / 1.kOhm", "23"),
        ("1 / (2 * pi * R * C)", "159.2 Hz"),
        ("1 / (2 * π * R * f)", "15.92 nF"),
        ("1 / (2 * π * f * R)", "15.92 nF"),
        ("1 / (2 * Math.PI * f * C)", "1.592 kΩ"),
        ("1 / (2 * π * f * 4.7.kOhm)", "33.86 nF"),
        ("2 * π * f * L", "62.83 Ω"),
        ("R_L / (2 * π * f)", "1.273 mH"),
        ("R_L / (2 * π * L)", "127.3 Hz"),
        ("1 / (2 * π * Sqrt(L * C))", "5.033 kHz"),
        ("Sqrt(1 / (L * C)) / (2 * π)", "5.033 kHz"),
        ("Sqrt(L / C)", "316.2 Ω"),
        ("1 / (4 * π * π * f * f * L)", "2.533 µF"),
        ("1 / (4 * π * π * f * f * C)", "253.3 mH"),
        ("R * C", "1 ms"),
        ("L / R_L", "1.25 ms"),
        ("10.ms / 4.7.kOhm", "2.128 µF"),
        ("1 / 20.ms", "50 Hz"),
        ("3.kHz * 2.ms", "6"),
        ("3.A / (2 * 50.Hz * 10.mF)", "3 V"),
        ("3.A / (2 * 50.Hz * 3.V)", "10 mF"),
        ("3.A * 10.ms / 10.mF", "3 V"),
        ("0.5 * 10.mF * (50.V * 50.V)", "12.5 J"),
        ("2 * π * 20.kHz * 40.V", "5.027 V/µs"),
        ("2.mA / 100.pF", "20 V/µs"),
        ("40.V_per_us * 100.pF", "4 mA"),
        ("40.V_per_us / (2 * π * 40.V)", "159.2 kHz"),
        ("Sqrt(4 * k * 25.degC * 1.kOhm)", "4.058 nV/√Hz"),
        ("Sqrt(2 * q * 1.mA)", "17.9 pA/√Hz"),
        ("3.3.nV_rtHz * Sqrt(20.kHz)", "466.7 nV"),
        ("40.degC + 30.W * 1.5.K_per_W", "85 °C"),
        ("(150.degC - 40.degC) / 50.W", "2.2 K/W"),
        ("(150.degC - 40.degC) / 2.K_per_W", "55 W"),
        ("2.2.mV_per_K * 50.K", "110 mV"),
        ("10.W * 2.s", "20 J"),
        ("P * (1 + 10.percent)", "110 W"),
        ("230.V * (1 - 10.percent)", "207 V"),
        ("27.dB * 1.V", "22.39 V"),
        ("V / 23.6", "1.198 V"),
        ("40.V.dBV", "32.04 dBV"),
        ("4.dBu.Voltage", "1.228 V"),
        ("P.dBW", "20 dBW"),
        ("0.dBm.Power", "1 mW"),
        ("-10.dBV + 12.dB", "2 dBV"),
        ("94.dB_SPL.Pressure", "1.002 Pa"),
        ("V.In(\"mV\")", "28280 mV"),
        ("new[] { 5.W, 2.5.W }.Sum()", "7.5 W"),
        ("new[] { 1.V, 2.V }.Mean()", "1.5 V"),
        ("new[] { 1.V, 2.V }.Max()", "2 V"),
        ("ESeries.E96.Nearest(4.83.kOhm)", "4.87 kΩ"),
        ("Sweep.Decades(20.Hz, 20.kHz).Length", "3"),
        ("650.mV.IsWithin(20.mV, of: 640.mV)", "True"),
        ("470.uF", "470 µF"),
    ];

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    [InlineData("fa-IR")]
    public void Each_compiles_and_reads_as_by_hand(string culture)
    {
        var before = Thread.CurrentThread.CurrentCulture;
        Thread.CurrentThread.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            var printed = PlainProgram.Run(Given + string.Concat(Lines.Select(l => $"Console.WriteLine($\"{{{l.Line}}}\");\n")));
            var values = printed.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
            Assert.Equal(Lines.Length, values.Length);
            Assert.Equal("", string.Join('\n', Lines.Zip(values, (l, value) => value == l.Value ? "" : $"{l.Line} is {value}, by hand {l.Value}").Where(wrong => wrong.Length > 0)));
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }

    [Fact]
    public void There_are_fifty_and_more() => Assert.True(Lines.Distinct().Count() >= 50);

    [Fact]
    public void A_text_takes_digits_and_units_and_leaves_the_rest_to_CSharp() => Assert.Equal(
        "28.3 V|28280 mV|[  8 Ω]|1.50|x||3 kg\n",
        PlainProgram.Run("""
            string? none = null;
            Console.WriteLine(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{InText.Of(28.28427.V):3}|") + $"{28.28427.V:mV}|[{8.Ohm,5}]|" + string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{1.5:F2}") + $"|{"x"}|{none}|{Mass.FromKilograms(3)}");
            """).ReplaceLineEndings("\n"));

    // Honest about what a package cannot reach: UnitsNet's own ToString, and builders that the framework names in a signature.
    [Fact]
    public void Text_that_CSharp_does_not_build_itself_stays_as_UnitsNet_has_it() => Assert.Equal(
        "298.15 K|298.15 K|25 °C\n",
        PlainProgram.Run("""
            var invariant = System.Globalization.CultureInfo.InvariantCulture;
            Console.WriteLine(25.degC.ToString(invariant) + "|" + string.Create(invariant, $"{25.degC}") + "|" + Show.Text(25.degC));
            """).ReplaceLineEndings("\n"));
}
