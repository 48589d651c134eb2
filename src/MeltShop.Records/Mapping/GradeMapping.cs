using MeltShop.Records.Grades;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Mapping;

internal static class GradeMapping
{
    public static void Apply(ModelBuilder model)
    {
        model.Entity<Grade>(grade =>
        {
            grade.HasIndex(g => g.Code).IsUnique();
            grade.OwnsOne(g => g.Recipe);
            grade.Holds(g => g.Windows, (GradeWindow w) => w.GradeId);
        });
        model.Entity<GradeWindow>().HasIndex(w => new { w.GradeId, w.Stage, w.Quantity }).IsUnique();
    }
}
