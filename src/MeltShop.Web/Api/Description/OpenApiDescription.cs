using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace MeltShop.Web.Api.Description;

/// <summary>The document at <c>/openapi/v1.json</c>.</summary>
internal static class OpenApiDescription
{
    public const string DocumentName = "v1";

    private const string Scheme = "apiKey";

    public static void AddApiDescription(this IServiceCollection services)
    {
        // A number in quotes is refused, so the document must not offer it.
        services.ConfigureHttpJsonOptions(options => options.SerializerOptions.NumberHandling = JsonNumberHandling.Strict);
        services.AddOpenApi(DocumentName, Configure);
    }

    private static void Configure(OpenApiOptions options)
    {
        options.ShouldInclude = api => api.ActionDescriptor.EndpointMetadata.OfType<RequestShape>().Any();
        options.AddDocumentTransformer((document, _, _) =>
        {
            Introduce(document);
            return Task.CompletedTask;
        });
        options.AddOperationTransformer(DescribeRequestAsync);
    }

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
        var schema = await context.GetOrCreateSchemaAsync(shape.Type, null, cancellation);
        Close(schema);
        operation.RequestBody = new OpenApiRequestBody
        {
            Required = true,
            Content = new Dictionary<string, OpenApiMediaType>
            {
                ["application/json"] = new()
                {
                    Schema = schema,
                    Example = JsonNode.Parse(shape.Example),
                },
            },
        };
    }

    /// <summary>A field that is not described is refused, and the document says so.</summary>
    private static void Close(IOpenApiSchema schema)
    {
        if (schema is OpenApiSchema { Properties.Count: > 0 } described) described.AdditionalPropertiesAllowed = false;
        foreach (var property in schema.Properties?.Values ?? []) Close(property);
        if (schema.Items is not null) Close(schema.Items);
    }
}
