namespace MeltShop.Metallurgy.Statistics;

/// <summary>Patterns that say a process has moved. Each further rule adds false alarms, so a chart looks at few of them.</summary>
public enum RunRule
{
    /// <summary>One result beyond three standard deviations.</summary>
    OneBeyondThree,

    /// <summary>Two of three in a row beyond two standard deviations on one side.</summary>
    TwoOfThreeBeyondTwo,

    /// <summary>Eight in a row on one side of the centre.</summary>
    EightOnOneSide,

    /// <summary>Nine in a row on one side of the centre.</summary>
    NineOnOneSide,
}
