using EightOhm.OutputStages;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Class B as books and makers print it.</summary>
[Checks]
public class ClassBChecks
{
    private static readonly Source Boylestad128 = new(BoylestadTitle, "Ex 12.8, p. 699", Seen.Page);
    private static readonly Angle _resistive = 0.deg;
    private static readonly ElectricResistance _none = 0.Ohm;

    [Fact]
    public void Twenty_watts_in_eight_ohms()
    {
        ElectricPotential V = 23.V, V_p = 17.9.V;
        var R = 8.Ohm;
        var source = Sedra("Ex 14.1, p. 1239");
        Check.Check(() => ClassB.LoadPower(V_p, R, _resistive), "20 W", source, "the printed peak is 17.9 V");
        Check.Against(() => ClassB.LoadPower(V_p, R, _resistive), 17.9 * 17.9 / 8 * 1.W, "the peak taken for rms", "20 W", source);
        Check.Check(() => ClassB.Efficiency(V, V_p, _resistive), "61 %", source);
        Check.Check(() => ClassB.WorstOfOne(V, R, _resistive, _none, 1), "6.7 W", source);
        Check.Against(() => ClassB.WorstOfOne(V, R, _resistive, _none, 1), ClassB.Worst(V, R, _resistive), "the pair's heat taken for one device's", "6.7 W", source);
        var exact = 17.889.V;
        Check.Check(() => ClassB.SupplyPower(V, exact, R), "32.7 W", source);
        Check.Check(() => V * ClassB.RailCurrent(exact, R), "16.4 W", source, "each rail");
    }

    [Fact]
    public void Thirty_volt_rails_and_sixteen_ohms()
    {
        ElectricPotential V = 30.V, V_p = 20.V;
        var R = 16.Ohm;
        Check.Check(() => ClassB.SupplyPower(V, V_p, R), "23.9 W", Boylestad("Ex 12.7"));
        Check.Check(() => ClassB.LoadPower(V_p, R, _resistive), "12.5 W", Boylestad("Ex 12.7"));
        Check.Disagrees(() => ClassB.Efficiency(V, V_p, _resistive), "52.3 %", "52.36 %", Boylestad("Ex 12.7"), "The book divides the rounded 12.5 W by 23.9 W; π/4·20/30 is 52.36 %.");
        Check.Check(() => ClassB.LoadPower(V, R, _resistive), "28.125 W", Boylestad128);
        Check.Check(() => ClassB.SupplyPower(V, V, R), "35.81 W", Boylestad128);
        Check.Check(() => ClassB.Efficiency(V, V, _resistive), "78.54 %", Boylestad128);
        Check.Check(() => ClassB.WorstOfOne(V, R, _resistive, _none, 1), "5.7 W", Boylestad128);
    }

    [Fact]
    public void Efficiency_at_two_levels()
    {
        var V = 24.V;
        (ElectricPotential Peak, string Printed)[] rows = [(22.V, "72 %"), (6.V, "19.6 %")];
        Check.Table(rows, r => ClassB.Efficiency(V, r.Peak, _resistive), r => r.Printed, new Source(BoylestadTitle, "Ex 12.9, p. 699", Seen.Page));
    }

    [Fact]
    public void Single_supplies_of_twenty_volts()
    {
        ElectricPotential half = 10.V, whole = 20.V;
        ElectricResistance eight = 8.Ohm, ten = 10.Ohm, divider = 215.Ohm, diodes = 7.8.kOhm;
        Check.Check(() => ClassB.LoadPower(half, eight, _resistive), "6.25 W", Malvino("Ex 12-8, p. 397"));
        Check.Disagrees(() => ClassB.WorstOfOne(half, eight, _resistive, _none, 1), "1.25 W", "1.2665 W", Malvino("Ex 12-8, p. 397"),
            "The book's MPP²/(40·R_L) rounds 4π² = 39.48 to 40; with a single supply of 20 V the rail is 10 V and V²/(π²·R_L) is 1.2665 W.");
        var bias = whole / divider;
        Check.Check(() => Share(ClassB.LoadPower(half, eight, _resistive), ClassB.SupplyPower(half, half, eight) + whole * bias), "63.7 %", Malvino("Ex 12-9, p. 398"),
            "printed 63.6 %, cut off after 63.66; the bias is 20 V over 215 Ω");
        var small = 18.6.V / diodes;
        Check.Check(() => Share(ClassB.LoadPower(half, ten, _resistive), ClassB.SupplyPower(half, half, ten) + whole * small), "78 %", Malvino("Ex 12-10, p. 400"), "diode bias, 2.38 mA");
    }

    [Fact]
    public void Heat_at_full_output_is_not_the_worst()
    {
        ElectricPotential V = 28.V, V_p = 23.324.V;
        var R = 4.Ohm;
        var page = Source.Secondhand("A hobby page on heat sinks for amplifier ICs, no document number", "28 V rails, 68 W into 4 Ω");
        Check.Check(() => ClassB.SupplyPower(V, V_p, R), "103.94 W", page);
        Check.Check(() => ClassB.Heat(V, V_p, R, _resistive, _none, 1), "35.94 W", page, "at full output");
        Check.Disagrees(() => ClassB.Worst(V, R, _resistive), "35.94 W", "39.72 W", page, "The page takes the heat at full output, 103.94 W − 68 W, for the worst, which comes at 2/π of the rail.");
    }

