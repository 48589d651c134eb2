using System.Text.Json.Nodes;
using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace MeltShop.Web.Api.Description;

/// <summary>The document at <c>/openapi/v1.json</c>.</summary>
internal static class OpenApiDescription
{
    public const string DocumentName = "v1";

    private const string Scheme = "apiKey";

    public static void AddApiDescription(this IServiceCollection services) => services.AddOpenApi(DocumentName, options =>
    {
        options.ShouldInclude = api => api.ActionDescriptor.EndpointMetadata.OfType<RequestShape>().Any();
        options.AddDocumentTransformer((document, _, _) =>
        {
            Introduce(document);
            return Task.CompletedTask;
        });
        options.AddOperationTransformer(DescribeRequestAsync);
    });

    private static void Introduce(OpenApiDocument document)
    {
        document.Info = new()
        {
            Title = "MeltShop calculations",
            Version = DocumentName,
            Description = "Masses kg, temperatures °C, times minutes, prices per tonne of 1000 kg, analyses mass percent by element symbol. "
                + "Iron is never given: it is what is left to 100 %. null means absent. Every mistake of a request is named by its path.",
        };
        document.Servers = [];
        document.Components ??= new();
        document.Components.SecuritySchemes ??= new Dictionary<string, IOpenApiSecurityScheme>();
        document.Components.SecuritySchemes[Scheme] = new OpenApiSecurityScheme
        {
            Type = SecuritySchemeType.Http,
            Scheme = ApiKeyAuthentication.HeaderScheme,
            Description = "A key made with the command api-key add.",
        };
        document.Security = [new() { [new OpenApiSecuritySchemeReference(Scheme, document)] = [] }];
    }

    private static async Task DescribeRequestAsync(OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancellation)
    {
        if (context.Description.ActionDescriptor.EndpointMetadata.OfType<RequestShape>().LastOrDefault() is not { } shape) return;
        operation.RequestBody = new OpenApiRequestBody
        {
            Required = true,
            Content = new Dictionary<string, OpenApiMediaType>
            {
                ["application/json"] = new()
                {
                    Schema = await context.GetOrCreateSchemaAsync(shape.Type, null, cancellation),
                    Example = JsonNode.Parse(shape.Example),
                },
            },
        };
    }
}
