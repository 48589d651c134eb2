using MeltShop.Operations;
using MeltShop.Records.People;

namespace MeltShop.Web.Composition;

/// <summary>Who acts where no person is signed in: the one who runs the program, from its shell or on its first start.</summary>
internal static class ProgramItself
{
    public static Acting Acting { get; } = new(0, "MeltShop", Environment.MachineName, [Role.Administrator]);
}
