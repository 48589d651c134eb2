using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace MeltShop.Records.Migrations.Postgres
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
                type: "double precision",
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
