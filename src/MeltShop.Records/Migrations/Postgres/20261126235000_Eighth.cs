using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace MeltShop.Records.Migrations.Postgres
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
                type: "text",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "Recipe_CoverRatePercent",
                table: "Grades",
                type: "double precision",
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
