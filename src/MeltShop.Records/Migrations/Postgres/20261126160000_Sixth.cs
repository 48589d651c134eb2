using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace MeltShop.Records.Migrations.Postgres
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
                type: "double precision",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "LotPlaces",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    MaterialId = table.Column<long>(type: "bigint", nullable: false),
                    Lot = table.Column<string>(type: "text", nullable: true),
                    Bin = table.Column<string>(type: "text", nullable: true),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ObservedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SupersedesId = table.Column<long>(type: "bigint", nullable: true),
                    Reason = table.Column<string>(type: "text", nullable: true)
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

            migrationBuilder.AlterColumn<string>(
                name: "Number",
                table: "Heats",
                type: "text",
                nullable: false,
                collation: "C",
                oldClrType: typeof(string),
                oldType: "text");

            migrationBuilder.AddColumn<DateTimeOffset>(
                name: "ClosedAt",
                table: "HeatCorrections",
                type: "timestamp with time zone",
                nullable: true);

            migrationBuilder.AddColumn<DateTimeOffset>(
                name: "FormerClosedAt",
                table: "HeatCorrections",
                type: "timestamp with time zone",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "FormerFurnaceId",
                table: "HeatCorrections",
                type: "bigint",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "FurnaceId",
                table: "HeatCorrections",
                type: "bigint",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "ReadsRecords",
                table: "ApiKeys",
                type: "boolean",
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

            migrationBuilder.AlterColumn<string>(
                name: "Number",
                table: "Heats",
                type: "text",
                nullable: false,
                oldClrType: typeof(string),
                oldType: "text",
                oldCollation: "C");

            migrationBuilder.CreateIndex(
                name: "IX_FurnaceMetals_FurnaceId",
                table: "FurnaceMetals",
                column: "FurnaceId");
        }
    }
}
