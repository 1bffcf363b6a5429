using System.Net;
using System.Text;
using EightOhm.Explaining;

namespace EightOhm.Display.Formulas;

/// <summary>Writes a formula as MathML that still reads right when its tags are stripped.</summary>
/// <remarks>Jupyter flattens maths to its text in a notebook that it does not trust, and every freshly cloned notebook is one. So the root sign
/// and the brackets that the layout makes needless stand in it as phantom text of no size; the text of the whole is <see cref="MathText"/>'s line.</remarks>
public static class MathMl
{
    /// <summary>The formula as a <c>math</c> element.</summary>
    /// <param name="node">The formula.</param>
    public static string Write(MathNode node) => $"<math displaystyle=\"true\">{Inner(node)}</math>";

    private static string Inner(MathNode node) => node switch
    {
        NumberNode n => Number(n.Text),
        NameNode n => Name(n.Text),
        InfixNode n => $"<mrow>{In(n.Left, MathText.LeftNeed(n))}{Sign(n.Sign)}{In(n.Right, MathText.RightNeed(n))}</mrow>",
        WordsNode n => $"<mtext>{Text(n.Text).Replace(" ", "&#xA0;", StringComparison.Ordinal)}</mtext>",
        NegatedNode n => $"<mrow><mo>−</mo>{In(n.Inner, MathText.NegatedNeed(n))}</mrow>",
        NotNode n => $"<mrow><mtext>not&#xA0;</mtext>{In(n.Inner, 5)}</mrow>",
        FractionNode n => $"<mfrac><mrow>{Unseen(n.Over, MathText.OverNeed(n))}</mrow><mrow>{Hidden("/")}{Unseen(n.Under, 4)}</mrow></mfrac>",
        RootNode n => $"<msqrt><mrow>{(MathText.RootBrackets(n) ? $"{Hidden("√(")}{Inner(n.Inner)}{Hidden(")")}" : $"{Hidden("√")}{Inner(n.Inner)}")}</mrow></msqrt>",
        PowerNode n => $"<msup><mrow>{Base(n)}</mrow><mrow>{Hidden("^")}{Unseen(n.Exponent, 5)}</mrow></msup>",
        CallNode n => $"<mrow>{(n.Owner is null ? "" : $"{In(n.Owner, 5)}<mo>.</mo>")}{Name(n.Name)}<mo>(</mo>{string.Join("<mo>,</mo>", n.Arguments.Select(Inner))}<mo>)</mo></mrow>",
        SumNode n => $"<mrow><munder><mo>Σ</mo><mrow>{Hidden("[")}{Inner(n.Item)}<mtext>&#xA0;in&#xA0;</mtext>{Inner(n.Items)}{Hidden("]")}</mrow></munder>{In(n.Term, MathText.TermNeed(n))}</mrow>",
        CasesNode n => Cases(n),
        _ => throw new ArgumentException($"No MathML for a {node?.GetType().Name}.", nameof(node)),
    };

    private static string In(MathNode node, int need) => node.Binding < need ? $"<mrow><mo>(</mo>{Inner(node)}<mo>)</mo></mrow>" : Inner(node);

    // Brackets that a fraction bar or a raised line makes needless to the eye.
    private static string Unseen(MathNode node, int need) => node.Binding < need ? $"{Hidden("(")}{Inner(node)}{Hidden(")")}" : Inner(node);

    private static string Base(PowerNode n) => MathText.NeedsBrackets(n) ? $"<mo>(</mo>{Inner(n.Base)}<mo>)</mo>" : Inner(n.Base);

    private static string Cases(CasesNode node)
    {
        var rows = new StringBuilder();
        for (var i = 0; i < node.Cases.Count; i++)
        {
            var (value, when) = node.Cases[i];
            var end = i < node.Cases.Count - 1 ? Hidden(";") : "";
            var condition = when is null ? "<mtext>&#xA0;otherwise</mtext>" : $"<mtext>&#xA0;if&#xA0;</mtext>{Inner(when)}";
            rows.Append("<mtr><mtd>").Append(Inner(value)).Append("</mtd><mtd>").Append(condition).Append(end).Append("</mtd></mtr>");
        }

        return $"<mrow><mo stretchy=\"true\">{{</mo><mtable columnalign=\"left left\">{rows}</mtable>{Hidden("}")}</mrow>";
    }

    // A value keeps its number and unit together.
    private static string Number(string text)
    {
        var at = text.IndexOf(' ', StringComparison.Ordinal);
        return at < 0 ? $"<mn>{Text(text)}</mn>" : $"<mrow><mn>{Text(text[..at])}</mn><mtext>&#xA0;{Text(text[(at + 1)..]).Replace(" ", "&#xA0;", StringComparison.Ordinal)}</mtext></mrow>";
    }

    private static string Name(string name)
    {
        var (stem, sub) = Symbols.Split(name);
        return sub.Length == 0 ? Identifier(stem) : $"<msub>{Identifier(stem)}<mrow>{Hidden("_")}<mi mathvariant=\"normal\">{Text(sub)}</mi></mrow></msub>";
    }

    // One letter is a variable, a word is a name and stands upright.
    private static string Identifier(string stem) => stem.Length == 1 ? $"<mi>{Text(stem)}</mi>" : $"<mi mathvariant=\"normal\">{Text(stem)}</mi>";

    private static string Sign(string sign) => sign is "and" or "or" or "mod" ? $"<mtext>&#xA0;{sign}&#xA0;</mtext>" : $"<mo>{Text(sign)}</mo>";

    private static string Hidden(string text) => $"<mpadded width=\"0\" height=\"0\" depth=\"0\"><mphantom><mtext>{Text(text)}</mtext></mphantom></mpadded>";

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
