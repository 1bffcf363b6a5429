using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace EightOhm.Browser.Tests.Hosting;

/// <summary>Comparison of an output's HTML: words equal, numbers within their last digit, coordinates of pictures within 0.2 px, data of charts to nine digits.</summary>
internal static partial class StoredOutput
{
    private const double Pixel = 0.2, Data = 1e-9;

    /// <summary>The first difference in words, or null when the outputs show the same.</summary>
    public static string? Difference(string stored, string computed)
    {
        var (was, now) = (Parts(stored), Parts(computed));
        return Numbers(was.Pictures, now.Pictures, (a, b) => Math.Abs(a - b) <= Pixel, "in a picture")
            ?? Numbers(was.Charts, now.Charts, (a, b) => Math.Abs(a - b) <= Data * Math.Max(Math.Abs(a), Math.Abs(b)), "in a chart's data")
            ?? PrintedText.Difference(was.Words, now.Words);
    }

    private static (string Pictures, string Charts, string Words) Parts(string html)
    {
        // An id is made from the content: a coordinate that differs within its tolerance makes another.
        html = ContentId().Replace(html, "eo-id");
        var pictures = string.Join('\n', Picture().Matches(html).Select(m => ContentId().Replace(Encoding.UTF8.GetString(Convert.FromBase64String(m.Groups["data"].Value)), "eo-id")));
        var charts = string.Join('\n', Chart().Matches(html).Select(m => m.Value));
        return (pictures, charts, Chart().Replace(Picture().Replace(html, ""), ""));
    }

    private static string? Numbers(string stored, string computed, Func<double, double, bool> near, string where)
    {
        var (was, now) = (Number().Matches(stored), Number().Matches(computed));
        if (was.Count != now.Count || !Number().Split(stored).SequenceEqual(Number().Split(computed)))
            return $"the words or shapes {where} differ:\n{stored}\n{computed}";
        return was.Zip(now).Where(p => !near(Value(p.First), Value(p.Second))).Select(p => $"{p.First} is stored {where}, {p.Second} computed").FirstOrDefault();
    }

    private static double Value(Match match) => double.Parse(match.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex("data:image/svg\\+xml;base64,(?<data>[A-Za-z0-9+/=]+)")]
    private static partial Regex Picture();

    [GeneratedRegex("<script type=\"application/json\">.*?</script>", RegexOptions.Singleline)]
    private static partial Regex Chart();

    [GeneratedRegex("eo-[0-9a-f]{10}")]
    private static partial Regex ContentId();

    [GeneratedRegex(@"\d+(?:\.\d+)?(?:[eE][-+]?\d+)?")]
    private static partial Regex Number();
}
