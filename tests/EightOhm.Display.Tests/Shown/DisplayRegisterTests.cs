using System.Text.RegularExpressions;
using EightOhm.Devices;
using EightOhm.Display;
using EightOhm.Noise;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Supply;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Display.Tests.Shown;

/// <summary>Every result of every room has a way to be shown, the same for a console as for a page.</summary>
public partial class DisplayRegisterTests
{
    public static TheoryData<object> Samples =>
    [
        new OutputRating(100.W, 8.Ohm),
        new NoiseBudget([new("input resistor", 1.3.nV_rtHz), new("feedback network", 1.2.nV_rtHz)]),
        SwingBudget.For(40.V, 5.A).LessEmitterResistors(0.22.Ohm, 3).Less("second stage", 2.V, 1.5.V, "cascode; current source"),
        new FosterImpedance((0.08.K_per_W, 1.2.ms), (0.17.K_per_W, 11.ms)),
        new FosterImpedance((0.08.K_per_W, 1.2.ms), (0.17.K_per_W, 11.ms)).ToLadder(),
        new[] { 8.Ohm, 4.7.kOhm },
    ];

    [Theory]
    [MemberData(nameof(Samples))]
    public void The_console_shows_the_numbers_of_the_page(object value)
    {
        var page = Tags().Replace(Show.Html(value).Replace("</td>", " ").Replace("</th>", " ").Replace("</caption>", " "), "");
        var console = Show.Text(value);
        Assert.Equal(Numbers(System.Net.WebUtility.HtmlDecode(page)), Numbers(console));
        Assert.NotEmpty(Numbers(console));
    }

    [Fact]
    public void Every_result_of_a_room_has_a_form()
    {
        var results = Rooms.Types.Where(t => t is { IsClass: true, IsAbstract: false, IsGenericTypeDefinition: false } && !typeof(Delegate).IsAssignableFrom(t)
            && QuantityKinds.Find(t) is null && IsResult(t));
        Assert.Empty(results.Where(t => DisplayRegister.Find(t) is null).Select(t => t.FullName));
    }

    [Fact]
    public void A_room_that_announces_itself_is_there_with_all_its_types()
    {
        var spaces = typeof(Rooms).Assembly.GetExportedTypes().Select(t => t.Namespace!).Distinct()
            .Except(["EightOhm", "EightOhm.Quantities", "EightOhm.Explaining", "EightOhm.Numerics", "EightOhm.Record", "EightOhm.Teaching", "EightOhm.Json"]);
        Assert.Equal(spaces.Order(StringComparer.Ordinal), Rooms.All.Select(r => r.Namespace));
        Assert.All(Rooms.All, r => Assert.NotEmpty(r.Subject));
    }

    [Fact]
    public void What_nobody_registered_is_shown_in_its_own_words_and_harms_no_page() =>
        Assert.Equal("<pre class=\"eo-words\" style=\"white-space:pre-wrap\">&lt;b&gt;</pre>", Show.Html("<b>"));

    // What a method or property of a room hands out, and nobody else makes.
    private static bool IsResult(Type type) => Rooms.Types.Where(t => t != type)
        .Any(t => t.GetMethods().Any(m => m.ReturnType == type) || t.GetProperties().Any(p => p.PropertyType == type));

    private static List<string> Numbers(string text) => [.. Number().Matches(text).Select(m => m.Value)];

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tags();

    [GeneratedRegex(@"\d+(\.\d+)?")]
    private static partial Regex Number();
}
