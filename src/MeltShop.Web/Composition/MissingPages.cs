using Microsoft.AspNetCore.Diagnostics;

namespace MeltShop.Web.Composition;

/// <summary>A person who goes to an address that is none sees a page that says so; a program gets the bare status.</summary>
internal static class MissingPages
{
    public static void UsePageForMissingPages(this WebApplication app)
    {
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.Use((http, next) =>
        {
            if ((http.Request.Path.StartsWithSegments("/api") || !HttpMethods.IsGet(http.Request.Method)) && http.Features.Get<IStatusCodePagesFeature>() is { } pages)
                pages.Enabled = false;
            return next(http);
        });
    }
}
