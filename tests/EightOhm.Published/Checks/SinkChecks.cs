using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Natural convection, fins, radiation, layers and joints against examples of textbooks of heat transfer.</summary>
[Checks]
public class SinkChecks
{
    private static readonly Area OneCentimetreSquare = 1.cm2;

    [Fact]
    public void A_vertical_plate()
    {
        double Pr = 0.7202, hot = 363, wall = 303, black = 1;
        var (rise, film, height, nu, k, area) = (60.K, Kelvin(333), 0.6.m, Viscosity(1.896e-5), Conductivity(0.02808), Area.FromSquareMeters(0.36));
        var source = Cengel("Ex 9.2");
        Check.Check(() => NaturalConvection.Rayleigh(rise, film, height, nu, Pr), "7.65e8", source);
        Check.Check(() => NaturalConvection.VerticalPlate(NaturalConvection.Rayleigh(rise, film, height, nu, Pr), Pr), "113", source);
        Check.Check(() => NaturalConvection.VerticalPlate(NaturalConvection.Rayleigh(rise, film, height, nu, Pr), Pr) * (rise / (height / k / area)), "115 W", source);
        Check.Check(() => Power.FromWatts(0.36 * Radiation.Flux(black, hot, wall)), "182 W", source, "0.6 m × 0.6 m, a black surface");
    }

    [Fact]
    public void A_glass_firescreen_and_a_duct()
    {
        // Air at 400 K as in the book's table A.4: ν, α (their quotient is the Prandtl number) and k. These inputs are from memory; the results are printed.
        var Pr = 26.4 / 38.3;
        var (rise, film, height, nu, k, area) = (209.K, Kelvin(400), 0.71.m, Viscosity(26.4e-6), Conductivity(0.0338), Area.FromSquareMeters(0.71 * 1.02));
        var source = Incropera("Ex 9.2, p. 572");
        Check.Check(() => NaturalConvection.Rayleigh(rise, film, height, nu, Pr), "1.81e9", source);
        Check.Check(() => NaturalConvection.VerticalPlate(NaturalConvection.Rayleigh(rise, film, height, nu, Pr), Pr) * (rise / (height / k / area)), "1060 W", source);
    }

    [Fact]
    public void Fins_at_their_optimum_spacing()
    {
        var Pr = 0.7215;
        var (rise, film, nu) = (50.K, Kelvin(328), Viscosity(1.847e-5));
        var L = 0.18.m;
        var source = Cengel("sec. 9-5: at the optimum spacing the Nusselt number of the space is constant");
        Check.Check(() => NaturalConvection.BetweenPlates(NaturalConvection.Channel(NaturalConvection.Rayleigh(rise, film, L, nu, Pr), NaturalConvection.OptimumSpacing(L, NaturalConvection.Rayleigh(rise, film, L, nu, Pr)), L)), "1.307", source);
        var grashof = NaturalConvection.OptimumSpacing(L, NaturalConvection.Rayleigh(rise, film, L, nu, 1));
        Check.Against(() => NaturalConvection.OptimumSpacing(L, NaturalConvection.Rayleigh(rise, film, L, nu, Pr)), grashof, "the Grashof number for the Rayleigh number", "7.45 mm", Cengel("Ex 9.3: what the companion's code computes; its display of S is mislabelled"));
    }

    [Fact]
    public void Straight_fins()
    {
        // The example counts the ends of a fin 1 m wide too: a perimeter of 2.006 m where two sides alone have 2 m.
        var (h, k, t, L_c) = (Coefficient(10 * 1.003), Conductivity(200), 3.mm, 76.5.mm);
        Check.Check(() => Power.FromWatts(h.WattsPerSquareMeterKelvin * 2 * L_c.Meters * 250 * Fin.Efficiency(Fin.Reach(h, t, k, L_c))), "360 W", Holman("Ex 2.8"), "for 1 m of width, its ends counted; without them 359.4 W");
        var (h2, copper, t2, length) = (Coefficient(45), Conductivity(386), 2.mm, 20.mm);
        Check.Check(() => Fin.Efficiency(Fin.Reach(h2, t2, copper, length)), "0.985", Source.Secondhand("Solutions to Y. A. Çengel, Heat and Mass Transfer, ch. 3 (coursehero.com file 6711312)", "copper plate fins on a board"), "without the tip's correction");
    }

    [Fact]
    public void A_pipe_that_convects_and_radiates()
    {
        double epsilon = 0.8, hot = 323, wall = 293;
        Check.Check(() => Power.FromWatts(Math.PI * 0.05 * ((6.5 * 30) + Radiation.Flux(epsilon, hot, wall))), "55.67 W", Holman("Ex 1.6"), "for 1 m of pipe");
    }

