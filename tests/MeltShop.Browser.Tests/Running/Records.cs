using Microsoft.Data.Sqlite;

namespace MeltShop.Browser.Tests.Running;

/// <summary>What really lies in the records of a running program.</summary>
internal static class Records
{
    /// <summary>Does something to the records behind the program's back.</summary>
    public static async Task WriteAsync(this RunningApp app, string statements)
    {
        await using var connection = new SqliteConnection($"Data Source={app.Database};Pooling=False");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
#pragma warning disable CA2100 // the statements are the tests' own
        command.CommandText = statements;
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync();
    }

    public static async Task<List<object[]>> ReadAsync(this RunningApp app, string question)
    {
        await using var connection = new SqliteConnection($"Data Source={app.Database};Mode=ReadOnly;Pooling=False");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
#pragma warning disable CA2100 // the questions are the tests' own
        command.CommandText = question;
#pragma warning restore CA2100
        await using var reader = await command.ExecuteReaderAsync();
        var rows = new List<object[]>();
        while (await reader.ReadAsync())
        {
            var row = new object[reader.FieldCount];
            reader.GetValues(row);
            rows.Add(row);
        }

        return rows;
    }
}
