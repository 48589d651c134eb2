using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace MeltShop.Records.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class Eighth : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Recipe_CoverCode",
                table: "Grades",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "Recipe_CoverRatePercent",
                table: "Grades",
                type: "REAL",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Recipe_CoverCode",
                table: "Grades");

            migrationBuilder.DropColumn(
                name: "Recipe_CoverRatePercent",
                table: "Grades");
        }
    }
}
