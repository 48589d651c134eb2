using MeltShop.Records.Reading.Recall;

namespace MeltShop.Web.Pages.Recalls;

/// <param name="Recall">Null before anything was asked for.</param>
public sealed record RecallContent(RecallView? Recall);
