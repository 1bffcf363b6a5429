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
        // A source of zero only brings a signal, and a gain stands in no triangle.
        Assert.All(circuit.Elements.Where(e => e.Value is not (null or Gain) && e.Text.Length == 0 && e.Kind is not (ElementKind.Rail or ElementKind.Coupling) && QuantityKinds.Of(e.Value.GetType()).ToSi(e.Value) != 0),
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
            Currents = new Dictionary<string, ElectricCurrent> { ["Q_1"] = ElectricCurrent.FromAmperes(1.98372e-3), ["R_5"] = ElectricCurrent.FromAmperes(2.016281e-3) },
            Voltages = new Dictionary<string, ElectricPotential> { ["tail"] = ElectricPotential.FromVolts(-0.8312345), ["out"] = ElectricPotential.FromVolts(38.21456) },
            Shares = new Dictionary<string, Ratio> { ["R_1"] = Ratio.FromPercent(31.25), ["R_2"] = Ratio.FromPercent(68.75) },
        };
        var drawing = circuit.Draw(annotate: notes);
        var drawn = Texts(drawing.Svg, "note").ToDictionary(t => t.Of ?? t.Node!, t => Number(t.Text));
        var given = notes.Currents.ToDictionary(c => c.Key, c => c.Value.Amperes).Concat(notes.Voltages.ToDictionary(v => v.Key, v => v.Value.Volts)).Concat(notes.Shares.ToDictionary(s => s.Key, s => s.Value.DecimalFractions)).ToArray();
        Assert.Equal(given.Length, drawn.Count);
        Assert.All(given, g => Assert.InRange(drawn[g.Key] / g.Value, 0.9995, 1.0005));
        Assert.Empty(new DrawnNetlist(drawing.Svg).Faults(circuit).Concat(DrawnLooks.Faults(drawing.Svg)));
        Assert.All(drawn.Keys.Zip(Texts(drawing.Svg, "note")), t => Assert.Contains(t.Second.Text, drawing.AltText, StringComparison.Ordinal));
    }

    [Fact]
    public void A_bar_is_as_long_as_its_share()
    {
        var shares = new Dictionary<string, Ratio> { ["R_1"] = Ratio.FromPercent(20), ["R_2"] = Ratio.FromPercent(80) };
        var svg = Examples.InputPair().Draw(annotate: new() { Shares = shares }).Svg;
        var bars = XDocument.Parse(svg).Root!.Elements().Where(e => e.Name.LocalName == "rect" && (string?)e.Attribute("class") == "f").Select(e => DrawnPart.Number(e.Attribute("width")!.Value)).Order().ToArray();
        Assert.Equal([0.2 * LabelBlock.BarWidth, 0.8 * LabelBlock.BarWidth], bars, (a, b) => Math.Abs(a - b) < 0.06);
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => new Annotations { Shares = new Dictionary<string, Ratio> { ["R_1"] = Ratio.FromPercent(120) } });
    }

    // "−831.2 mV" as volts.
    private static double Number(string text)
    {
        var (number, unit) = (text.Split(' ')[0].Replace('−', '-'), text.Split(' ')[1]);
        return double.Parse(number, CultureInfo.InvariantCulture) * unit switch { "mA" or "mV" => 1e-3, "A" or "V" => 1, "%" => 0.01, _ => double.NaN };
    }

    private static string SchematicSvgOf(string name) => SchematicSvg.Write(SchematicSheet.Of(Examples.Of(name), Annotations.None), name);

    private static (string? Of, string? Node, string Text)[] Texts(string svg, string role) => [.. XDocument.Parse(svg).Root!.Elements()
        .Where(e => e.Name.LocalName == "text" && (string?)e.Attribute("class") == role)
        .Select(e => ((string?)e.Attribute("data-of"), (string?)e.Attribute("data-node"), e.Value))];
}
