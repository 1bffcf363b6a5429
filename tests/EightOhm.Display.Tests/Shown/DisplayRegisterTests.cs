using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Shown;

public class DisplayRegisterTests
{
    [Fact]
    public void A_room_that_announces_itself_is_there_with_all_its_types()
    {
        var spaces = typeof(Rooms).Assembly.GetExportedTypes().Select(t => t.Namespace!).Distinct()
            .Except(["EightOhm", "EightOhm.Quantities", "EightOhm.Explaining", "EightOhm.Finding", "EightOhm.Numerics", "EightOhm.Record", "EightOhm.Teaching", "EightOhm.Json"]);
        Assert.Equal(spaces.Order(StringComparer.Ordinal), Rooms.All.Select(r => r.Namespace));
        Assert.All(Rooms.All, r => Assert.NotEmpty(r.Subject));
    }

    [Fact]
    public void Quantities_side_by_side_are_one_line()
    {
        Assert.Equal("8 Ω, 4.7 kΩ", Show.Text(new[] { 8.Ohm, 4.7.kOhm }));
        Assert.Equal("<span class=\"eo-value\">8 &#937;, 4.7 k&#937;</span>", Show.Html(new List<UnitsNet.ElectricResistance> { 8.Ohm, 4.7.kOhm }).Replace("Ω", "&#937;", StringComparison.Ordinal));
    }

    [Fact]
    public void What_nobody_registered_is_shown_in_its_own_words_and_harms_no_page() =>
        Assert.Equal("<pre class=\"eo-words\" style=\"white-space:pre-wrap\">&lt;b&gt;</pre>", Show.Html("<b>"));
}
