using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Operations;

/// <summary>Puts the operations into a program.</summary>
public static class OperationsServices
{
    /// <summary>Every operation of this room, from its base class.</summary>
    public static IReadOnlyList<Type> All { get; } = [.. typeof(OperationsServices).Assembly.GetTypes().Where(IsOperation)];

    /// <summary>Registers every operation by its own type; they keep no state.</summary>
    public static IServiceCollection AddMeltShopOperations(this IServiceCollection services)
    {
        foreach (var operation in All) services.AddSingleton(operation);
        services.AddSingleton<People.PasswordAgain>();
        services.AddSingleton<Ladles.LadleForecast>();
        services.AddSingleton<Ladles.LearntRecoveries>();
        services.AddSingleton<Castings.CastingsBoard>();
        services.AddSingleton<Drafts.KeepDraft>();
        services.AddSingleton<Drafts.DropDrafts>();
        services.AddSingleton<Correcting.CorrectionForecast>();
        services.AddSingleton<Importing.ImportDesk>();
        return services;
    }

    private static bool IsOperation(Type type) =>
        type is { IsAbstract: false, BaseType: { IsGenericType: true } parent } && parent.GetGenericTypeDefinition() == typeof(Operation<,>);
}
