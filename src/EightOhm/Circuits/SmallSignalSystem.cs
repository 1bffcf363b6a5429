using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Circuits.PhysicalNumbers;

namespace EightOhm.Circuits;

/// <summary>Writes the small-signal equations of a circuit.</summary>
internal sealed class SmallSignalSystem
{
    private readonly Circuit circuit;
    private readonly double kelvin;
    private readonly LinearSystem system = new();

    private SmallSignalSystem(Circuit circuit, double kelvin) => (this.circuit, this.kelvin) = (circuit, kelvin);

    /// <summary>The equations of a circuit whose devices have their currents.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="kelvin">Temperature of the resistors, for their noise.</param>
    /// <exception cref="InvalidOperationException">A device has no current.</exception>
    public static LinearSystem Of(Circuit circuit, double kelvin)
    {
        var writer = new SmallSignalSystem(circuit, kelvin);
        foreach (var node in circuit.Nodes)
            writer.system.Nodes[node] = writer.system.Unknown();
        foreach (var element in circuit.Elements)
            if (HasBranch(element.Kind))
                writer.system.Branches[element.Name] = writer.system.Unknown();
        foreach (var element in circuit.Elements)
            writer.Write(element);
        return writer.system;
    }

    internal static bool HasBranch(ElementKind kind) => kind is ElementKind.Inductor or ElementKind.VoltageSource or ElementKind.Rail
        or ElementKind.VoltageControlledVoltage or ElementKind.CurrentControlledVoltage or ElementKind.OpAmp or ElementKind.Delay;

    private int On(Element e, int terminal) => system.Nodes[e.Terminals[terminal].Node];

    private void Write(Element e)
    {
        switch (e.Kind)
        {
            case ElementKind.Resistor:
                var g = 1 / ((ElectricResistance)e.Value!).Ohms;
                system.Admittance(On(e, 0), On(e, 1), g, 0, (system.Parameter(e.Name), -1));
                system.Noises.Add(new(e.Name, On(e, 0), On(e, 1), 4 * Boltzmann * kelvin * g, 0));
                break;
            case ElementKind.Capacitor:
                system.Admittance(On(e, 0), On(e, 1), 0, ((ElectricCapacitance)e.Value!).Farads, (system.Parameter(e.Name), 1));
                break;
            case ElementKind.Inductor:
                Across(e, -((ElectricInductance)e.Value!).Henries);
                break;
            case ElementKind.Coupling:
                Coupling(e);
                break;
            case ElementKind.VoltageSource or ElementKind.Rail:
                Across(e, 0);
                break;
            case ElementKind.CurrentSource:
                break;
            case ElementKind.VoltageControlledVoltage or ElementKind.VoltageControlledCurrent or ElementKind.CurrentControlledVoltage or ElementKind.CurrentControlledCurrent:
                Controlled(e);
                break;
            case ElementKind.Npn or ElementKind.Pnp:
                BipolarStamp.Write(system, e, On(e, 0), On(e, 1), On(e, 2));
                break;
            case ElementKind.Nmos or ElementKind.Pmos or ElementKind.Njfet or ElementKind.Pjfet:
                Fet(e, (FetModel)e.Model!);
                break;
            case ElementKind.Diode:
                Diode(e, (DiodeModel)e.Model!);
                break;
            case ElementKind.OpAmp:
                OpAmp(e, (OpAmpModel)e.Model!);
                break;
            case ElementKind.Delay:
                var branch = system.Branches[e.Name];
                system.Current(branch, On(e, 1), -1);
                system.Add(branch, On(e, 1), 1, 0);
                if (On(e, 0) >= 0)
                    system.Delayed(branch, On(e, 0), -1, ((Duration)e.Value!).Seconds);
                break;
        }
    }

    // v(a) − v(b) + s·minusL·i = what stands on the right.
    private int Across(Element e, double minusL)
    {
        var branch = system.Branches[e.Name];
        system.Current(branch, On(e, 0), On(e, 1));
        system.Add(branch, On(e, 0), 1, 0);
        system.Add(branch, On(e, 1), -1, 0);
        if (minusL != 0)
            system.Add(branch, branch, 0, minusL, (system.Parameter(e.Name), 1));
        return branch;
    }

    private void Coupling(Element e)
    {
        double L(string name) => ((ElectricInductance)circuit[name].Value!).Henries;
        int first = system.Branches[e.Refers[0]], second = system.Branches[e.Refers[1]];
        var m = (double)e.Value! * Math.Sqrt(L(e.Refers[0]) * L(e.Refers[1]));
        var parameter = system.Parameter(e.Name);
        system.Add(first, second, 0, -m, (parameter, 1));
        system.Add(second, first, 0, -m, (parameter, 1));
    }

    private void Controlled(Element e)
    {
        var parameter = system.Parameter(e.Name);
        var strength = e.Value switch
        {
            Gain gain => gain.Ratio,
            ElectricConductance conductance => conductance.Siemens,
            ElectricResistance resistance => resistance.Ohms,
            var number => (double)number!,
        };
        var control = e.Refers.Count == 0 ? [(On(e, 2), 1.0), (On(e, 3), -1.0)] : CurrentThrough(circuit[e.Refers[0]]);
        List<(int Row, double G, double C)> drives = [];
        if (e.Kind is ElementKind.VoltageControlledVoltage or ElementKind.CurrentControlledVoltage)
            drives.Add((Across(e, 0), -strength, 0));
        else
            drives.AddRange([(On(e, 0), strength, 0), (On(e, 1), -strength, 0)]);
        Open(e, $"at the source {e.Name}", drives, control, parameter);
    }

