using System.Text.Json;

namespace MeltShop.Charging.Workers;

/// <summary>The inside of a worker process: questions in, answers out, a line each, until the input ends.</summary>
public static class SolveWorker
{
    /// <summary>What the process ends with when a solve goes on after its time.</summary>
    public const int Overran = 3;

    /// <summary>How long a solve may go on after its time before the process ends itself: whoever asked may be gone.</summary>
    internal static readonly TimeSpan Grace = TimeSpan.FromSeconds(3);

    /// <summary>Answers until the input ends.</summary>
    /// <exception cref="JsonException">A line is no question: whoever asks is not this program.</exception>
    public static void Serve(TextReader input, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(output);
        while (input.ReadLine() is { } line)
        {
            var question = JsonSerializer.Deserialize<MixedQuestion>(line, MixedQuestion.Json) ?? throw new JsonException("There is no question in this line.");
            using (new Timer(_ => Environment.Exit(Overran), null, TimeSpan.FromMilliseconds(question.Milliseconds) + Grace, Timeout.InfiniteTimeSpan))
            {
                output.WriteLine(JsonSerializer.Serialize(MixedSolver.Solve(question, CancellationToken.None), MixedQuestion.Json));
                output.Flush();
            }
        }
    }
}
