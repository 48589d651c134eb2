using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace MeltShop.Records.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class Seventh : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<double>(
                name: "LiquidKg",
                table: "Furnaces",
                type: "REAL",
                nullable: false,
                defaultValue: 0.0);

            // What the lines of the ledger say that no later one corrects, as it was added up until now.
            migrationBuilder.Sql("""
                UPDATE "Furnaces" SET "LiquidKg" = COALESCE((
                    SELECT SUM(m."Kg") FROM "FurnaceMetals" AS m
                    WHERE m."FurnaceId" = "Furnaces"."Id" AND NOT EXISTS (SELECT 1 FROM "FurnaceMetals" AS l WHERE l."SupersedesId" = m."Id")), 0.0);
                """);

            migrationBuilder.CreateIndex(
                name: "IX_FurnaceMetals_FurnaceId_ObservedAt_Id",
                table: "FurnaceMetals",
                columns: new[] { "FurnaceId", "ObservedAt", "Id" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "IX_FurnaceMetals_FurnaceId_ObservedAt_Id",
                table: "FurnaceMetals");

            migrationBuilder.DropColumn(
                name: "LiquidKg",
                table: "Furnaces");
        }
    }
}
