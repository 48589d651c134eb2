namespace MeltShop.Charging.Plans;

/// <summary>How the search for a plan ended.</summary>
public enum SearchEnd
{
    /// <summary>With a proof: the plan is the cheapest, or there is none.</summary>
    Proven,

    /// <summary>The time ran out.</summary>
    OutOfTime,

    /// <summary>The worker process that looks for whole pieces was lost: it was killed, it crashed, or it took more memory than it may.</summary>
    WorkerLost,

    /// <summary>The solver could not decide the question, at no tolerance that was tried. Slightly other numbers may help.</summary>
    Undecided,

    /// <summary>There is no cheapest charge: what <see cref="ChargePlan.Endless"/> names makes it cheaper with every further kilogram.</summary>
    Endless,
}
