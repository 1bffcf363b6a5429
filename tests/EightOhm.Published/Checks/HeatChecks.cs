using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class HeatChecks
{
    private static readonly Source Tip31 = Source.Secondhand("Heat sinks for transistors, dropdoc.ru/doc/754049", "TIP31 example");

    [Fact]
    public void Sinks_of_makers_datasheets()
    {
        Sink(150, 60, 7.8.W, 6, 0, "5.5 K/W", Source.Datasheet("Philips, TDA1521A datasheet", "heat sink example"));
        Sink(150, 60, 4.1.W, 8, 0, "14 K/W", Source.Datasheet("Philips, TDA2613 datasheet", "heat sink example"));
        Sink(150, 60, 2.2.W, 0, 0, "41 K/W", Source.Datasheet("Philips, TDA2611A datasheet", "heat sink example"));
        Sink(150, 60, 2.2.W, 12, 0, "29 K/W", Source.Datasheet("Philips, TDA2611A datasheet", "heat sink example"));
        Sink(150, 60, 1.8.W, 0, 0, "50 K/W", Source.Datasheet("Philips, TDA1011 datasheet", "heat sink example"));
        Sink(150, 60, 1.8.W, 10, 1, "39 K/W", Source.Datasheet("Philips, TDA1011 datasheet", "heat sink example"));
        Sink(125, 50, 5.W, 12, 0.15, "2.85 degC/W", Source.Datasheet("M. S. Kennedy, MSK 1461B datasheet", "p. 3"));
    }

    [Fact]
    public void Sinks_of_a_car_amplifier()
    {
        Sink(150, 50, 10.5.W, 1.8, 0, "7.7 degC/W", Sta540);
        Sink(150, 50, 21.W, 1.8, 0, "3 degC/W", Sta540);
        Sink(150, 50, 6.3.W, 1.8, 0, "14 degC/W", Sta540);
        Sink(150, 50, 12.6.W, 1.8, 0, "6 degC/W", Sta540);
    }

    [Fact]
    public void Two_sinks_that_were_rounded_to_the_safe_side()
    {
        Temperature limit = 150.degC, air = 65.degC;
        Power full = 12.W, half = 6.W;
        ThermalResistance theta_JC = 3.5.K_per_W, none = 0.K_per_W;
        var source = Source.Datasheet("Philips, TDA1510AQ datasheet", "heat sink example");
        Check.Disagrees(() => HeatPath.AllowedSink(limit, air, full, theta_JC, none), "3.5 K/W", "3.583 K/W", source, "85 K/12 W − 3.5 K/W is 3.583 K/W; the sheet rounds down, to the safe side.");
        Check.Disagrees(() => HeatPath.AllowedSink(limit, air, half, theta_JC, none), "10.5 K/W", "10.667 K/W", source, "85 K/6 W − 3.5 K/W is 10.667 K/W; the sheet rounds down, and its fraction prints 12 W for 6 W.");
    }

    [Fact]
    public void Sinks_of_books_and_lectures()
    {
        Sink(150, 25, 2.W, 0, 0, "62.5 degC/W", Sedra("Ex 14.4, p. 1251"));
        Sink(150, 50, 5.W, 3, 1, "16 degC/W", Source.Secondhand("Lecture slides on heat sinks, slideplayer 5191918", "TO-220, 5 W"));
        var page = Source.Secondhand("Calculating a heat sink, hobby-electronics.info", "2N3055 and TIP41A");
        Sink(200, 25, 60.W, 1.5, 0, "1.4 degC/W", page);
        Sink(150, 25, 4.1.W, 1.9, 0, "28.6 degC/W", page);
    }

    [Fact]
    public void Junctions_of_makers_datasheets()
    {
        Junction(25, 1.93.W, [52], "125 degC", Source.Datasheet("Texas Instruments, OPA445 datasheet, SBOS156B", "p. 7"));
        Junction(50, 2.78.W, [62], "222 degC", Source.Datasheet("CUI Devices, How to select a heat sink, product training module", "slide 4"));
        Junction(61.7, 633.mW, [100], "125 degC", Source.Datasheet("STMicroelectronics, TS4995 datasheet", "eq. 3-5, p. 19"), "61.7 °C is the sheet's highest ambient");
    }

    [Fact]
    public void Junctions_of_books()
    {
        Junction(25, 1.W, [62.5], "87.5 degC", Sedra("Ex 14.4, p. 1251"));
        Junction(50, 1.6.W, [62.5], "150 degC", Sedra("Ex 14.4, p. 1251"), "1.6 W is the printed limit at 50 °C");
        Junction(50, 13.1.W, [3.12, 0.5, 4], "150 degC", Sedra("Ex 14.5, p. 1253"), "13.1 W is the printed limit");
        Junction(40, 61.54.W, [0.5, 0.6, 1.5], "200 degC", Boylestad("Ex 12.18"), "61.54 W is the printed limit");
        Junction(25, 125.W, [0.4, 0.1, 0.5], "150 degC", Source.Companion("M. H. Rashid, Power Electronics, 4th ed.", "Ex 4.4"), "125 W is the printed limit");
        Junction(25, 125.W, [0.1, 0.5], "100 degC", Source.Companion("M. H. Rashid, Power Electronics, 4th ed.", "Ex 4.4"), "the case");
        Junction(25, 2.W, [10], "45 degC", Source.Companion("Kakani & Bhandari, textbook of electronics", "Ex 6.1, p. 333"));
    }

    [Fact]
    public void Case_and_junction_on_a_measured_sink()
    {
        (double Watts, ThermalResistance[] Parts, string Printed)[] rows =
        [
            (6, [13.K_per_W], "103 degC"),
            (3.9, [13.K_per_W], "76 degC"),
            (3.9, [3.125.K_per_W, 13.K_per_W], "88 degC"),
        ];
        var air = 25.degC;
        Check.Table(rows, r => HeatPath.Junction(air, Power.FromWatts(r.Watts), r.Parts), r => r.Printed, Tip31);
    }

    private static void Sink(double limit, double air, Power P, double toCase, double toSink, string printed, Source source)
    {
        Temperature T_J = limit.degC, T_a = air.degC;
        ThermalResistance theta_JC = toCase.K_per_W, theta_CS = toSink.K_per_W;
        Check.Check(() => HeatPath.AllowedSink(T_J, T_a, P, theta_JC, theta_CS), printed, source);
    }

    private static void Junction(double air, Power P, double[] chain, string printed, Source source, string note = "")
    {
        var T_a = air.degC;
        ThermalResistance[] parts = [.. chain.Select(r => r.K_per_W)];
        Check.Check(() => HeatPath.Junction(T_a, P, parts), printed, source, note);
    }
}
