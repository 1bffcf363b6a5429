using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>One element of a circuit: its kind, its name, the nodes that it is on, and its value.</summary>
/// <remarks>Made by the methods of <see cref="Circuit"/>.</remarks>
public sealed class Element
{
    internal Element(ElementKind kind, string name, IReadOnlyList<Terminal> terminals, object? value = null)
    {
        (Kind, Name, Terminals, Value) = (kind, name, terminals, value);
    }

    /// <summary>What it is.</summary>
    public ElementKind Kind { get; }

    /// <summary>Its name, one of a kind in the circuit: R1.</summary>
    public string Name { get; }

    /// <summary>Its terminals in the order in which the kind names them.</summary>
    public IReadOnlyList<Terminal> Terminals { get; }

    /// <summary>Its value, a quantity: ohms of a resistor, the current gain of a controlled current; null where it has none.</summary>
    public object? Value { get; internal init; }

    /// <summary>The data of a device: <see cref="BipolarModel"/>, <see cref="FetModel"/>, <see cref="DiodeModel"/> or <see cref="OpAmpModel"/>; null otherwise.</summary>
    public object? Model { get; internal init; }

    /// <summary>The dc current at which a device was said to stand; null where the operating point is to be solved.</summary>
    public ElectricCurrent? Bias { get; internal init; }

    /// <summary>Its small-signal values where the operating point was solved; null otherwise.</summary>
    internal BipolarPoint? Point { get; private init; }

    /// <summary>The elements that it refers to: the inductors of a coupling, what carries the controlling current; none otherwise.</summary>
    public IReadOnlyList<string> Refers { get; internal init; } = [];

    /// <summary>Words that stand in or beside its symbol; empty where there are none.</summary>
    public string Text { get; internal init; } = "";

    /// <summary>Where it is wished in a drawing, column and row from 0; null where the drawing decides.</summary>
    public (int Column, int Row)? Place { get; private set; }

    /// <summary>Whether solving knows it; false for what is only drawn.</summary>
    public bool IsSolved => Kind < ElementKind.Block;

    /// <summary>The node of a terminal.</summary>
    /// <param name="terminal">The terminal's name: "c".</param>
    /// <exception cref="ArgumentException">It has no such terminal.</exception>
    public string this[string terminal]
    {
        get
        {
            foreach (var t in Terminals)
                if (string.Equals(t.Name, terminal, StringComparison.Ordinal))
                    return t.Node;
            throw new ArgumentException($"{Name} has no terminal \"{terminal}\"; it has {Lists.And([.. Terminals.Select(t => t.Name)])}.", nameof(terminal));
        }
    }

    /// <summary>Wishes a place in the drawing.</summary>
    /// <param name="column">From 0, leftmost.</param>
    /// <param name="row">From 0, topmost.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is below 0 or above 999.</exception>
    public Element At(int column, int row)
    {
        Place = (Guard.Between(column, 0, 999), Guard.Between(row, 0, 999));
        return this;
    }

    /// <summary>"R1, 1 kΩ, from a to b".</summary>
    public override string ToString() =>
        $"{Name}{(Value is null ? "" : ", " + QuantityFormat.Short(Value))}{(Bias is { } i ? " at " + QuantityFormat.Short(i) : "")}{(Terminals.Count == 2 ? $", from {Terminals[0].Node} to {Terminals[1].Node}" : string.Concat(Terminals.Select(t => $", {t.Name} on {t.Node}")))}";

    /// <summary>The same element with another value.</summary>
    internal Element With(object value) => new(Kind, Name, Terminals, value) { Model = Model, Bias = Bias, Point = Point, Refers = Refers, Text = Text, Place = Place };

    /// <summary>The same element at another dc current, with what an operating point found of it.</summary>
    internal Element WithBias(ElectricCurrent bias, BipolarPoint? point) => new(Kind, Name, Terminals, Value) { Model = Model, Bias = bias, Point = point, Refers = Refers, Text = Text, Place = Place };
}
