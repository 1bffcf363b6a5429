using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>The rectifier and reservoir against the differential equation integrated by a general method.</summary>
[Checks]
public class RectifierChecks
{
    private static readonly (string Column, Func<RailFigures, double> Figure)[] Figures =
    [
        ("mean", f => f.Mean.Volts),
        ("trough", f => f.Minimum.Volts),
        ("crest", f => f.Maximum.Volts),
        ("rms", f => f.WindingRms.Amperes),
        ("peak", f => f.WindingPeak.Amperes),
        ("capacitor", f => f.CapacitorRipple.Amperes),
        ("angle", f => f.ConductionAngle.Degrees),
        ("dc", f => f.LoadMean.Amperes),
    ];

    [Fact]
    public void One_rail_with_constant_and_resistive_loads()
    {
        foreach (var (column, figure) in Figures)
            Check.Solved("RectifierSupply.SteadyState", Reference.Read("rectifier.csv"), r => figure(One(r)), column, 1e-7);
    }

    [Fact]
    public void What_several_channels_draw_from_a_rail() => Check.Computed(
        Reference.Read("rail-current.csv"),
        r => RailCurrent.MeanOf((int)r["n"], ElectricCurrent.FromAmperes(r["I_p"]), ElectricCurrent.FromAmperes(r["besides"])),
        "mean");

    [Fact]
    public void Two_rails_that_share_the_primary()
    {
        foreach (var (column, figure) in Figures)
        {
            Check.Solved("DualRailSupply.SteadyState", Reference.Read("dual-rail.csv"), r => figure(Two(r).Positive), column + "_p", 1e-6);
            Check.Solved("DualRailSupply.SteadyState", Reference.Read("dual-rail.csv"), r => figure(Two(r).Negative), column + "_n", 1e-6);
        }
    }

    [Fact]
    public void A_rail_that_is_charged_only_at_the_end_of_the_other_s_pulse()
    {
        foreach (var (column, figure) in Figures[..6])
        {
            Check.Solved("DualRailSupply.SteadyState", Reference.Read("dual-rail-unequal.csv"), r => figure(Two(r).Positive), column + "_p", 1e-5);
            Check.Solved("DualRailSupply.SteadyState", Reference.Read("dual-rail-unequal.csv"), r => figure(Two(r).Negative), column + "_n", 1e-5);
        }
    }

    [Fact]
    public void Diodes_of_the_exponential_law()
    {
        foreach (var (column, figure) in Figures[..6])
            Check.Solved("RectifierSupply.SteadyState", Reference.Read("rectifier-exponential.csv"), r => figure(Exponential(r)), column, 1e-4);
    }

    private static SteadySupply One(ReferenceRow r) =>
        new RectifierSupply(r["emf"].V, r["f"].Hz, r["R_s"].Ohm, r["drop"].V, ElectricCapacitance.FromFarads(r["C"])) { CapacitorEsr = r["esr"].Ohm }
            .SteadyState(r["R_L"] > 0 ? RailCurrent.Resistive(r["R_L"].Ohm) : RailCurrent.Constant(r["I"].A));

    private static SteadySupply Exponential(ReferenceRow r) =>
        new RectifierSupply(r["emf"].V, r["f"].Hz, r["R_s"].Ohm, new ExponentialDiode(ElectricCurrent.FromAmperes(r["I_s"]), r["n"], r["t_C"].degC, (int)r["series"]), ElectricCapacitance.FromFarads(r["C"])) { CapacitorEsr = r["esr"].Ohm }
            .SteadyState(r["R_L"] > 0 ? RailCurrent.Resistive(r["R_L"].Ohm) : r["play"] > 0 ? RailCurrent.HalfWaves(r["play"].A, r["signal"].Hz, r["I"].A) : RailCurrent.Constant(r["I"].A));

    private static DualSteadySupply Two(ReferenceRow r)
    {
        var supply = new DualRailSupply(r["emf"].V, r["f"].Hz, r["half"].Ohm, r["shared"].Ohm, r["drop"].V, ElectricCapacitance.FromFarads(r["C"])) { CapacitorEsr = r["esr"].Ohm };
        return supply.SteadyState(Load(r["play_p"], r["idle_p"]), Load(r["play_n"], r["idle_n"]));

        RailCurrent Load(double peak, double idle) => peak > 0 ? RailCurrent.HalfWaves(peak.A, r["signal"].Hz, idle.A) : RailCurrent.Constant(idle.A);
    }
}
