using EightOhm.Devices;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class SharedHeatChecks
{
    [Fact]
    public void Sinks_of_makers_datasheets_for_one_device_as_the_case_of_n_equal_1()
    {
        Temperature hot = 150.degC, limit = 125.degC, fifty = 50.degC;
        Power car = 10.5.W, bridge = 21.W, five = 5.W, none = 0.W;
        ThermalResistance chip = 1.8.K_per_W, zero = 0.K_per_W, msk = 12.K_per_W, joint = 0.15.K_per_W;
        Check.Check(() => SharedSink.AllowedSink(hot, fifty, car, 1, none, chip, zero), "7.7 K/W", Sta540);
        Check.Check(() => SharedSink.AllowedSink(hot, fifty, bridge, 1, none, chip, zero), "3 K/W", Sta540);
        Check.Check(() => SharedSink.AllowedSink(limit, fifty, five, 1, none, msk, joint), "2.85 K/W", Source.Datasheet("M. S. Kennedy, MSK 1461B datasheet", "p. 3"));
        var sink = 4.K_per_W;
        var most = 13.1.W;
        ThermalResistance junction = 3.12.K_per_W, insulator = 0.5.K_per_W;
        Check.Check(() => SharedSink.Junction(fifty, most, 1, none, junction, insulator, sink), "150 degC", Sedra("Ex 14.5, p. 1253"), "13.1 W is the printed limit");
    }

    [Fact]
    public void Devices_on_one_sink_solved_as_a_network()
    {
        var rows = Reference.Read("shared-sink.csv");
        Check.Computed(rows, r => SharedSink.Junction(Celsius(r["T_a"]), Power.FromWatts(r["P"]), (int)r["n"], Power.FromWatts(r["P_other"]), ThermalResistance.FromSi(r["theta_JC"]), ThermalResistance.FromSi(r["theta_CS"]), ThermalResistance.FromSi(r["theta_SA"])), "T_J");
        Check.Computed(rows, r => SharedSink.AllowedSink(Celsius(r["limit"]), Celsius(r["T_a"]), Power.FromWatts(r["P"]), (int)r["n"], Power.FromWatts(r["P_other"]), ThermalResistance.FromSi(r["theta_JC"]), ThermalResistance.FromSi(r["theta_CS"])), "allowed");
    }

    [Fact]
    public void A_base_spreads_the_heat_of_a_small_device()
    {
        // The published closed form against the exact series: within the 9 % that its range is enforced for.
        var rows = Reference.Read("spreading.csv");
        Check.Computed(rows, r => SpreadingResistance.Of(Area.FromSquareMeters(r["A_s"]), Length.FromMeters(r["t"]), Area.FromSquareMeters(r["A_p"]), ThermalConductivity.FromWattsPerMeterKelvin(r["k"]), ThermalResistance.FromSi(r["R_0"])), "theta_sp", 0.09);
        foreach (var r in rows.Rows.Take(2))
            Assert.Equal(r["theta_sp"], SpreadingResistance.Of(Area.FromSquareMeters(r["A_s"]), Length.FromMeters(r["t"]), Area.FromSquareMeters(r["A_p"]), ThermalConductivity.FromWattsPerMeterKelvin(r["k"]), ThermalResistance.FromSi(r["R_0"])).Si, 0.05 * r["theta_sp"]);
    }

    [Fact]
    public void Watts_that_a_chain_allows()
    {
        Check.Computed(Reference.Read("allowed-power.csv"), r => HeatPath.AllowedPower(Celsius(r["T_J"]), Celsius(r["T_a"]), new[] { ThermalResistance.FromSi(r["theta"] / 2), ThermalResistance.FromSi(r["theta"] / 2) }), "P");
    }

    [Fact]
    public void Two_ways_for_the_heat() => Check.Computed(
        Reference.Read("parallel-paths.csv"),
        r => ParallelPaths.Of(ThermalResistance.FromSi(r["theta_1"]), ThermalResistance.FromSi(r["theta_2"])),
        "theta");

    [Fact]
    public void Ratings_that_imply_a_resistance()
    {
        Temperature t200 = 200.degC, t150 = 150.degC, room = 25.degC;
        Power big = 115.W, tip = 65.W, small = 2.W;
        Check.Check(() => Derating.Resistance(big, t200, room), "1.52 K/W", Source.Secondhand("Thermal design page, jugandi.com", "2N3055"));
        Check.Check(() => Derating.Resistance(tip, t150, room), "1.9 K/W", Source.Secondhand("Calculating a heat sink, hobby-electronics.info", "2N3055 and TIP41A"));
        Check.Check(() => Derating.Resistance(small, t150, room), "62.5 K/W", Sedra("Ex 14.4, p. 1251"));
    }

    [Fact]
    public void Power_that_a_temperature_leaves()
    {
        Allowed(2.W, 150, 50, 62.5, "1.6 W", Sedra("Ex 14.4, p. 1251"));
        Allowed(40.W, 150, 50, 3.12 + 0.5 + 4, "13.1 W", Sedra("Ex 14.5, p. 1253"));
        Allowed(40.W, 150, 50, 3.12, "32 W", Sedra("Ex 14.5, p. 1253"), "an infinite sink");
        Allowed(80.W, 25 + (80 / 0.5), 125, 1 / 0.5, "30 W", Boylestad("Ex 12.17"), "0.5 W/°C from 25 °C");
        Allowed(200.W, 200, 40, 0.5 + 0.6 + 1.5, "61.54 W", Boylestad("Ex 12.18"));
        Allowed(500.W, 150, 25, 0.4 + 0.1 + 0.5, "125 W", Source.Companion("M. H. Rashid, Power Electronics, 4th ed.", "Ex 4.4"));
        Allowed(625.mW, 25 + (625 / 5.0), 50, 1 / 0.005, "500 mW", Malvino("Ex 12-14, p. 414"), "5 mW/°C from 25 °C");
    }

    [Fact]
    public void A_power_read_off_a_graph()
    {
        var rating = 40.W;
        Temperature T_J = 150.degC, T_C = 76.degC;
        var theta_JC = 3.125.K_per_W;
        Check.Disagrees(() => Derating.AllowedPower(rating, T_J, T_C, theta_JC), "26 W", "23.68 W", Source.Secondhand("Heat sinks for transistors, dropdoc.ru/doc/754049", "TIP31 example"),
            "The page reads about 26 W off a graph; (150 °C − 76 °C)/3.125 K/W is 23.68 W.");
    }

    private static void Allowed(Power P_max, double limit, double at, double toCase, string printed, Source source, string note = "")
    {
        Temperature T_J = limit.degC, T_C = at.degC;
        var theta_JC = toCase.K_per_W;
        Check.Check(() => Derating.AllowedPower(P_max, T_J, T_C, theta_JC), printed, source, note);
    }
}
