using EightOhm.Display.Tables;
using EightOhm.Loads;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Tables;

public class LoadTablesTests
{
    [Fact]
    public void Each_load_is_a_row_and_a_load_without_an_impulse_response_has_no_programme()
    {
        var table = LoadTables.Demands([new BoxedDriver(5.8.Ohm, 0.5.mH, 45.Hz, 3, 0.6).Asks("a box", 40.V), new PhaseLoad(4.Ohm, 45.deg).Asks("4 Ω at 45°", 38.V)]);
        Assert.Equal(["a box", "40 V", "6.85 A", "14.1 A", "5.8 Ω", "2.9 Ω"], table.Rows[0]);
        Assert.Equal(["4 Ω at 45°", "38 V", "9.5 A", "–", "2.83 Ω", "1.41 Ω"], table.Rows[1]);
    }
}
