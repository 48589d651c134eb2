namespace MeltShop.Web.Components.States;

/// <summary>How far a page is with what it shows.</summary>
public enum ViewState
{
    Loading,
    Ready,

    /// <summary>Loaded, and there is nothing yet: the page says what to do.</summary>
    Empty,

    /// <summary>There is no such record.</summary>
    Missing,
    Failed,
}
