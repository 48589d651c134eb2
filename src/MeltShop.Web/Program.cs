using MeltShop.Web.Commands;
using MeltShop.Web.Composition;

if (CommandLine.HoldsCommand(args)) return await CommandLine.RunAsync(args);

var builder = WebApplication.CreateBuilder(args);
builder.AddMeltShop();
var app = builder.Build();
app.UseMeltShop();
return await app.ServeAsync();
