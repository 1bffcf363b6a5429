using UnitsNet;
using static EightOhm.Circuits.PhysicalNumbers;

namespace EightOhm.Circuits;

/// <summary>What a bipolar transistor is for small signals, at its current.</summary>
/// <param name="Collector">Collector current, a magnitude, A.</param>
/// <param name="Base">Base current, a magnitude, A.</param>
/// <param name="G_m">Transconductance, base-emitter to collector.</param>
/// <param name="G_pi">Base to emitter: 1/r_π.</param>
/// <param name="G_o">Collector to emitter: 1/r_o.</param>
/// <param name="G_mu">Base to collector; of a saturated device alone.</param>
internal sealed record BipolarPoint(double Collector, double Base, double G_m, double G_pi, double G_o, double G_mu)
{
    /// <summary>A transistor that conducts in the usual way: g_m = I_C/V_T, r_π = V_T/I_B, r_o = V_A/I_C.</summary>
    public static BipolarPoint At(double collector, BipolarModel model)
    {
        double v_t = ThermalVolts(model.Junction), base_ = collector / GainAt(model, collector);
        return new(collector, base_, collector / v_t, base_ / v_t, model.EarlyVoltage is { } v_a ? collector / v_a.Volts : 0, 0);
    }

    /// <summary>The current gain at a collector current: the card's table, its ends held; otherwise the model's.</summary>
    public static double GainAt(BipolarModel model, double collector) => model.Card is { } card
        ? card.GainFrom(Math.Min(collector, card.GainTable[^1].Current.Amperes))
        : model.CurrentGain;
}

/// <summary>Writes a bipolar transistor into the equations: its hybrid-π circuit, its noises, its opening at the base.</summary>
/// <remarks>r_π and r_o are no resistors and make no thermal noise; the base spreading resistance and the emitter's are and do; base and collector current make shot noise.</remarks>
internal static class BipolarStamp
{
    /// <exception cref="InvalidOperationException">Its current is not known.</exception>
    public static void Write(LinearSystem system, Element e, int c, int b, int emitter)
    {
        var model = (BipolarModel)e.Model!;
        var point = e.Point ?? (e.Bias is { } bias ? BipolarPoint.At(bias.Amperes, model) : throw new InvalidOperationException($"The collector current of {e.Name} is not known: give it (at:), or take c.OperatingPoint().Circuit."));
        var kelvin = model.Junction.Kelvins;
        b = Behind(system, e.Name, "r_bb", "base spreading resistance", b, model.BaseResistance, kelvin);
        emitter = Behind(system, e.Name, "r_int", "emitter resistance", emitter, model.EmitterResistance, kelvin);

        double c_mu = model.CollectorCapacitance.Farads, total = model.TransitionFrequency is { } f_t ? point.G_m / (Math.Tau * f_t.Hertz) : 0;
        // At small currents a card's f_T is not reached: what is left for C_π is nothing, not less.
        var c_pi = Math.Max(0, total - c_mu);
        int current = system.Parameter($"{e.Name} I_C"), gain = system.Parameter($"{e.Name} h_FE");
        system.Transfer(c, emitter, b, emitter, point.G_m, 0, (current, 1));
        system.Admittance(b, emitter, point.G_pi, 0, (current, 1), (gain, -1));
        system.Admittance(c, emitter, point.G_o, 0, (current, 1));
        system.Admittance(b, c, point.G_mu, 0);
        var mu = system.Parameter($"{e.Name} C_mu");
        system.Admittance(b, c, 0, c_mu, (mu, 1));
        // With f_T given, what C_μ takes C_π loses.
        if (c_pi > 0)
            system.Admittance(b, emitter, 0, c_pi, (current, total / c_pi), (system.Parameter($"{e.Name} f_T"), -total / c_pi), (mu, -c_mu / c_pi));

        if (b >= 0)
            system.Openings.Add(new(e.Name, $"at the base of {e.Name}", [.. new[] { (c, point.G_m - point.G_mu, -c_mu), (emitter, -point.G_m - point.G_pi, -c_pi) }.Where(d => d.Item1 >= 0)], [(b, 1)]));
        var shot = 2 * Charge * point.Base;
        system.Noises.Add(new($"{e.Name} collector current", c, emitter, 2 * Charge * point.Collector, 0));
        system.Noises.Add(new($"{e.Name} base current", b, emitter, shot, shot * (model.FlickerCorner?.Hertz ?? 0)));
    }

    private static int Behind(LinearSystem system, string name, string symbol, string words, int node, ElectricResistance resistance, double kelvin)
    {
        if (resistance.Ohms <= 0)
            return node;
        var inner = system.Unknown();
        system.Admittance(node, inner, 1 / resistance.Ohms, 0, (system.Parameter($"{name} {symbol}"), -1));
        system.Noises.Add(new($"{name} {words}", node, inner, 4 * Boltzmann * kelvin / resistance.Ohms, 0));
        return inner;
    }
}
