using System.Globalization;
using EightOhm.Tests.Record;
using EightOhm.Tests.Saver;

namespace EightOhm.Tests.OutputStages;

/// <summary>The solver gives the same on a machine that has fewer vector instructions, or none.</summary>
public class FollowerHardwareTests
{
    [Theory]
    [InlineData("DOTNET_EnableAVX512=0", 0)]
    [InlineData("DOTNET_EnableAVX2=0", 2)]
    [InlineData("DOTNET_EnableHWIntrinsic=0", 2)]
    public void The_figures_do_not_depend_on_the_vector_instructions(string setting, int lanes)
    {
        using var child = SaverProcess.Start(setting, ["followers", ""]);
        var lines = child.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        child.WaitForExit();
        Assert.True(child.ExitCode == 0, child.StandardError.ReadToEnd());
        if (lanes > 0)
            Assert.Equal(lanes, int.Parse(lines[0], CultureInfo.InvariantCulture));
        var here = FollowerFigures.All();
        var there = lines[1..].Select(l => double.Parse(l, CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(here.Count, there.Length);
        Assert.All(here.Zip(there), p => Assert.Equal(1, p.Second / p.First, 1e-10));
    }
}
