using System.Globalization;
using System.Xml.Linq;
using EightOhm.Circuits;
using EightOhm.Display.Schematics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display.Tests.Schematics;

/// <summary>A drawing says the circuit: its netlist is read back from the picture, its words stand clear, and the checker that says so finds what is wrong.</summary>
public class SchematicTests
{
    public static TheoryData<string> Names => [.. Examples.Names];

    private static IEnumerable<string> Pictures(Schematic drawing) => drawing.NarrowSvg is { } narrow ? [drawing.Svg, narrow] : [drawing.Svg];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_netlist_read_back_from_the_picture_is_the_circuits(string name)
    {
        var circuit = Examples.Of(name);
        Assert.All(Pictures(circuit.Draw()), svg => Assert.Empty(new DrawnNetlist(svg).Faults(circuit)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Words_stand_clear_and_each_label_nearest_its_part(string name) =>
        Assert.All(Pictures(Examples.Of(name).Draw()), svg => Assert.Empty(DrawnLooks.Faults(svg)));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_checker_finds_every_mutant(string name)
    {
        var circuit = Examples.Of(name);
        var missed = DrawnMutants.Of(circuit.Draw().Svg).Where(m => !new DrawnNetlist(m.Svg).Faults(circuit).Concat(DrawnLooks.Faults(m.Svg)).Any());
        Assert.Empty(missed.Select(m => m.What));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_value_is_in_the_picture(string name)
    {
        var circuit = Examples.Of(name);
        var texts = Texts(circuit.Draw().Svg, "value");
        Assert.All(circuit.Elements.Where(e => e.Value is not (null or Gain) && e.Text.Length == 0 && e.Kind != ElementKind.Rail),
            e => Assert.Contains(texts, t => t.Of == e.Name && t.Text == QuantityFormat.Short(e.Value!)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_drawing_for_a_telephone_is_no_wider_than_its_letters_allow(string name)
    {
        var drawing = Examples.Of(name).Draw();
        var width = XDocument.Parse(drawing.NarrowSvg ?? drawing.Svg).Root!.Attribute("width")!.Value;
        Assert.InRange(double.Parse(width, CultureInfo.InvariantCulture), 1, SchematicStages.Widest);
    }

    [Fact]
    public void Ladders_of_chance_are_read_back()
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var circuit = RandomLadders.Of(seed);
            Assert.All(Pictures(circuit.Draw()), svg => Assert.Empty(new DrawnNetlist(svg).Faults(circuit).Concat(DrawnLooks.Faults(svg)).Select(f => $"{seed}: {f}")));
        }
    }

    [Fact]
    public void The_same_circuit_has_the_same_picture() =>
        Assert.Equal(SchematicSvgOf("OutputTriple"), SchematicSvgOf("OutputTriple"));

    [Fact]
    public void Drawn_numbers_are_the_given_ones()
    {
        var circuit = Examples.InputPair();
        var notes = new Annotations
        {
            Currents = new Dictionary<string, ElectricCurrent> { ["Q_1"] = 1.9837.mA, ["Q_2"] = 2.0163.mA },
            Voltages = new Dictionary<string, ElectricPotential> { ["tail"] = -0.8312.V, ["out"] = 38.21.V },
            Shares = new Dictionary<string, Ratio> { ["R_1"] = Ratio.FromPercent(31.25), ["R_2"] = Ratio.FromPercent(68.75) },
        };
        var drawing = circuit.Draw(annotate: notes);
        var drawn = Texts(drawing.Svg, "note");
        Assert.Equal(["Q_1 1.984 mA", "Q_2 2.016 mA", "R_1 31.25 %", "R_2 68.75 %", "out 38.21 V", "tail −831.2 mV"], drawn.Select(t => $"{t.Of ?? t.Node} {t.Text}").Order(StringComparer.Ordinal));
        Assert.Empty(new DrawnNetlist(drawing.Svg).Faults(circuit).Concat(DrawnLooks.Faults(drawing.Svg)));
        var bars = XDocument.Parse(drawing.Svg).Root!.Elements().Where(e => e.Name.LocalName == "rect" && (string?)e.Attribute("class") == "f").Select(e => DrawnPart.Number(e.Attribute("width")!.Value)).ToArray();
        Assert.Equal(LabelBlock.BarWidth, bars.Sum(), 0.2);
        Assert.All(["1.984 mA", "−831.2 mV", "68.75 %"], t => Assert.Contains(t, drawing.AltText, StringComparison.Ordinal));
    }

    private static string SchematicSvgOf(string name) => SchematicSvg.Write(SchematicSheet.Of(Examples.Of(name), Annotations.None), name);

    private static (string? Of, string? Node, string Text)[] Texts(string svg, string role) => [.. XDocument.Parse(svg).Root!.Elements()
        .Where(e => e.Name.LocalName == "text" && (string?)e.Attribute("class") == role)
        .Select(e => ((string?)e.Attribute("data-of"), (string?)e.Attribute("data-node"), e.Value))];
}
