namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the grades: <c>Grades.resx</c>.</summary>
public sealed class Grades;
