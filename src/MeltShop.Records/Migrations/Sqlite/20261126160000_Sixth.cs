using System;
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
            migrationBuilder.DropIndex(
                name: "IX_FurnaceMetals_FurnaceId",
                table: "FurnaceMetals");

            migrationBuilder.AddColumn<double>(
                name: "BathRecoveryPercent",
                table: "MaterialPercents",
                type: "REAL",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "LotPlaces",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    MaterialId = table.Column<long>(type: "INTEGER", nullable: false),
                    Lot = table.Column<string>(type: "TEXT", nullable: true),
                    Bin = table.Column<string>(type: "TEXT", nullable: true),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LotPlaces", x => x.Id);
                    table.ForeignKey(
                        name: "FK_LotPlaces_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LotPlaces_LotPlaces_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "LotPlaces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LotPlaces_Materials_MaterialId",
                        column: x => x.MaterialId,
                        principalTable: "Materials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LotPlaces_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_TrailRows_ChangeWindow",
                table: "TrailRows",
                column: "EnteredAt",
                filter: "\"Operation\" = 'ChangeWindow'");

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

            migrationBuilder.CreateIndex(
                name: "IX_LotPlaces_EntryKey",
                table: "LotPlaces",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_LotPlaces_MaterialId",
                table: "LotPlaces",
                column: "MaterialId");

            migrationBuilder.CreateIndex(
                name: "IX_LotPlaces_SupersedesId",
                table: "LotPlaces",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.AddColumn<long>(
                name: "ClosedAt",
                table: "HeatCorrections",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "FormerClosedAt",
                table: "HeatCorrections",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "FormerFurnaceId",
                table: "HeatCorrections",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "FurnaceId",
                table: "HeatCorrections",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "ReadsRecords",
                table: "ApiKeys",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.CreateIndex(
                name: "IX_FurnaceMetals_FurnaceId_Kind_ObservedAt_Id",
                table: "FurnaceMetals",
                columns: new[] { "FurnaceId", "Kind", "ObservedAt", "Id" });

            migrationBuilder.CreateIndex(
                name: "IX_CastingDecisions_Verdict_TreatedLadleId",
                table: "CastingDecisions",
                columns: new[] { "Verdict", "TreatedLadleId" });

            migrationBuilder.AddForeignKey(
                name: "FK_HeatCorrections_Furnaces_FormerFurnaceId",
                table: "HeatCorrections",
                column: "FormerFurnaceId",
                principalTable: "Furnaces",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);

            migrationBuilder.AddForeignKey(
                name: "FK_HeatCorrections_Furnaces_FurnaceId",
                table: "HeatCorrections",
                column: "FurnaceId",
                principalTable: "Furnaces",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "LotPlaces");

            migrationBuilder.DropIndex(
                name: "IX_TrailRows_ChangeWindow",
                table: "TrailRows");

            migrationBuilder.DropIndex(
                name: "IX_StockFacts_Lot",
                table: "StockFacts");

            migrationBuilder.DropIndex(
                name: "IX_Samples_CoinNumber",
                table: "Samples");

            migrationBuilder.DropIndex(
                name: "IX_CoinsOnTheirWay_CoinNumber",
                table: "CoinsOnTheirWay");

            migrationBuilder.DropForeignKey(
                name: "FK_HeatCorrections_Furnaces_FormerFurnaceId",
                table: "HeatCorrections");

            migrationBuilder.DropForeignKey(
                name: "FK_HeatCorrections_Furnaces_FurnaceId",
                table: "HeatCorrections");

            migrationBuilder.DropIndex(
                name: "IX_FurnaceMetals_FurnaceId_Kind_ObservedAt_Id",
                table: "FurnaceMetals");

            migrationBuilder.DropIndex(
                name: "IX_CastingDecisions_Verdict_TreatedLadleId",
                table: "CastingDecisions");

            migrationBuilder.DropColumn(
                name: "BathRecoveryPercent",
                table: "MaterialPercents");

            migrationBuilder.DropColumn(
                name: "ClosedAt",
                table: "HeatCorrections");

            migrationBuilder.DropColumn(
                name: "FormerClosedAt",
                table: "HeatCorrections");

            migrationBuilder.DropColumn(
                name: "FormerFurnaceId",
                table: "HeatCorrections");

            migrationBuilder.DropColumn(
                name: "FurnaceId",
                table: "HeatCorrections");

            migrationBuilder.DropColumn(
                name: "ReadsRecords",
                table: "ApiKeys");

            migrationBuilder.CreateIndex(
                name: "IX_FurnaceMetals_FurnaceId",
                table: "FurnaceMetals",
                column: "FurnaceId");
        }
    }
}
