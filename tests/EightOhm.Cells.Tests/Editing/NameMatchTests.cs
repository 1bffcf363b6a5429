using EightOhm.Cells.Editing;

namespace EightOhm.Cells.Tests.Editing;

public sealed class NameMatchTests
{
    [Theory]
    [InlineData("VoltageDensity", "VoltageDensity", 0)]
    [InlineData("VoltageDensity", "Volt", 1)]
    [InlineData("VoltageDensity", "volt", 2)]
    [InlineData("VoltageDensity", "vd", 3)]
    [InlineData("VoltageDensity", "voDe", 3)]
    [InlineData("nV_rtHz", "rt", 3)]
    [InlineData("I_Lmin", "il", 3)]
    [InlineData("VoltageDensity", "dens", 3)]
    [InlineData("VoltageDensity", "ensity", 4)]
    [InlineData("VoltageDensity", "dv", null)]
    [InlineData("VoltageDensity", "vx", null)]
    [InlineData("VoltageDensity", "", 1)]
    public void A_name_fits_by_its_beginning_its_words_or_letters_within(string name, string typed, int? fit) =>
        Assert.Equal(fit, NameMatch.Of(name, typed));
}
