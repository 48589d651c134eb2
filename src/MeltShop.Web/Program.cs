var app = WebApplication.CreateBuilder(args).Build();
app.MapGet("/health/ready", () => Results.Ok());
await app.RunAsync();
