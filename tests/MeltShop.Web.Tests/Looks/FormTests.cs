using System.Text.RegularExpressions;
using MeltShop.Web.Tests.Repository;

namespace MeltShop.Web.Tests.Looks;

/// <summary>A press that opens a form says which, so that a walk through the pages finds it.</summary>
public sealed partial class FormTests
{
    [Fact]
    public void Press_ThatOpensAForm_NamesOneThatNothingElseIsCalled()
    {
        var files = Checkout.FilesEndingIn(".razor").Select(Checkout.Read).ToList();
        var names = files.SelectMany(text => Name().Matches(text).Select(match => match.Groups[1].Value)).ToLookup(name => name);
        Offences.None(
            from form in files.SelectMany(text => Opened().Matches(text).Select(match => match.Groups[1].Value)).Distinct()
            where names[form].Count() != 1
            select $"{form} is the name of {names[form].Count()}");
    }

    [Fact]
    public void Press_ThatOpensSomething_SaysWhat() => Offences.None(
        from file in Checkout.FilesEndingIn(".razor")
        from Match press in Opening().Matches(Checkout.Read(file))
        where !Opened().IsMatch(press.Value)
        select $"{file}: {press.Value}");

    /// <summary>The burns of a coin lie as drafts, which bring their rows along.</summary>
    [Fact]
    public void Press_ThatAddsARowOrTakesOneAway_IsMadeAgainWhenThePageIsLoadedAnew() => Offences.None(
        from file in Checkout.FilesEndingIn(".razor")
        from Match press in RowPress().Matches(Checkout.Read(file))
        where !press.Value.Contains("data-again=", StringComparison.Ordinal)
        select $"{file}: {press.Value}");

    [GeneratedRegex("(?:data-testid|TestId)=\"([^\"@]+)\"")]
    private static partial Regex Name();

    [GeneratedRegex("data-opens=\"([^\"@]+)\"")]
    private static partial Regex Opened();

    [GeneratedRegex("<button[^\n]*@onclick=\"(?:Add|Remove|\\(\\) => Remove\\([^\"]*)\"[^\n]*")]
    private static partial Regex RowPress();

    [GeneratedRegex("<button[^\n]*@onclick=\"(?:Open\"|\\(\\) => (?:isOpen|isAsking) = true|[^\"\n]*\\bOpen\\()[^\n]*")]
    private static partial Regex Opening();
}
