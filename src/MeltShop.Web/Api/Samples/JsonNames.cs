using System.Text.Json;

namespace MeltShop.Web.Api.Samples;

/// <summary>Members of enumerations as JSON writes names: <c>bath</c>, <c>lastMetal</c>.</summary>
internal static class JsonNames
{
    public static string Of<TEnum>(TEnum member)
        where TEnum : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(member.ToString());

    public static bool TryParse<TEnum>(string name, out TEnum member)
        where TEnum : struct, Enum
    {
        var found = Enum.GetValues<TEnum>().Where(m => Of(m) == name).ToList();
        member = found.FirstOrDefault();
        return found.Count == 1;
    }
}
