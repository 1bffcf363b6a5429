using EightOhm.OutputStage;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class ClassBChecks
{
    private static readonly Source Boylestad128 = new(BoylestadTitle, "Ex 12.8, p. 699", Seen.Page);

    [Fact]
    public void Twenty_watts_in_eight_ohms()
    {
        ElectricPotential V = 23.V, V_p = 17.9.V;
        var R = 8.Ohm;
        var none = 0.Ohm;
        var source = Sedra("Ex 14.1, p. 1239");
        Check.Check(() => ClassBAtLevel.Load(V_p, R), "20 W", source, "the printed peak is 17.9 V");
        Check.Against(() => ClassBAtLevel.Load(V_p, R), 17.9 * 17.9 / 8 * 1.W, "the peak taken for rms", "20 W", source);
        Check.Check(() => Ratio.FromDecimalFractions(ClassBAtLevel.Efficiency(V, V_p)), "61 %", source);
        Check.Check(() => ClassBDevices.WorstOfOne(V, R, none, 1), "6.7 W", source);
        Check.Against(() => ClassBDevices.WorstOfOne(V, R, none, 1), ClassBDevices.Worst(V, R, none, 1), "the pair's heat taken for one device's", "6.7 W", source);
        var exact = 17.889.V;
        Check.Check(() => ClassBAtLevel.Supply(V, exact, R), "32.7 W", source);
        Check.Check(() => ClassBAtLevel.Supply(V, exact, R) / 2, "16.4 W", source, "each rail");
    }

    [Fact]
    public void Thirty_volt_rails_and_sixteen_ohms()
    {
        ElectricPotential V = 30.V, V_p = 20.V;
        var R = 16.Ohm;
        var none = 0.Ohm;
        Check.Check(() => ClassBAtLevel.Supply(V, V_p, R), "23.9 W", Boylestad("Ex 12.7"));
        Check.Check(() => ClassBAtLevel.Load(V_p, R), "12.5 W", Boylestad("Ex 12.7"));
        Check.Disagrees(() => Ratio.FromDecimalFractions(ClassBAtLevel.Efficiency(V, V_p)), "52.3 %", "52.36 %", Boylestad("Ex 12.7"), "The book divides the rounded 12.5 W by 23.9 W; π/4·20/30 is 52.36 %.");
        Check.Check(() => ClassBAtLevel.Load(V, R), "28.125 W", Boylestad128);
        Check.Check(() => ClassBAtLevel.Supply(V, V, R), "35.81 W", Boylestad128);
        Check.Check(() => Ratio.FromDecimalFractions(ClassBAtLevel.Efficiency(V, V)), "78.54 %", Boylestad128);
        Check.Check(() => ClassBDevices.WorstOfOne(V, R, none, 1), "5.7 W", Boylestad128);
    }

    [Fact]
    public void Efficiency_at_two_levels()
    {
        var V = 24.V;
        (ElectricPotential Peak, string Printed)[] rows = [(22.V, "72 %"), (6.V, "19.6 %")];
        Check.Table(rows, r => Ratio.FromDecimalFractions(ClassBAtLevel.Efficiency(V, r.Peak)), r => r.Printed, new Source(BoylestadTitle, "Ex 12.9, p. 699", Seen.Page));
    }

    [Fact]
    public void Heat_at_full_output_is_not_the_worst()
    {
        ElectricPotential V = 28.V, V_p = 23.324.V;
        var R = 4.Ohm;
        var none = 0.Ohm;
        var page = Source.Secondhand("A hobby page on heat sinks for amplifier ICs, no document number", "28 V rails, 68 W into 4 Ω");
        Check.Check(() => ClassBAtLevel.Supply(V, V_p, R), "103.94 W", page);
        Check.Check(() => ClassBAtLevel.PairHeat(V, V_p, R), "35.94 W", page, "at full output");
        Check.Disagrees(() => ClassBDevices.Worst(V, R, none, 1), "35.94 W", "39.72 W", page, "The page takes the heat at full output for the worst, which comes at 2/π of the rail.");
    }

    [Fact]
    public void Four_channels_on_a_car_s_battery()
    {
        ElectricPotential half = 7.2.V, battery = 14.4.V;
        ElectricResistance four = 4.Ohm, none = 0.Ohm;
        Check.Check(() => 4 * ClassBDevices.Worst(half, four, none, 1), "10.5 W", Sta540);
        Check.Against(() => 4 * ClassBDevices.Worst(half, four, none, 1), 4 * ClassBDevices.Worst(battery, four, none, 1), "the whole supply taken for one rail", "10.5 W", Sta540);
    }

    [Fact]
    public void Powers_at_a_level_by_integration()
    {
        var rows = Reference.Read("class-b-level.csv");
        Check.Computed(rows, r => ClassBAtLevel.Supply(Volts(r["V"]), Volts(r["V_p"]), Ohms(r["R"])), "P_S");
        Check.Computed(rows, r => ClassBAtLevel.Load(Volts(r["V_p"]), Ohms(r["R"])), "P_L");
        Check.Computed(rows, r => ClassBAtLevel.PairHeat(Volts(r["V"]), Volts(r["V_p"]), Ohms(r["R"])), "P_D");
        Check.Computed(rows, r => ClassBAtLevel.Efficiency(Volts(r["V"]), Volts(r["V_p"])), "eta");
    }

    [Fact]
    public void Worst_heat_with_emitter_resistors_by_integration()
    {
        var rows = Reference.Read("class-b-devices.csv");
        Check.Computed(rows, r => ClassBDevices.Worst(Volts(r["V"]), Ohms(r["R"]), Ohms(r["R_E"]), (int)r["n"]), "P_D");
        Check.Computed(rows, r => ClassBDevices.WorstOfOne(Volts(r["V"]), Ohms(r["R"]), Ohms(r["R_E"]), (int)r["n"]), "P_one");
        Check.Computed(rows, r => ClassBDevices.WorstLevel(Volts(r["V"]), Ohms(r["R"]), Ohms(r["R_E"]), (int)r["n"]), "V_p");
        Check.Computed(rows, r => ClassBDevices.AtHighMains(Power.FromWatts(r["P_D"]), Ratio.FromDecimalFractions(r["x"])), "P_high");
        Power one = 1.W;
        var tenth = 10.percent;
        Check.TradeFact(() => ClassBDevices.AtHighMains(one, tenth), "1.21 W");
    }

    private static ElectricPotential Volts(double v) => ElectricPotential.FromVolts(v);

    private static ElectricResistance Ohms(double r) => ElectricResistance.FromOhms(r);
}
