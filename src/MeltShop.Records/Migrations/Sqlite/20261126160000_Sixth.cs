using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace MeltShop.Records.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class Sixth : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<double>(
                name: "BathRecoveryPercent",
                table: "MaterialPercents",
                type: "REAL",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "BathRecoveryPercent",
                table: "MaterialPercents");
        }
    }
}