    [Fact]
    public void A_joint_a_plate_and_the_air()
    {
        // Power transistors on a copper plate: contact conductance 42 000 W/(m²·K) over 8 cm², 1 cm of copper and 25 W/(m²·K) over 100 cm².
        var contact = new SurfaceThermalResistance(1 / 42e3);
        var air = new SurfaceThermalResistance(1 / 25.0);
        Area small = 8.cm2, large = 100.cm2;
        var thick = 1.cm;
        var copper = ThermalConductivity.FromWattsPerMeterKelvin(386);
        var span = 50.K;
        var source = Cengel("Ex 3.5");
        Check.Check(() => Insulator.Joint(contact, small) + Insulator.Layer(thick, copper, large) + Insulator.Joint(air, large), "4.03 degC/W", source);
        Check.Check(() => span / (Insulator.Joint(contact, small) + Insulator.Layer(thick, copper, large) + Insulator.Joint(air, large)), "12.4 W", source);
        Check.Check(() => span / (Insulator.Joint(contact, small) + Insulator.Layer(thick, copper, large) + Insulator.Joint(air, large)) * Insulator.Joint(contact, small), "0.37 K", source);
    }

    [Fact]
    public void A_centimetre_of_each_material()
    {
        (ThermalConductivity K, string Printed)[] rows =
        [
            (HeatMaterials.Copper, "0.3 degC/W"), (HeatMaterials.Aluminium, "0.5 degC/W"), (HeatMaterials.Solder, "2.0 degC/W"), (HeatMaterials.Grease, "130 degC/W"),
            (HeatMaterials.Mica, "150 degC/W"), (HeatMaterials.PolyesterFilm, "400 degC/W"), (HeatMaterials.StillAir, "3000 degC/W"),
        ];
        var thick = 1.cm;
        Check.Table(rows, r => Insulator.Layer(thick, r.K, OneCentimetreSquare), r => r.Printed, Source.Secondhand("F. F. Mazda (ed.), Power Electronics Handbook", "table 2.1, p. 70 (which handbook it is is not certain)"), "resistivity in °C·cm/W: a cube of 1 cm");
        Assert.Equal(0.15, Insulator.Layer(0.05.mm, HeatMaterials.Mica, 5.cm2).Si, 1e-12);
    }

    [Fact]
    public void The_table_of_air_gives_what_the_examples_read_from_it()
    {
        var air = Air.At(55.degC);
        Assert.Equal(0.02772, air.Conductivity.WattsPerMeterKelvin, 0.000006);
        Assert.Equal(1.847e-5, air.Viscosity.SquareMetersPerSecond, 0.0006e-5);
        Assert.Equal(0.7215, air.Prandtl, 0.00006);
        air = Air.At(60.degC);
        Assert.Equal((0.02808, 1.896e-5, 0.7202), (air.Conductivity.WattsPerMeterKelvin, air.Viscosity.SquareMetersPerSecond, air.Prandtl));
    }

    [Fact]
    public void Plate_fin_sinks_with_their_fins_as_boundary_value_problems()
    {
        var rows = Reference.Read("plate-fin-sink.csv");
        Check.Computed(rows, r => SinkBalance.Rise(Power.FromWatts(r["P"]), Sink(r), Celsius(r["T_air"])), "rise", 1e-8);
        Check.Computed(rows, r => SinkBalance.Loss(TemperatureDelta.FromKelvins(r["rise"]), Power.FromWatts(r["P"]), Sink(r), Celsius(r["T_air"])).Right, "P", 1e-8);
        foreach (var r in rows.Rows)
        {
            var at = Sink(r).At(Power.FromWatts(r["P"]), Celsius(r["T_air"]));
            Assert.Equal(r["convected"], (double)(at.ByChannels + at.ByFaces).Watts, 1e-7 * r["convected"]);
            Assert.Equal(r["radiated"], (double)at.ByRadiation.Watts, 1e-7 * r["P"]);
        }
    }

    private static PlateFinSink Sink(ReferenceRow r) =>
        new() { Width = r["W"].m, Height = r["L"].m, FinLength = r["H"].m, Thickness = r["t"].m, Fins = (int)r["n"], Emissivity = r["epsilon"], Conductivity = Conductivity(r["k"]), BackIsFree = r["back"] > 0 };

    private static Temperature Kelvin(double t) => Temperature.FromKelvins(t);

    private static KinematicViscosity Viscosity(double nu) => KinematicViscosity.FromSquareMetersPerSecond(nu);

    private static ThermalConductivity Conductivity(double k) => ThermalConductivity.FromWattsPerMeterKelvin(k);

    private static HeatTransferCoefficient Coefficient(double h) => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(h);
}
