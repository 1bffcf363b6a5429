using EightOhm.Quantities;

namespace EightOhm.Tests.House;

/// <summary>The rooms of the library: no two refer to each other, however long the way round.</summary>
/// <remarks>Read from the assembly: what the bases, fields, signatures, locals and bodies of its types name. Namespaces of generated code count with their room.</remarks>
public class RoomTests
{
    [Fact]
    public void No_two_rooms_refer_to_each_other()
    {
        var rooms = Rooms.Of(typeof(QuantityFormat).Assembly);
        Assert.True(rooms.References.Count > 10, string.Join(", ", rooms.References.Keys));
        Assert.Contains("Thermal", rooms.References["OutputStages"].Keys); // the test sees what it should see
        Assert.Contains("OutputStages", rooms.References["SafeAreas"].Keys);
        var ring = rooms.Ring();
        Assert.True(ring.Count == 0, $"Rooms refer to each other: {string.Join(" → ", ring)}. {rooms.Why(ring)}");
    }

    [Fact]
    public void A_ring_of_rooms_is_found()
    {
        Dictionary<string, Dictionary<string, string>> To(params (string From, string To)[] pairs) =>
            pairs.SelectMany(p => new[] { p.From, p.To }).Distinct().ToDictionary(r => r, r => pairs.Where(p => p.From == r).ToDictionary(p => p.To, _ => "here"));
        Assert.Empty(new Rooms(To(("A", "B"), ("B", "C"), ("A", "C"))).Ring());
        Assert.Equal(["A", "B", "A"], new Rooms(To(("A", "B"), ("B", "A"))).Ring());
        Assert.Equal(["B", "C", "D", "B"], new Rooms(To(("A", "B"), ("B", "C"), ("C", "D"), ("D", "B"))).Ring());
    }
}
