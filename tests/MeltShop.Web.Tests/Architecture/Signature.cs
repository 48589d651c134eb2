using System.Reflection;

namespace MeltShop.Web.Tests.Architecture;

/// <summary>Every type that somebody sees who uses another one: bases, members, parameters, type arguments.</summary>
internal static class Signature
{
    private const BindingFlags Visible = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    public static IEnumerable<Type> Of(Type type)
    {
        var shown = new List<Type?> { type.BaseType };
        shown.AddRange(type.GetInterfaces());
        foreach (var member in type.GetMembers(Visible))
        {
            shown.AddRange(member switch
            {
                MethodBase method => [.. method.GetParameters().Select(p => p.ParameterType), (method as MethodInfo)?.ReturnType],
                PropertyInfo property => [property.PropertyType],
                FieldInfo field => [field.FieldType],
                EventInfo handler => [handler.EventHandlerType],
                _ => Array.Empty<Type?>(),
            });
        }

        return shown.OfType<Type>().SelectMany(Parts);
    }

    private static IEnumerable<Type> Parts(Type type) =>
        type.HasElementType ? Parts(type.GetElementType()!) : [type, .. type.GetGenericArguments().SelectMany(Parts)];
}