    [Fact]
    public void Four_channels_on_a_car_s_battery()
    {
        ElectricPotential half = 7.2.V, battery = 14.4.V;
        ElectricResistance four = 4.Ohm, two = 2.Ohm;
        Check.Check(() => 4 * ClassB.Worst(half, four, _resistive), "10.5 W", Sta540);
        Check.Against(() => 4 * ClassB.Worst(half, four, _resistive), 4 * ClassB.Worst(battery, four, _resistive), "the whole supply taken for one rail", "10.5 W", Sta540);
        Check.Check(() => ClassB.Worst(half, two, _resistive), "5.25 W", Sta540);
        Check.Check(() => (2 * ClassB.Worst(half, two, _resistive)) + ClassB.Worst(battery, four, _resistive), "21 W", Sta540, "two channels and a bridge");
        Check.Disagrees(() => ClassB.Worst(half, four, _resistive), "2.62 W", "2.626 W", Sta540, "The sheet cuts 2.6262 W off after two decimals; its sum, 10.5 W, is right.");
    }

    [Fact]
    public void Bridges_on_small_supplies()
    {
        ElectricPotential five = 5.V, three = 3.3.V;
        ElectricResistance eight = 8.Ohm, sixteen = 16.Ohm;
        var training = Source.Datasheet("National Semiconductor, application note AN-1192, training page", "5 V bridge into 8 Ω");
        Check.Check(() => ClassB.Worst(five, eight, _resistive), "633 mW", Source.Datasheet("STMicroelectronics, TS4995 datasheet", "eq. 3-5, p. 19"));
        Check.Check(() => ClassB.Worst(five, eight, _resistive), "633 mW", training, "calculated");
        Check.Disagrees(() => ClassB.Worst(five, eight, _resistive), "670 mW", "633.3 mW", training, "Read off a measured graph, which has the quiescent heat in it; the ideal formula has not.");
        Check.Check(() => ClassB.Worst(three, sixteen, _resistive), "138 mW", Source.Datasheet("Texas Instruments, LM4818 datasheet, SNAS163B", "p. 12"));
    }

    [Fact]
    public void Heat_that_makers_measured()
    {
        ElectricPotential twelve = 12.V, nine = 9.V, six = 6.V;
        ElectricResistance four = 4.Ohm, eight = 8.Ohm;
        const string Because = "The sheet's figure is measured and includes the quiescent heat, which the ideal formula leaves out.";
        Check.Disagrees(() => 2 * ClassB.Worst(twelve, eight, _resistive), "7.8 W", "7.30 W", Source.Datasheet("Philips, TDA1521A datasheet", "heat sink example, ±12 V, 8 Ω, two channels"), Because);
        Check.Disagrees(() => ClassB.Worst(twelve, eight, _resistive), "4.1 W", "3.65 W", Source.Datasheet("Philips, TDA2613 datasheet", "heat sink example, 24 V, 8 Ω"), Because);
        Check.Disagrees(() => ClassB.Worst(nine, eight, _resistive), "2.2 W", "2.05 W", Source.Datasheet("Philips, TDA2611A datasheet", "heat sink example, 18 V, 8 Ω"), Because);
        Check.Check(() => ClassB.Worst(six, four, _resistive), "1.8 W", Source.Datasheet("Philips, TDA1011 datasheet", "heat sink example, 12 V, 4 Ω"), "measured; the ideal formula gives 1.3 % more");
    }

    [Fact]
    public void What_an_amplifier_draws_and_gives()
    {
        var V_p = ElectricPotential.FromVolts(8 * Math.Sqrt(2));
        var R = 8.Ohm;
        var drawn = 22.5.W;
        var source = Source.Companion("A. R. Hambley, Electronics", "ch. 10, amplifier efficiency, as holooly.com prints it");
        Check.Check(() => drawn - ClassB.LoadPower(V_p, R, _resistive), "14.5 W", source, "15 W and 7.5 W from two supplies");
        Check.Check(() => Share(ClassB.LoadPower(V_p, R, _resistive), drawn), "35.6 %", source);
    }

    [Fact]
    public void What_a_capacitor_costs()
    {
        // 5 V in all, 1 V peak of 100 kHz into 10 nF.
        ElectricPotential half = 2.5.V, peak = 1.V;
        var Z = ElectricResistance.FromOhms(1 / (2 * Math.PI * 1e5 * 1e-8));
        Angle phi = (-90).deg;
        Check.Disagrees(() => ClassB.Heat(half, peak, Z, phi, _none, 1), "6.37 mW", "10.0 mW", Source.Datasheet("Microchip, MCP62x datasheet, DS22188C", "eq. 4-6, p. 26, for 5 V, 1 V peak, 100 kHz, 10 nF"),
            "The sheet has 4/π·V_AC·f·C for the mean current; the half-waves of 2π·f·C·V_AC have the mean 2·V_AC·f·C, and a capacitor takes no power.");
    }

    private static Ratio Share(Power part, Power whole) => Ratio.FromDecimalFractions((double)(part / whole));
}