    private (int Col, double Sign)[] CurrentThrough(Element carrier)
    {
        if (system.Branches.TryGetValue(carrier.Name, out var branch))
            return [(branch, 1)];
        var g = 1 / ((ElectricResistance)carrier.Value!).Ohms;
        return [(On(carrier, 0), g), (On(carrier, 1), -g)];
    }

    private void Open(Element e, string words, IEnumerable<(int Row, double G, double C)> drives, IEnumerable<(int Col, double Sign)> control, int parameter)
    {
        Opening opening = new(e.Name, words, [.. drives.Where(d => d.Row >= 0)], [.. control.Where(c => c.Col >= 0)]);
        foreach (var (row, g, c) in opening.Drives)
            foreach (var (col, sign) in opening.Control)
                system.Add(row, col, g * sign, c * sign, (parameter, 1));
        system.Openings.Add(opening);
    }

    private void Fet(Element e, FetModel model)
    {
        int d = On(e, 0), g = On(e, 1), s = On(e, 2);
        var g_m = model.Transconductance.Siemens;
        system.Transfer(d, s, g, s, g_m, 0, (system.Parameter($"{e.Name} g_m"), 1));
        if (model.OutputResistance is { } r_o)
            system.Admittance(d, s, 1 / r_o.Ohms, 0, (system.Parameter($"{e.Name} r_o"), -1));
        double gs = model.GateSourceCapacitance.Farads, gd = model.GateDrainCapacitance.Farads;
        if (gs > 0)
            system.Admittance(g, s, 0, gs, (system.Parameter($"{e.Name} C_gs"), 1));
        if (gd > 0)
            system.Admittance(g, d, 0, gd, (system.Parameter($"{e.Name} C_gd"), 1));
        var white = 4 * Boltzmann * model.Junction.Kelvins * model.NoiseFactor * g_m;
        system.Noises.Add(new($"{e.Name} channel", d, s, white, white * (model.FlickerCorner?.Hertz ?? 0)));
        if (g >= 0)
            system.Openings.Add(new(e.Name, $"at the gate of {e.Name}", [.. new[] { (d, g_m, -gd), (s, -g_m, -gs) }.Where(x => x.Item1 >= 0)], [(g, 1)]));
    }

    private void Diode(Element e, DiodeModel model)
    {
        int a = On(e, 0), k = On(e, 1);
        if (e.Bias is not { } bias)
            throw new InvalidOperationException($"The current of {e.Name} is not known: give it (at:), or take c.OperatingPoint().Circuit.");
        if (model.SeriesResistance.Ohms > 0)
        {
            var inner = system.Unknown();
            system.Admittance(a, inner, 1 / model.SeriesResistance.Ohms, 0, (system.Parameter($"{e.Name} R_S"), -1));
            system.Noises.Add(new($"{e.Name} series resistance", a, inner, 4 * Boltzmann * model.Junction.Kelvins / model.SeriesResistance.Ohms, 0));
            a = inner;
        }

        double i = bias.Amperes, i_s = model.SaturationCurrent.Amperes;
        system.Admittance(a, k, (i + i_s) / (model.EmissionCoefficient * ThermalVolts(model.Junction)), 0, (system.Parameter($"{e.Name} I"), 1));
        system.Noises.Add(new($"{e.Name} shot", a, k, 2 * Charge * (i + (2 * i_s)), 0));
        if (model.Capacitance.Farads > 0)
            system.Admittance(a, k, 0, model.Capacitance.Farads, (system.Parameter($"{e.Name} C_j"), 1));
    }

    // (1/A₀ + s/ω_t)·(v_out − R_o·i) = v₊ − v₋, i the current that leaves the output.
    private void OpAmp(Element e, OpAmpModel model)
    {
        int plus = On(e, 0), minus = On(e, 1), output = On(e, 2), branch = system.Branches[e.Name];
        double over = 1 / model.Gain.Ratio, slow = 1 / (Math.Tau * model.GainBandwidth.Hertz), r_o = model.OutputResistance.Ohms;
        int gain = system.Parameter($"{e.Name} A_0"), gbw = system.Parameter($"{e.Name} GBW");
        system.Current(branch, output, -1);
        system.Add(branch, output, over, 0, (gain, -1));
        system.Add(branch, output, 0, slow, (gbw, -1));
        system.Add(branch, branch, -over * r_o, 0, (gain, -1));
        system.Add(branch, branch, 0, -slow * r_o, (gbw, -1));
        system.Add(branch, plus, -1, 0);
        system.Add(branch, minus, 1, 0);
        if (model.InputResistance is { } r_id)
            system.Admittance(plus, minus, 1 / r_id.Ohms, 0, (system.Parameter($"{e.Name} R_id"), -1));
        system.Openings.Add(new(e.Name, $"at the input of {e.Name}", [(branch, -1, 0)], [.. new[] { (plus, 1.0), (minus, -1.0) }.Where(c => c.Item1 >= 0)]));
        var e_n = model.VoltageNoise.Si * model.VoltageNoise.Si;
        if (e_n > 0)
            system.Noises.Add(new($"{e.Name} voltage noise", branch, -1, e_n, e_n * (model.FlickerCorner?.Hertz ?? 0)));
        var i_n = model.CurrentNoise.Si * model.CurrentNoise.Si;
        if (i_n > 0)
        {
            system.Noises.Add(new($"{e.Name} current noise, + input", plus, -1, i_n, 0));
            system.Noises.Add(new($"{e.Name} current noise, − input", minus, -1, i_n, 0));
        }
    }
}
