using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Yard;

namespace MeltShop.Records.Reading.Ladles;

/// <summary>What a pocket card is made from, and the treated ladle itself once there is one.</summary>
/// <param name="Ladles">Ladles in use.</param>
/// <param name="Alloys">Materials in use for the treatment: alloys and covers.</param>
/// <param name="Inoculants">Materials in use for inoculation.</param>
/// <param name="LastBath">Last sample in force from the furnace.</param>
/// <param name="Treated">Null while the ladle is being prepared.</param>
/// <param name="Samples">Samples of this ladle.</param>
/// <param name="Temperatures">Temperatures of this ladle; of the bath while it is being prepared.</param>
/// <param name="NextOrdinal">Number of the next ladle of this heat.</param>
public sealed record LadleView(
    HeatHeadView Heat, GradeView Grade, IReadOnlyList<LadleEquipment> Ladles, IReadOnlyList<MaterialView> Alloys,
    IReadOnlyList<MaterialView> Inoculants, SampleView? LastBath, TreatedLadleView? Treated, IReadOnlyList<SampleView> Samples,
    IReadOnlyList<TemperatureView> Temperatures, int NextOrdinal);

/// <inheritdoc cref="Sites.Ladle"/>
public sealed record LadleEquipment(
    long Id, string Code, string Name, string Process, double FillLimitKg, double PocketKg, double MgRecoveryPercent,
    double? RecoveryTemperatureC, double MgFadePercentPerMinute, double HeatLossKPerMinute, string FiguresSource);
