using MeltShop.Web.Commands;
using MeltShop.Web.Composition;

return await PlainFaults.TellAsync(() => CommandLine.HoldsCommand(args) ? CommandLine.RunAsync(args) : Serving.RunAsync(args));
