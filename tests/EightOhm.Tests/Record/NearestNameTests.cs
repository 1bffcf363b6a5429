using EightOhm.Record;

namespace EightOhm.Tests.Record;

public sealed class NearestNameTests
{
    // Counted by hand: exchange of neighbours is one slip, so "V_rial" is one from "V_rail" where plain substitution counts two.
    [Theory]
    [InlineData("V_rial", "V_rail", 1)]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("", "abc", 3)]
    [InlineData("same", "same", 0)]
    [InlineData("ca", "abc", 3)]
    public void Slips_are_counted(string a, string b, int slips)
    {
        Assert.Equal(slips, NearestName.Slips(a, b));
        Assert.Equal(slips, NearestName.Slips(b, a));
    }

    [Theory]
    [InlineData("V_rial", "V_rail")]
    [InlineData("RL", "R_L")]
    [InlineData("r_e", "R_E")]
    [InlineData("p", "P")]
    [InlineData("theta_AS", "theta_SA")]
    [InlineData("θ_SA", "theta_SA")]
    [InlineData("V", null)]
    [InlineData("completely_else", null)]
    public void The_nearest_is_found_and_nothing_far(string typed, string? expected) =>
        Assert.Equal(expected, NearestName.Of(typed, ["P", "R_L", "R_E", "V_rail", "theta_SA", "I_q"]));
}
