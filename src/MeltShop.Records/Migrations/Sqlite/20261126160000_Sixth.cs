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

            migrationBuilder.CreateIndex(
                name: "IX_StockFacts_Lot",
                table: "StockFacts",
                column: "Lot",
                filter: "\"Lot\" IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Samples_CoinNumber",
                table: "Samples",
                column: "CoinNumber",
                filter: "\"CoinNumber\" IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_CoinsOnTheirWay_CoinNumber",
                table: "CoinsOnTheirWay",
                column: "CoinNumber");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "IX_StockFacts_Lot",
                table: "StockFacts");

            migrationBuilder.DropIndex(
                name: "IX_Samples_CoinNumber",
                table: "Samples");

            migrationBuilder.DropIndex(
                name: "IX_CoinsOnTheirWay_CoinNumber",
                table: "CoinsOnTheirWay");

            migrationBuilder.DropColumn(
                name: "BathRecoveryPercent",
                table: "MaterialPercents");
        }
    }
}
